import { useEffect, useRef, useState } from 'preact/hooks';
import type { Desk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import type { Truth } from '../protocol.ts';

/** The truth at an instant. One question at a time; of those asked meanwhile only the last one counts. */
export function useXray(desk: Desk, at_ms: number): Truth | null {
  const [truth, setTruth] = useState<Truth | null>(null);
  const wanted = useRef(at_ms);
  const asking = useRef(false);
  wanted.current = at_ms;
  useEffect(() => {
    if (asking.current) return;
    asking.current = true;
    void ask();
    async function ask() {
      let asked: number;
      do {
        asked = wanted.current;
        try {
          setTruth(await desk.engine.ask({ kind: 'xray', at_ms: asked }));
        } catch (error) {
          desk.fail(toldOf(error));
        }
      } while (asked !== wanted.current);
      asking.current = false;
    }
  }, [desk, at_ms]);
  return truth;
}
