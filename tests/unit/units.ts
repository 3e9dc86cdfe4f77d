/** Units for tests of the engine: the shipped U1, households, and faults made on the spot. */

import { shippedLibrary } from '../../src/calls/index.ts';
import type { FloatName } from '../../src/control/index.ts';
import type { DrawSource, HouseholdSpec } from '../../src/plant/index.ts';
import { householdSource, steadyWeather } from '../../src/plant/index.ts';
import { floatShift } from '../../src/unit/fault.ts';
import {
  digest,
  floatHeights_m,
  type Snapshot,
  snapshot,
  Unit,
  type UnitFault,
  type UnitSetup,
  type UnitSpec,
} from '../../src/unit/index.ts';

export const HOUR = 3600;
export const DAY = 86_400;

export function u1(): UnitSpec {
  const spec = shippedLibrary().units.get('u1');
  if (!spec) throw new Error('no unit u1');
  return spec;
}

export function family(persons: 2 | 3 | 4 | 5): HouseholdSpec {
  const household = shippedLibrary().households.get(`family-${persons}`);
  if (!household) throw new Error(`no household of ${persons}`);
  return household;
}

export function fault(id: string, effect: UnitFault['effect'], more: Partial<UnitFault> = {}): UnitFault {
  return { id, effect, onset_s: 0, severity: 1, ramp_s: 0, present: 'always', ...more };
}

/** The pump takes no current: nothing leaves but what overflows. */
export const NO_PUMP = fault('winding-open', { control: { starts: ['winding.opens'], ends: ['winding.renewed'] } });

export function setupOf(
  source: DrawSource,
  faults: readonly UnitFault[] = [],
  more: Partial<UnitSetup> = {},
): UnitSetup {
  return { spec: u1(), source, faults, seed: 1, weather: steadyWeather(20), ...more };
}

/** A household's unit. */
export function lived(persons: 2 | 3 | 4 | 5, seed: number, faults: readonly UnitFault[] = []): UnitSetup {
  return setupOf(householdSource(family(persons), seed), faults, { seed });
}

/** One word for all bits of a unit's state. */
export function bits(unit: Unit): string {
  return digest({ ...(snapshot(unit) as unknown as { [K in keyof Snapshot]: never }) });
}

/** Instants at which something happened, s. */
export function instants(unit: Unit, what: string): number[] {
  return unit.log.filter((h) => h.what === what).map((h) => h.t);
}

export function first(unit: Unit, what: string): number {
  const t = instants(unit, what)[0];
  if (t === undefined) throw new Error(`${what} never happened`);
  return t;
}

export function made(setup: UnitSetup, until: number): Unit {
  const unit = new Unit(setup);
  unit.advance(until);
  return unit;
}

/** Where the floats of U1 make and break. */
export function floatsOfU1() {
  const { panel } = u1();
  return {
    stopFloat: floatHeights_m(panel, 'stopFloat'),
    doseFloat: floatHeights_m(panel, 'doseFloat'),
    overrideFloat: floatHeights_m(panel, 'overrideFloat'),
    highWaterFloat: floatHeights_m(panel, 'highWaterFloat'),
  };
}

/** Height at which a float makes now, m above the pump tank's floor, with all that faults shift it by. */
export function floatMakes_m(unit: Unit, float: FloatName): number {
  return floatHeights_m(unit.spec.panel, float).makes_m + floatShift(unit.faults, float, unit.t);
}
