import type { CallView } from '../../calls/view.ts';

/** Second of the local day for an instant of the call, read from where the call's own clock stands. */
export function clockAt(view: CallView, at_s: number): number {
  return view.clock.secondOfDay + (at_s - view.now_ms / 1000);
}
