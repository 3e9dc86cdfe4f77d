/**
 * Full kinetics of chlorine and ammonia (Wahman 2018, EPA; coefficients as in the open package tidywater), mol/L and
 * seconds, and RODAS3 to integrate them: the check of the plant's cheap breakpoint model. Very stiff.
 */
import { solveLinear } from './linear.ts';

export interface Water {
  readonly pH: number;
  readonly temperature_C: number;
  /** mg CaCO3/L. */
  readonly alkalinity: number;
}

const SIZE = 6;
/** TOTNH, TOTCl, NH2Cl, NHCl2, NCl3, I. */
type State = number[];

function fractions(water: Water) {
  const t = water.temperature_C + 273.15;
  const k = (a: number, b: number, c: number) => 10 ** -(a * t * t - b * t + c);
  const h = 10 ** -water.pH;
  const oh = k(1.5e-4, 1.23e-1, 37.3) / h;
  const k1 = k(1.48e-4, 9.39e-2, 21.2);
  const k2 = k(1.19e-4, 7.99e-2, 23.6);
  const a0 = 1 / (1 + k1 / h + (k1 * k2) / (h * h));
  const a1 = 1 / (1 + h / k1 + k2 / h);
  const a2 = 1 / (1 + h / k2 + (h * h) / (k1 * k2));
  const carbonate = (water.alkalinity / 50000 + h - oh) / (a1 + 2 * a2);
  const kNH = k(1.03e-4, 9.21e-2, 27.6);
  const kCl = k(1.18e-4, 7.86e-2, 20.5);
  return {
    t,
    h,
    oh,
    h2co3: a0 * carbonate,
    hco3: a1 * carbonate,
    co3: a2 * carbonate,
    ammonia: kNH / (kNH + h),
    hocl: h / (h + kCl),
  };
}

function derivative(water: Water): (y: State) => State {
  const f = fractions(water);
  const k1 = 6.6e8 * Math.exp(-1510 / f.t);
  const k2 = 1.38e8 * Math.exp(-8800 / f.t);
  const k3 = 3.0e5 * Math.exp(-2010 / f.t);
  const k5 =
    1.05e7 * Math.exp(-2169 / f.t) * f.h +
    4.2e31 * Math.exp(-22144 / f.t) * f.hco3 +
    8.19e6 * Math.exp(-4026 / f.t) * f.h2co3;
  return ([totNH, totCl, mono, di, tri, inter]) => {
    const n = totNH as number;
    const cl = totCl as number;
    const m = mono as number;
    const d = di as number;
    const t = tri as number;
    const i = inter as number;
    const nh3 = f.ammonia * n;
    const hocl = f.hocl * cl;
    const ocl = cl - hocl;
    const r = [
      k1 * hocl * nh3,
      k2 * m,
      k3 * hocl * m,
      6.5e-7 * d,
      k5 * m * m,
      6.0e4 * d * nh3 * f.h,
      110 * d * f.oh,
      2.8e4 * i * d,
      8.3e3 * i * m,
      1.5e-2 * m * d,
      (3.28e9 * f.oh + 9.0e4 * ocl + 6.0e6 * f.co3) * hocl * d,
      5.56e10 * d * t * f.oh,
      1.39e9 * m * t * f.oh,
      231 * d * ocl,
    ];
    const [r1, r2, r3, r4, r5, r6, r7, r8, r9, r10, r11, r12, r13, r14] = r as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    return [
      -r1 + r2 + r5 - r6,
      -r1 + r2 - r3 + r4 + r8 - r11 + 2 * r12 + r13 - 2 * r14,
      r1 - r2 - r3 + r4 - 2 * r5 + 2 * r6 - r9 - r10 - r13,
      r3 - r4 + r5 - r6 - r7 - r8 - r10 - r11 - r12 - r14,
      r11 - r12 - r13,
      r7 - r8 - r9,
    ];
  };
}

/** RODAS3 (as tabulated in PETSc): a, Gamma, b and the embedded b, four stages, gamma 1/2. */
const GAMMA = 0.5;
const A = [[], [0], [1, 0], [0.75, -0.25, 0.5]];
const G = [[], [1], [-0.25, -0.25], [1 / 12, 1 / 12, -2 / 3]];
const B = [5 / 6, -1 / 6, -1 / 6, 1 / 2];
const BH = [3 / 4, -1 / 4, 1 / 2, 0];

/** Chlorine and its compounds, mol/L, after so many minutes, from doses in mg/L as Cl2 and N. */
export function chloramines(water: Water, chlorine_mgL: number, nitrogen_mgL: number, minutes: number): State {
  const f = derivative(water);
  let y: State = [nitrogen_mgL / 14000, chlorine_mgL / 71000, 0, 0, 0, 0];
  let t = 0;
  let h = 1e-6;
  const end = minutes * 60;
  while (t < end) {
    h = Math.min(h, end - t);
    const { next, error } = rodas3(f, y, h);
    const norm = Math.sqrt(
      error.reduce((sum, e, i) => sum + (e / (1e-14 + 1e-7 * Math.abs(next[i] as number))) ** 2, 0) / SIZE,
    );
    if (norm <= 1) {
      t += h;
      y = next;
    }
    h *= Math.min(4, Math.max(0.2, 0.9 * Math.max(norm, 1e-10) ** (-1 / 3)));
  }
  return y;
}

function rodas3(f: (y: State) => State, y: State, h: number): { next: State; error: State } {
  const jacobian = numericJacobian(f, y);
  const matrix = jacobian.map((row, i) => row.map((value, j) => (i === j ? 1 : 0) - h * GAMMA * value));
  const stages: State[] = [];
  for (let s = 0; s < 4; s++) {
    const at = y.map((value, i) => value + h * weighed(A[s] as number[], stages, i));
    const sum = y.map((_, i) => weighed(G[s] as number[], stages, i));
    const right = f(at).map((value, i) => value + h * dot(jacobian[i] as number[], sum));
    stages.push(solveLinear(matrix.map((row, i) => Float64Array.from([...row, right[i] as number]))));
  }
  return {
    next: y.map((value, i) => value + h * weighed(B, stages, i)),
    error: y.map((_, i) => h * (weighed(B, stages, i) - weighed(BH, stages, i))),
  };
}

function weighed(weights: readonly number[], stages: readonly State[], i: number): number {
  return stages.reduce((sum, stage, s) => sum + (weights[s] ?? 0) * (stage[i] as number), 0);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
}

function numericJacobian(f: (y: State) => State, y: State): number[][] {
  const columns = y.map((value, j) => {
    const step = 1e-6 * Math.max(Math.abs(value), 1e-12);
    const up = f(y.map((v, i) => (i === j ? v + step : v)));
    const down = f(y.map((v, i) => (i === j ? v - step : v)));
    return up.map((u, i) => (u - (down[i] as number)) / (2 * step));
  });
  return y.map((_, i) => columns.map((column) => column[i] as number));
}
