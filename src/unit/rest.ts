import { COMPARTMENT, COMPONENT, massIndex, VOLUME, volumeAt } from '../plant/index.ts';
import type { UnitSpec } from './spec.ts';

/** A sound works at rest: chambers at their outlets, pump tank a little above where the pump stops, oxygen in the liquor. */
export function fillAtRest(spec: UnitSpec, y: Float64Array): void {
  const { plant } = spec;
  const { stopFloat, startStopFloat } = spec.panel.floats;
  const lowest = stopFloat ?? startStopFloat ?? { breaks_m: 0 };
  y[VOLUME.trash] = volumeAt(plant.trash, plant.trash.outlet_m);
  y[VOLUME.aeration] = volumeAt(plant.aeration, plant.aeration.outlet_m);
  y[VOLUME.pump] = volumeAt(plant.pump, plant.pump.floor_m + lowest.breaks_m + 0.08);
  y[massIndex(COMPARTMENT.aeration, COMPONENT.oxygen)] = 8;
  y[massIndex(COMPARTMENT.clarifier, COMPONENT.oxygen)] = 2;
  y[massIndex(COMPARTMENT.pump, COMPONENT.oxygen)] = 3;
  y[massIndex(COMPARTMENT.trash, COMPONENT.demand)] = 500;
}
