/**
 * A stabilised explicit Runge-Kutta method of second order (RKC): as many stages as the stiffness of the equations asks
 * for, their stability reaching with the square of the number, and no Jacobian. Source: B. P. Sommeijer, L. F. Shampine,
 * J. G. Verwer, "RKC: an explicit solver for parabolic PDEs", J. Comput. Appl. Math. 88 (1998) 315-326 (formulas from
 * memory; order and stability in tests/unit/stabilised.test.ts). Nothing is allocated while stepping.
 */
import { at } from './entry.ts';
import { adapt, type Derivative, errorNorm, type Step, type Stepper, type StepRules } from './ode.ts';

/** Coefficients of a number of stages. */
interface Stages {
  readonly mu: Float64Array;
  readonly nu: Float64Array;
  /** Weights of the last slope and of the first one, and where in the step each stage stands. */
  readonly last: Float64Array;
  readonly first: Float64Array;
  readonly instant: Float64Array;
}

/** Damping: how far the stability region is pinched in, so that it never closes. */
const DAMPING = 2 / 13;
/** Reach of the stability region: s stages are stable while step times radius is under (s^2 - 1) times this. */
const REACH = 1 / 1.54;
const FEWEST = 2;
const MOST = 24;

function stagesFor(s: number): Stages {
  const w0 = 1 + DAMPING / (s * s);
  const t = new Float64Array(s + 1);
  const dt = new Float64Array(s + 1);
  const ddt = new Float64Array(s + 1);
  t[0] = 1;
  t[1] = w0;
  dt[1] = 1;
  for (let j = 2; j <= s; j++) {
    t[j] = 2 * w0 * at(t, j - 1) - at(t, j - 2);
    dt[j] = 2 * at(t, j - 1) + 2 * w0 * at(dt, j - 1) - at(dt, j - 2);
    ddt[j] = 4 * at(dt, j - 1) + 2 * w0 * at(ddt, j - 1) - at(ddt, j - 2);
  }
  const w1 = at(dt, s) / at(ddt, s);
  const b = new Float64Array(s + 1);
  for (let j = 2; j <= s; j++) b[j] = at(ddt, j) / (at(dt, j) * at(dt, j));
  b[0] = at(b, 2);
  b[1] = at(b, 2);
  const out: Stages = {
    mu: new Float64Array(s + 1),
    nu: new Float64Array(s + 1),
    last: new Float64Array(s + 1),
    first: new Float64Array(s + 1),
    instant: new Float64Array(s + 1),
  };
  out.last[1] = at(b, 1) * w1;
  for (let j = 2; j <= s; j++) {
    out.mu[j] = (2 * w0 * at(b, j)) / at(b, j - 1);
    out.nu[j] = -at(b, j) / at(b, j - 2);
    out.last[j] = (2 * w1 * at(b, j)) / at(b, j - 1);
    out.first[j] = -(1 - at(b, j - 1) * at(t, j - 1)) * at(out.last, j);
    out.instant[j] = (w1 * at(ddt, j)) / at(dt, j);
  }
  out.instant[1] = at(out.instant, 2) / at(dt, 2);
  return out;
}

/** Stages that a step of so much time asks for, under a spectral radius. */
function stagesOf(h: number, radius: number): number {
  return Math.max(FEWEST, Math.ceil(Math.sqrt(1 + (h * radius) / REACH)));
}

/** A stepper for equations whose slopes fall off at most so fast, 1/time: `radius` is asked at the start of each step. */
export function makeStabilised(size: number, rules: StepRules, radius: (out: Step) => number): Stepper {
  const known = new Map<number, Stages>();
  const asked = rules.atol.length;
  const error = new Float64Array(asked);
  const f = new Float64Array(size);
  let before = new Float64Array(size);
  let last = new Float64Array(size);
  let next = new Float64Array(size);

  function stages(s: number): Stages {
    const have = known.get(s) ?? stagesFor(s);
    known.set(s, have);
    return have;
  }

  function attempt(derivative: Derivative, out: Step, h: number, t1: number, s: number): void {
    const { mu, nu, last: ofLast, first: ofFirst, instant } = stages(s);
    const { y0, f0, y1 } = out;
    before.set(y0);
    const start = h * at(ofLast, 1);
    for (let i = 0; i < size; i++) last[i] = at(y0, i) + start * at(f0, i);
    for (let j = 2; j <= s; j++) {
      derivative(out.t0 + h * at(instant, j - 1), last, f);
      const m = at(mu, j);
      const n = at(nu, j);
      const l = h * at(ofLast, j);
      const g = h * at(ofFirst, j);
      const rest = 1 - m - n;
      for (let i = 0; i < size; i++) {
        next[i] = rest * at(y0, i) + m * at(last, i) + n * at(before, i) + l * at(f, i) + g * at(f0, i);
      }
      const free = before;
      before = last;
      last = next;
      next = free;
    }
    y1.set(last);
    derivative(t1, y1, out.f1);
  }

  return {
    step(derivative, out, wanted, end) {
      const steepest = radius(out);
      const reach = steepest > 0 ? ((MOST * MOST - 1) * REACH) / steepest : Number.POSITIVE_INFINITY;
      adapt(out, rules, Math.min(wanted, reach), end, (h, t1) => {
        attempt(derivative, out, h, t1, stagesOf(h, steepest));
        for (let i = 0; i < asked; i++) {
          error[i] = 0.8 * (at(out.y0, i) - at(out.y1, i)) + 0.4 * h * (at(out.f0, i) + at(out.f1, i));
        }
        return errorNorm(out, rules, error);
      });
    },
  };
}
