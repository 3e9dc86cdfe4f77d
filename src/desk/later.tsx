import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Extra, Key } from '../words/words.ts';
import { useDesk } from './desk.ts';

interface LaterProps<Part> {
  readonly part: () => Promise<Part>;
  readonly words: Extra;
  /** Said meanwhile. */
  readonly waiting: Key;
  readonly children: (part: Part) => ComponentChildren;
}

/** A screen that comes as a file of its own, with its own words: no call needs it. */
export function Later<Part>({ part, words, waiting, children }: LaterProps<Part>) {
  const desk = useDesk();
  const [loaded, setLoaded] = useState<Part | null>(null);
  useEffect(() => {
    Promise.all([part(), desk.readyFor(words)]).then(
      ([one]) => setLoaded(() => one),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
  }, [desk]);
  if (loaded === null) return <main class="waiting">{desk.t(waiting)}</main>;
  return <>{children(loaded)}</>;
}
