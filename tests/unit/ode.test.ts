/** The integrator: its order, its free cubic, its manners at an end, and what it does with equations gone wrong. */
import { describe, expect, it } from 'vitest';
import {
  cos,
  type Derivative,
  emptyStep,
  exp,
  interpolate,
  makeStepper,
  type Step,
  StepTooSmall,
} from '../../src/plant/index.ts';

const LOOSE = { rtol: 1e9, atol: Float64Array.of(1e9), largest: 1e9, smallest: 1e-12 };

/** y' = y cos t from 1, so y = e^sin t: at pi/2 it is e. */
const swing: Derivative = (t, y, dy) => {
  dy[0] = (y[0] as number) * cos(t);
};
const HALF_PI = Math.PI / 2;

function begin(y0: readonly number[], derivative: Derivative, t0 = 0): Step {
  const step = emptyStep(y0.length);
  step.t0 = t0;
  step.y0.set(y0);
  derivative(t0, step.y0, step.f0);
  return step;
}

/** Equal steps to an end, no error control. */
function march(derivative: Derivative, y0: readonly number[], end: number, steps: number): number {
  const stepper = makeStepper(y0.length, LOOSE);
  const step = begin(y0, derivative);
  for (let k = 1; k <= steps; k++) {
    stepper.step(derivative, step, 2 * end, (end * k) / steps);
    step.t0 = step.t1;
    step.y0.set(step.y1);
    step.f0.set(step.f1);
  }
  return step.y1[0] as number;
}

describe('the Bogacki-Shampine pair', () => {
  /** Source: Bogacki and Shampine 1989: order 3, so half the step leaves an eighth of the error. Observed 8.1 to 8.5. */
  it('has order three: half the step, an eighth of the error', () => {
    const error = (steps: number) => Math.abs(march(swing, [1], HALF_PI, steps) - exp(1));
    for (const steps of [16, 32, 64, 128]) {
      expect(error(steps) / error(2 * steps)).toBeGreaterThan(7);
      expect(error(steps) / error(2 * steps)).toBeLessThan(9);
    }
  });

  it('is exact for a cubic in time (1e-13)', () => {
    const cubic: Derivative = (t, _y, dy) => {
      dy[0] = 3 * t * t - 4 * t + 1;
    };
    const step = begin([2], cubic);
    makeStepper(1, LOOSE).step(cubic, step, 3, Number.POSITIVE_INFINITY);
    expect(step.t1).toBe(3);
    expect(step.y1[0]).toBeCloseTo(2 + 27 - 18 + 3, 12);
    for (const t of [0.1, 1.5, 2.9]) {
      expect(interpolate(step, t, new Float64Array(1))[0]).toBeCloseTo(2 + t * t * t - 2 * t * t + t, 12);
    }
  });

  it('keeps the error near what was asked: decay over ten time constants, error below 20 rtol', () => {
    const decay: Derivative = (_t, y, dy) => {
      dy[0] = -(y[0] as number);
    };
    for (const rtol of [1e-4, 1e-6, 1e-8]) {
      const stepper = makeStepper(1, { ...LOOSE, rtol, atol: Float64Array.of(1e-12) });
      const step = begin([1], decay);
      step.next = 0.01;
      while (step.t1 < 10) {
        stepper.step(decay, step, step.next, 10);
        step.t0 = step.t1;
        step.y0.set(step.y1);
        step.f0.set(step.f1);
      }
      expect(Math.abs((step.y1[0] as number) / exp(-10) - 1)).toBeLessThan(20 * rtol);
    }
  });

  it('asks for three derivatives a step, the last of which is the next first', () => {
    let calls = 0;
    const counted: Derivative = (t, y, dy) => {
      calls += 1;
      swing(t, y, dy);
    };
    const step = begin([1], swing);
    makeStepper(1, LOOSE).step(counted, step, 0.1, Number.POSITIVE_INFINITY);
    expect(calls).toBe(3);
    const slope = new Float64Array(1);
    swing(step.t1, step.y1, slope);
    expect(step.f1[0]).toBe(slope[0]);
  });

  it('leaves what has no tolerance (ledgers) out of the error', () => {
    const pair: Derivative = (t, _y, dy) => {
      dy[0] = 1;
      dy[1] = 1e6 * cos(50 * t);
    };
    const size = (atol: number) => {
      const stepper = makeStepper(2, { ...LOOSE, rtol: 1e-6, atol: Float64Array.of(1e-6, atol) });
      const step = begin([0, 0], pair);
      stepper.step(pair, step, 1, 1);
      return step.t1;
    };
    expect(size(0)).toBe(1);
    expect(size(1e-6)).toBeLessThan(0.1);
  });
});

