import type { Service } from '../service/index.ts';

/** Whether the water in the pump tank, as it was last seen, stands over the alarm float: then the lamp comes back. */
export function isOverAlarm({ unit, person }: Service): boolean {
  const level_m = person.facts.pumpTankLevel_m?.value ?? Number.NEGATIVE_INFINITY;
  const { plant, panel } = unit.spec;
  return level_m - plant.pump.floor_m > panel.floats.highWaterFloat.breaks_m;
}
