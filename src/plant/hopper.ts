/**
 * The clarifier as layers: a straight part over a hopper, hung in the aeration chamber and joined to it by a slot at its
 * foot. Water comes up through the slot and leaves on top; solids fall from layer to layer and back through the slot.
 */

import { PARTICULATE } from './asm1.ts';
import { clarifierSurface, clarifierVolume } from './basin.ts';
import { at } from './entry.ts';
import { COMPARTMENT, HELD, LAYERS } from './liquor.ts';
import type { ClarifierSpec } from './spec.ts';
import { fluxDown, type SettlerParameters, settlingVelocity } from './takacs.ts';

export interface Hopper {
  /** Each layer's part of the clarifier's water, top first. */
  readonly share: Float64Array;
  /** Face under each layer, m2; the last one is the slot. */
  readonly face_m2: Float64Array;
}

/**
 * Part of the height that the lowest layer has, so that it is not a thimbleful; the others are equally high when the
 * chamber stands at its outlet (convention: with the number of layers it belongs to the settler's parameters).
 */
const LOWEST = 0.4;

export function hopperOf(spec: ClarifierSpec): Hopper {
  const height = spec.straight_m + spec.hopper_m;
  const up = (m: number) => clarifierVolume(spec, height, m);
  const share = new Float64Array(LAYERS);
  const face_m2 = new Float64Array(LAYERS);
  for (let i = 0; i < LAYERS; i++) {
    const top = height * (1 - (i * (1 - LOWEST)) / (LAYERS - 1));
    const foot = i === LAYERS - 1 ? 0 : height * (1 - ((i + 1) * (1 - LOWEST)) / (LAYERS - 1));
    share[i] = (up(top) - up(foot)) / up(height);
    face_m2[i] = i === LAYERS - 1 ? spec.slot_m2 : clarifierSurface(spec, height, foot);
  }
  return { share, face_m2 };
}

/** Volume of every compartment before disinfection, m3, into `out`, of the water held by chamber: the clarifier's stands in layers. */
export function spreadWater(hopper: Hopper, held: Float64Array, out: Float64Array): Float64Array {
  out[COMPARTMENT.trash] = at(held, HELD.trash);
  out[COMPARTMENT.aeration] = at(held, HELD.aeration);
  for (let i = 0; i < LAYERS; i++) out[COMPARTMENT.clarifier + i] = at(held, HELD.clarifier) * at(hopper.share, i);
  return out;
}

/** Sludge no thicker than this times 1000/SVI, g/L: what a clarifier without compression would exceed (common practice, no source). */
const THICKEST = 1.2;
/** The last part of the way to the thickest over which settling fades out. */
const FADES = 0.2;

/** Most solids a layer takes, g/m3, of sludge with a volume index, mL/g. */
export function thickest_gm3(index_mLg: number): number {
  return (THICKEST * 1e6) / index_mLg;
}

/**
 * Solids that pass each face, g/d, downwards, into `passing`: `solids` by layer, top first. The chamber under the slot is
 * stirred and takes all that comes.
 */
export function settleHopper(
  p: SettlerParameters,
  hopper: Hopper,
  most_gm3: number,
  solids: Float64Array,
  feed_gm3: number,
  passing: Float64Array,
): void {
  let own = settlingVelocity(p, at(solids, 0), feed_gm3) * at(solids, 0);
  for (let i = 0; i < LAYERS - 1; i++) {
    const solidsBelow = at(solids, i + 1);
    const below = settlingVelocity(p, solidsBelow, feed_gm3) * solidsBelow;
    const room = Math.min(Math.max((most_gm3 - solidsBelow) / (FADES * most_gm3), 0), 1);
    passing[i] = fluxDown(p, own, below, solidsBelow, true) * room * at(hopper.face_m2, i);
    own = below;
  }
  passing[LAYERS - 1] = own * at(hopper.face_m2, LAYERS - 1);
}

/** Solids that a sludge blanket has at least, as a share of the mixed liquor's (convention). */
const BLANKET = 0.5;

/**
 * Top of the sludge blanket over the slot, m, of solids by layer, top first, in a clarifier so high: where they pass the
 * share of the liquor's own, evenly between the middles of two layers.
 */
export function blanketHeight_m(spec: ClarifierSpec, solids: readonly number[], liquor_gm3: number): number {
  const height = spec.straight_m + spec.hopper_m;
  const enough = BLANKET * liquor_gm3;
  const edges = Array.from({ length: LAYERS }, (_, i) => height * (1 - (i * (1 - LOWEST)) / (LAYERS - 1)));
  const middle = (i: number) => ((edges[i] as number) + (edges[i + 1] ?? 0)) / 2;
  const first = solids.findIndex((s) => s >= enough);
  if (first < 0) return 0;
  if (first === 0) return height;
  const under = solids[first] as number;
  const over = solids[first - 1] as number;
  return middle(first) + ((under - enough) / (under - over)) * (middle(first - 1) - middle(first));
}

/** The components that fall with the solids. */
export const FALLING = Int32Array.from(PARTICULATE);
