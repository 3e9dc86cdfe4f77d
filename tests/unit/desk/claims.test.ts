import { describe, expect, it, vi } from 'vitest';
import { openClaims } from '../../../src/desk/claims.ts';

type Granted = () => Promise<void> | undefined;
interface Held {
  readonly rob: () => void;
}

/** As much of a browser's locks as claims use, shared by the tabs of a test. */
function fakeLocks() {
  const held = new Map<string, Held>();
  const waiting: (() => void)[] = [];
  const request = (name: string, { steal, signal }: LockOptions, granted: Granted): Promise<void> =>
    new Promise((resolve, reject) => {
      const grant = () => {
        if (signal?.aborted) return;
        const mine: Held = { rob: () => reject(new DOMException('stolen', 'AbortError')) };
        held.set(name, mine);
        void granted()?.then(() => {
          if (held.get(name) === mine) held.delete(name);
          for (const next of waiting.splice(0)) next();
          resolve();
        });
      };
      signal?.addEventListener('abort', () => reject(signal.reason));
      if (steal) {
        held.get(name)?.rob();
        grant();
      } else if (held.has(name)) waiting.push(grant);
      else grant();
    });
  return { request } as unknown as LockManager;
}

describe('a claim on a call', () => {
  it('is refused to a second tab, until the first lets go of it', async () => {
    const locks = fakeLocks();
    const [first, second] = [openClaims(locks), openClaims(locks)];
    expect(await first.claim('sunny-line', false, () => {})).toBe(true);
    expect(await second.claim('sunny-line', false, () => {})).toBe(false);
    expect(await second.claim('storm-light', false, () => {})).toBe(true);
    first.letGo();
    expect(await second.claim('sunny-line', false, () => {})).toBe(true);
    expect(await first.claim('storm-light', false, () => {})).toBe(true);
  });

  it('is granted where the tab that has it is just going', async () => {
    const locks = fakeLocks();
    const [first, second] = [openClaims(locks), openClaims(locks)];
    await first.claim('sunny-line', false, () => {});
    const asked = second.claim('sunny-line', false, () => {});
    setTimeout(() => first.letGo(), 5);
    expect(await asked).toBe(true);
  });

  it('can be taken over: the first tab is told, once, and may take it back', async () => {
    const locks = fakeLocks();
    const [first, second] = [openClaims(locks), openClaims(locks)];
    const [lost, lostToo] = [vi.fn(), vi.fn()];
    await first.claim('sunny-line', false, lost);
    expect(await second.claim('sunny-line', true, lostToo)).toBe(true);
    await Promise.resolve();
    expect(lost).toHaveBeenCalledTimes(1);
    expect(await first.claim('sunny-line', true, lost)).toBe(true);
    await Promise.resolve();
    expect(lostToo).toHaveBeenCalledTimes(1);
    expect(lost).toHaveBeenCalledTimes(1);
  });

  it('is not told as lost by whoever let go of it', async () => {
    const locks = fakeLocks();
    const [first, second] = [openClaims(locks), openClaims(locks)];
    const lost = vi.fn();
    await first.claim('sunny-line', false, lost);
    first.letGo();
    await second.claim('sunny-line', true, () => {});
    await Promise.resolve();
    expect(lost).not.toHaveBeenCalled();
  });

  it('stays where it is claimed again by the same tab', async () => {
    const locks = fakeLocks();
    const [first, second] = [openClaims(locks), openClaims(locks)];
    const [before, now] = [vi.fn(), vi.fn()];
    await first.claim('round', false, before);
    expect(await first.claim('round', false, now)).toBe(true);
    await second.claim('round', true, () => {});
    await Promise.resolve();
    expect([before.mock.calls.length, now.mock.calls.length]).toEqual([0, 1]);
  });

  it('is granted to all where the browser has no locks, or does not give them', async () => {
    expect(await openClaims(undefined).claim('sunny-line', false, () => {})).toBe(true);
    const refusing = { request: () => Promise.reject(new DOMException('no', 'SecurityError')) };
    expect(await openClaims(refusing as never).claim('sunny-line', false, () => {})).toBe(true);
  });
});
