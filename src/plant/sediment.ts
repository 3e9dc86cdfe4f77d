/**
 * What settles on the floor of the pump tank, by spots: what comes in falls mostly near the inlet, and each run of the
 * pump stirs up what lies near it. Three numbers a spot, g: degradable and inert COD, the nitrogen of the degradable.
 */
import { ASM, BSM1_15C, SOLIDS_PER_COD } from './asm1.ts';
import { add, at } from './entry.ts';
import { exp } from './num.ts';

/** Where a core can be taken, from the inlet to the far wall. */
export const SPOTS = ['inlet', 'middle', 'pump', 'far'] as const;
export type Spot = (typeof SPOTS)[number];
const KINDS = { degradable: 0, inert: 1, nitrogen: 2 } as const;
/** How many numbers stand in a row for each spot. */
export const FLOOR_KINDS = 3;
const PER_SPOT = FLOOR_KINDS;
export const SEDIMENT_SIZE = SPOTS.length * PER_SPOT;

/** Share of what settles that falls on each spot, and of what lies there stirred up in a minute's run (convention). */
const FALLS = [0.4, 0.3, 0.12, 0.18] as const;
const STIRRED = [0.00005, 0.0003, 0.03, 0.00005] as const;
/** Of what is stirred up this share clouds the water; the rest is pushed to the spots beside it (convention). */
const CLOUDS = 0.5;
/** Velocity of the fine floc that the clarifier lets through, m/d (convention). */
const FALL_md = 2;
/** Dry solids in a m3 of sediment, g (common practice 30 to 60 kg, no source). */
export const SEDIMENT_gm3 = 40_000;

/** Share of the floc in water so deep, m, that is down after so many days. */
export function settledShare(depth_m: number, days: number): number {
  const rate = (FALL_md * days) / Math.max(depth_m, 0.05);
  return rate / (1 + rate);
}

/** Settles a share of the row's particulates (masses, g) onto the floor. */
export function settleOut(row: Float64Array, o: number, share: number, floor: Float64Array): void {
  const take = (i: number): number => {
    const mass = Math.max(0, share * at(row, o + i));
    add(row, o + i, -mass);
    return mass;
  };
  const living = take(ASM.heterotrophs) + take(ASM.autotrophs);
  const degradable = take(ASM.slowSubstrate) + living;
  const inert = take(ASM.inertParticulate) + take(ASM.decayProducts);
  const nitrogen = take(ASM.particulateNitrogen) + BSM1_15C.iXB * living;
  FALLS.forEach((part, spot) => {
    add(floor, spot * PER_SPOT + KINDS.degradable, part * degradable);
    add(floor, spot * PER_SPOT + KINDS.inert, part * inert);
    add(floor, spot * PER_SPOT + KINDS.nitrogen, part * nitrogen);
  });
}

/** Share of old sediment that lies at each spot: what falling and stirring come to. */
const LIES = [0.5, 0.24, 0.01, 0.25] as const;

/** Lays down sediment of so much COD, g, where it lies after a year, inert but for a fifth (convention). */
export function layDown(floor: Float64Array, cod_g: number): void {
  LIES.forEach((part, spot) => {
    add(floor, spot * PER_SPOT + KINDS.degradable, 0.2 * part * cod_g);
    add(floor, spot * PER_SPOT + KINDS.inert, 0.8 * part * cod_g);
    add(floor, spot * PER_SPOT + KINDS.nitrogen, 0.016 * part * cod_g);
  });
}

/** A pump's run of so many minutes stirs the floor: part of it goes back into the row, part to the spots beside. */
export function stir(row: Float64Array, o: number, minutes: number, floor: Float64Array): void {
  const into = [ASM.slowSubstrate, ASM.inertParticulate, ASM.particulateNitrogen] as const;
  const last = SPOTS.length - 1;
  STIRRED.forEach((rate, spot) => {
    const share = 1 - exp(-rate * minutes);
    for (let kind = 0; kind < PER_SPOT; kind++) {
      const i = spot * PER_SPOT + kind;
      const up = share * at(floor, i);
      const aside = ((1 - CLOUDS) * up) / 2;
      add(floor, i, -up);
      add(row, o + (into[kind] as number), CLOUDS * up);
      add(floor, Math.max(0, spot - 1) * PER_SPOT + kind, aside);
      add(floor, Math.min(last, spot + 1) * PER_SPOT + kind, aside);
    }
  });
}

/** COD, and nitrogen, that lie on the floor, g. */
export function lyingCod(floor: Float64Array): number {
  return sum(floor, KINDS.degradable) + sum(floor, KINDS.inert);
}

export function lyingNitrogen(floor: Float64Array): number {
  return sum(floor, KINDS.nitrogen) + BSM1_15C.iXP * sum(floor, KINDS.inert);
}

function sum(floor: Float64Array, kind: number): number {
  let total = 0;
  for (let spot = 0; spot < SPOTS.length; spot++) total += at(floor, spot * PER_SPOT + kind);
  return total;
}

/** Thickness of the sediment at a spot, m, of a floor so large, m2. */
export function sedimentDepth_m(floor: Float64Array, spot: number, area_m2: number): number {
  const o = spot * PER_SPOT;
  const solids = SOLIDS_PER_COD * (at(floor, o + KINDS.degradable) + at(floor, o + KINDS.inert));
  return solids / SEDIMENT_gm3 / (area_m2 / SPOTS.length);
}
