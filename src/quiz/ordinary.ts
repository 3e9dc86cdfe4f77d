/** The days before a fault: a unit under the loading of the test stand, in mild weather, as a sound one stays quiet at. */
import { dailySource } from '../plant/household.ts';
import { ORDINARY_SEWAGE } from '../plant/influent.ts';
import { designLoadDay } from '../plant/standardLoading.ts';
import { steadyWeather } from '../plant/weather.ts';
import type { UnitSetup } from '../unit/engine.ts';
import type { UnitSpec } from '../unit/spec.ts';

/** Water of a day, as a share of what the unit is rated for, and the weather, degC (conventions). */
const USED = 0.7;
const MILD_C = 20;
const SEED = 1;

/** m3/d */
export function usedDaily({ rated_m3d }: UnitSpec): number {
  return USED * rated_m3d;
}

export function ordinaryDays(spec: UnitSpec): Omit<UnitSetup, 'faults'> {
  const source = dailySource((day) => designLoadDay(usedDaily(spec), day), ORDINARY_SEWAGE);
  return { spec, source, seed: SEED, weather: steadyWeather(MILD_C) };
}
