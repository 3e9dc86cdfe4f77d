/**
 * Elementary functions made of + - * / only, so that every engine (Node, any browser, any worker) gives the same
 * bits. `Math.exp` and its kin may differ in the last digit from one engine to the next, which would make a record
 * replay to another result. Relative error at most 1e-15 (tests/published/elementary.test.ts).
 *
 * Method: argument reduction to a small interval, a Taylor polynomial there (coefficients are 1/n! and 2/(2n+1)),
 * and compensated products where a rounding error would be magnified.
 */

/** ln 2 in two parts: the first has 21 zero bits at its end, so that k * LN2_HI is exact for |k| < 2^20. */
const LN2_HI = 0.6931471803691238;
const LN2_LO = 1.9082149292705877e-10;
const SQRT_HALF = Math.SQRT1_2;
const HALF_PI_HI = 1.5707963267341256;
const HALF_PI_MID = 6.077100506303966e-11;
const HALF_PI_LO = 2.0222662487959506e-21;

const view = new DataView(new ArrayBuffer(8));

/** 2^k for the whole exponent range of a double. */
function powerOfTwo(k: number): number {
  if (k >= -1022 && k <= 1023) {
    view.setUint32(0, (k + 1023) << 20);
    view.setUint32(4, 0);
    return view.getFloat64(0);
  }
  return k > 1023 ? Number.POSITIVE_INFINITY : powerOfTwo(k + 200) * 6.223015277861142e-61;
}

/** e^r - 1 for |r| <= 0.35, Taylor to r^14 / 14!. */
function expm1Small(r: number): number {
  let p = 1 / 87178291200;
  p = p * r + 1 / 6227020800;
  p = p * r + 1 / 479001600;
  p = p * r + 1 / 39916800;
  p = p * r + 1 / 3628800;
  p = p * r + 1 / 362880;
  p = p * r + 1 / 40320;
  p = p * r + 1 / 5040;
  p = p * r + 1 / 720;
  p = p * r + 1 / 120;
  p = p * r + 1 / 24;
  p = p * r + 1 / 6;
  p = p * r + 0.5;
  return p * r * r + r;
}

/** e^(hi + lo), where lo is a small correction to hi. */
function expOfSum(hi: number, lo: number): number {
  if (hi > 709.782712893384) return Number.POSITIVE_INFINITY;
  if (hi < -745.1332191019412) return 0;
  const k = Math.floor(hi / Math.LN2 + 0.5);
  const r = hi - k * LN2_HI - k * LN2_LO + lo;
  const small = 1 + expm1Small(r);
  return k < -1021 ? small * powerOfTwo(k + 100) * powerOfTwo(-100) : small * powerOfTwo(k);
}

/** e^x. NaN for NaN; overflows to Infinity above 709.78, underflows to 0 below -745.13. */
export function exp(x: number): number {
  return Number.isNaN(x) ? x : expOfSum(x, 0);
}

/** The last natural logarithm computed, as an unevaluated sum: `logHi + logLo`. Filled by `splitLog`. */
let logHi = 0;
let logLo = 0;

/** Exact product a * b as product + tail (Dekker). Valid while |a|, |b| < 1e150. */
function productTail(a: number, b: number, product: number): number {
  const ca = 134217729 * a;
  const aHi = ca - (ca - a);
  const aLo = a - aHi;
  const cb = 134217729 * b;
  const bHi = cb - (cb - b);
  const bLo = b - bHi;
  return aHi * bHi - product + aHi * bLo + aLo * bHi + aLo * bLo;
}

