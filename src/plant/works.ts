/**
 * The works as one set of ordinary differential equations: water through the chambers, components carried by it,
 * oxygen in and used up. What is switched (pump, compressor, draws) comes in as a `Drive` and is constant between
 * events; nothing here decides.
 */
import { type AirPoint, operatingPoint } from './air.ts';
import { clarifierSurface, clarifierVolume, levelOf, pumpLevel, pumpSurface, riserVolume, surfaceAt } from './basin.ts';
import { type DischargeLine, dischargeLine, filterLoss, gravityFlow, overflow, pumpFlow } from './hydraulics.ts';
import {
  COMPARTMENT,
  COMPARTMENTS,
  COMPONENT,
  COMPONENTS,
  GAUGES,
  ledgerIndex,
  massIndex,
  VOLUME,
  WATER,
} from './layout.ts';
import {
  endogenousUptake,
  fieldSaturation,
  hoursWithoutOxygenRate,
  type OxygenAt,
  oxygenAt,
  oxygenTransfer,
  substrateUptake,
} from './oxygen.ts';
import type { PlantCondition, PlantSpec } from './spec.ts';

/** What drives the works between two events. */
export interface Drive {
  /** Water drawn in the house, m3/s, and the raw oxygen demand it carries, g/s. */
  inflow_m3s: number;
  inflowDemand_gs: number;
  pumpRuns: boolean;
  compressorRuns: boolean;
  condition: PlantCondition;
  /** Loss of the disc filter in its present state, m per (L/s)^2: `filterLoss` of the condition. */
  filterLoss: number;
  temperature_C: number;
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

const OXYGEN = ledgerIndex(COMPONENT.oxygen);
const DEMAND = ledgerIndex(COMPONENT.demand);
const CLEAN_OUT_EDGE_m = 0.31;
const RIM_EDGE_m = 0.2;
/** The pump loses its prime over the last centimetre above its intake. */
const PRIME_m = 0.01;
/** Oxygen under which effluent counts as short of air, mg/L (GLUMRB wants 2 at all times; half of it is alarming). */
const SHORT_OF_AIR_mgL = 1;

export interface Works {
  readonly spec: PlantSpec;
  readonly line: DischargeLine;
  /** Water's ways at a state: pure, writes into `flows`. */
  observe(drive: Drive, y: Float64Array, flows: Flows): Flows;
  /** dy/dt, 1/s. */
  derivative(drive: Drive, y: Float64Array, dy: Float64Array): void;
  /** Depth of water over the diffusers, m. */
  diffuserDepth(y: Float64Array): number;
  /** Concentration of a component, g/m3, in a compartment. */
  concentration(y: Float64Array, compartment: number, component: number): number;
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
    air: { pressure_kPa: 0, pump_Lmin: 0, diffuser_Lmin: 0, leak_Lmin: 0 },
  };
}

