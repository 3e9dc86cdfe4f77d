/** Simulated seconds for each second of wall time; 0 stands still, and 10 only a trainer asks for. */
export type Rate = 0 | 1 | 10 | 60 | 3600;

/** Wall time between two requests, ms: about ten a second. */
const BEAT_MS = 100;
/** A longer gap between two frames was a hidden or a sleeping page: that time does not count. */
const LONGEST_FRAME_MS = 400;

interface Host {
  rate(): Rate;
  /** Asks the engine for this much more time, ms; resolves when it is shown. */
  step(by_ms: number): Promise<void>;
}

/** Turns wall time into requests for time. It owes nothing: what a slow engine could not give is dropped. */
export function startClockwork(host: Host): void {
  let last = 0;
  let owed_ms = 0;
  let sinceAsked_ms = BEAT_MS;
  let asking = false;

  const frame = (wall_ms: number) => {
    const passed = Math.min(wall_ms - last, LONGEST_FRAME_MS);
    last = wall_ms;
    const rate = host.rate();
    if (rate === 0 || document.hidden) {
      owed_ms = 0;
    } else if (!asking) {
      owed_ms += passed * rate;
      sinceAsked_ms += passed;
      if (sinceAsked_ms >= BEAT_MS) {
        asking = true;
        const by_ms = Math.floor(owed_ms);
        owed_ms -= by_ms;
        sinceAsked_ms = 0;
        void host.step(by_ms).finally(() => {
          asking = false;
        });
      }
    }
    requestAnimationFrame(frame);
  };
  requestAnimationFrame((wall_ms) => {
    last = wall_ms;
    frame(wall_ms);
  });
}
