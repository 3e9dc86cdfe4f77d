/**
 * Relay logic written once, as data: the machine turns an expression into guards, the outputs are read from a state by
 * the same expression. `is('supply', 'on')` is true in that state of that region.
 */
import { and, not, or, stateIn } from 'xstate';

export type Logic =
  | { readonly kind: 'is'; readonly region: string; readonly state: string }
  | { readonly kind: 'all'; readonly of: readonly Logic[] }
  | { readonly kind: 'any'; readonly of: readonly Logic[] }
  | { readonly kind: 'not'; readonly of: Logic };

/** A control state: which state each region is in. */
export type RegionStates = Readonly<Record<string, string>>;

export function is(region: string, state: string): Logic {
  return { kind: 'is', region, state };
}

export function all(...of: Logic[]): Logic {
  return { kind: 'all', of };
}

export function any(...of: Logic[]): Logic {
  return { kind: 'any', of };
}

/** True in no state. */
export const never: Logic = any();

export function none(of: Logic): Logic {
  return { kind: 'not', of };
}

export function holds(logic: Logic, states: RegionStates): boolean {
  switch (logic.kind) {
    case 'is':
      return states[logic.region] === logic.state;
    case 'all':
      return logic.of.every((l) => holds(l, states));
    case 'any':
      return logic.of.some((l) => holds(l, states));
    case 'not':
      return !holds(logic.of, states);
  }
}

/** The expression as an XState guard. Guards read states only: that keeps the control finite. */
export function guardOf(logic: Logic): ReturnType<typeof stateIn> {
  switch (logic.kind) {
    case 'is':
      return stateIn({ [logic.region]: logic.state });
    case 'all':
      return and(logic.of.map(guardOf)) as ReturnType<typeof stateIn>;
    case 'any':
      return or(logic.of.map(guardOf)) as ReturnType<typeof stateIn>;
    case 'not':
      return not(guardOf(logic.of)) as ReturnType<typeof stateIn>;
  }
}

/** Every region and state an expression mentions: a test holds them against the machine. */
export function mentions(logic: Logic): readonly { readonly region: string; readonly state: string }[] {
  if (logic.kind === 'is') return [logic];
  return logic.kind === 'not' ? mentions(logic.of) : logic.of.flatMap(mentions);
}