export function makeWorks(spec: PlantSpec): Works {
  const line = dischargeLine(spec.effluentPump, spec.discharge);
  const scratch = emptyFlows();
  let water: OxygenAt = oxygenAt(20);

  /** Levels, and how much of a shared level's water stands in the clarifier and in the riser. */
  function fillShares(y: Float64Array, f: Flows): void {
    f.trash_m = levelOf(spec.trash, at(y, VOLUME.trash));
    f.aeration_m = levelOf(spec.aeration, at(y, VOLUME.aeration));
    f.pump_m = pumpLevel(spec.pump, spec.riser, at(y, VOLUME.pump));
    f.clarifier_m3 = clarifierVolume(spec.clarifier, spec.aeration.outlet_m, f.aeration_m);
    f.riser_m3 = riserVolume(spec.pump, spec.riser, f.pump_m);
  }

  function observe(drive: Drive, y: Float64Array, f: Flows): Flows {
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
    if (drive.compressorRuns) {
      operatingPoint(spec.air, drive.condition, f.aeration_m - spec.air.diffuser_elevation_m, f.air);
    } else {
      f.air.pressure_kPa = 0;
      f.air.pump_Lmin = 0;
      f.air.diffuser_Lmin = 0;
      f.air.leak_Lmin = 0;
    }
    return f;
  }

  function discharge(drive: Drive, level_m: number): number {
    const overIntake = level_m - spec.pump.floor_m - spec.effluentPump.intake_m;
    const prime = Math.min(Math.max(overIntake / PRIME_m, 0), 1);
    return prime === 0 ? 0 : (prime * pumpFlow(line, line.nozzleElevation_m - level_m, drive.filterLoss)) / 1000;
  }

  function derivative(drive: Drive, y: Float64Array, dy: Float64Array): void {
    const f = observe(drive, y, scratch);
    dy.fill(0);
    dy[VOLUME.trash] = drive.inflow_m3s - f.trashOut - f.relieved - f.indoors;
    dy[VOLUME.aeration] = f.trashOut - f.clarifierOut;
    dy[VOLUME.pump] = f.clarifierOut - f.discharge;
    dy[WATER.drawn] = drive.inflow_m3s;
    dy[WATER.sprayed] = f.discharge;
    dy[WATER.relieved] = f.relieved;
    dy[WATER.indoors] = f.indoors;
    dy[GAUGES.pumpRun_s] = drive.pumpRuns ? 1 : 0;
    dy[GAUGES.compressorRun_s] = drive.compressorRuns ? 1 : 0;
    carry(f, y, dy);
    bringIn(drive, dy);
    breathe(drive, f, y, dy);
  }

  /** Moves every component with the water; a reversed flow carries the composition of where it comes from. */
  function carry(f: Flows, y: Float64Array, dy: Float64Array): void {
    pass(y, dy, f, COMPARTMENT.trash, COMPARTMENT.aeration, f.trashOut);
    pass(y, dy, f, COMPARTMENT.aeration, COMPARTMENT.clarifier, f.slot);
    pass(y, dy, f, COMPARTMENT.clarifier, COMPARTMENT.riser, f.clarifierOut);
    pass(y, dy, f, COMPARTMENT.riser, COMPARTMENT.pump, f.riserOut);
    leave(y, dy, f, COMPARTMENT.pump, f.discharge);
    leave(y, dy, f, COMPARTMENT.trash, f.relieved + f.indoors);
  }

  function pass(y: Float64Array, dy: Float64Array, f: Flows, from: number, to: number, flow: number): void {
    if (flow === 0) return;
    const source = flow > 0 ? from : to;
    const target = flow > 0 ? to : from;
    const share = Math.abs(flow) / volumeOf(y, f, source);
    for (let c = 0; c < COMPONENTS.length; c++) {
      const rate = share * at(y, massIndex(source, c));
      add(dy, massIndex(source, c), -rate);
      add(dy, massIndex(target, c), rate);
    }
  }

  function leave(y: Float64Array, dy: Float64Array, f: Flows, from: number, flow: number): void {
    if (flow === 0) return;
    const share = flow / volumeOf(y, f, from);
    for (let c = 0; c < COMPONENTS.length; c++) {
      const rate = share * at(y, massIndex(from, c));
      add(dy, massIndex(from, c), -rate);
      add(dy, ledgerIndex(c).out, rate);
    }
  }

  function bringIn(drive: Drive, dy: Float64Array): void {
    const settled = drive.inflowDemand_gs * spec.uptake.settledInTrash;
    add(dy, massIndex(COMPARTMENT.trash, COMPONENT.demand), drive.inflowDemand_gs - settled);
    add(dy, DEMAND.in, drive.inflowDemand_gs);
    add(dy, DEMAND.converted, settled);
  }

  /** Oxygen into the aeration chamber and its use by the sludge there; what is burnt leaves the demand as well. */
  function breathe(drive: Drive, f: Flows, y: Float64Array, dy: Float64Array): void {
    const volume = volumeOf(y, f, COMPARTMENT.aeration);
    const oxygen = at(y, massIndex(COMPARTMENT.aeration, COMPONENT.oxygen)) / volume;
    const demand = at(y, massIndex(COMPARTMENT.aeration, COMPONENT.demand)) / volume;
    const depth = f.aeration_m - spec.air.diffuser_elevation_m;
    if (water.temperature_C !== drive.temperature_C) water = oxygenAt(drive.temperature_C);
    const transfer = oxygenTransfer(spec.air, water, f.air.diffuser_Lmin, depth, volume);
    const gained = transfer * (fieldSaturation(spec.air, water, depth) - oxygen) * volume;
    const burnt = substrateUptake(spec.uptake, demand, oxygen) * volume;
    const lived = endogenousUptake(spec.uptake, oxygen) * volume;
    add(dy, massIndex(COMPARTMENT.aeration, COMPONENT.oxygen), gained - burnt - lived);
    add(dy, massIndex(COMPARTMENT.aeration, COMPONENT.demand), -burnt);
    add(dy, OXYGEN.in, gained);
    add(dy, OXYGEN.converted, burnt + lived);
    add(dy, DEMAND.converted, burnt);
    dy[GAUGES.hoursWithoutOxygen] = hoursWithoutOxygenRate(oxygen, at(y, GAUGES.hoursWithoutOxygen));
    if (oxygen < SHORT_OF_AIR_mgL) dy[GAUGES.shortOfAir_m3] = f.discharge;
  }

  function volumeOf(y: Float64Array, f: Flows, compartment: number): number {
    return Math.max(1e-6, volumeIn(y, f, compartment));
  }

  function volumeIn(y: Float64Array, f: Flows, compartment: number): number {
    switch (compartment) {
      case COMPARTMENT.trash:
        return at(y, VOLUME.trash);
      case COMPARTMENT.aeration:
        return at(y, VOLUME.aeration) - f.clarifier_m3;
      case COMPARTMENT.clarifier:
        return f.clarifier_m3;
      case COMPARTMENT.riser:
        return f.riser_m3;
      default:
        return at(y, VOLUME.pump) - (f.riser_m3 - riserVolume(spec.pump, spec.riser, spec.pump.inlet_m));
    }
  }

  return {
    spec,
    line,
    observe,
    derivative,
    diffuserDepth: (y) => levelOf(spec.aeration, at(y, VOLUME.aeration)) - spec.air.diffuser_elevation_m,
    concentration(y, compartment, component) {
      fillShares(y, scratch);
      return at(y, massIndex(compartment, component)) / volumeOf(y, scratch, compartment);
    },
  };
}

