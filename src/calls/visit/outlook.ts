/** What the simulation says of a property that is left alone until the next visit: when its tanks are full, how long its chlorine lasts. */
import { type Fullness, fullnessOf } from '../../service/index.ts';
import { readout, restore, snapshot, type Unit } from '../../unit/index.ts';
import type { CallSession } from '../session.ts';
import { type Prepared, unitAtReport, unitSetup } from '../setup.ts';

const DAY_s = 86_400;
/** A visit at least every four months. Source: 30 TAC 285.91(4). */
export const VISITS_APART_d = 122;
/** A household that fills up chlorine looks at it every month (common practice, no source). */
const LOOKED_AT_d = 30;
/** A store with less than this is as good as empty (as the eye reads it, to a tenth). */
const EMPTY = 0.05;

/** Shares of their limits that the tanks had reached on arrival, and would have by the next visit. */
export interface Outlook {
  readonly found: Fullness;
  readonly nextVisit: Fullness;
}

const known = new WeakMap<Prepared, Outlook>();

export function outlookOf(prepared: Prepared): Outlook {
  const made = known.get(prepared) ?? livedOn(prepared);
  known.set(prepared, made);
  return made;
}

function livedOn(prepared: Prepared): Outlook {
  const unit = unitAtReport(prepared);
  const found = full(unit);
  unit.cutAt(unit.t + VISITS_APART_d * DAY_s);
  return { found, nextVisit: full(unit) };
}

function full(unit: Unit): Fullness {
  return fullnessOf(unit.spec, readout(unit, unit.t));
}

/** Share of its chlorine that a property, as it is left now, still has when the household next looks. */
export function chlorineLeft({ prepared, service }: CallSession): number {
  const twin = restore(unitSetup(prepared), snapshot(service.unit));
  twin.cutAt(twin.t + LOOKED_AT_d * DAY_s);
  return readout(twin, twin.t).stock.share;
}

export function lasts(share: number): boolean {
  return share > EMPTY;
}
