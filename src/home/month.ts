/** What a month of chlorine takes for the water that a home really sends: simulated flow, the unit's dose, label strengths. */
import { type DisinfectionSpec, type HouseholdSpec, householdSource, steadyWeather } from '../plant/index.ts';
import { readout, Unit, type UnitSpec } from '../unit/index.ts';

const DAY_s = 86_400;
export const MONTH_d = 30;
/** Water in the tanks, degC (convention). */
const MILD_C = 20;

/** Tablets of calcium hypochlorite: 65 to 70 % available chlorine (labels); 140 g each. */
const TABLET_g = 140;
const TABLET_SHARE = 0.68;
/** Household bleach of 5.25 to 6 % by weight (labels), g of chlorine a litre. */
const BLEACH_gL = 55;

/** Water that a sound unit sends out in a month, m3; tells the share lived through after each day. */
export function* monthOfWater(spec: UnitSpec, household: HouseholdSpec, seed: number): Generator<number, number> {
  const source = householdSource(household, seed);
  const unit = new Unit({ spec, source, faults: [], seed, weather: steadyWeather(MILD_C) });
  for (let day = 1; day <= MONTH_d; day++) {
    unit.advance(day * DAY_s);
    yield day / MONTH_d;
  }
  return readout(unit, MONTH_d * DAY_s).drawn_m3;
}

export interface Chlorine {
  readonly water_m3: number;
  readonly dose_mgL: number;
  readonly chlorine_g: number;
  readonly tablet_g: number;
  readonly tablets: number;
  readonly strength_gL: number;
  readonly liquid_L: number;
}

/** Nothing where light disinfects. A unit that feeds liquid has its own strength; elsewhere it is household bleach's. */
export function chlorineFor(spec: DisinfectionSpec, water_m3: number): Chlorine | undefined {
  if (spec.kind === 'ultraviolet') return undefined;
  const chlorine_g = water_m3 * spec.dose_mgL;
  const tablet_g = chlorine_g / TABLET_SHARE;
  const strength_gL = spec.kind === 'liquid' ? spec.strength_gL : BLEACH_gL;
  return {
    water_m3,
    dose_mgL: spec.dose_mgL,
    chlorine_g,
    tablet_g,
    tablets: tablet_g / TABLET_g,
    strength_gL,
    liquid_L: chlorine_g / strength_gL,
  };
}
