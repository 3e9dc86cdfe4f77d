import { useEffect, useRef, useState } from 'preact/hooks';
import { type Draft, isDraft, type Json } from '../../build/draft.ts';
import { begin, change, type Edits, makeAgain, takeBack } from '../../build/edits.ts';
import type { Desk } from '../desk.ts';

/** A pause as long as this and the draft is kept, ms. */
const PAUSE_ms = 400;

export interface Drafting {
  readonly edits: Edits | undefined;
  /** When it was last kept, wall time in ms; none while a change waits for it. */
  readonly keptAt: number | undefined;
  /** No draft of this number is kept. */
  readonly missing: boolean;
  set(path: string, value: Json | undefined, typed?: boolean): void;
  takeBack(): void;
  makeAgain(): void;
  /** Keeps what was changed at once. */
  keep(): Promise<void>;
}

/** One draft off the store's shelf: changed here, kept after every pause, and whatever becomes of the page. */
export function useDraft(desk: Desk, key: number): Drafting {
  const [edits, setEdits] = useState<Edits | undefined>();
  const [keptAt, setKeptAt] = useState<number | undefined>();
  const [missing, setMissing] = useState(false);
  const kept = useRef<Draft | undefined>(undefined);
  const latest = useRef<Edits | undefined>(undefined);
  latest.current = edits;

  useEffect(() => {
    void desk.store.draftBy(key).then((found) => {
      if (!isDraft(found?.draft)) return setMissing(true);
      kept.current = found.draft;
      setEdits(begin(found.draft));
      setKeptAt(found.savedAt);
    });
  }, [desk, key]);

  async function keep(): Promise<void> {
    const draft = latest.current?.now;
    if (draft === undefined || draft === kept.current) return;
    const at = desk.wallClock();
    kept.current = draft;
    await desk.store.putDraft(draft, at, key);
    if (latest.current?.now === draft) setKeptAt(at);
  }

  useEffect(() => {
    if (edits === undefined || edits.now === kept.current) return;
    setKeptAt(undefined);
    const timer = setTimeout(() => void keep(), PAUSE_ms);
    return () => clearTimeout(timer);
  }, [edits]);
  // Whoever leaves within the pause has it kept too.
  useEffect(() => {
    const leave = () => void keep();
    addEventListener('pagehide', leave);
    return () => {
      removeEventListener('pagehide', leave);
      leave();
    };
  }, [key]);

  const step = (by: (edits: Edits) => Edits | undefined) => setEdits((at) => (at && by(at)) ?? at);
  return {
    edits,
    keptAt,
    missing,
    set: (path, value, typed) => step((at) => change(at, path, value, typed)),
    takeBack: () => step(takeBack),
    makeAgain: () => step(makeAgain),
    keep,
  };
}
