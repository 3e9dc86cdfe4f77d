/**
 * The water in the works as ordinary differential equations, and the air blown into it. What is switched (pump,
 * compressor, draws) comes in as a `Drive` and is constant between events; nothing here decides.
 */

import { type AirPoint, operatingPoint, stillAir } from './air.ts';
import { clarifierSurface, clarifierVolume, levelOf, pumpLevel, pumpSurface, riserVolume, surfaceAt } from './basin.ts';
import { at } from './entry.ts';
import { type DischargeLine, dischargeLine, filterLoss, gravityFlow, overflow, pumpFlow } from './hydraulics.ts';
import { PASSED, RUN, VOLUME, WATER } from './layout.ts';
import { HELD } from './liquor.ts';
import type { PlantCondition, PlantSpec } from './spec.ts';

/** What drives the works between two events. */
export interface Drive {
  /** Water drawn in the house, and clear water that gets into the tanks (rain, a leak), m3/s. */
  inflow_m3s: number;
  seep_m3s: number;
  pumpRuns: boolean;
  compressorRuns: boolean;
  ultravioletLit: boolean;
  condition: PlantCondition;
  /** Loss of the disc filter in its present state, m per (L/s)^2: `filterLoss` of the condition. */
  filterLoss: number;
  /** Of the tanks, and the relative humidity indoors. */
  temperature_C: number;
  humidity: number;
}

/** Everything the equations know on the way: filled by `observe`, levels in m from grade, flows in m3/s. */
export interface Flows {
  trash_m: number;
  aeration_m: number;
  pump_m: number;
  trashOut: number;
  slot: number;
  clarifierOut: number;
  riserOut: number;
  discharge: number;
  relieved: number;
  indoors: number;
  clarifier_m3: number;
  riser_m3: number;
  air: AirPoint;
}

const CLEAN_OUT_EDGE_m = 0.31;
const RIM_EDGE_m = 0.2;
/** The pump loses its prime over the last centimetre above its intake. */
const PRIME_m = 0.01;
export interface Works {
  readonly spec: PlantSpec;
  readonly line: DischargeLine;
  /** Water's ways at a state: pure, writes into `flows`. */
  observe(drive: Drive, y: Float64Array, flows: Flows): Flows;
  /** dy/dt, 1/s. */
  derivative(drive: Drive, y: Float64Array, dy: Float64Array): void;
  /** Depth of water over the diffusers, m. */
  diffuserDepth(y: Float64Array): number;
  /** Water held, m3, in the order of `HELD`, written into `out`. */
  volumes(y: Float64Array, out: Float64Array): Float64Array;
}

export function emptyFlows(): Flows {
  return {
    trash_m: 0,
    aeration_m: 0,
    pump_m: 0,
    trashOut: 0,
    slot: 0,
    clarifierOut: 0,
    riserOut: 0,
    discharge: 0,
    relieved: 0,
    indoors: 0,
    clarifier_m3: 0,
    riser_m3: 0,
    air: stillAir(),
  };
}

