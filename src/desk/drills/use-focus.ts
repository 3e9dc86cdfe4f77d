import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

interface Focus {
  readonly prompt: RefObject<HTMLHeadingElement | null>;
  readonly next: RefObject<HTMLButtonElement | null>;
}

/**
 * A new question is read first; once it is answered, the way on is at hand: at once, for the next key is for it.
 */
export function useFocus(question: number, answered = false): Focus {
  const prompt = useRef<HTMLHeadingElement>(null);
  const next = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    prompt.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [question]);
  useLayoutEffect(() => {
    if (!answered) return;
    next.current?.focus({ preventScroll: true });
    next.current?.scrollIntoView({ block: 'nearest' });
  }, [answered]);
  return { prompt, next };
}
