/** Tells the platform what is done: every action that is kept, the end of the call, and that the page goes. */
import { effect, type Signal } from '@preact/signals';
import type { CallMode } from '../../calls/view.ts';
import type { Learnt } from '../../records/learnt/learnt.ts';
import { TEXT } from '../../records/limits.ts';
import type { LaunchedBy } from '../../records/package/entry.ts';
import type { Desk } from '../desk.ts';
import type { SavedCall } from '../protocol.ts';
import type { Host } from './host.ts';
import type { Note } from './note.tsx';

interface Watched {
  readonly desk: Desk;
  readonly host: Host;
  readonly launched: LaunchedBy;
  readonly note: Signal<Note | null>;
  readonly started_ms: number;
}

export function watch({ desk, host, launched, note, started_ms }: Watched): void {
  const { session, engine, wallClock } = desk;
  const { call, mode } = launched;
  const seconds = () => (wallClock() - started_ms) / 1000;
  const counts = (taken: CallMode) => mode === 'practice' || taken === 'graded';
  const after_s: Record<string, number> = {};
  let line: Promise<unknown> = Promise.resolve();
  let newest: SavedCall | null = null;
  let told = 0;
  let recorded: Learnt | undefined;
  let over = false;

  function inTurn(work: () => Promise<void>, refused: () => void): void {
    line = line.then(work).catch((error: unknown) => {
      console.warn(error);
      if (!over) refused();
    });
  }

  function keep(saved: SavedCall): void {
    newest = saved;
    inTurn(
      async () => {
        // Where several came while one was under way, the last holds them all.
        if (newest !== saved || recorded !== undefined || over) return;
        const { text, holds, of } = await engine.ask({ kind: 'pack', saved, most: TEXT.suspended12.most });
        if (of === told || over) return;
        await host.keep(text);
        told = of;
        if (holds < of) note.value = { tone: 'off', message: { id: 'course.cut', values: { n: holds } } };
        else if (note.peek()?.message.id === 'course.not-kept') note.value = null;
      },
      () => {
        note.value = { tone: 'off', message: { id: 'course.not-kept' } };
      },
    );
  }

  function end(): void {
    // Asked at once, before the engine is asked to open another call.
    const asked = engine.ask({ kind: 'learnt', wall: { started_ms, ended_ms: wallClock(), after_s: { ...after_s } } });
    inTurn(async () => {
      const { learnt } = await asked;
      // What is graded is graded once; of what is practised the best stands.
      if (recorded !== undefined && (mode === 'graded' || learnt.score <= recorded.score)) return;
      await record(learnt);
    }, notRecorded);
    asked.catch(() => {});
  }

  async function record(learnt: Learnt): Promise<void> {
    if (over) return;
    try {
      await host.end(learnt);
    } catch (error) {
      console.warn(error);
      notRecorded(() => inTurn(() => record(learnt), notRecorded));
      return;
    }
    recorded = learnt;
    note.value = { tone: 'good', message: recordedWords(learnt), back };
  }

  function notRecorded(again?: () => void): void {
    note.value = { tone: 'off', message: { id: 'course.not-recorded' }, ...(again ? { again } : {}) };
  }

  function leave(): void {
    if (over) return;
    over = true;
    host.leave(seconds(), recorded === undefined && !host.settled);
    note.value = { tone: 'plain', message: { id: 'course.over' } };
  }

  function back(): void {
    leave();
    if (host.returnTo !== undefined) location.assign(host.returnTo);
    // Closes only what a platform opened; in a frame the platform's own way on is beside it.
    else window.close();
  }

  addEventListener('pagehide', leave);
  if (host.settled) return;
  effect(() => {
    const action = session.handled.value;
    if (action !== null && session.view.peek()?.callId === call) after_s[action.id] ??= seconds();
  });
  effect(() => {
    const saved = session.kept.value;
    if (saved !== null && saved.callId === call && counts(saved.mode)) keep(saved);
  });
  effect(() => {
    const view = session.finishedKey.value === null ? null : session.view.peek();
    if (view?.callId === call && view.ended && counts(view.mode)) end();
  });
}

function recordedWords({ score, passed }: Learnt): Note['message'] {
  if (passed === undefined) return { id: 'course.recorded.practice', values: { score } };
  const verdict = { id: passed ? 'course.passed' : 'course.failed' };
  return { id: 'course.recorded.graded', values: { score, verdict } };
}