/** ln x for finite x > 0 into logHi + logLo: x = 2^k f, ln f = 2 artanh((f - 1) / (f + 1)). */
function splitLog(x: number): void {
  let k = 0;
  let f = x;
  if (f < 2.2250738585072014e-308) {
    f *= 18014398509481984;
    k = -54;
  }
  view.setFloat64(0, f);
  const high = view.getUint32(0);
  k += (high >>> 20) - 1023;
  view.setUint32(0, (high & 0xfffff) | 0x3ff00000);
  f = view.getFloat64(0) / 2;
  k += 1;
  if (f < SQRT_HALF) {
    f *= 2;
    k -= 1;
  }
  const top = f - 1;
  const bottom = f + 1;
  const s = top / bottom;
  // bottom loses at most one bit of f; both losses go into the tail of s.
  const product = s * bottom;
  const sTail = (top - product - productTail(s, bottom, product) - s * (f - (bottom - 1))) / bottom;
  const z = s * s;
  let p = 2 / 23;
  p = p * z + 2 / 21;
  p = p * z + 2 / 19;
  p = p * z + 2 / 17;
  p = p * z + 2 / 15;
  p = p * z + 2 / 13;
  p = p * z + 2 / 11;
  p = p * z + 2 / 9;
  p = p * z + 2 / 7;
  p = p * z + 2 / 5;
  p = p * z + 2 / 3;
  const tail = p * z * s + 2 * sTail + k * LN2_LO;
  const big = k * LN2_HI;
  const small = 2 * s;
  const sum = big + small;
  logHi = sum + tail;
  logLo = (Math.abs(big) >= Math.abs(small) ? small - (sum - big) : big - (sum - small)) + (tail - (logHi - sum));
}

/** Natural logarithm; -Infinity at 0, NaN below. */
export function log(x: number): number {
  if (x > 0 && x < Number.POSITIVE_INFINITY) {
    splitLog(x);
    return logHi;
  }
  if (x === 0) return Number.NEGATIVE_INFINITY;
  return x > 0 ? x : Number.NaN;
}

/** x^y for x >= 0 (physics needs no other base). 0^0 is 1; NaN for negative x. */
export function pow(x: number, y: number): number {
  if (y === 0) return 1;
  if (x === 0) return y > 0 ? 0 : Number.POSITIVE_INFINITY;
  if (!(x > 0)) return Number.NaN;
  splitLog(x);
  const hi = y * logHi;
  const lo = productTail(y, logHi, hi) + y * logLo;
  return expOfSum(hi, lo);
}

/** cos x for |x| < 1e5 rad (reduction by a three-part pi/2). */
export function cos(x: number): number {
  const q = Math.floor((2 * x) / Math.PI + 0.5);
  const r = x - q * HALF_PI_HI - q * HALF_PI_MID - q * HALF_PI_LO;
  const quarter = ((q % 4) + 4) % 4;
  if (quarter === 0) return cosSmall(r);
  if (quarter === 1) return -sinSmall(r);
  return quarter === 2 ? -cosSmall(r) : sinSmall(r);
}

function cosSmall(r: number): number {
  const z = r * r;
  let p = 1 / 20922789888000;
  p = p * z - 1 / 87178291200;
  p = p * z + 1 / 479001600;
  p = p * z - 1 / 3628800;
  p = p * z + 1 / 40320;
  p = p * z - 1 / 720;
  p = p * z + 1 / 24;
  const half = 0.5 * z;
  const base = 1 - half;
  return base + (1 - base - half + p * z * z);
}

function sinSmall(r: number): number {
  const z = r * r;
  let p = -1 / 1307674368000;
  p = p * z + 1 / 6227020800;
  p = p * z - 1 / 39916800;
  p = p * z + 1 / 362880;
  p = p * z - 1 / 5040;
  p = p * z + 1 / 120;
  p = p * z - 1 / 6;
  return r + p * z * r;
}

export const PI = Math.PI;

/** x held between low and high. */
export function clamp(x: number, low: number, high: number): number {
  return Math.min(Math.max(x, low), high);
}

/**
 * sqrt(x) with a finite slope at 0, odd in x: x / (x^2 + e^2)^(1/4). Within 0.02 % of sqrt for x > 50 e.
 * Source: usual regularisation of orifice laws in network solvers.
 */
export function softSqrt(x: number, e: number): number {
  return x / Math.sqrt(Math.sqrt(x * x + e * e));
}
