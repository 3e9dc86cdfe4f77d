/** What instruments and pictures may be made of: the state of a unit at an instant, in the trade's quantities. */
import type { ControlState } from '../control/index.ts';
import {
  blanketHeight_m,
  COMPARTMENT,
  deadHead,
  emptyFlows,
  type Flows,
  GAUGES,
  type JarLiquor,
  LAYERS,
  type LinePressures,
  linePressures,
  nozzlePressure,
  type Place,
  primed,
  pumpCurrentShare,
  RUN,
  type Sample,
  SPOTS,
  type Spot,
  STATE_SIZE,
  sampleOf,
  sedimentDepth_m,
  stockLeft,
  suspendedSolids,
  WATER,
} from '../plant/index.ts';
import type { Unit } from './engine.ts';
import { type Sensed, sensedAt } from './sensed.ts';

export interface Readout {
  readonly t: number;
  readonly control: ControlState;
  /** Levels in m from grade, flows in m3/s. */
  readonly flows: Flows;
  /** Height of water over the pump tank's floor, m. */
  readonly pumpTank_m: number;
  readonly airPressure_kPa: number;
  /** Pressure the compressor reaches against a closed valve, kPa. */
  readonly deadHead_kPa: number;
  readonly oxygen_mgL: number;
  /** The water of each chamber as a laboratory would find it; of the clarifier what stands on top. */
  readonly water: Readonly<Record<'trash' | 'aeration' | 'clarifier' | 'riser' | 'pump', Sample>>;
  /** Share of a full store of what disinfects that is left, and of its first strength. */
  readonly stock: { readonly share: number; readonly strength: number };
  /** Top of the clarifier's sludge blanket over its slot, m. */
  readonly blanket_m: number;
  /** Thickness of what lies and of what floats in the trash tank, m. */
  readonly trashSludge_m: number;
  readonly trashScum_m: number;
  /** Thickness of the pump tank's sediment by spot, m. */
  readonly sediment_m: Readonly<Record<Spot, number>>;
  /** Mixed liquor as it is poured into the jar. */
  readonly liquor: JarLiquor;
  readonly sensed: Sensed;
  /** Water in the house's least used trap, mm. */
  readonly trapSeal_mm: number;
  readonly hoursWithoutOxygen: number;
  readonly inflow_m3s: number;
  /** Pressure at the spray heads, kPa, and on the way to them; nothing while the pump rests. */
  readonly headPressure_kPa: number;
  readonly linePressure_kPa: LinePressures;
  /** Current of the effluent pump, A. */
  readonly pumpCurrent_A: number;
  readonly pumpRun_s: number;
  readonly drawn_m3: number;
  readonly seeped_m3: number;
  readonly sprayed_m3: number;
  readonly relieved_m3: number;
  readonly indoors_m3: number;
  /** Out of the trash tank into the ground and from under its lid. */
  readonly leaked_m3: number;
  readonly shortOfAir_m3: number;
  /** Dosed though it was untreated by the rule, and hours that the stored water was not disinfected (see plant/harm.ts). */
  readonly untreated_m3: number;
  readonly undisinfected_h: number;
}

/** Reads a unit at an instant between its last event and its horizon. */
export function readout(unit: Unit, t: number): Readout {
  const y = unit.stateAt(t, new Float64Array(STATE_SIZE));
  const drive = unit.driveAt(t);
  const flows = unit.works.observe(drive, y, emptyFlows());
  const at = (i: number) => y[i] as number;
  unit.passage.advance(y, t, drive);
  const sample = (place: Place) => sampleOf(unit.passage.composition(y, place));
  const water = {
    trash: sample('trash'),
    aeration: sample('aeration'),
    clarifier: sample('clarifier'),
    riser: sample('riser'),
    pump: sample('pump'),
  };
  const lying = unit.passage.lying_m3(y);
  return {
    t,
    control: unit.control,
    flows,
    pumpTank_m: flows.pump_m - unit.spec.plant.pump.floor_m,
    airPressure_kPa: unit.airPressure(t, y),
    deadHead_kPa: drive.compressorRuns ? deadHead(unit.spec.plant.air, drive.condition) : 0,
    oxygen_mgL: water.aeration.oxygen_mgL,
    water,
    stock: stockLeft(unit.spec.plant.disinfection, unit.passage.stock(y)),
    blanket_m: blanketOf(unit, y, water.aeration.solids_mgL),
    trashSludge_m: lying.sludge / unit.spec.plant.trash.area_m2,
    trashScum_m: lying.scum / unit.spec.plant.trash.area_m2,
    sediment_m: sedimentOf(unit.passage.sediment(y), unit.spec.plant.pump.area_m2),
    liquor: {
      solids_mgL: water.aeration.solids_mgL,
      index_mLg: unit.passage.volumeIndex_mLg(y, drive.condition),
      nitrate_mgL: water.aeration.nitrate_mgL,
      oxygen_mgL: water.aeration.oxygen_mgL,
    },
    sensed: sensedAt(unit, t, y, flows, water.pump),
    trapSeal_mm: at(GAUGES.seal_mm),
    hoursWithoutOxygen: at(GAUGES.hoursWithoutOxygen),
    inflow_m3s: drive.inflow_m3s,
    headPressure_kPa: drive.pumpRuns ? nozzlePressure(drive.line, flows.discharge * 1000) : 0,
    linePressure_kPa: linePressures(
      drive.line,
      flows.pump_m,
      drive.pumpRuns ? primed(unit.spec.plant, flows.pump_m) : 0,
    ),
    pumpCurrent_A: pumpCurrent_A(unit, drive.condition.pumpHead, flows.discharge * 1000),
    pumpRun_s: at(RUN.pump_s),
    drawn_m3: at(WATER.drawn),
    seeped_m3: at(WATER.seeped),
    sprayed_m3: at(WATER.sprayed),
    relieved_m3: at(WATER.relieved),
    indoors_m3: at(WATER.indoors),
    leaked_m3: at(WATER.leaked),
    shortOfAir_m3: at(GAUGES.shortOfAir_m3),
    untreated_m3: at(GAUGES.untreated_m3),
    undisinfected_h: at(GAUGES.undisinfected_h),
  };
}

/** Current of a rotor that stands, as a multiple of the rated one (NEC letter codes: 5 to 6, from memory). */
const LOCKED = 5.5;

function pumpCurrent_A(unit: Unit, pumpHead: number, flow_Ls: number): number {
  const { pumpRuns, pumpStalls } = unit.control.outputs;
  const rated_A = unit.spec.plant.effluentPump.ratedCurrent_A;
  if (pumpStalls) return LOCKED * rated_A;
  return pumpRuns ? rated_A * pumpCurrentShare(unit.works.line, pumpHead, flow_Ls) : 0;
}

function blanketOf(unit: Unit, y: Float64Array, liquor_gm3: number): number {
  const solids = Array.from({ length: LAYERS }, (_, i) =>
    suspendedSolids(unit.passage.layer(y, COMPARTMENT.clarifier + i), 0),
  );
  return blanketHeight_m(unit.spec.plant.clarifier, solids, liquor_gm3);
}

function sedimentOf(floor: Float64Array, area_m2: number): Record<Spot, number> {
  const depth = (spot: Spot) => sedimentDepth_m(floor, SPOTS.indexOf(spot), area_m2);
  return { inlet: depth('inlet'), middle: depth('middle'), pump: depth('pump'), far: depth('far') };
}