describe('a step', () => {
  it('ends exactly where it must and still says how long it would like to be', () => {
    const step = begin([1], swing);
    makeStepper(1, LOOSE).step(swing, step, 0.5, 0.1 + 0.2);
    expect(step.t1).toBe(0.1 + 0.2);
    expect(step.next).toBeGreaterThanOrEqual(0.5);
  });

  it('is never longer than the longest', () => {
    const step = begin([1], swing);
    makeStepper(1, { ...LOOSE, largest: 0.25 }).step(swing, step, 99, Number.POSITIVE_INFINITY);
    expect(step.t1).toBe(0.25);
  });

  it('stops with an error when the equations give no number or run away, and names the instant', () => {
    const rules = { rtol: 1e-6, atol: Float64Array.of(1e-9), largest: 1, smallest: 1e-6 };
    const lost: Derivative = (_t, _y, dy) => {
      dy[0] = Number.NaN;
    };
    const step = begin([1], lost, 77);
    expect(() => makeStepper(1, rules).step(lost, step, 1, 100)).toThrow(StepTooSmall);
    expect(() => makeStepper(1, rules).step(lost, step, 1, 100)).toThrow(/t = 77 s/);
    const runaway: Derivative = (_t, y, dy) => {
      dy[0] = (y[0] as number) * (y[0] as number);
    };
    const away = begin([1], runaway);
    const stepper = makeStepper(1, rules);
    expect(() => {
      for (away.next = 0.1; away.t1 < 2; ) {
        stepper.step(runaway, away, away.next, 2);
        away.t0 = away.t1;
        away.y0.set(away.y1);
        away.f0.set(away.f1);
      }
    }).toThrow(StepTooSmall);
    expect(Math.abs(away.t0 - 1)).toBeLessThan(1e-2);
  });
});

describe('between the ends of a step', () => {
  const middle = (h: number) => {
    const step = begin([1], swing);
    makeStepper(1, LOOSE).step(swing, step, h, h);
    return step;
  };

  it('meets state and slope at both ends', () => {
    const step = middle(0.3);
    const at = (t: number) => interpolate(step, t, new Float64Array(1))[0] as number;
    expect(at(0)).toBe(step.y0[0]);
    expect(at(step.t1)).toBeCloseTo(step.y1[0] as number, 15);
    expect((at(1e-6) - at(0)) / 1e-6).toBeCloseTo(step.f0[0] as number, 5);
    expect((at(step.t1) - at(step.t1 - 1e-6)) / 1e-6).toBeCloseTo(step.f1[0] as number, 5);
  });

  /** A cubic through two points and slopes is off by h^4: half the step, a sixteenth of the error. Observed 15.97 to 15.99. */
  it('has order four within a step: half the step, a sixteenth of the error', () => {
    const decay: Derivative = (_t, y, dy) => {
      dy[0] = -(y[0] as number);
    };
    const error = (h: number) => {
      const step = begin([1], decay);
      makeStepper(1, LOOSE).step(decay, step, h, h);
      return Math.abs((interpolate(step, h / 2, new Float64Array(1))[0] as number) - exp(-h / 2));
    };
    for (const h of [0.4, 0.2, 0.1]) {
      const ratio = error(h) / error(h / 2);
      expect(ratio).toBeGreaterThan(14);
      expect(ratio).toBeLessThan(18);
    }
  });

  it('loses nothing: what leaves one state arrives in the other (1e-15)', () => {
    const passing: Derivative = (_t, y, dy) => {
      dy[0] = -0.7 * (y[0] as number);
      dy[1] = 0.7 * (y[0] as number);
    };
    const step = begin([1, 0], passing);
    makeStepper(2, { ...LOOSE, atol: Float64Array.of(1e9, 1e9) }).step(passing, step, 1, 1);
    for (const t of [0.1, 0.37, 0.5, 0.93]) {
      const [a = 0, b = 0] = interpolate(step, t, new Float64Array(2));
      expect(Math.abs(a + b - 1)).toBeLessThan(1e-15);
    }
  });
});
