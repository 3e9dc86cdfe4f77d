import { fillMature, VOLUME, volumeAt, type Works } from '../plant/index.ts';
import type { UnitSpec } from './spec.ts';

/** A sound works at rest, its sludge so many years old: chambers at their outlets, pump tank a little above where the pump stops. */
export function fillAtRest(spec: UnitSpec, works: Works, years: number, y: Float64Array): void {
  const { plant } = spec;
  const { stopFloat, startStopFloat } = spec.panel.floats;
  const lowest = stopFloat ?? startStopFloat ?? { breaks_m: 0 };
  y[VOLUME.trash] = volumeAt(plant.trash, plant.trash.outlet_m);
  y[VOLUME.aeration] = volumeAt(plant.aeration, plant.aeration.outlet_m);
  y[VOLUME.pump] = volumeAt(plant.pump, plant.pump.floor_m + lowest.breaks_m + 0.08);
  fillMature(works, y, years);
}
