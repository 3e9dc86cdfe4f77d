/** The trainees' windows of this browser, as a trainer's window hears them over the channel. */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { LINE_VERSION } from './channel.ts';
import { type Answer, type InstructorSays, newName, type Post, type Told, type TraineeWindow } from './line.ts';
import type { Link } from './link.ts';
import type { Lives } from './lives.ts';
import { heardOfTrainee } from './shapes.ts';

/** So long an answer is waited for, ms: going back lives through the days before the call anew. */
const PATIENCE_ms = 30_000;

export interface Switchboard {
  /** By their names, those first that came first. */
  readonly windows: ReadonlySignal<ReadonlyMap<string, TraineeWindow>>;
  /** That a page of another version is open. */
  readonly other: ReadonlySignal<boolean>;
  linkTo(name: string): Link;
  /** Asks who is there; to be asked once `hear` hears. */
  roll(): void;
  hear(data: unknown): void;
  close(): void;
}

interface Line {
  readonly told: Signal<Told | null>;
  readonly gone: Signal<boolean>;
  readonly waiting: Map<number, (answer: Answer) => void>;
}

export async function openSwitchboard(channel: Post, lives: Lives): Promise<Switchboard> {
  const name = newName();
  const windows = signal<ReadonlyMap<string, TraineeWindow>>(new Map());
  const other = signal(false);
  const lines = new Map<string, Line>();
  const watches = new Map<string, () => void>();
  let next = 1;
  await lives.hold(name);
  const say = (said: InstructorSays) => channel.postMessage({ version: LINE_VERSION, from: name, ...said });

  function here(from: string, window: TraineeWindow) {
    if (!windows.peek().has(from))
      watches.set(
        from,
        lives.whenOver(from, () => gone(from)),
      );
    windows.value = new Map([...windows.peek(), [from, window]]);
  }

  function gone(from: string) {
    watches.get(from)?.();
    watches.delete(from);
    windows.value = new Map([...windows.peek()].filter(([one]) => one !== from));
    const line = lines.get(from);
    if (line === undefined) return;
    line.gone.value = true;
    for (const answer of line.waiting.values()) answer({ kind: 'refused', why: { id: 'instructor.gone' } });
    line.waiting.clear();
  }

  function linkTo(to: string): Link {
    const line: Line = { told: signal(null), gone: signal(false), waiting: new Map() };
    lines.set(to, line);
    say({ kind: 'watch', to });
    return {
      told: line.told,
      gone: line.gone,
      ask: (ask) =>
        new Promise((resolve) => {
          if (line.gone.peek()) return resolve({ kind: 'refused', why: { id: 'instructor.gone' } });
          const n = next++;
          const timer = setTimeout(() => done({ kind: 'refused', why: { id: 'instructor.noAnswer' } }), PATIENCE_ms);
          const done = (answer: Answer) => {
            clearTimeout(timer);
            line.waiting.delete(n);
            resolve(answer);
          };
          line.waiting.set(n, done);
          say({ kind: 'ask', to, n, ask });
        }),
      close() {
        say({ kind: 'unwatch', to });
        if (lines.get(to) === line) lines.delete(to);
      },
    };
  }

  const roll = () => say({ kind: 'roll' });
  return {
    windows,
    other,
    linkTo,
    roll,
    hear(data) {
      const heard = heardOfTrainee(data);
      if (heard === 'other') other.value = true;
      if (heard === undefined || heard === 'other') return;
      const line = lines.get(heard.from);
      if (heard.kind === 'hello') {
        // Pages of another version say so again, if any are left.
        other.value = false;
        roll();
      } else if (heard.kind === 'here') here(heard.from, heard.window);
      else if (heard.kind === 'gone') gone(heard.from);
      else if (heard.kind === 'told' && line) line.told.value = heard.told;
      else if (heard.kind === 'answer' && heard.to === name) line?.waiting.get(heard.n)?.(heard.answer);
    },
    close() {
      for (const stop of watches.values()) stop();
      for (const to of lines.keys()) say({ kind: 'unwatch', to });
      lines.clear();
    },
  };
}

/**
 * The window to work with: the one that was chosen; where it is gone, the one that has the same call now, so that one that was
 * loaded anew is found again; where none was chosen yet, the only one there is.
 */
export function chosenOf(
  windows: ReadonlyMap<string, TraineeWindow>,
  wanted: { readonly name: string; readonly callId: string | undefined } | null,
): string | undefined {
  if (wanted !== null && windows.has(wanted.name)) return wanted.name;
  const callId = wanted?.callId;
  const fitting = [...windows].filter(([, { call }]) => callId === undefined || call?.callId === callId);
  return fitting.length === 1 ? fitting[0]?.[0] : undefined;
}
