/**
 * The water in the works as ordinary differential equations, and the air blown into it. What is switched (pump,
 * compressor, draws) comes in as a `Drive` and is constant between events; nothing here decides.
 */

import { type AirPoint, operatingPoint, stillAir } from './air.ts';
import { clarifierSurface, clarifierVolume, levelOf, pumpLevel, pumpSurface, riserVolume, surfaceAt } from './basin.ts';
import { at } from './entry.ts';
import { type DischargeLine, dischargeLine, gravityFlow, overflow } from './hydraulics.ts';
import { PASSED, RUN, SEWER, VOLUME, WATER } from './layout.ts';
import { type LineState, pumpedFlow, siphonFlow } from './line.ts';
import { HELD } from './liquor.ts';
import type { PlantCondition, PlantSpec } from './spec.ts';
import { leakage, lidRelief, sewerLevel, wayIn } from './waterway.ts';

/** What drives the works between two events. */
export interface Drive {
  /** Water drawn in the house, and clear water that gets into the tanks (rain, a leak), m3/s. */
  inflow_m3s: number;
  seep_m3s: number;
  pumpRuns: boolean;
  compressorRuns: boolean;
  ultravioletLit: boolean;
  condition: PlantCondition;
  /** The line to the field as it is now: `lineState` of the condition. */
  line: LineState;
  /** What runs back out of it into the pump tank, m3/s. */
  returned_m3s: number;
  /** Of the tanks, and the relative humidity indoors. */
  temperature_C: number;
  humidity: number;
}

/** Everything the equations know on the way: filled by `observe`, levels in m from grade, flows in m3/s. */
export interface Flows {
  /** Level in the house sewer, which is the trash tank's where nothing stands between. */
  sewer_m: number;
  trash_m: number;
  aeration_m: number;
  pump_m: number;
  /** Out of the house sewer into the trash tank. */
  inlet: number;
  trashOut: number;
  slot: number;
  clarifierOut: number;
  riserOut: number;
  /** Out of the pump tank into the line, and back out of the line. */
  discharge: number;
  returned: number;
  /** Over the clean-out, onto the floor, out of the trash tank under its lid, and into the ground. */
  relieved: number;
  indoors: number;
  underLid: number;
  leaked: number;
  clarifier_m3: number;
  riser_m3: number;
  air: AirPoint;
}

const CLEAN_OUT_EDGE_m = 0.31;
const RIM_EDGE_m = 0.2;
/** The pump loses its prime over the last centimetre above its intake. */
const PRIME_m = 0.01;

/** Share of its flow and its head that the pump has with the tank's water at a level. */
export function primed(spec: PlantSpec, level_m: number): number {
  const overIntake = level_m - spec.pump.floor_m - spec.effluentPump.intake_m;
  return Math.min(Math.max(overIntake / PRIME_m, 0), 1);
}

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
    sewer_m: 0,
    trash_m: 0,
    aeration_m: 0,
    pump_m: 0,
    inlet: 0,
    trashOut: 0,
    slot: 0,
    clarifierOut: 0,
    riserOut: 0,
    discharge: 0,
    returned: 0,
    relieved: 0,
    indoors: 0,
    underLid: 0,
    leaked: 0,
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
    f.trashOut =
      drive.condition.outletFlow * gravityFlow(f.trash_m, f.aeration_m, spec.trash.outlet_m, spec.pipeBore_m);
    f.clarifierOut = gravityFlow(f.aeration_m, f.pump_m, spec.aeration.outlet_m, spec.pipeBore_m);
    observeSewer(drive, sewerLevel(spec, at(y, SEWER)), f);
    f.relieved = overflow(f.sewer_m, spec.cleanOut_m, CLEAN_OUT_EDGE_m);
    f.indoors = overflow(f.sewer_m, spec.fixtureRim_m, RIM_EDGE_m);
    f.underLid = lidRelief(spec, drive.condition, f.trash_m);
    f.leaked = leakage(spec, drive.condition, f.trash_m);
    f.discharge = discharge(drive, f.pump_m);
    f.returned = drive.returned_m3s;
    const backsUp = f.pump_m > spec.pump.inlet_m ? spec.riser.area_m2 : 0;
    f.riserOut =
      f.clarifierOut -
      (backsUp * (f.clarifierOut - f.discharge + f.returned)) / pumpSurface(spec.pump, spec.riser, f.pump_m);
    const rise = (f.trashOut - f.clarifierOut) / surfaceAt(spec.aeration, f.aeration_m);
    f.slot = f.clarifierOut + rise * clarifierSurface(spec.clarifier, spec.aeration.outlet_m, f.aeration_m);
  }

  /**
   * A clear sewer is one with the trash tank, and what a blockage has left in it runs off; a blocked one has a level of
   * its own, and clean-out and fixtures stand on its side.
   */
  function observeSewer(drive: Drive, level_m: number, f: Flows): void {
    const way = wayIn(drive.condition);
    const through = gravityFlow(level_m, f.trash_m, spec.trash.inlet_m, spec.pipeBore_m);
    f.sewer_m = way < 1 ? level_m : f.trash_m;
    f.inlet = way < 1 ? way * through : drive.inflow_m3s + Math.max(0, through);
  }

  function discharge({ line, pumpRuns }: Drive, level_m: number): number {
    if (!pumpRuns && line.siphons === 0) return 0;
    const prime = primed(spec, level_m);
    if (prime === 0) return 0;
    return (prime * (pumpRuns ? pumpedFlow(line, level_m) : siphonFlow(line, level_m))) / 1000;
  }

  function derivative(drive: Drive, y: Float64Array, dy: Float64Array): void {
    const f = scratch;
    observeWater(drive, y, f);
    const fromTrash = wayIn(drive.condition) < 1 ? 0 : 1;
    const fromSewer = 1 - fromTrash;
    dy[SEWER] = drive.inflow_m3s - f.inlet - fromSewer * (f.relieved + f.indoors);
    dy[VOLUME.trash] =
      f.inlet + drive.seep_m3s - f.trashOut - fromTrash * f.relieved - fromTrash * f.indoors - f.underLid - f.leaked;
    dy[VOLUME.aeration] = f.trashOut - f.clarifierOut;
    dy[VOLUME.pump] = f.clarifierOut - f.discharge + f.returned;
    dy[WATER.drawn] = drive.inflow_m3s;
    dy[WATER.sprayed] = f.discharge - f.returned;
    dy[WATER.relieved] = f.relieved;
    dy[WATER.indoors] = f.indoors;
    dy[WATER.seeped] = drive.seep_m3s;
    dy[WATER.leaked] = f.underLid + f.leaked;
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
