/** How near the engine's events come to the true instants: against tight steps, and against the balance of volumes. */
import { describe, expect, it } from 'vitest';
import {
  type Drive,
  emptyStep,
  evenLoadDay,
  GALLON_m3,
  levelOf,
  lineState,
  listSource,
  makeStepper,
  makeWorks,
  pumpLevel,
  SOUND,
  STEPPED,
  tolerances,
  VOLUME,
} from '../../src/plant/index.ts';
import { Unit, type UnitSetup } from '../../src/unit/index.ts';
import { DAY, floatsOfU1, HOUR, lived, NO_PUMP, u1 } from './units.ts';

const spec = u1();
const { pump, riser, trash } = spec.plant;
const pumpTank = (y: Float64Array) => pumpLevel(pump, riser, y[VOLUME.pump] ?? 0) - pump.floor_m;
const trashTank = (y: Float64Array) => levelOf(trash, y[VOLUME.trash] ?? 0);

/** The same works under steps a thousand times finer in tolerance, driven from outside. */
class Tight {
  readonly works = makeWorks(spec.plant);
  readonly drive: Drive = {
    inflow_m3s: 0,
    seep_m3s: 0,
    pumpRuns: false,
    compressorRuns: true,
    ultravioletLit: false,
    condition: SOUND,
    line: lineState(this.works.line, SOUND),
    returned_m3s: 0,
    temperature_C: 20,
    humidity: 0.5,
  };
  /** Water let into the pump tank past all chambers, m3/s. */
  straight_m3s = 0;
  readonly y: Float64Array;
  t = 0;
  private readonly rules = { rtol: 1e-9, atol: tolerances().map((a) => a / 1000), largest: 30, smallest: 1e-9 };
  private readonly stepper = makeStepper(STEPPED, this.rules);
  private readonly step = emptyStep(STEPPED);

  constructor(y0: Float64Array) {
    this.y = y0.slice(0, STEPPED);
  }

  to(end: number): void {
    const derivative = (_t: number, y: Float64Array, dy: Float64Array) => {
      this.works.derivative(this.drive, y, dy);
      dy[VOLUME.pump] = (dy[VOLUME.pump] ?? 0) + this.straight_m3s;
    };
    for (let h = 0.01; this.t < end; ) {
      this.step.t0 = this.t;
      this.step.y0.set(this.y);
      derivative(this.t, this.y, this.step.f0);
      this.stepper.step(derivative, this.step, h, end);
      h = this.step.next;
      this.t = this.step.t1;
      this.y.set(this.step.y1);
    }
  }
}

/**
 * A unit's switchings, imposed on tight steps: how far from its height each float is where the engine turned it, m.
 * Heights are compared, since at the slowest rise, a night's leak, a hundredth of a millimetre of water takes seconds.
 */
function astray(setup: UnitSetup, days: number): readonly number[] {
  const unit = new Unit(setup);
  const tight = new Tight(unit.y);
  unit.advance(days * DAY);
  const { source } = setup;
  const watched = unit.switches.watches.filter((w) => w.quantity === 'pumpTank');
  const off: number[] = [];
  for (const { t, what } of unit.log) {
    while (tight.t < t) {
      tight.drive.inflow_m3s = source.flowAt(tight.t);
      tight.to(Math.min(t, source.nextEdge(tight.t)));
    }
    for (const watch of watched) {
      if (what === watch.rises) off.push(pumpTank(tight.y) - watch.upper);
      if (what === watch.falls) off.push(pumpTank(tight.y) - watch.lower);
    }
    if (what === 'pumpRuns.on') tight.drive.pumpRuns = true;
    if (what === 'pumpRuns.off') tight.drive.pumpRuns = false;
  }
  return off.map(Math.abs);
}

describe('a float turns where the water is at its height (0.02 mm; observed 0.009)', () => {
  it.each([
    ['3 persons', lived(3, 42), 10, 20],
    ['5 persons', lived(5, 7), 10, 20],
    ['5 persons and no pump, up to the inlet', lived(5, 42, [NO_PUMP]), 2, 3],
  ] as const)('%s', (_name, setup, days, floats) => {
    const off = astray(setup, days);
    expect(off.length).toBeGreaterThan(floats);
    expect(Math.max(...off)).toBeLessThan(2e-5);
  });
});

/** Closed form: an even load brings a volume; here it goes straight into the pump tank, past every chamber. Observed within 0.4 %. */
describe('a pump tank fed straight, with no pump', () => {
  const AT_STOP_m3 = floatsOfU1().stopFloat.breaks_m * pump.area_m2;
  const heights = [
    ['override', pumpTank, floatsOfU1().overrideFloat.makes_m],
    ['alarm', pumpTank, floatsOfU1().highWaterFloat.makes_m],
    ['inlet', pumpTank, pump.inlet_m - pump.floor_m],
    ['clean-out', trashTank, spec.plant.cleanOut_m],
  ] as const;

  it.each([
    [277, [37.8, 50.4, 61.4, 103.6]],
    [500, [25.2, 26.7, 32.4, 55.6]],
  ])('at %d gal a day reaches override, alarm, inlet and clean-out at %j h (2 percent)', (daily, hours) => {
    const source = listSource([0, 1, 2, 3, 4].flatMap((day) => evenLoadDay(daily * GALLON_m3, day)));
    const tight = new Tight(new Unit(lived(3, 1)).y);
    tight.y[VOLUME.pump] = AT_STOP_m3;
    tight.t = 5 * HOUR;
    for (const [i, [name, level, height]] of heights.entries()) {
      while (level(tight.y) < height) {
        tight.straight_m3s = source.flowAt(tight.t);
        tight.to(Math.min(tight.t + 60, source.nextEdge(tight.t)));
      }
      const found = tight.t / HOUR - 5;
      expect(Math.abs(found / (hours[i] ?? 0) - 1), `${name} at ${found} h`).toBeLessThan(0.02);
    }
  });
});
