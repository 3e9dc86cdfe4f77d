import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { News } from '../session.ts';

/** Least time between two texts that the clock alone makes, ms. */
const GAP_ms = 1000;

/**
 * What is told now. What somebody did is told at once; what comes with the clock no oftener than can be read or spoken, and
 * then only the newest: of an hour that passes in a second it matters how things stand at its end.
 */
export function usePaced(news: News | null): News | null {
  const [told, setTold] = useState(news);
  const lastAt = useRef(Number.NEGATIVE_INFINITY);
  const atOnce = news === null || news.byAction;
  useLayoutEffect(() => {
    const tell = () => {
      lastAt.current = performance.now();
      setTold(news);
    };
    const wait_ms = lastAt.current + GAP_ms - performance.now();
    if (atOnce || wait_ms <= 0) return tell();
    const timer = setTimeout(tell, wait_ms);
    return () => clearTimeout(timer);
  }, [news, atOnce]);
  return atOnce ? news : told;
}
