import type { ComponentChildren } from 'preact';
import type { Extra, Key } from '../words/words.ts';
import { useDesk } from './desk.ts';
import { useLater } from './use-later.ts';

interface LaterProps<Part> {
  readonly part: () => Promise<Part>;
  readonly words?: Extra;
  /** Said meanwhile. */
  readonly waiting: Key;
  readonly children: (part: Part) => ComponentChildren;
}

/** A screen that comes as a file of its own, with its own words: no call needs it. */
export function Later<Part>({ part, words, waiting, children }: LaterProps<Part>) {
  const desk = useDesk();
  const loaded = useLater(true, part, words);
  if (!loaded) return <main class="waiting">{desk.t(waiting)}</main>;
  return <>{children(loaded)}</>;
}
