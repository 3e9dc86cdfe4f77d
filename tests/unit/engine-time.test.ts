/**
 * Times the panel keeps, in seconds of the engine: those of the unit file, which are common practice without a source
 * where a wiring rule does not name them.
 */
import { describe, expect, it } from 'vitest';
import type { ControlEventName } from '../../src/control/index.ts';
import { householdSource, listSource } from '../../src/plant/index.ts';
import { Unit, type UnitFault } from '../../src/unit/index.ts';
import { DAY, family, fault, first, HOUR, instants, made, setupOf } from './units.ts';

const quiet = listSource([]);

/** A unit nobody uses, and what is done to it when. */
function played(
  until: number,
  acts: readonly (readonly [number, ControlEventName])[],
  faults: readonly UnitFault[] = [],
) {
  const unit = new Unit(setupOf(quiet, faults));
  for (const [at, event] of acts) {
    unit.cutAt(at);
    unit.send(event);
  }
  unit.advance(until);
  return unit;
}

describe('the alarm', () => {
  it('of low air comes 60 s after the circuit was powered again, also when air was low all along', () => {
    const unit = played(2 * HOUR, [
      [1000, 'compressor.stops'],
      [2000, 'alarmBreaker.off'],
      [2100.5, 'alarmBreaker.on'],
    ]);
    expect(instants(unit, 'lamp.off')).toEqual([2000]);
    expect(instants(unit, 'lamp.on').at(-1)).toBe(2160.5);
  });

  it('is dark after an outage and lit again within the delay and 10 s if the fault stands', () => {
    const unit = played(2 * HOUR, [
      [1000, 'compressor.stops'],
      [2000, 'supply.fails'],
      [2600, 'supply.returns'],
    ]);
    const lit = instants(unit, 'lamp.on').at(-1) ?? 0;
    expect(lit).toBeGreaterThanOrEqual(2660);
    expect(lit).toBeLessThanOrEqual(2670);
  });

  it('stays dark after an outage that took away nothing but the air', () => {
    const unit = played(2 * HOUR, [
      [1000, 'supply.fails'],
      [4000, 'supply.returns'],
    ]);
    expect(instants(unit, 'air.rises')).toEqual([4000]);
    expect(instants(unit, 'lamp.on')).toEqual([]);
  });

  it('is dialled after 5 min, then every 24 h while nobody comes', () => {
    const unit = played(3 * DAY, [[1000, 'latch.surge']]);
    const dialled = [1300, 1300 + DAY, 1300 + 2 * DAY];
    expect(instants(unit, 'dialled')).toEqual(dialled);
    expect(unit.registers.dialled).toBe(3);
  });

  it('broken in its fifth minute is dialled 5 min after it came back', () => {
    const unit = played(HOUR, [
      [1000, 'latch.surge'],
      [1290, 'alarmBreaker.off'],
      [1291, 'alarmBreaker.on'],
      [1400, 'latch.surge'],
    ]);
    expect(instants(unit, 'dialled')).toEqual([1700]);
  });
});

describe('thermal switches', () => {
  it('a seized pump in Hand hums 20 s, rests 10 min, and hums again', () => {
    const unit = played(3000, [
      [100, 'rotor.seizes'],
      [1000, 'selector.hand'],
    ]);
    expect(instants(unit, 'protector.hot')).toEqual([1020, 1640, 2260, 2880]);
    expect(instants(unit, 'protector.cool')).toEqual([1620, 2240, 2860]);
    expect(instants(unit, 'pumpRuns.on')).toEqual([]);
  });

  it('a compressor in a hot housing runs an hour, rests half an hour, and starts by itself', () => {
    const unit = played(3 * HOUR, [[1000, 'housing.heats']]);
    expect(instants(unit, 'compressorRuns.off')).toEqual([4600, 10_000]);
    expect(instants(unit, 'compressorRuns.on')).toEqual([6400]);
  });
});

