/**
 * Benchmark Simulation Model no. 1 from the plant's own modules against its published results: the open-loop results
 * sheet of 21 May 2009 (4 to 5 digits), the 15-digit MATLAB steady state held by bsm2-python's tests, the MATLAB
 * transient exported with EXPOsan, and the single reactor of bsm2-python's tests.
 */
import { describe, expect, it } from 'vitest';
import {
  ASM,
  ASM_SIZE,
  asm1Rates,
  asm1React,
  BSM1_15C,
  type Derivative,
  emptyStep,
  makeStepper,
  RATES,
  suspendedSolids,
} from '../../src/plant/index.ts';
import { BSM1_SIZE, bsm1, LAYERS, LOADS, SOLIDS, STABLE_INFLUENT, soluble, solubleAt } from './bsm1.ts';
import { DIGITS_15, INITIAL, INITIAL_LOADS, LAYERS_15, TABLE, TRANSIENT } from './bsm1Data.ts';
import { solveLinear } from './linear.ts';

/** Goes from t0 to t1, days, at a tolerance; the state is changed in place. */
function run(f: Derivative, y: Float64Array, t0: number, t1: number, rtol: number, counted = y.length): void {
  const atol = new Float64Array(y.length).fill(rtol / 10, 0, counted);
  const stepper = makeStepper(y.length, { rtol, atol, largest: 1, smallest: 1e-9 });
  const step = emptyStep(y.length);
  step.t1 = t0;
  step.y1.set(y);
  f(t0, y, step.f1);
  step.next = 1e-5;
  while (step.t1 < t1) {
    step.t0 = step.t1;
    step.y0.set(step.y1);
    step.f0.set(step.f1);
    stepper.step(f, step, step.next, t1);
  }
  y.set(step.y1);
}

function start(): Float64Array {
  const y = new Float64Array(BSM1_SIZE);
  INITIAL.forEach((reactor, k) => {
    y.set(reactor, k * ASM_SIZE);
  });
  y.set([10, 20, 40, 70, 200, 300, 350, 350, 2000, 4000], SOLIDS);
  const dissolved: Record<number, number> = { 0: 30, 1: 5, 7: 2, 8: 20, 9: 2, 10: 1, 12: 7 };
  for (let layer = 0; layer < LAYERS; layer++) {
    for (const i of soluble) y[solubleAt(layer, i)] = dissolved[i] as number;
  }
  y.set(INITIAL_LOADS, LOADS);
  return y;
}

function within(value: number, wanted: number, relative: number, name: string): void {
  expect(Math.abs(value - wanted), `${name}: ${value}, not ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

/** The steady state: from the start over a year, then Newton's method on what is left. */
function steady(): Float64Array {
  const f = bsm1();
  const y = start();
  run(f, y, 0, 300, 1e-6, LOADS);
  const n = LOADS;
  const rest = new Float64Array(BSM1_SIZE);
  const moved = new Float64Array(BSM1_SIZE);
  for (let pass = 0; pass < 4; pass++) {
    f(0, y, rest);
    const jacobian = Array.from({ length: n }, () => new Float64Array(n + 1));
    for (let j = 0; j < n; j++) {
      const was = y[j] as number;
      const h = 1e-6 * Math.max(Math.abs(was), 1e-3);
      y[j] = was + h;
      f(0, y, moved);
      y[j] = was;
      for (let i = 0; i < n; i++) (jacobian[i] as Float64Array)[j] = ((moved[i] as number) - (rest[i] as number)) / h;
    }
    for (let i = 0; i < n; i++) (jacobian[i] as Float64Array)[n] = -(rest[i] as number);
    const change = solveLinear(jacobian);
    for (let i = 0; i < n; i++) y[i] = (y[i] as number) + (change[i] as number);
  }
  return y;
}

describe('the single reactor (bsm2-python, 15 digits; 1e-6)', () => {
  it('washes its nitrifiers out at 1.7 h', () => {
    const r = new Float64Array(RATES);
    const f: Derivative = (_t, y, dy) => {
      for (let i = 0; i < ASM_SIZE; i++) dy[i] = (18446 / 1333) * ((STABLE_INFLUENT[i] as number) - (y[i] as number));
      asm1Rates(y, 0, BSM1_15C, r);
      asm1React(r, BSM1_15C, 1, dy, 0);
      dy[ASM.oxygen] = (dy[ASM.oxygen] as number) + 240 * (8 - (y[ASM.oxygen] as number));
    };
    const y = Float64Array.from(STABLE_INFLUENT);
    run(f, y, 0, 30, 1e-9);
    const wanted = [
      30, 63.8577381952497, 51.2, 195.543287548103, 36.1897495656497, 0, 0.0627660451102823, 7.32747877688682, 0,
      31.7048384340176, 6.49409298588329, 10.2557226521405, 7.01034560242983,
    ];
    wanted.forEach((want, i) => {
      within(y[i] as number, want, 1e-6, `component ${i}`);
    });
    within(suspendedSolids(y, 0), 212.246852369147, 1e-6, 'TSS');
  });
});

describe('the open-loop steady state', () => {
  const y = steady();
  const last = 4 * ASM_SIZE;
  const feed = suspendedSolids(y, last);
  const top = (y[SOLIDS] as number) / feed;

  it.each(TABLE)(
    '$name in every reactor, underflow and effluent (results sheet; 1e-4)',
    ({ name, component, columns }) => {
      const reactors = columns.slice(0, 5);
      reactors.forEach((want, k) => {
        within(y[k * ASM_SIZE + component] as number, want, 1e-4, `${name} reactor ${k + 1}`);
      });
      const carried = soluble.includes(component) ? 1 : undefined;
      const [under, out] = columns.slice(5) as [number, number];
      const bottom = (y[SOLIDS + 9] as number) / feed;
      within((y[last + component] as number) * (carried ?? bottom), under, 1e-4, `${name} underflow`);
      within((y[last + component] as number) * (carried ?? top), out, 1e-4, `${name} effluent`);
    },
  );

  it('15 digits of the effluent and of the settler’s layers (bsm2-python; 1e-6)', () => {
    DIGITS_15.forEach(([component, want]) => {
      const share = soluble.includes(component) ? 1 : top;
      within((y[last + component] as number) * share, want, 1e-6, `component ${component}`);
    });
    LAYERS_15.forEach((want, layer) => {
      within(y[SOLIDS + layer] as number, want, 1e-6, `layer ${layer + 1}`);
    });
  });
});

describe('the MATLAB transient from an odd start, with the package’s own lag of the loads (EXPOsan; 1e-4)', () => {
  const y = start();
  const f = bsm1(1e-4);
  let t = 0;
  it.each(TRANSIENT)('reactor 5 at %i d', (day, ...wanted) => {
    run(f, y, t, day, 1e-6);
    t = day;
    wanted.forEach((want, i) => {
      within(y[4 * ASM_SIZE + i] as number, want, 1e-4, `component ${i}`);
    });
  });
});
