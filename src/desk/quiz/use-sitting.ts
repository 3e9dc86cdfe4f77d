import { useEffect, useRef, useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { HeldElsewhere } from '../store.ts';
import { later, readSitting, type Sitting } from './sitting.ts';

/** How often the clock is shown anew, and how often time alone is kept, ms. */
const LOOK_ms = 1000;
const KEEP_ms = 10_000;

export interface Sat {
  readonly sitting: Sitting | null;
  /** Seconds since it was last kept. */
  readonly since_s: number;
  readonly elsewhere: 'open' | 'taken' | null;
  /** Takes effect once it is kept. */
  change(how: (sitting: Sitting) => Sitting): void;
  takeOver(): void;
}

/**
 * A mock exam that one tab at a time sits; every change is kept before it is shown, so that a reload goes on where it was.
 * The clock stands while the page is closed.
 */
export function useSitting(fresh: Sitting | null, onGone: () => void): Sat {
  const { store, wallClock } = useDesk();
  const [sitting, setSitting] = useState<Sitting | null>(null);
  const [elsewhere, setElsewhere] = useState<Sat['elsewhere']>(null);
  const [over, setOver] = useState(0);
  const [since_s, setSince] = useState(0);
  const now = useRef<Sitting | null>(null);
  const keptAt = useRef(performance.now());
  const lost = useRef(false);

  const lose = () => {
    lost.current = true;
    setElsewhere('taken');
  };
  const passed_s = () => (performance.now() - keptAt.current) / 1000;
  async function keep(next: Sitting): Promise<void> {
    now.current = next;
    keptAt.current = performance.now();
    try {
      await store.putSitting(next, wallClock());
      if (lost.current) return;
      setSitting(now.current);
      setSince(passed_s());
    } catch (error) {
      if (!(error instanceof HeldElsewhere)) throw error;
      lose();
    }
  }
  function change(how: (sitting: Sitting) => Sitting): void {
    if (now.current === null || lost.current) return;
    void keep(how(now.current.handedIn ? now.current : later(now.current, passed_s())));
  }

  useEffect(() => {
    let gone = false;
    lost.current = false;
    void open();
    async function open(): Promise<void> {
      const mine = await store.claim('quiz exam', over > 0, () => {
        if (!gone) lose();
      });
      if (gone) return;
      if (!mine) return setElsewhere('open');
      const kept = await store.takeSitting();
      const found = over === 0 && fresh !== null ? fresh : readSitting(kept);
      if (gone) return;
      if (found !== undefined) await keep(found);
      else {
        if (kept !== undefined) await store.setSittingAside();
        onGone();
      }
    }
    return () => {
      gone = true;
      store.letGo();
    };
  }, [over]);

  const running = sitting !== null && !sitting.handedIn && elsewhere === null;
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => {
      if (passed_s() * 1000 >= KEEP_ms) change((same) => same);
      else setSince(passed_s());
    }, LOOK_ms);
    return () => clearInterval(timer);
  }, [running]);

  return {
    sitting,
    since_s,
    elsewhere,
    change,
    takeOver() {
      setElsewhere(null);
      setOver(over + 1);
    },
  };
}