/** Closure error of water and of each component, relative to what went through: 0 when all is accounted for. */
export function balance(start: Float64Array, y: Float64Array): { water: number; components: number[] } {
  const change = (i: number) => at(y, i) - at(start, i);
  const left = change(WATER.sprayed) + change(WATER.relieved) + change(WATER.indoors);
  const held = change(VOLUME.trash) + change(VOLUME.aeration) + change(VOLUME.pump);
  return {
    water: Math.abs(change(WATER.drawn) - left - held) / Math.max(1, change(WATER.drawn)),
    components: COMPONENTS.map((_, c) => {
      const l = ledgerIndex(c);
      const mass = COMPARTMENTS.reduce((sum, _name, k) => sum + change(massIndex(k, c)), 0);
      return Math.abs(change(l.in) - change(l.out) - change(l.converted) - mass) / Math.max(1, change(l.in));
    }),
  };
}

function at(y: Float64Array, i: number): number {
  return y[i] as number;
}

function add(dy: Float64Array, i: number, rate: number): void {
  dy[i] = (dy[i] as number) + rate;
}

/** Filter loss of a condition, m per (L/s)^2. */
export function conditionFilterLoss(works: Works, condition: PlantCondition): number {
  return filterLoss(works.line, condition.filterFlow);
}
