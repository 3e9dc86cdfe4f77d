/** The property's true heights for the picture. */
import { floatHeights_m, type UnitSpec } from '../unit/index.ts';
import type { FloatId, FloatScene, GeometryScene, PanelScene } from './types.ts';

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
      clarifier: { straight_m: plant.clarifier.straight_m, hopper_m: plant.clarifier.hopper_m },
    },
    riser: {
      inlet_m: plant.pump.inlet_m + 0.07,
      outlet_m: plant.pump.inlet_m,
      floor_m: plant.riser.floor_m,
      ceiling_m: 0,
      area_m2: plant.riser.area_m2,
    },
    pump: plant.pump,
  };
}

/** The dial of a night timer that shows a panel time (s); null on a panel without one. */
export function nightTimer(spec: UnitSpec, panel_s: number): PanelScene['timer'] {
  const { dosing } = spec.panel;
  if (dosing.kind !== 'night') return null;
  return {
    clock_s: ((panel_s % 86_400) + 86_400) % 86_400,
    starts_s: dosing.starts_h.map((h) => h * 3600),
    run_min: dosing.run_min,
  };
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
