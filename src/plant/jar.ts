/**
 * The jar of settled sludge: a litre cylinder of mixed liquor left to stand, computed in layers. Nothing is carried by
 * water here; solids fall by the same law as in the clarifier and lie no thicker than there.
 */
import { at } from './entry.ts';
import { thickest_gm3 } from './hopper.ts';
import { clarityDepth_m } from './senses.ts';
import { settlerFor } from './settleability.ts';
import { fluxDown, type SettlerParameters, settlingVelocity } from './takacs.ts';

/** What is poured into the jar. */
export interface JarLiquor {
  /** Suspended solids, mg/L, and their sludge volume index, mL/g. */
  readonly solids_mgL: number;
  readonly index_mLg: number;
  /** Nitrate nitrogen and dissolved oxygen, mg/L. */
  readonly nitrate_mgL: number;
  readonly oxygen_mgL: number;
}

export interface JarReading {
  /** Sludge line, mL/L; 1000 when none has formed, 0 when there is no sludge to speak of. */
  readonly settled_mLL: number;
  /** Solids half-way between the surface and the sludge line, mg/L, and the clarity depth of that water, m. */
  readonly above_mgL: number;
  readonly clarity_m: number;
  /** Gas has lifted the sludge; the line then means nothing. */
  readonly floats: boolean;
}

/** Height of the water in a litre cylinder, m (convention). */
const HEIGHT_m = 0.36;
/** Layers of 6 mm, about the thickness at which an eye still tells a line (convention). */
const LAYERS_IN_JAR = 60;
/** Share of a layer that may fall in one step, so that no step overshoots. */
const STEP_SHARE = 0.5;
/** The sludge line is where solids pass this share of the liquor's own (convention). */
const LINE_SHARE = 0.5;
const JAR_mLL = 1000;

/**
 * One step: `through` is the step over a layer's height, d/m. Fresh liquor settles freely; the nearer a layer comes to
 * the thickest, the less it takes (convention; it makes the last part slow, as thickening in a jar is).
 */
function fall(p: SettlerParameters, most_gm3: number, fresh_gm3: number, x: Float64Array, through: number): void {
  let above = 0;
  let own = settlingVelocity(p, at(x, 0), fresh_gm3) * at(x, 0);
  for (let i = 0; i < x.length - 1; i++) {
    const next = at(x, i + 1);
    const below = settlingVelocity(p, next, fresh_gm3) * next;
    const room = Math.min(Math.max((most_gm3 - next) / (most_gm3 - fresh_gm3), 0), 1);
    const leaves = fluxDown(p, own, below, next, false) * room;
    x[i] = at(x, i) + through * (above - leaves);
    above = leaves;
    own = below;
  }
  x[x.length - 1] = at(x, x.length - 1) + through * above;
}

/**
 * Solids by layer, mg/L, top first, after so many minutes. Liquor as thick as sludge gets does not settle at all.
 * `seen` looks at it after each step.
 */
export function jarLayers(
  liquor: JarLiquor,
  minutes: number,
  seen?: (x: Float64Array, share: number) => void,
): Float64Array {
  const x = new Float64Array(LAYERS_IN_JAR).fill(liquor.solids_mgL);
  const most_gm3 = thickest_gm3(liquor.index_mLg);
  if (liquor.solids_mgL >= most_gm3) return x;
  const p = settlerFor(liquor.index_mLg);
  const layer_m = HEIGHT_m / LAYERS_IN_JAR;
  const time_d = minutes / 1440;
  const steps = Math.ceil(time_d / ((STEP_SHARE * layer_m) / p.fastest_md));
  for (let i = 0; i < steps; i++) {
    fall(p, most_gm3, liquor.solids_mgL, x, time_d / steps / layer_m);
    seen?.(x, (i + 1) / steps);
  }
  return x;
}

