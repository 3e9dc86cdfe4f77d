import { useEffect, useRef, useState } from 'preact/hooks';
import type { DebriefView } from '../../calls/view.ts';

/** One minute of the call for each second of the replay, ten steps a second. */
const STEP_MS = 6000;
const BEAT_MS = 100;

/** Lets the replay run by itself, and jumps from step to step. */
export function usePlay(debrief: DebriefView, at_ms: number, setAt: (at_ms: number) => void) {
  const [on, setOn] = useState(false);
  const at = useRef(at_ms);
  at.current = at_ms;
  useEffect(() => {
    if (!on) return;
    const timer = setInterval(() => {
      const next = Math.min(debrief.to_ms, at.current + STEP_MS);
      setAt(next);
      if (next >= debrief.to_ms) setOn(false);
    }, BEAT_MS);
    return () => clearInterval(timer);
  }, [on, debrief, setAt]);
  const stops = [...debrief.done.map((one) => one.from_ms), ...debrief.events.map((one) => one.at_ms)].sort(
    (a, b) => a - b,
  );
  return {
    on,
    toggle() {
      if (!on && at.current >= debrief.to_ms) setAt(debrief.from_ms);
      setOn(!on);
    },
    /** To the next step or event, or the one before. */
    jump(way: 1 | -1) {
      const next = way > 0 ? stops.find((one) => one > at.current) : stops.findLast((one) => one < at.current);
      setAt(next ?? (way > 0 ? debrief.to_ms : debrief.from_ms));
    },
  };
}
