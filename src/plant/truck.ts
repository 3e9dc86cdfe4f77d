/**
 * What gathers in the tanks over the years, laid down at once, what a hauler's truck takes away, and what clear water is brought.
 * All happen at an instant to which the processes have caught up, and stand in the books.
 */
import { ASM, SOLIDS_PER_COD } from './asm1.ts';
import { volumeAt } from './basin.ts';
import { CELL, CELL_ROWS, CONTACT_SIZE, floorOf, RISER_CELLS } from './contact.ts';
import { add, at } from './entry.ts';
import { hopperOf, spreadWater } from './hopper.ts';
import { CAME, CONTACT, HAULED, PROCESS, STEPPED, TRUCK, VOLUME } from './layout.ts';
import {
  CARRIED,
  CHAMBERS,
  COMPARTMENT,
  COMPARTMENTS,
  COMPONENTS,
  type Composition,
  composition,
  HELD,
} from './liquor.ts';
import { LIQUOR_AGES_gm3y, LYING } from './mature.ts';
import { SCUM_gm3, SLUDGE_gm3 } from './passage.ts';
import { massOf, STORE } from './process.ts';
import { FLOOR_KINDS, layDown, SEDIMENT_gm3 } from './sediment.ts';
import type { Works } from './works.ts';

/** What has gathered beyond the ordinary: thickness in trash tank and pump tank, m; years of the mixed liquor. */
export interface Gathered {
  readonly trashSludge_m?: number;
  readonly trashScum_m?: number;
  readonly pumpSludge_m?: number;
  readonly liquor_y?: number;
}

/** Inert and nitrogen of what lies in the trash tank, as shares of its COD. */
const LYING_COD = LYING.degradable + LYING.inert;
const LYING_INERT = LYING.inert / LYING_COD;
const LYING_NITROGEN = LYING.nitrogen / LYING_COD;

/** Lays down a share of what has gathered. */
export function gather(works: Works, y: Float64Array, gathered: Gathered, share: number): void {
  const { trash, pump } = works.spec;
  gatherSludge(y, (share * (gathered.trashSludge_m ?? 0) * trash.area_m2 * SLUDGE_gm3) / SOLIDS_PER_COD);
  gatherScum(y, share * (gathered.trashScum_m ?? 0) * trash.area_m2 * SCUM_gm3);
  gatherSediment(y, (share * (gathered.pumpSludge_m ?? 0) * pump.area_m2 * SEDIMENT_gm3) / SOLIDS_PER_COD);
  gatherLiquor(works, y, share * (gathered.liquor_y ?? 0));
}

function gatherSludge(y: Float64Array, cod_g: number): void {
  come(y, PROCESS + STORE.degradable, ASM.slowSubstrate, (1 - LYING_INERT) * cod_g);
  come(y, PROCESS + STORE.inert, ASM.inertParticulate, LYING_INERT * cod_g);
  come(y, PROCESS + STORE.nitrogen, ASM.particulateNitrogen, LYING_NITROGEN * cod_g);
}

function gatherScum(y: Float64Array, cod_g: number): void {
  come(y, PROCESS + STORE.scum, ASM.slowSubstrate, cod_g);
}

function gatherSediment(y: Float64Array, cod_g: number): void {
  const floor = floorOf(y.subarray(CONTACT, CONTACT + CONTACT_SIZE));
  const before = floor.slice();
  layDown(floor, cod_g);
  for (let i = 0; i < floor.length; i++) add(y, CAME + floorComponent(i), at(floor, i) - at(before, i));
}

/** As the liquor of a mature unit ages: what is dead gathers in the chamber and in the hopper's foot. */
function gatherLiquor(works: Works, y: Float64Array, years: number): void {
  const volumes = compartmentVolumes(works, y);
  for (const [k, share] of [
    [COMPARTMENT.aeration, 1],
    [COMPARTMENTS - 1, 0.75],
  ] as const) {
    const water = share * years * at(volumes, k);
    come(y, PROCESS + massOf(k, ASM.inertParticulate), ASM.inertParticulate, LIQUOR_AGES_gm3y.inert * water);
    come(y, PROCESS + massOf(k, ASM.decayProducts), ASM.decayProducts, LIQUOR_AGES_gm3y.decayed * water);
  }
}

/** Puts so much, g, in a place of the state and into the books as a component that came in. */
function come(y: Float64Array, i: number, component: number, mass_g: number): void {
  add(y, i, mass_g);
  add(y, CAME + component, mass_g);
}

/** The component that an entry of the pump tank's floor counts as. */
function floorComponent(i: number): number {
  const kind = i % FLOOR_KINDS;
  return [ASM.slowSubstrate, ASM.inertParticulate, ASM.particulateNitrogen][kind] as number;
}

