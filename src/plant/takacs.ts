/**
 * A settler in layers: solids fall with a velocity that depends on how many there are, and are carried up and down by
 * the water. Source: Takacs, Patry and Nolasco (1991) as in the IWA Task Group's BSM1 description (Alex et al. 2008);
 * the double-exponential velocity, the flux limit between layers and the threshold above the feed. g/m3, m, days.
 */
import { exp } from './num.ts';

export interface SettlerParameters {
  /** Largest and theoretical velocity, m/d; hindered and flocculant settling, m3/g; share that never settles. */
  readonly fastest_md: number;
  readonly theoretical_md: number;
  readonly hindered_m3g: number;
  readonly flocculant_m3g: number;
  readonly neverSettles: number;
  /** Solids in the layer below up to which a layer above the feed settles freely, g/m3. */
  readonly threshold_gm3: number;
  /** Rounds the corner of the flux limit: the lesser of two fluxes within this share of their sum; 0 is sharp. */
  readonly rounding: number;
}

/** BSM1's set. Source: Alex et al. 2008, Table 4. */
export const BSM1_SETTLER: SettlerParameters = {
  fastest_md: 250,
  theoretical_md: 474,
  hindered_m3g: 0.000576,
  flocculant_m3g: 0.00286,
  neverSettles: 0.00228,
  threshold_gm3: 3000,
  rounding: 0,
};

/** Where the flocculant parameter is just so many times the hindered one, a power does for the second exponential. */
export const FIVEFOLD = 5;

/** Settling velocity, m/d, of a layer with so many solids under a feed with so many. */
export function settlingVelocity(p: SettlerParameters, solids_gm3: number, feed_gm3: number): number {
  const over = solids_gm3 - p.neverSettles * feed_gm3;
  const hindered = exp(-p.hindered_m3g * over);
  const square = hindered * hindered;
  const flocculant =
    p.flocculant_m3g === FIVEFOLD * p.hindered_m3g ? square * square * hindered : exp(-p.flocculant_m3g * over);
  const velocity = p.theoretical_md * (hindered - flocculant);
  return Math.max(0, Math.min(p.fastest_md, velocity));
}

/** The lesser of two fluxes, its corner rounded. */
function lesser(a: number, b: number, rounding: number): number {
  if (rounding === 0) return Math.min(a, b);
  const apart = a - b;
  const sum = rounding * (a + b);
  return (a + b - Math.sqrt(apart * apart + sum * sum)) / 2;
}

/** Width of the step at the threshold where corners are rounded, as a share of it. */
const STEP = 0.2;

/**
 * Solids that fall from a layer into the one below, g/(m2 d): of their own flux and that of the layer below the lesser;
 * above the feed all that falls, as long as the layer below is thin.
 */
export function fluxDown(
  p: SettlerParameters,
  own: number,
  below: number,
  solidsBelow_gm3: number,
  aboveFeed: boolean,
): number {
  if (!aboveFeed) return lesser(own, below, p.rounding);
  const thick = solidsBelow_gm3 - p.threshold_gm3;
  if (p.rounding === 0) return thick <= 0 ? own : lesser(own, below, 0);
  const share = Math.min(Math.max(0.5 + thick / (STEP * p.threshold_gm3), 0), 1);
  return share === 0 ? own : (1 - share) * own + share * lesser(own, below, p.rounding);
}

export interface SettlerFlow {
  readonly layers: number;
  /** Layer of the feed, 0 at the top, and the height of a layer, m. */
  readonly feedLayer: number;
  readonly height_m: number;
  /** Water up above the feed and down below it, m/d, and the solids of the feed, g/m3. */
  up_md: number;
  down_md: number;
  feed_gm3: number;
}

/** Change of the solids of each layer, g/(m3 d), top first, of `x[o..]` into `dx[o..]`. */
export function settle(p: SettlerParameters, f: SettlerFlow, x: Float64Array, dx: Float64Array, o: number): void {
  const at = (i: number) => x[o + i] as number;
  const flux = (i: number) => settlingVelocity(p, at(i), f.feed_gm3) * at(i);
  let above = 0;
  let own = flux(0);
  for (let i = 0; i < f.layers; i++) {
    const last = i === f.layers - 1;
    const below = last ? 0 : flux(i + 1);
    const leaves = last ? 0 : fluxDown(p, own, below, at(i + 1), i < f.feedLayer);
    let carried: number;
    if (i < f.feedLayer) carried = f.up_md * (at(i + 1) - at(i));
    else if (i > f.feedLayer) carried = f.down_md * (at(i - 1) - at(i));
    else carried = (f.up_md + f.down_md) * (f.feed_gm3 - at(i));
    dx[o + i] = (carried + above - leaves) / f.height_m;
    above = leaves;
    own = below;
  }
}
