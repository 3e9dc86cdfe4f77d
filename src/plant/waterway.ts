/**
 * The way of the water where it runs by gravity, and what holds it back or lets it out beside the way: a house sewer that
 * stands full behind a blockage, a seam of the trash tank that leaks into the ground, a riser whose lid is not tight.
 */
import { overflow } from './hydraulics.ts';
import { clamp } from './num.ts';
import type { PlantSpec } from './spec.ts';

/** What faults do to the way of the water, to its smell and to the solids: neutral in a sound unit. */
export interface WaterwayCondition {
  /** Share of what they pass when clear: the house sewer past its clean-out, the trash tank's inlet and its outlet. */
  sewerFlow: number;
  inletFlow: number;
  outletFlow: number;
  /** Leak of the trash tank into the ground: m3/d for each metre of water over its seam. */
  trashLeak_m2d: number;
  /** Riser lids that are not tight, 1 for one that lies there without its gasket. */
  lidGap: number;
  /** Roof that drains into the house sewer, m2. */
  roof_m2: number;
  /** Joints of the house's drains that let sewer air in, 1 for a toilet without its seal. */
  drainGap: number;
  /** Share of its air that the drains' vent lets in. */
  ventFlow: number;
  /** Share of what it keeps when whole that the trash tank's outlet baffle keeps. */
  baffle: number;
  /** Share of its opening that the clarifier's return slot has for sludge. */
  slotOpen: number;
  /** Water that stands in a low spot of the air line and must be blown through, m. */
  lineWater_m: number;
}

export const CLEAR_WAY: WaterwayCondition = {
  sewerFlow: 1,
  inletFlow: 1,
  outletFlow: 1,
  trashLeak_m2d: 0,
  lidGap: 0,
  roof_m2: 0,
  drainGap: 0,
  ventFlow: 1,
  baffle: 1,
  slotOpen: 1,
  lineWater_m: 0,
};

/** Share of its clear flow that the way from the clean-out into the trash tank passes; 1 when nothing holds it back. */
export function wayIn(condition: WaterwayCondition): number {
  return condition.sewerFlow * condition.inletFlow;
}

/** Surface of what stands in the house sewer, m2: 15 m of 4 in pipe at 1 in 50 fill over 0.3 m (convention). */
const SEWER_m2 = 0.4;

/** Level of what stands in the house sewer before a blockage, m from grade, of its volume. */
export function sewerLevel(spec: PlantSpec, volume_m3: number): number {
  return spec.trash.inlet_m + volume_m3 / SEWER_m2;
}

/** Height of the seam that leaks, m from grade: of a tank cast in two halves, at mid height (common practice, no source). */
function seam_m({ trash }: PlantSpec): number {
  return (trash.floor_m + trash.outlet_m) / 2;
}

const DAY_s = 86_400;

/** What leaks out of the trash tank at a level, m3/s: in proportion to the head, as soil takes it (Darcy's law). */
export function leakage(spec: PlantSpec, condition: WaterwayCondition, level_m: number): number {
  return (condition.trashLeak_m2d / DAY_s) * Math.max(0, level_m - seam_m(spec));
}

/** How far under its lid a riser lets water out where the gasket is missing, m, and over what edge, m (convention). */
const UNDER_LID_m = 0.07;
const LID_EDGE_m = 1.9;

/** What comes out of the trash tank's riser under lids like these, m3/s. */
export function lidRelief(spec: PlantSpec, condition: WaterwayCondition, level_m: number): number {
  return overflow(level_m, spec.lid_m - UNDER_LID_m, LID_EDGE_m * clamp(condition.lidGap, 0, 1));
}
