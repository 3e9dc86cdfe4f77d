/**
 * Watched thresholds: quantities that turn a switch when they pass a height. Each remembers its side, so a switch has
 * its swing (makes high, breaks low) and cannot chatter.
 */
import type { ControlEventName, FloatName } from '../control/index.ts';
import { levelOf, pumpLevel, type Step, VOLUME } from '../plant/index.ts';
import { floatHeights_m, floatsOf, type UnitSpec } from './spec.ts';

export type WatchId = FloatName | 'air' | 'inletReached' | 'cleanOutLifts' | 'fixtureFloods';

export interface Watch {
  readonly id: WatchId;
  /** The float it is, where it is one: a fault may shift its heights. */
  readonly float?: FloatName;
  readonly quantity: 'pumpTank' | 'air' | 'trashTank';
  /** Passing `upper` from below, or `lower` from above, turns it. Heights in m (from the pump tank's floor, or from grade for the trash tank), pressure in kPa. */
  readonly upper: number;
  readonly lower: number;
  /** What the control is told; a mark for the log only has none. */
  readonly rises?: ControlEventName;
  readonly falls?: ControlEventName;
}

const SWING_m = 0.02;

export function watchesOf(spec: UnitSpec): readonly Watch[] {
  const { airSwitch } = spec.panel;
  const { plant } = spec;
  const inlet = plant.pump.inlet_m - plant.pump.floor_m;
  const float = (id: FloatName): Watch => {
    const { makes_m, breaks_m } = floatHeights_m(spec.panel, id);
    return {
      id,
      float: id,
      quantity: 'pumpTank',
      upper: makes_m,
      lower: breaks_m,
      rises: `${id}.rises`,
      falls: `${id}.falls`,
    };
  };
  const mark = (id: WatchId, quantity: Watch['quantity'], height: number): Watch => ({
    id,
    quantity,
    upper: height,
    lower: height - SWING_m,
  });
  return [
    ...floatsOf(spec.panel).map(float),
    {
      id: 'air',
      quantity: 'air',
      upper: airSwitch.rises_kPa,
      lower: airSwitch.falls_kPa,
      rises: 'air.rises',
      falls: 'air.falls',
    },
    mark('inletReached', 'pumpTank', inlet),
    mark('cleanOutLifts', 'trashTank', plant.cleanOut_m),
    mark('fixtureFloods', 'trashTank', plant.fixtureRim_m),
  ];
}

/** Value of a watched level at a volume of its tank. */
export function watchedLevel(spec: UnitSpec, quantity: 'pumpTank' | 'trashTank', y: Float64Array): number {
  const { pump, riser, trash } = spec.plant;
  return quantity === 'pumpTank'
    ? pumpLevel(pump, riser, y[VOLUME.pump] as number) - pump.floor_m
    : levelOf(trash, y[VOLUME.trash] as number);
}

/** Tolerance of an instant, s: ten times finer than what a person at a stop-watch can tell. */
const INSTANT_s = 1e-3;

/**
 * First instant in an accepted step at which `passed` turns true, by bisection down to a millisecond; the instant
 * returned is on the far side, so the switch has really been passed. `passed` must be true at the step's end.
 */
export function locate(step: Step, passed: (t: number) => boolean): number {
  let before = step.t0;
  let after = step.t1;
  while (after - before > INSTANT_s) {
    const middle = before + (after - before) / 2;
    if (passed(middle)) after = middle;
    else before = middle;
  }
  return after;
}
