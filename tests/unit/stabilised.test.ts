/** The stabilised integrator of the processes: its order, its reach into stiffness, and the bound it is told of theirs. */
import { describe, expect, it } from 'vitest';
import {
  cos,
  type Derivative,
  emptyStep,
  exp,
  makeStabilised,
  PROCESS,
  PROCESS_SIZE,
  SOLVED,
  type Stepper,
} from '../../src/plant/index.ts';
import { Unit } from '../../src/unit/index.ts';
import { DAY, HOUR, lived } from './units.ts';

const LOOSE = { rtol: 1e9, atol: Float64Array.of(1e9), largest: 1e9, smallest: 1e-12 };

/** Equal steps to an end. */
function march(stepper: Stepper, derivative: Derivative, y0: number, end: number, steps: number): number {
  const step = emptyStep(1);
  step.y0[0] = y0;
  derivative(0, step.y0, step.f0);
  for (let k = 1; k <= steps; k++) {
    stepper.step(derivative, step, end, (end * k) / steps);
    step.t0 = step.t1;
    step.y0.set(step.y1);
    step.f0.set(step.f1);
  }
  return step.y1[0] as number;
}

describe('the stabilised method', () => {
  /** y' = y cos t from 1, so y = e^sin t. Order 2 (Sommeijer, Shampine, Verwer 1998): half the step, a quarter of the error. */
  it.each([0, 40, 400])('has order two, with the stages of a radius of %d', (radius) => {
    const swing: Derivative = (t, y, dy) => {
      dy[0] = (y[0] as number) * cos(t);
    };
    const error = (steps: number) =>
      Math.abs(
        march(
          makeStabilised(1, LOOSE, () => radius),
          swing,
          1,
          Math.PI / 2,
          steps,
        ) - exp(1),
      );
    for (const steps of [32, 64, 128]) {
      expect(error(steps) / error(2 * steps)).toBeGreaterThan(3.1);
      expect(error(steps) / error(2 * steps)).toBeLessThan(4.7);
    }
  });

  it('is exact for a parabola in time, at every number of stages (1e-12)', () => {
    const parabola: Derivative = (t, _y, dy) => {
      dy[0] = 2 * t + 1;
    };
    for (const radius of [0, 5, 50, 500, 1000]) {
      expect(
        march(
          makeStabilised(1, LOOSE, () => radius),
          parabola,
          2,
          0.3,
          1,
        ),
      ).toBeCloseTo(2 + 0.09 + 0.3, 11);
    }
  });

  /** y' = -1000 y: a plain explicit step of 0.1 would multiply it by hundreds; with its stages it stays bounded and decays. */
  it('damps what falls off a hundred times faster than its step', () => {
    const decay: Derivative = (_t, y, dy) => {
      dy[0] = -1000 * (y[0] as number);
    };
    const left = march(
      makeStabilised(1, LOOSE, () => 1000),
      decay,
      1,
      1,
      10,
    );
    expect(Math.abs(left)).toBeLessThan(0.5);
  });

  it('takes no more derivatives than its stages', () => {
    let calls = 0;
    const counted: Derivative = (_t, y, dy) => {
      calls += 1;
      dy[0] = -(y[0] as number);
    };
    march(
      makeStabilised(1, LOOSE, () => 700),
      counted,
      1,
      1 / 48,
      1,
    );
    expect(calls).toBe(1 + 5);
  });
});

/** Largest rate at which a disturbance of the processes grows or fades, 1/d, by repeated differences (power iteration). */
function radiusOf(unit: Unit): { readonly measured: number; readonly told: number } {
  const { process } = unit.passage;
  const y0 = unit.y.slice(PROCESS, PROCESS + PROCESS_SIZE);
  const at = new Float64Array(PROCESS_SIZE);
  const moved = new Float64Array(PROCESS_SIZE);
  process.derivative(0, y0, at);
  const told = process.radius();
  const along = Float64Array.from({ length: SOLVED }, (_, i) => cos(7 * i));
  let measured = 0;
  for (let turn = 0; turn < 200; turn++) {
    const length = Math.sqrt(along.reduce((sum, x) => sum + x * x, 0));
    const y = y0.map((value, i) => value + (i < SOLVED ? (1e-4 * (along[i] as number)) / length : 0));
    process.derivative(0, y, moved);
    for (let i = 0; i < SOLVED; i++) along[i] = ((moved[i] as number) - (at[i] as number)) / 1e-4;
    measured = Math.sqrt(along.reduce((sum, x) => sum + x * x, 0));
  }
  return { measured, told };
}

describe('the bound of the processes’ spectral radius', () => {
  it.each([3, 8, 19])('covers a healthy unit at %d o’clock, and not by more than three times', (hour) => {
    const unit = new Unit(lived(5, 42));
    unit.cutAt(20 * DAY + hour * HOUR);
    const { measured, told } = radiusOf(unit);
    expect(told).toBeGreaterThan(0.9 * measured);
    expect(told).toBeLessThan(3 * measured);
  });

  it('covers a unit without air and one that gets it back', () => {
    const unit = new Unit(lived(3, 42));
    unit.cutAt(20 * DAY);
    unit.send('compressor.stops');
    unit.cutAt(22 * DAY);
    expect(radiusOf(unit).told).toBeGreaterThan(0.9 * radiusOf(unit).measured);
    unit.send('compressor.mended');
    unit.cutAt(22 * DAY + 600);
    expect(radiusOf(unit).told).toBeGreaterThan(0.9 * radiusOf(unit).measured);
  });
});