/** Tanks that are pumped out each for itself; aeration chamber and clarifier are one. */
export type HauledTank = keyof typeof VOLUME;
/** Water that the hose leaves on the floor, m: with the sludge in it, seed for what lives there (convention). */
const HEEL_m = 0.05;
/** Water that a truck or a hose brings: a supply's alkalinity (as the sewage's: convention) and some air. */
const TAP: Composition = composition({ oxygen: 8, alkalinity: 5 });

/** Pumps a tank out down to its heel: so much of everything in it goes as of its water, and of what lies and floats. */
export function pumpOut(works: Works, y: Float64Array, tank: HauledTank): void {
  const { spec } = works;
  const held = works.volumes(y, new Float64Array(CHAMBERS));
  const spread = compartmentVolumes(works, y);
  const water = at(y, VOLUME[tank]);
  const left = Math.min(water, volumeAt(spec[tank], spec[tank].floor_m + HEEL_m));
  y[VOLUME[tank]] = left;
  add(y, TRUCK.hauled_m3, water - left);
  const heldThen = works.volumes(y, new Float64Array(CHAMBERS));
  const spreadThen = compartmentVolumes(works, y);
  for (let k = 0; k < COMPARTMENTS; k++)
    take(y, PROCESS + massOf(k, 0), CARRIED, 1 - at(spreadThen, k) / Math.max(TINY_m3, at(spread, k)));
  CELL_ROWS.forEach((row, j) => {
    const chamber = j < RISER_CELLS ? HELD.riser : HELD.pump;
    take(y, CONTACT + row, COMPONENTS, 1 - at(heldThen, chamber) / Math.max(TINY_m3, at(held, chamber)));
  });
  const gone = water > 0 ? 1 - left / water : 0;
  if (tank === 'trash') takeLying(y, gone);
  if (tank === 'pump') takeSediment(y, gone);
  mark(y);
}

/** Clear water from the truck fills the aeration chamber up to its outlet again, before it is given air. */
export function refillAeration(works: Works, y: Float64Array): void {
  const { aeration } = works.spec;
  const before = compartmentVolumes(works, y);
  bringWater(y, 'aeration', Math.max(0, volumeAt(aeration, aeration.outlet_m) - at(y, VOLUME.aeration)));
  const after = compartmentVolumes(works, y);
  for (let k = COMPARTMENT.aeration; k < COMPARTMENTS; k++) {
    comeTap(y, PROCESS + massOf(k, 0), at(after, k) - at(before, k));
  }
  mark(y);
}

/** Clear water from a hose into the pump tank, m3. Its chlorine is not reckoned with: at the tap it is a trace beside the unit's. */
export function hoseIntoPump(y: Float64Array, water_m3: number): void {
  bringWater(y, 'pump', water_m3);
  comeTap(y, CONTACT + CELL.pump, water_m3);
  mark(y);
}

function bringWater(y: Float64Array, tank: HauledTank, water_m3: number): void {
  add(y, VOLUME[tank], water_m3);
  add(y, TRUCK.brought_m3, water_m3);
}

/** What so much clear water carries, into a row of the state. */
function comeTap(y: Float64Array, row: number, water_m3: number): void {
  for (let i = 0; i < CARRIED; i++) come(y, row + i, i, water_m3 * at(TAP, i));
}

const TINY_m3 = 1e-12;

function compartmentVolumes(works: Works, y: Float64Array): Float64Array {
  const held = works.volumes(y, new Float64Array(CHAMBERS));
  return spreadWater(hopperOf(works.spec.clarifier), held, new Float64Array(COMPARTMENTS));
}

/** A share of a row goes onto the truck. */
function take(y: Float64Array, from: number, components: number, share: number): void {
  for (let i = 0; i < components; i++) haul(y, from + i, i, share);
}

function haul(y: Float64Array, from: number, component: number, share: number): void {
  const mass = share * at(y, from);
  add(y, from, -mass);
  add(y, HAULED + component, mass);
}

function takeLying(y: Float64Array, share: number): void {
  haul(y, PROCESS + STORE.degradable, ASM.slowSubstrate, share);
  haul(y, PROCESS + STORE.scum, ASM.slowSubstrate, share);
  haul(y, PROCESS + STORE.inert, ASM.inertParticulate, share);
  haul(y, PROCESS + STORE.nitrogen, ASM.particulateNitrogen, share);
}

function takeSediment(y: Float64Array, share: number): void {
  const floor = floorOf(y.subarray(CONTACT, CONTACT + CONTACT_SIZE));
  for (let i = 0; i < floor.length; i++) {
    const mass = share * at(floor, i);
    add(floor, i, -mass);
    add(y, HAULED + floorComponent(i), mass);
  }
}

/** The next stretch begins from the tanks as they now stand. */
function mark(y: Float64Array): void {
  y.copyWithin(STEPPED, 0, STEPPED);
}
