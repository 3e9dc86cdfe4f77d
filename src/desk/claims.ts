/** How long a tab that is just going may still hold what the next one asks for. */
const GOING_ms = 500;

export interface Claims {
  /**
   * Claims a call or the round for this tab, in place of what it had claimed. False where another tab has it, unless it is
   * to be taken `over`; `lost` is called once another takes it over.
   */
  claim(name: string, over: boolean, lost: () => void): Promise<boolean>;
  letGo(): void;
}

/**
 * So that a second tab asks before it takes a call over. A lock of the browser's goes with its tab, however that ends. Where
 * there are none (a page that did not come safely) everything is granted: the store itself refuses whoever lost a call.
 */
export function openClaims(locks: Pick<LockManager, 'request'> | undefined = globalThis.navigator?.locks): Claims {
  let held: { readonly name: string; lost: () => void; release: () => void } | undefined;
  let line: Promise<unknown> = Promise.resolve();

  function request(name: string, over: boolean, lost: () => void): Promise<boolean> {
    return new Promise((granted) => {
      const mine = { name, lost, release: () => {} };
      const waiting = new AbortController();
      let late = false;
      const limit = setTimeout(() => {
        late = true;
        waiting.abort();
      }, GOING_ms);
      locks
        ?.request(`underlawn ${name}`, over ? { steal: true } : { signal: waiting.signal }, () => {
          clearTimeout(limit);
          held = mine;
          granted(true);
          return new Promise<void>((release) => {
            mine.release = release;
          });
        })
        .catch(() => {
          clearTimeout(limit);
          if (held === mine) {
            held = undefined;
            mine.lost();
          }
          // Where the browser gives no locks at all, nothing is refused.
          granted(!late);
        });
    });
  }
  function letGo() {
    held?.release();
    held = undefined;
  }
  return {
    claim(name, over, lost) {
      const done = line.then(() => {
        if (held?.name === name) {
          held.lost = lost;
          return true;
        }
        letGo();
        return locks === undefined || request(name, over, lost);
      });
      line = done;
      return done;
    },
    letGo,
  };
}
