import { useEffect, useRef, useState } from 'preact/hooks';
import type { Message } from '../../service/message.ts';
import type { Desk } from '../desk.ts';
import { type Chosen, readChosen } from './files.ts';
import { type Held, held } from './held.ts';
import { markAll, startMarker, workersFor } from './pool.ts';
import type { MarkReply } from './protocol.ts';

export interface Marking {
  /** Of so many records so many were replayed; `reading` before that is known. */
  readonly running: { readonly done: number; readonly of: number } | 'reading' | null;
  /** How it came out. */
  readonly said: Message | null;
  begin(files: readonly File[]): Promise<void>;
  cancel(): void;
  clear(): void;
}

/** Replays what is chosen and puts it on the sheet; what was replayed until somebody stops it or goes stays there. */
export function useMarking(desk: Desk): Marking {
  const [running, setRunning] = useState<Marking['running']>(null);
  const [said, setSaid] = useState<Message | null>(null);
  const halt = useRef<(() => void) | null>(null);
  useEffect(() => () => halt.current?.(), []);

  async function begin(files: readonly File[]): Promise<void> {
    setSaid(null);
    setRunning('reading');
    const chosen = await readChosen(files, held.peek());
    const brought = new Map((await desk.store.brought()).map(({ card, text }) => [card.id, text]));
    if (chosen.length === 0) {
      setRunning(null);
      setSaid({ id: 'class.nothing' });
      return;
    }
    replay(chosen, brought);
  }

  function replay(chosen: readonly Chosen[], brought: ReadonlyMap<string, string>): void {
    const came = new Map<number, MarkReply>(chosen.flatMap(({ marked }, at) => (marked ? [[at, marked]] : [])));
    const open = chosen.flatMap(({ marked }, at) => (marked ? [] : [at]));
    const progress = () => setRunning({ done: came.size, of: chosen.length });
    const settle = (message: () => Message) => {
      halt.current = null;
      held.value = [...held.value, ...chosen.flatMap((one, at): Held[] => heldOf(one, came.get(at)))];
      setRunning(null);
      setSaid(message());
    };
    const whole = () => settle(() => doneWith([...came.values()]));
    progress();
    if (open.length === 0) {
      whole();
      return;
    }
    const end = markAll(
      open.flatMap((at) => chosen[at] ?? []),
      {
        start: startMarker,
        workers: workersFor(navigator.hardwareConcurrency),
        brought,
        heard(place, marked) {
          came.set(open[place] ?? -1, marked);
          progress();
          if (came.size === chosen.length) whole();
        },
      },
    );
    halt.current = () => {
      end();
      settle(() => ({ id: 'class.halted', values: { n: came.size, m: chosen.length } }));
    };
  }

  return {
    running,
    said,
    begin,
    cancel: () => halt.current?.(),
    clear() {
      held.value = [];
      setSaid(null);
    },
  };
}

function heldOf({ file, who, text }: Chosen, marked: MarkReply | undefined): Held[] {
  return marked ? [{ file, who, text, marked }] : [];
}

/** How it came out: the records of calls, and the answers of mock exams, where there are such. */
function doneWith(came: readonly MarkReply[]): Message {
  const count = (state: MarkReply['state']) => held.peek().filter(({ marked }) => marked.state === state).length;
  const n = came.filter(({ state }) => state !== 'answers').length;
  const a: Message = { id: 'class.done.answers', values: { n: count('answers') } };
  if (n === 0) return a;
  const done: Message = { id: 'class.done', values: { n, c: count('counts'), r: count('refused') } };
  return n < came.length ? { id: 'class.done.both', values: { a: done, b: a } } : done;
}
