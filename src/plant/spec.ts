/**
 * The numbers that make one property's works: elevations, curves, pipes. All of it is data (`scenarios/units`); the
 * schema that a file must meet is in `unit/schema.ts`. Elevations are metres from finished grade, up positive.
 */

import type { DisinfectionCondition, DisinfectionSpec } from './disinfection.ts';
import { type LineCondition, WHOLE_LINE } from './line.ts';
import { CLEAR_WAY, type WaterwayCondition } from './waterway.ts';

/** A tank with upright walls up to its ceiling, and a narrower access riser above it. */
export interface BasinSpec {
  readonly inlet_m: number;
  readonly outlet_m: number;
  readonly floor_m: number;
  readonly ceiling_m: number;
  readonly area_m2: number;
  readonly riserArea_m2: number;
}

export interface ClarifierSpec {
  /** Surface, depth of the straight part, depth of the hopper under it, area of the return slot. */
  readonly area_m2: number;
  readonly straight_m: number;
  readonly hopper_m: number;
  readonly slot_m2: number;
}

/** Disinfection riser: a narrow well before the pump tank, always full up to that tank's inlet. */
export interface RiserSpec {
  readonly floor_m: number;
  readonly area_m2: number;
}

export interface PumpSpec {
  /** Head H = shutoff - curve Q^2, m with Q in L/s. */
  readonly shutoff_m: number;
  readonly curve_m_per_Ls2: number;
  /** Intake above the pump tank's floor, m. */
  readonly intake_m: number;
  readonly ratedCurrent_A: number;
}

export interface DischargeSpec {
  readonly pipeLength_m: number;
  readonly pipeBore_m: number;
  readonly hazenWilliamsC: number;
  /** Elevation of the nozzles, m from grade. */
  readonly nozzle_elevation_m: number;
  readonly nozzles: number;
  readonly nozzleBore_m: number;
  readonly nozzleCd: number;
  /** Clean disc filter: loss = this x Q^2, m with Q in L/s. */
  readonly filterLoss_m_per_Ls2: number;
  /** Radius the heads throw at their design pressure, m, and that pressure. */
  readonly throw_m: number;
  /** Sprayed over the lawn from heads, or dripped under it. */
  readonly kind: 'spray' | 'drip';
  readonly designPressure_kPa: number;
}

export interface AirSpec {
  /** Compressor: Q = free (1 - (p / deadHead)^exponent), standard L/min and kPa gauge. */
  readonly free_Lmin: number;
  readonly deadHead_kPa: number;
  readonly exponent: number;
  /** Diffusers: elevation, pressure to open, and flow loss: kPa per (L/min)^2. */
  readonly diffuser_elevation_m: number;
  readonly cracking_kPa: number;
  readonly loss_kPa_per_Lmin2: number;
  /** Line volume and the hole through which a stopped compressor lets it down. */
  readonly line_L: number;
  readonly standingHole_m: number;
  /** Standard oxygen transfer per metre of depth, at the reference flow. */
  readonly transferPerMetre: number;
  readonly transferReference_Lmin: number;
  readonly alpha: number;
  readonly beta: number;
}

export interface ProcessSpec {
  /** Sludge volume index, mL/g. */
  readonly volumeIndex_mLg: number;
  /** Liquor that the air's circulation carries through the clarifier's slot and back, m3/d, at the rated air flow. */
  readonly exchange_m3d: number;
  /** Most of the particulates that the trash tank keeps. */
  readonly mostCaptured: number;
}

export interface PlantSpec {
  readonly fixtureRim_m: number;
  readonly cleanOut_m: number;
  readonly cleanOutRim_m: number;
  readonly lid_m: number;
  /** Bore of the gravity pipes between the chambers, m. */
  readonly pipeBore_m: number;
  readonly trash: BasinSpec;
  readonly aeration: BasinSpec;
  readonly clarifier: ClarifierSpec;
  readonly riser: RiserSpec;
  readonly pump: BasinSpec;
  readonly effluentPump: PumpSpec;
  readonly discharge: DischargeSpec;
  readonly air: AirSpec;
  readonly process: ProcessSpec;
  readonly disinfection: DisinfectionSpec;
}

/**
 * What faults change in the plant: factors and sizes that are neutral in a sound unit. A fault's patch names entries
 * of this record; `unit` combines patches (see `faults/patch.ts`).
 */
export interface PlantCondition extends DisinfectionCondition, LineCondition, WaterwayCondition {
  /** Holes in the air line, diameters, m. */
  lineHole_m: number;
  jointHole_m: number;
  /** Compressor: what wear leaves of its flow and of its pressure. */
  compressorFlow: number;
  compressorPressure: number;
  /** Dirt on the intake filter: suction loss, kPa per (L/min)^2. */
  intakeLoss_kPa_per_Lmin2: number;
  /** Fouled diffusers: factor of their loss, and share of the transfer that is left (0.65 to 0.9 in use: ASCE, from memory). */
  diffuserLoss: number;
  transfer: number;
  /** Factor of the sludge's volume index. */
  volumeIndex: number;
  /** Poured down the drains: chlorine, quaternary ammonium, salt, g/d; grease as COD, g/d. */
  bleach_gd: number;
  quaternary_gd: number;
  salt_gd: number;
  grease_gd: number;
  /** 1 while every trap of the house is used, 0 where one never is. */
  trapsUsed: number;
  /** Clear water that runs down the drains all day, m3/d. */
  clearWater_m3d: number;
  /** Ground whose rain gets into the trash tank, m2. */
  seepage_m2: number;
}

export const SOUND: PlantCondition = {
  ...WHOLE_LINE,
  ...CLEAR_WAY,
  lineHole_m: 0,
  jointHole_m: 0,
  compressorFlow: 1,
  compressorPressure: 1,
  intakeLoss_kPa_per_Lmin2: 0,
  diffuserLoss: 1,
  transfer: 1,
  volumeIndex: 1,
  disinfectantFeed: 1,
  disinfectantStrength: 1,
  disinfectantStock: 1,
  sleeveLight: 1,
  bleach_gd: 0,
  quaternary_gd: 0,
  salt_gd: 0,
  grease_gd: 0,
  trapsUsed: 1,
  clearWater_m3d: 0,
  seepage_m2: 0,
};
