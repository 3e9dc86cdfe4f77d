/** What must hold of the engine whatever a household, a fault or a person does. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ControlEventName } from '../../src/control/index.ts';
import { balance } from '../../src/plant/balance.ts';
import { type Draw, GALLON_m3, householdSource, listSource, steadyWeather } from '../../src/plant/index.ts';
import { Unit, type UnitFault } from '../../src/unit/index.ts';
import { bits, DAY, family, fault, HOUR, instants, made, NO_PUMP, setupOf } from './units.ts';

const GPM_m3s = GALLON_m3 / 60;

/** Draws that follow one another without a gap or with one, none above 12 gpm: any sum of fixtures up to there. */
const upTo12gpm = fc
  .array(
    fc.record({
      gap_s: fc.nat({ max: 4 * HOUR }),
      run_s: fc.integer({ min: 20, max: 8 * HOUR }),
      gpm: fc.integer({ min: 1, max: 12 }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((parts) => {
    let t = 0;
    return parts.map(({ gap_s, run_s, gpm }): Draw => {
      const start_s = t + gap_s;
      t = start_s + run_s;
      return { fixture: 'any', start_s, end_s: t, flow_m3s: gpm * GPM_m3s };
    });
  });

const FAULTS: readonly UnitFault[] = [
  NO_PUMP,
  fault('clogged', { plant: { filterFlow: 0.02 } }, { onset_s: 7 * HOUR, ramp_s: 30 * HOUR }),
  fault('leak', { plant: { lineHole_m: 0.006 } }, { onset_s: 5 * HOUR, ramp_s: 20 * HOUR }),
  fault(
    'caught',
    { control: { starts: ['stopFloat.heldDown'], ends: ['stopFloat.freed'] } },
    { present: { on_h: 6, off_h: 9 } },
  ),
  fault('shifted', { floats: { highWaterFloat: -0.6 }, clock_h: 3 }, { onset_s: 9 * HOUR }),
  fault(
    'outage',
    { control: { starts: ['supply.fails'], ends: ['supply.returns'] } },
    { onset_s: HOUR, present: { on_h: 3, off_h: 20 } },
  ),
];

const anySetup = fc
  .record({
    persons: fc.constantFrom(2 as const, 3 as const, 5 as const),
    seed: fc.nat({ max: 1e6 }),
    faults: fc.subarray([...FAULTS], { maxLength: 3 }),
    temperature_C: fc.integer({ min: 5, max: 30 }),
  })
  .map(({ persons, seed, faults, temperature_C }) =>
    setupOf(householdSource(family(persons), seed), faults, { seed, weather: steadyWeather(temperature_C) }),
  );

/** Something done at a whole millisecond. */
const actions = (end: number) =>
  fc
    .array(
      fc.record({
        at: fc.integer({ min: 1, max: end * 1000 - 1 }).map((ms) => ms / 1000),
        event: fc.constantFrom<ControlEventName>(
          'selector.hand',
          'selector.auto',
          'selector.off',
          'alarmBreaker.off',
          'alarmBreaker.on',
          'pumpBreaker.off',
          'pumpBreaker.on',
          'compressorBreaker.off',
          'compressorBreaker.on',
          'silence.pressed',
          'overrideFloat.lifted',
          'overrideFloat.released',
          'test.pressed',
          'test.released',
        ),
      }),
      { maxLength: 8 },
    )
    .map((list) => list.sort((a, b) => a.at - b.at));

const slices = (end: number) =>
  fc.array(fc.double({ min: 0, max: end, noNaN: true }), { maxLength: 30 }).map((s) => s.sort((a, b) => a - b));

describe('a sound unit with power', () => {
  it('never alarms for draws of at most 12 gallons a minute in sum', () => {
    fc.assert(
      fc.property(upTo12gpm, (draws) => {
        const end = (draws.at(-1)?.end_s ?? 0) + 2 * HOUR;
        const unit = made(setupOf(listSource(draws)), end);
        expect(instants(unit, 'lamp.on')).toEqual([]);
        expect(instants(unit, 'highWaterFloat.rises')).toEqual([]);
      }),
      { numRuns: 40, seed: 20310514 },
    );
  });

  it('rightly alarms for more than its own pump moves', () => {
    const unit = made(setupOf(listSource([], 15 * GPM_m3s)), 8 * HOUR);
    expect(instants(unit, 'lamp.on')).toHaveLength(1);
  });
});

describe('whatever happens', () => {
  it('water, COD, nitrogen and chlorine are accounted for to 1e-9 after every step and event', () => {
    let worst = 0;
    fc.assert(
      fc.property(anySetup, actions(2 * DAY), (setup, acts) => {
        const unit = new Unit(setup);
        const start = Float64Array.from(unit.y);
        unit.observer = ({ y }) => {
          worst = Math.max(worst, ...Object.values(balance(start, y)));
        };
        for (const { at, event } of acts) {
          unit.cutAt(at);
          unit.send(event);
        }
        unit.advance(2 * DAY);
        expect(worst).toBeLessThan(1e-9);
        for (const v of unit.y) expect(Number.isFinite(v)).toBe(true);
      }),
      { numRuns: 30, seed: 5 },
    );
    console.info(`worst balance error of 30 runs: ${worst}`);
  });

  it('time in slices gives the same bits as time in one go', () => {
    fc.assert(
      fc.property(anySetup, slices(2 * DAY), (setup, cuts) => {
        const whole = made(setup, 2 * DAY);
        const sliced = new Unit(setup);
        for (const t of cuts) sliced.advance(t);
        sliced.advance(2 * DAY);
        expect(bits(sliced)).toBe(bits(whole));
        expect(sliced.log).toEqual(whole.log);
      }),
      { numRuns: 25, seed: 6 },
    );
  });

  it('an action at its millisecond gives the same bits however time was sliced before it', () => {
    fc.assert(
      fc.property(anySetup, actions(DAY), slices(DAY), (setup, acts, cuts) => {
        const run = (display: readonly number[]) => {
          const unit = new Unit(setup);
          const wait = [...display];
          for (const { at, event } of acts) {
            while ((wait[0] ?? at) < at) unit.advance(wait.shift() ?? at);
            unit.cutAt(at);
            unit.send(event);
          }
          for (const t of wait) unit.advance(t);
          unit.advance(DAY);
          return { bits: bits(unit), log: unit.log };
        };
        expect(run(cuts)).toEqual(run([]));
      }),
      { numRuns: 25, seed: 8 },
    );
  });

  it('the time asked for lies between the last event and the horizon', () => {
    fc.assert(
      fc.property(anySetup, slices(DAY), (setup, cuts) => {
        const unit = new Unit(setup);
        for (const t of cuts) {
          unit.advance(t);
          expect(unit.t).toBeLessThanOrEqual(t);
          expect(unit.horizon()).toBeGreaterThanOrEqual(t);
        }
      }),
      { numRuns: 10, seed: 9 },
    );
  });
});