export function makeWorks(spec: PlantSpec): Works {
  const line = dischargeLine(spec.effluentPump, spec.discharge);
  const scratch = emptyFlows();

  /** Levels, and how much of a shared level's water stands in the clarifier and in the riser. */
  function fillShares(y: Float64Array, f: Flows): void {
    f.trash_m = levelOf(spec.trash, at(y, VOLUME.trash));
    f.aeration_m = levelOf(spec.aeration, at(y, VOLUME.aeration));
    f.pump_m = pumpLevel(spec.pump, spec.riser, at(y, VOLUME.pump));
    f.clarifier_m3 = clarifierVolume(spec.clarifier, spec.aeration.outlet_m, f.aeration_m);
    f.riser_m3 = riserVolume(spec.pump, spec.riser, f.pump_m);
  }

  function observe(drive: Drive, y: Float64Array, f: Flows): Flows {
    observeWater(drive, y, f);
    airAt(drive, f.aeration_m - spec.air.diffuser_elevation_m, f.air);
    return f;
  }

  function airAt(drive: Drive, depth_m: number, air: AirPoint): AirPoint {
    if (drive.compressorRuns) return operatingPoint(spec.air, drive.condition, depth_m, air);
    return stillAir(air);
  }

  function observeWater(drive: Drive, y: Float64Array, f: Flows): void {
    fillShares(y, f);
    f.trashOut = gravityFlow(f.trash_m, f.aeration_m, spec.trash.outlet_m, spec.pipeBore_m);
    f.clarifierOut = gravityFlow(f.aeration_m, f.pump_m, spec.aeration.outlet_m, spec.pipeBore_m);
    f.relieved = overflow(f.trash_m, spec.cleanOut_m, CLEAN_OUT_EDGE_m);
    f.indoors = overflow(f.trash_m, spec.fixtureRim_m, RIM_EDGE_m);
    f.discharge = drive.pumpRuns ? discharge(drive, f.pump_m) : 0;
    const backsUp = f.pump_m > spec.pump.inlet_m ? spec.riser.area_m2 : 0;
    f.riserOut =
      f.clarifierOut - (backsUp * (f.clarifierOut - f.discharge)) / pumpSurface(spec.pump, spec.riser, f.pump_m);
    const rise = (f.trashOut - f.clarifierOut) / surfaceAt(spec.aeration, f.aeration_m);
    f.slot = f.clarifierOut + rise * clarifierSurface(spec.clarifier, spec.aeration.outlet_m, f.aeration_m);
  }

  function discharge(drive: Drive, level_m: number): number {
    const overIntake = level_m - spec.pump.floor_m - spec.effluentPump.intake_m;
    const prime = Math.min(Math.max(overIntake / PRIME_m, 0), 1);
    return prime === 0 ? 0 : (prime * pumpFlow(line, line.nozzleElevation_m - level_m, drive.filterLoss)) / 1000;
  }

  function derivative(drive: Drive, y: Float64Array, dy: Float64Array): void {
    const f = scratch;
    observeWater(drive, y, f);
    dy[VOLUME.trash] = drive.inflow_m3s + drive.seep_m3s - f.trashOut - f.relieved - f.indoors;
    dy[VOLUME.aeration] = f.trashOut - f.clarifierOut;
    dy[VOLUME.pump] = f.clarifierOut - f.discharge;
    dy[WATER.drawn] = drive.inflow_m3s;
    dy[WATER.sprayed] = f.discharge;
    dy[WATER.relieved] = f.relieved;
    dy[WATER.indoors] = f.indoors;
    dy[WATER.seeped] = drive.seep_m3s;
    dy[PASSED.trashOut] = f.trashOut;
    dy[PASSED.slot] = f.slot;
    dy[PASSED.clarifierOut] = f.clarifierOut;
    dy[PASSED.riserOut] = f.riserOut;
    dy[RUN.pump_s] = drive.pumpRuns ? 1 : 0;
    dy[RUN.compressor_s] = drive.compressorRuns ? 1 : 0;
    dy[RUN.ultraviolet_s] = drive.ultravioletLit ? 1 : 0;
  }

  return {
    spec,
    line,
    observe,
    derivative,
    diffuserDepth: (y) => levelOf(spec.aeration, at(y, VOLUME.aeration)) - spec.air.diffuser_elevation_m,
    volumes(y, out) {
      fillShares(y, scratch);
      out[HELD.trash] = at(y, VOLUME.trash);
      out[HELD.aeration] = at(y, VOLUME.aeration) - scratch.clarifier_m3;
      out[HELD.clarifier] = scratch.clarifier_m3;
      out[HELD.riser] = scratch.riser_m3;
      out[HELD.pump] = at(y, VOLUME.pump) - (scratch.riser_m3 - riserVolume(spec.pump, spec.riser, spec.pump.inlet_m));
      return out;
    },
  };
}

/** Filter loss of a condition, m per (L/s)^2. */
export function conditionFilterLoss(works: Works, condition: PlantCondition): number {
  return filterLoss(works.line, condition.filterFlow);
}
