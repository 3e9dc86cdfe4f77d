/** The property's true heights for the picture. */
import { clamp, pow } from '../plant/index.ts';
import { PUMP_SLUDGE_m, trashLimit_m } from '../service/index.ts';
import { type DosingSpec, floatHeights_m, type UnitSpec } from '../unit/index.ts';
import type { FieldScene, FloatId, FloatScene, GaugeScene, GeometryScene, LampId, TimerScene } from './types.ts';

export function geometryOf(spec: UnitSpec): GeometryScene {
  const { plant } = spec;
  return {
    fixtureRim_m: plant.fixtureRim_m,
    cleanOut_m: plant.cleanOutRim_m,
    lid_m: plant.lid_m,
    trash: plant.trash,
    aeration: {
      ...plant.aeration,
      diffuser_m: plant.air.diffuser_elevation_m,
      clarifier: plant.clarifier,
    },
    riser: {
      inlet_m: plant.pump.inlet_m + 0.07,
      outlet_m: plant.pump.inlet_m,
      floor_m: plant.riser.floor_m,
      ceiling_m: 0,
      area_m2: plant.riser.area_m2,
    },
    pump: plant.pump,
    fullAt: { trash_m: trashLimit_m(spec), pump_m: PUMP_SLUDGE_m },
  };
}

/**
 * The timer of a panel, null where it has none. A night timer's dial is known once its clock was read (`panel_s`, s); one
 * of many doses has its two numbers on its front, so whoever saw the panel (`seen`) knows them.
 */
export function timerOf(spec: UnitSpec, panel_s: number | null, seen: boolean): TimerScene | null {
  const { dosing } = spec.panel;
  switch (dosing.kind) {
    case 'demand':
      return null;
    case 'timed':
      return { kind: 'timed', dial: seen ? { every_min: dosing.every_min, run_min: dosing.run_min } : null };
    case 'night':
      return { kind: 'night', dial: panel_s === null ? null : nightDial(dosing, panel_s) };
  }
}

function nightDial(dosing: DosingSpec & { kind: 'night' }, panel_s: number) {
  return {
    clock_s: ((panel_s % 86_400) + 86_400) % 86_400,
    starts_s: dosing.starts_h.map((h) => h * 3600),
    run_min: dosing.run_min,
  };
}

/** The lamps of a panel from left to right: the picture's name, the control's. */
export function lampNames(spec: UnitSpec): readonly (readonly [LampId, 'lamp' | 'airLamp' | 'waterLamp'])[] {
  return spec.panel.lamps === 'one'
    ? [['lamp', 'lamp']]
    : [
        ['air', 'airLamp'],
        ['water', 'waterLamp'],
      ];
}

/** The air switch's gauge with its label, showing a pressure. */
export function gaugeOf(spec: UnitSpec, kPa: number | null): GaugeScene {
  const { label, airSwitch } = spec.panel;
  return { kPa, low_kPa: label.pressureLow_kPa, high_kPa: label.pressureHigh_kPa, falls_kPa: airSwitch.falls_kPa };
}

/** The field as it is drawn in the plans. */
export function fieldOf(spec: UnitSpec): Pick<FieldScene, 'kind' | 'designPressure_kPa' | 'heads' | 'throw_m'> {
  const { kind, designPressure_kPa, nozzles, throw_m } = spec.plant.discharge;
  return { kind, designPressure_kPa, heads: kind === 'spray' ? nozzles : 0, throw_m };
}

/** Share of its design flow that a field gets at a pressure (kPa), 1 at the most: orifices pass by the root of it. */
export function flowShare(spec: UnitSpec, headPressure_kPa: number): number {
  return Math.min(1, Math.sqrt(Math.max(0, headPressure_kPa) / spec.plant.discharge.designPressure_kPa));
}

/** Floats bottom to top: the control's name, the picture's. */
const FLOAT_NAMES = [
  ['redundantOffFloat', 'redundant-off'],
  ['stopFloat', 'stop'],
  ['startStopFloat', 'start-stop'],
  ['doseFloat', 'dose'],
  ['overrideFloat', 'override'],
  ['highWaterFloat', 'high-water'],
] as const;

/** The floats a unit has, bottom to top: the control's name, the picture's. */
export function floatNames(spec: UnitSpec): readonly (typeof FLOAT_NAMES)[number][] {
  return FLOAT_NAMES.filter(([name]) => spec.panel.floats[name] !== undefined);
}

/** Where a float is tied and where it makes, m from grade. */
export function floatHeights(
  spec: UnitSpec,
  name: (typeof FLOAT_NAMES)[number][0],
  id: FloatId,
): Pick<FloatScene, 'id' | 'tether_m' | 'makes_m'> {
  const { makes_m, breaks_m } = floatHeights_m(spec.panel, name);
  const floor = spec.plant.pump.floor_m;
  return { id, tether_m: floor + (makes_m + breaks_m) / 2, makes_m: floor + makes_m };
}

/**
 * How far a compressor's armature swings at a load, as a share of the open line's stroke: strokes a minute are the mains',
 * so what one of them moves falls as the flow does along its curve (`plant/air.ts`).
 */
export function strokeOf(spec: UnitSpec, load: number | null): number | null {
  return load === null ? null : 1 - pow(clamp(load, 0, 1), spec.plant.air.exponent);
}

/** Loss of an intake filter that is drawn as blocked, kPa per (L/min)^2 (convention). */
const BLOCKED_kPa_per_Lmin2 = 0.03;

/** Dirt on the intake filter, 0 clean to 1 blocked. */
export function intakeShare(loss_kPa_per_Lmin2: number): number {
  return Math.min(1, loss_kPa_per_Lmin2 / BLOCKED_kPa_per_Lmin2);
}
