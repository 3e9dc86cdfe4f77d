import { useEffect, useRef, useState } from 'preact/hooks';
import type { Scene } from '../../scene/types.ts';
import type { Desk } from '../desk.ts';
import { toldOf } from '../engine.ts';

/** The truth at an instant. One question at a time; of those asked meanwhile only the last one counts. */
export function useXray(desk: Desk, at_ms: number): Scene | null {
  const [scene, setScene] = useState<Scene | null>(null);
  const wanted = useRef(at_ms);
  const asking = useRef(false);
  wanted.current = at_ms;
  useEffect(() => {
    if (desk.openPicture === undefined || asking.current) return;
    asking.current = true;
    void ask();
    async function ask() {
      let asked: number;
      do {
        asked = wanted.current;
        try {
          const reply = await desk.engine.ask({ kind: 'xray', at_ms: asked });
          setScene(reply.scene);
        } catch (error) {
          desk.fail(toldOf(error));
        }
      } while (asked !== wanted.current);
      asking.current = false;
    }
  }, [desk, at_ms]);
  return scene;
}
