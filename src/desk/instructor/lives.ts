/** So that a window that is closed, or crashes, is missed at once: a lock of the browser's goes with whoever holds it. */
export interface Lives {
  /** Holds this window's life; resolves once it is held, so that it can be watched. */
  hold(name: string): Promise<void>;
  /** Calls back when the window of a name is over. Gives the way not to wait any longer. */
  whenOver(name: string, then: () => void): () => void;
}

/** Where the browser has no locks, a window that crashes is not missed: one that is closed still says so. */
export function openLives(
  locks: Pick<LockManager, 'request'> | undefined = globalThis.navigator?.locks,
): Lives & { letGo(): void } {
  const releases: (() => void)[] = [];
  return {
    hold: (name) =>
      new Promise((held) => {
        if (locks === undefined) return held();
        locks
          .request(lockOf(name), () => {
            held();
            return new Promise<void>((release) => releases.push(release));
          })
          .catch(() => held());
      }),
    whenOver(name, then) {
      const waiting = new AbortController();
      locks?.request(lockOf(name), { signal: waiting.signal }, then).catch(() => {});
      return () => waiting.abort();
    },
    letGo() {
      for (const release of releases.splice(0)) release();
    },
  };
}

function lockOf(name: string): string {
  return `underlawn window ${name}`;
}
