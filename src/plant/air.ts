/**
 * The air side: a diaphragm compressor, its line, holes in it, and the diffusers under water. Flows are standard L/min
 * (20 C), pressures kPa gauge. Equations and sources: process notes in docs/model.md.
 */
import { PI, pow } from './num.ts';
import type { AirSpec, PlantCondition } from './spec.ts';

const ATMOSPHERE_kPa = 101.325;
const KPA_PER_METRE = 9.79;
const HOLE_CD = 0.65;
/** Critical pressure ratio of air. */
const CRITICAL = 0.52828;
/**
 * Choked flow per area and upstream pressure at discharge coefficient 1, standard m3/s per Pa and m2:
 * 0.6847 / sqrt(R T) over the density of standard air (20 C, 1.2041 kg/m3).
 */
const SONIC_CONDUCTANCE = 1.9603e-3;

/**
 * Air that escapes through a hole, standard L/min. ISO 6358 form of the nozzle equation (b = 0.528), choked below the
 * critical ratio, straight below 0.1 % of pressure difference so that the slope stays finite.
 * `cd` 0.65 for a sharp-edged hole (handbook value for free air through orifices).
 */
export function holeFlow(bore_m: number, pressure_kPa: number, cd = HOLE_CD): number {
  if (bore_m <= 0 || pressure_kPa <= 0) return 0;
  const upstream = ATMOSPHERE_kPa + pressure_kPa;
  const ratio = ATMOSPHERE_kPa / upstream;
  const choked = SONIC_CONDUCTANCE * cd * (PI / 4) * bore_m * bore_m * upstream * 1000;
  return choked * subsonic(ratio) * 60_000;
}

function subsonic(ratio: number): number {
  if (ratio <= CRITICAL) return 1;
  const eased = Math.min(ratio, 0.999);
  const x = (eased - CRITICAL) / (1 - CRITICAL);
  return (Math.sqrt(1 - x * x) * (1 - ratio)) / (1 - eased);
}

/** Static head over the diffusers, kPa. */
export function staticHead(depth_m: number): number {
  return KPA_PER_METRE * Math.max(0, depth_m);
}

/** Pressure at which the diffusers open, kPa: the water over them, their membranes, water that stands in the line. */
export function openingPressure(spec: AirSpec, condition: PlantCondition, depth_m: number): number {
  return staticHead(depth_m) + spec.cracking_kPa + staticHead(condition.lineWater_m);
}

/** Air through the diffusers at a line pressure, standard L/min; none until they open. */
function diffuserFlow(spec: AirSpec, condition: PlantCondition, pressure_kPa: number, depth_m: number): number {
  const spare = pressure_kPa - staticHead(depth_m) - spec.cracking_kPa - staticHead(condition.lineWater_m);
  return spare <= 0 ? 0 : Math.sqrt(spare / (condition.diffuserLoss * spec.loss_kPa_per_Lmin2));
}

/** Pressure the compressor holds against a closed valve, kPa. */
export function deadHead(spec: AirSpec, condition: PlantCondition): number {
  return spec.deadHead_kPa * condition.compressorPressure;
}

/** Pressure at the outlet of a compressor that moves a flow: its falling curve less the loss of a dirty intake. */
function outletPressure(spec: AirSpec, condition: PlantCondition, flow_Lmin: number): number {
  const left = 1 - flow_Lmin / (spec.free_Lmin * condition.compressorFlow);
  if (left <= 0) return 0;
  const curve = deadHead(spec, condition) * pow(left, 1 / spec.exponent);
  return Math.max(0, curve - condition.intakeLoss_kPa_per_Lmin2 * flow_Lmin * flow_Lmin);
}

/**
 * Least pressure of a running compressor's line: without holes it is never under what opens the diffusers, for below that
 * nothing lets the air out.
 */
export function leastPressure(spec: AirSpec, condition: PlantCondition, depth_m: number): number {
  if (condition.lineHole_m > 0 || condition.jointHole_m > 0) return 0;
  return Math.min(deadHead(spec, condition), openingPressure(spec, condition, depth_m));
}

