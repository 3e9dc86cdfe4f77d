import type { Service } from '../service/index.ts';

/** What is known of the water over the pump tank's floor, m, as it was last seen. */
const seen_m = ({ unit, person }: Service): number | undefined => {
  const level_m = person.facts.pumpTankLevel_m?.value;
  return level_m === undefined ? undefined : level_m - unit.spec.plant.pump.floor_m;
};

/** Whether the water in the pump tank, as it was last seen, stands over the alarm float: then the lamp comes back. */
export function isOverAlarm(service: Service): boolean {
  return (seen_m(service) ?? Number.NEGATIVE_INFINITY) > service.unit.spec.panel.floats.highWaterFloat.breaks_m;
}

/** Whether it was last seen too low for a dose to be due: then the pump has little to show itself with. */
export function isTooLow(service: Service): boolean {
  const { doseFloat, startStopFloat } = service.unit.spec.panel.floats;
  const low_m = doseFloat?.makes_m ?? startStopFloat?.breaks_m ?? 0;
  return (seen_m(service) ?? Number.POSITIVE_INFINITY) < low_m;
}