describe('the timer', () => {
  const ran = (unit: Unit) => instants(unit, 'timer.start').map((t) => t / HOUR);
  const wet = (faults: readonly UnitFault[], days: number) =>
    made(setupOf(householdSource(family(5), 42), faults, { seed: 42 }), days * DAY);

  it('doses at its hours, at most 9 min each', () => {
    const unit = wet([], 8);
    expect(ran(unit).length).toBeGreaterThan(15);
    for (const hour of ran(unit)) expect([0, 1, 2, 3, 4]).toContain(hour % 24);
    for (const ends of instants(unit, 'dose.ends')) {
      expect(ends - (instants(unit, 'timer.start').findLast((t) => t < ends) ?? 0)).toBe(540);
    }
  });

  it('lives through an outage on its reserve of a day, and no longer', () => {
    const short = played(4 * DAY, [
      [DAY + HOUR, 'supply.fails'],
      [2 * DAY + HOUR - 1, 'supply.returns'],
    ]);
    expect(short.control.regions.timerClock).toBe('keeping');
    const long = played(4 * DAY, [
      [DAY + HOUR, 'supply.fails'],
      [2 * DAY + HOUR + 1, 'supply.returns'],
    ]);
    expect(instants(long, 'timer.reserveEnds')).toEqual([2 * DAY + HOUR]);
    expect(long.control.regions.timerClock).toBe('lost');
  });

  it('misses the starts of an outage and goes on after it', () => {
    const outage = fault(
      'outage',
      { control: { starts: ['supply.fails'], ends: ['supply.returns'] } },
      { onset_s: 2 * DAY + 23 * HOUR, present: { on_h: 6, off_h: 1e6 } },
    );
    const unit = wet([outage], 5);
    const back = first(unit, 'supply.returns') / HOUR;
    expect(back - 71).toBeGreaterThan(2);
    expect(back - 71).toBeLessThan(24);
    for (const hour of ran(unit)) expect(hour < 71 || hour > back, `${hour} h`).toBe(true);
    expect(ran(unit).at(-1)).toBeGreaterThan(back);
  });

  it('misset by nine hours, ahead or behind, doses by day, and by night again once it is set', () => {
    for (const clock_h of [9, -9]) {
      const unit = wet([fault('misset', { clock_h }, { onset_s: 2 * DAY + 12.5 * HOUR })], 5);
      for (const hour of ran(unit)) {
        const panel = (((hour > 60 ? hour + clock_h : hour) % 24) + 24) % 24;
        expect([0, 1, 2, 3, 4], `${hour} h`).toContain(panel);
      }
      unit.cutAt(5 * DAY);
      const before = ran(unit).length;
      unit.mend('misset');
      unit.setClock(0);
      expect(unit.clockAhead()).toBe(0);
      unit.advance(8 * DAY);
      expect(ran(unit).length).toBeGreaterThan(before);
      for (const hour of ran(unit).slice(before)) expect([0, 1, 2, 3, 4]).toContain(hour % 24);
    }
  });

  it('set while it goes wrong shows what it was set to, then goes on going wrong', () => {
    const unit = wet([fault('misset', { clock_h: 6 }, { ramp_s: 6 * DAY })], 2);
    unit.cutAt(2 * DAY);
    expect(unit.clockAhead()).toBeCloseTo(2 * HOUR, 6);
    unit.setClock(0);
    expect(unit.clockAhead()).toBeCloseTo(0, 6);
    unit.cutAt(4 * DAY);
    expect(unit.clockAhead()).toBeCloseTo(2 * HOUR, 6);
  });

  it('that drifts starts when its own clock says so: nine hours gained in six days', () => {
    const unit = wet([fault('misset', { clock_h: 9 }, { ramp_s: 6 * DAY })], 8);
    expect(ran(unit).length).toBeGreaterThan(15);
    for (const hour of ran(unit)) {
      const panel = hour + Math.min(9, (9 * hour) / 144);
      expect(Math.abs(panel - Math.round(panel)), `${hour} h`).toBeLessThan(1e-9);
      expect([0, 1, 2, 3, 4]).toContain(Math.round(panel) % 24);
    }
  });

  it('that runs backwards comes to no start, and goes on from where it then stands', () => {
    const back = fault('misset', { clock_h: -9 }, { onset_s: 2 * DAY + 1800, ramp_s: HOUR });
    const unit = wet([back], 4);
    const after = ran(unit).filter((hour) => hour > 48.5);
    expect(after.length).toBeGreaterThan(2);
    for (const hour of after) {
      expect(hour).toBeGreaterThan(49.5);
      expect([0, 1, 2, 3, 4]).toContain((hour + 15) % 24);
    }
  });
});

describe('the pump', () => {
  it('counts its starts and its seconds', () => {
    const unit = played(2 * HOUR, [
      [1000, 'selector.hand'],
      [1060, 'selector.off'],
      [2000, 'selector.hand'],
      [2030.5, 'selector.auto'],
    ]);
    expect(unit.registers.pumpCycles).toBe(2);
    expect(instants(unit, 'pumpRuns.on')).toEqual([1000, 2000]);
  });

  it('started by the override by day takes nothing from the night', () => {
    const source = listSource([{ fixture: 'any', start_s: 10 * HOUR, end_s: 18 * HOUR, flow_m3s: 3e-4 }], 1e-5);
    const unit = made(setupOf(source), 2 * DAY);
    expect(instants(unit, 'overrideFloat.rises').length).toBeGreaterThan(5);
    expect(first(unit, 'overrideFloat.rises')).toBeLessThan(18 * HOUR);
    const night = instants(unit, 'timer.start').filter((t) => t >= DAY && t < 2 * DAY);
    expect(night).toEqual([24, 25, 26, 27, 28].map((h) => h * HOUR).slice(0, night.length));
    expect(night.length).toBeGreaterThan(3);
  });
});