/** Depth of the sludge line under the surface, in layers: between the middles of two of them. */
function lineDepth(x: Float64Array, line_mgL: number): number {
  const i = x.findIndex((solids) => solids >= line_mgL);
  if (i <= 0) return i === 0 ? 0 : x.length;
  return i - 0.5 + (line_mgL - at(x, i - 1)) / (at(x, i) - at(x, i - 1));
}

/** Liquor thinner than this, mg/L, shows no sludge line (convention). */
const LEAST_mgL = 50;

/** How much of a jar is sludge, mL/L, by its layers. */
export function settledIn(liquor: JarLiquor, x: Float64Array): number {
  return JAR_mLL * (1 - depthOf(liquor, x) / x.length);
}

function depthOf(liquor: JarLiquor, x: Float64Array): number {
  return liquor.solids_mgL < LEAST_mgL ? x.length : lineDepth(x, LINE_SHARE * liquor.solids_mgL);
}

/** What is read of a jar that has come to these layers. */
export function readingOf(liquor: JarLiquor, minutes: number, x: Float64Array): JarReading {
  const above_mgL = at(x, Math.floor(depthOf(liquor, x) / 2));
  return {
    settled_mLL: settledIn(liquor, x),
    above_mgL,
    clarity_m: clarityDepth_m(above_mgL),
    floats: sludgeRises(liquor, minutes),
  };
}

/** What the jar shows after so many minutes of standing still: 30 by custom, 60 once more to see it thicken. */
export function readJar(liquor: JarLiquor, minutes: number): JarReading {
  return readingOf(liquor, minutes, jarLayers(liquor, minutes));
}

/** Oxygen taken up by standing sludge, mg/(g h). Source: 3 to 12 in extended aeration, handbooks (from memory). */
const UPTAKE_mg_gh = 5;
/** Nitrate, mg N/L, and minutes without oxygen that lift sludge (common practice, no source: 6 to 8, an hour). */
const RISING_NITRATE_mgL = 7;
const RISING_min = 60;

/** Whether gas from nitrate has lifted the sludge: its oxygen must be used up first, then it takes an hour. */
export function sludgeRises(liquor: JarLiquor, minutes: number): boolean {
  if (liquor.nitrate_mgL < RISING_NITRATE_mgL || liquor.solids_mgL < LEAST_mgL) return false;
  const oxygenLasts_min = (60 * liquor.oxygen_mgL * 1000) / (UPTAKE_mg_gh * liquor.solids_mgL);
  return minutes >= oxygenLasts_min + RISING_min;
}

/** What the half-hour reading asks for. */
export type JarVerdict = 'scant' | 'thin' | 'satisfactory' | 'thick' | 'remove';

/**
 * Up to how much each verdict goes, mL/L. Source: common practice (from memory). Up to 10 % as in a new unit's first months; under
 * 30 % young or over-aerated; 30 to 50 % satisfactory; above 50 % look at the air, repeat after a day, then remove; above 60 %
 * remove (some say 50, some 75).
 */
export const JAR_LIMITS_mLL = { scant: 100, thin: 300, satisfactory: 500, thick: 600, remove: JAR_mLL } as const;

export function jarVerdict(settled_mLL: number): JarVerdict {
  const { scant, thin, satisfactory, thick } = JAR_LIMITS_mLL;
  if (settled_mLL <= scant) return 'scant';
  if (settled_mLL < thin) return 'thin';
  if (settled_mLL <= satisfactory) return 'satisfactory';
  return settled_mLL <= thick ? 'thick' : 'remove';
}

/** What the volume index, mL/g, says: 80 to 120 good, above 150 bulking. Source: a handbook (from memory). */
export function indexVerdict(index_mLg: number): 'dense' | 'good' | 'loose' | 'bulking' {
  if (index_mLg < 80) return 'dense';
  if (index_mLg <= 120) return 'good';
  return index_mLg <= 150 ? 'loose' : 'bulking';
}