/** Air lost through every hole of the line. */
function leakFlow(condition: PlantCondition, pressure_kPa: number): number {
  return holeFlow(condition.lineHole_m, pressure_kPa) + holeFlow(condition.jointHole_m, pressure_kPa);
}

export interface AirPoint {
  pressure_kPa: number;
  pump_Lmin: number;
  diffuser_Lmin: number;
  leak_Lmin: number;
}

const STILL: Readonly<AirPoint> = { pressure_kPa: 0, pump_Lmin: 0, diffuser_Lmin: 0, leak_Lmin: 0 };

/** Nothing blows: a new point, or `out` made so. */
export function stillAir(out?: AirPoint): AirPoint {
  return Object.assign(out ?? {}, STILL);
}

/** Where most operating points lie: the share of its free flow at which the search begins. */
const USUAL_SHARE = 0.7;

/**
 * Operating point of a running compressor, written into `out`: the flow at which what the compressor moves equals
 * what diffusers and holes take at the pressure it then has. The difference rises evenly with flow, so Newton's method
 * closes in; the bracket is halved where a step would leave it or the last one did not halve the difference. Good to
 * 1e-7 of the free flow; depends on nothing but its arguments, not on where an earlier search ended.
 */
export function operatingPoint(spec: AirSpec, condition: PlantCondition, depth_m: number, out: AirPoint): AirPoint {
  const free = spec.free_Lmin * condition.compressorFlow;
  let low = 0;
  let high = free;
  let flow = USUAL_SHARE * free;
  let before = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 100; i++) {
    pointAt(spec, condition, depth_m, flow, out);
    const excess = flow - out.diffuser_Lmin - out.leak_Lmin;
    const size = Math.abs(excess);
    if (size < 1e-7 * spec.free_Lmin || high - low < 1e-12 * spec.free_Lmin) break;
    if (excess > 0) high = flow;
    else low = flow;
    const next = flow - excess / slope(spec, condition, out);
    const closesIn = size < before / 2 && next > low && next < high;
    flow = closesIn ? next : (low + high) / 2;
    before = closesIn ? size : Number.POSITIVE_INFINITY;
  }
  return out;
}

function pointAt(spec: AirSpec, condition: PlantCondition, depth_m: number, flow_Lmin: number, out: AirPoint): void {
  out.pump_Lmin = flow_Lmin;
  out.pressure_kPa = outletPressure(spec, condition, flow_Lmin);
  out.diffuser_Lmin = diffuserFlow(spec, condition, out.pressure_kPa, depth_m);
  out.leak_Lmin = leakFlow(condition, out.pressure_kPa);
}

/** Slope of the excess over flow at a point: exact but for holes, taken as passing the root of pressure. */
function slope(spec: AirSpec, condition: PlantCondition, at: AirPoint): number {
  if (at.pressure_kPa <= 0) return 1;
  const suction = condition.intakeLoss_kPa_per_Lmin2 * at.pump_Lmin;
  const curve = at.pressure_kPa + suction * at.pump_Lmin;
  const left = spec.free_Lmin * condition.compressorFlow - at.pump_Lmin;
  const pressureFalls = curve / (spec.exponent * left) + 2 * suction;
  const diffusers =
    at.diffuser_Lmin > 0 ? 1 / (2 * condition.diffuserLoss * spec.loss_kPa_per_Lmin2 * at.diffuser_Lmin) : 0;
  return 1 + pressureFalls * (diffusers + at.leak_Lmin / (2 * at.pressure_kPa));
}

/**
 * Line pressure some seconds after the compressor stopped at `start_kPa`. The diffusers close at once; the rest
 * leaks away through the stopped compressor and any hole. With Q = c sqrt(p): sqrt(p) falls evenly with time.
 */
export function standingPressure(spec: AirSpec, condition: PlantCondition, start_kPa: number, since_s: number): number {
  const perRootKPa = (holeFlow(spec.standingHole_m, 10) + leakFlow(condition, 10)) / 60 / Math.sqrt(10);
  const root = Math.sqrt(start_kPa) - (ATMOSPHERE_kPa * perRootKPa * since_s) / (2 * spec.line_L);
  return root <= 0 ? 0 : root * root;
}
