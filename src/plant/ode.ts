/**
 * Bogacki-Shampine 3(2): an explicit Runge-Kutta pair with first-same-as-last and a free cubic between the ends.
 * Source: P. Bogacki, L. F. Shampine, "A 3(2) pair of Runge-Kutta formulas", Appl. Math. Lett. 2 (1989) 321-325.
 * Nothing is allocated while stepping.
 */

import { at } from './entry.ts';

export type Derivative = (t: number, y: Float64Array, dy: Float64Array) => void;

/** One accepted step: the state and its slope at both ends. */
export interface Step {
  t0: number;
  t1: number;
  readonly y0: Float64Array;
  readonly f0: Float64Array;
  readonly y1: Float64Array;
  readonly f1: Float64Array;
  /** Step size the error control proposes next, not cut by anything. */
  next: number;
}

export function emptyStep(size: number): Step {
  return {
    t0: 0,
    t1: 0,
    y0: new Float64Array(size),
    f0: new Float64Array(size),
    y1: new Float64Array(size),
    f1: new Float64Array(size),
    next: 0,
  };
}

export interface StepRules {
  readonly rtol: number;
  /** Absolute tolerance by state; 0 leaves a state out of the error norm, and so is one after the last of them. */
  readonly atol: Float64Array;
  readonly largest: number;
  readonly smallest: number;
}

/** Steps that got too small: the equations have gone wrong, which must be seen and not be waded through. */
export class StepTooSmall extends Error {}

export interface Stepper {
  /**
   * One step from (t0, y0), with f0 its slope, of at most `wanted` seconds and never past `end`; writes `out`.
   * `out.next` keeps the size the controller wants even if `end` cut this step short. Throws StepTooSmall.
   */
  step(derivative: Derivative, out: Step, wanted: number, end: number): void;
}

export function makeStepper(size: number, rules: StepRules): Stepper {
  const k2 = new Float64Array(size);
  const k3 = new Float64Array(size);
  const y = new Float64Array(size);
  const error = new Float64Array(size);

  function attempt(derivative: Derivative, out: Step, h: number, t1: number): void {
    for (let i = 0; i < size; i++) y[i] = at(out.y0, i) + 0.5 * h * at(out.f0, i);
    derivative(out.t0 + 0.5 * h, y, k2);
    for (let i = 0; i < size; i++) y[i] = at(out.y0, i) + 0.75 * h * at(k2, i);
    derivative(out.t0 + 0.75 * h, y, k3);
    for (let i = 0; i < size; i++) {
      out.y1[i] = at(out.y0, i) + (h / 9) * (2 * at(out.f0, i) + 3 * at(k2, i) + 4 * at(k3, i));
    }
    derivative(t1, out.y1, out.f1);
  }

  return {
    step(derivative, out, wanted, end) {
      adapt(out, rules, wanted, end, (h, t1) => {
        attempt(derivative, out, h, t1);
        for (let i = 0; i < size; i++) {
          error[i] = (h * (-5 * at(out.f0, i) + 6 * at(k2, i) + 8 * at(k3, i) - 9 * at(out.f1, i))) / 72;
        }
        return errorNorm(out, rules, error);
      });
    },
  };
}

/** Root mean square of an error by state, each as a share of what the rules allow; at most 1 is good enough. */
export function errorNorm(out: Step, rules: StepRules, error: Float64Array): number {
  let sum = 0;
  let n = 0;
  for (let i = 0; i < rules.atol.length; i++) {
    const a = at(rules.atol, i);
    if (a === 0) continue;
    const scaled = at(error, i) / (a + rules.rtol * Math.max(Math.abs(at(out.y0, i)), Math.abs(at(out.y1, i))));
    sum += scaled * scaled;
    n += 1;
  }
  return Math.sqrt(sum / n);
}

/**
 * Tries steps of at most `wanted` and never past `end` until the error of one, which `trial` takes, is at most 1; sets
 * `out.t1` and `out.next`. Throws StepTooSmall.
 */
export function adapt(
  out: Step,
  rules: StepRules,
  wanted: number,
  end: number,
  trial: (h: number, t1: number) => number,
): void {
  let h = Math.min(wanted, rules.largest);
  for (;;) {
    const cut = out.t0 + h >= end;
    const t1 = cut ? end : out.t0 + h;
    const tried = t1 - out.t0;
    const error = trial(tried, t1);
    if (error <= 1) {
      const grown = tried * stepFactor(error);
      out.t1 = t1;
      out.next = cut ? Math.max(grown, h) : grown;
      return;
    }
    h = tried * stepFactor(error);
    if (!(h > rules.smallest)) throw new StepTooSmall(`step below ${rules.smallest} s at t = ${out.t0} s`);
  }
}

/** Factor for the next size, 0.9 err^(-1/3) within 0.2 and 5, by Newton on the cube root (no Math.cbrt). */
function stepFactor(error: number): number {
  if (Number.isNaN(error) || error > 90) return 0.2;
  if (error < 6e-3) return 5;
  let root = 1 / error > 1 ? 1.5 : 0.7;
  for (let i = 0; i < 40; i++) {
    const better = (2 * root + 1 / (error * root * root)) / 3;
    if (Math.abs(better - root) < 1e-14) break;
    root = better;
  }
  return Math.min(Math.max(0.9 * root, 0.2), 5);
}

/** State inside an accepted step by the cubic through both ends and slopes; linear invariants are kept. Of a longer `out` the rest stays. */
export function interpolate(step: Step, t: number, out: Float64Array): Float64Array {
  const h = step.t1 - step.t0;
  const s = h === 0 ? 0 : (t - step.t0) / h;
  const s2 = s * s;
  const a = 2 * s2 * s - 3 * s2 + 1;
  const b = (s2 * s - 2 * s2 + s) * h;
  const c = 3 * s2 - 2 * s2 * s;
  const d = (s2 * s - s2) * h;
  for (let i = 0; i < step.y0.length; i++) {
    out[i] = a * at(step.y0, i) + b * at(step.f0, i) + c * at(step.y1, i) + d * at(step.f1, i);
  }
  return out;
}
