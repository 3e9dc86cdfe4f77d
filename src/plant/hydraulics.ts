/** Water in pipes and over edges: gravity passages, pressure pipe, nozzles, the effluent pump. SI unless named. */
import { PI, pow, softSqrt } from './num.ts';
import type { DischargeSpec, PumpSpec } from './spec.ts';

const G = 9.81;
const WATER_kgm3 = 998.2;
/** Head differences below this are eased, so that drowned passages do not stiffen the equations, m. */
const EASE_m = 2e-3;
/**
 * Drowned passages are eased further, by this share of the depth that drowns them (up to their bore): two waters that
 * stand over a pipe differ by millimetres at household flows, and following them to the tenth would cost a hundred
 * times the steps. Moves the filling of a backed-up unit by seconds in days.
 */
const DROWNED_EASE = 0.3;
/** 2/3 of the discharge coefficient 0.62 of a rectangular weir. Source: hydraulics handbooks, sharp-crested weir. */
const WEIR = 0.4133;

/**
 * Flow through a gravity pipe between two chambers, m3/s, positive from `up` to `down`: a rectangular weir of the
 * pipe's width at its invert while it falls freely, a drowned opening when the lower side stands above the invert.
 * Free discharge: Q = 2/3 Cd b sqrt(2g) h^1.5 (Cd 0.62).
 */
export function gravityFlow(up_m: number, down_m: number, invert_m: number, bore_m: number): number {
  if (up_m < down_m) return -gravityFlow(down_m, up_m, invert_m, bore_m);
  const depth = up_m - invert_m;
  if (depth <= 0) return 0;
  const drowned = Math.min(Math.max(down_m - invert_m, 0), bore_m);
  const head = up_m - Math.max(down_m, invert_m);
  return WEIR * bore_m * Math.min(depth, bore_m) * softSqrt(2 * G * head, 2 * G * (EASE_m + DROWNED_EASE * drowned));
}

/** Flow over a free edge of a given length (a lifted clean-out lid, a fixture's rim), m3/s. */
export function overflow(level_m: number, edge_m: number, length_m: number): number {
  const head = level_m - edge_m;
  return head <= 0 ? 0 : WEIR * length_m * head * softSqrt(2 * G * head, 2 * G * EASE_m);
}

/** Flow through an orifice, m3/s: Q = Cd A sqrt(2 g h). Source: hydraulics handbooks. */
export function orificeFlow(bore_m: number, head_m: number, cd: number): number {
  return cd * (PI / 4) * bore_m * bore_m * Math.sqrt(2 * G * Math.max(0, head_m));
}

/** Friction head of a full pipe, m. Hazen-Williams, SI: h = 10.67 L Q^1.852 / (C^1.852 D^4.87). */
export function hazenWilliams(flow_m3s: number, length_m: number, bore_m: number, c: number): number {
  return (10.67 * length_m * pow(flow_m3s, 1.852)) / (pow(c, 1.852) * pow(bore_m, 4.87));
}

/** Flow of one nozzle, m3/s, at a gauge pressure in kPa: Q = Cd A sqrt(2 p / rho). */
export function nozzleFlow(bore_m: number, cd: number, pressure_kPa: number): number {
  return cd * (PI / 4) * bore_m * bore_m * Math.sqrt((2000 * Math.max(0, pressure_kPa)) / WATER_kgm3);
}

/** Constants of a discharge line, computed once: head terms k Q^n with Q in L/s, heads in m. */
export interface DischargeLine {
  readonly shutoff_m: number;
  readonly pump: number;
  readonly friction: number;
  readonly nozzles: number;
  readonly cleanFilter: number;
  readonly nozzleElevation_m: number;
}

export function dischargeLine(pump: PumpSpec, discharge: DischargeSpec): DischargeLine {
  const perNozzle = nozzleFlow(discharge.nozzleBore_m, discharge.nozzleCd, 1) * 1000 * discharge.nozzles;
  return {
    shutoff_m: pump.shutoff_m,
    pump: pump.curve_m_per_Ls2,
    friction: hazenWilliams(0.001, discharge.pipeLength_m, discharge.pipeBore_m, discharge.hazenWilliamsC),
    // One kPa at the nozzles passes `perNozzle` L/s, and p grows with Q^2; 1 kPa is 0.1021 m of water.
    nozzles: 1000 / (WATER_kgm3 * G) / (perNozzle * perNozzle),
    cleanFilter: discharge.filterLoss_m_per_Ls2,
    nozzleElevation_m: discharge.nozzle_elevation_m,
  };
}

/** Lift at which a filter's dirt is defined: the pump tank half a metre deep, near the middle of a dose, m. */
const REFERENCE_LIFT_m = 2;

/**
 * Loss factor, m per (L/s)^2, of a disc filter that lets through `share` of the flow it passes when clean. Solved so
 * that the whole line then runs at exactly that share, at the reference lift.
 */
export function filterLoss(line: DischargeLine, share: number): number {
  if (share >= 1) return line.cleanFilter;
  const q = Math.max(share, 1e-4) * pumpFlow(line, REFERENCE_LIFT_m, line.cleanFilter);
  const q2 = q * q;
  return (line.shutoff_m - REFERENCE_LIFT_m - (line.pump + line.nozzles) * q2 - line.friction * pow(q, 1.852)) / q2;
}

/** A head below this drives flow in proportion: where it just fails, the square root's steepness would stall the steps, m. */
const FAILING_m = 5e-3;

/**
 * Flow where the pump curve meets the line, L/s: H0 - a Q^2 = lift + friction + filter + nozzles. 0 where the lift is
 * too great.
 */
export function pumpFlow(line: DischargeLine, lift_m: number, filter: number): number {
  const head = line.shutoff_m - lift_m;
  if (head <= 0) return 0;
  if (head < FAILING_m) return (head / FAILING_m) * flowUnder(line, FAILING_m, filter);
  return flowUnder(line, head, filter);
}

/** Newton from above: the head less all losses falls and bends one way, so the steps never overshoot. */
function flowUnder(line: DischargeLine, head: number, filter: number): number {
  const square = line.pump + line.nozzles + filter;
  let q = Math.sqrt(head / square);
  for (let i = 0; i < 30; i++) {
    const friction = line.friction * pow(q, 1.852);
    const step = (square * q * q + friction - head) / (2 * square * q + (1.852 * friction) / q);
    q -= step;
    if (Math.abs(step) < 1e-12 * q) break;
  }
  return q;
}

/** Gauge pressure of a head of water, kPa; a gauge shows none below nothing. */
export function pressureOf(head_m: number): number {
  return (Math.max(0, head_m) * WATER_kgm3 * G) / 1000;
}

/** Gauge pressure at the nozzles, kPa, at a flow in L/s. */
export function nozzlePressure(line: DischargeLine, flow_Ls: number): number {
  return (line.nozzles * flow_Ls * flow_Ls * WATER_kgm3 * G) / 1000;
}
