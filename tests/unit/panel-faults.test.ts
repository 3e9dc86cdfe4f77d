/**
 * What faults of supply, panel and floats do to a living unit: one sentence a test. The sentences are the trade's
 * (common practice, no source); the times are those of the units' own files.
 */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import type { ControlEventName } from '../../src/control/index.ts';
import { faultOn } from '../../src/faults/index.ts';
import { householdSource, listSource, steadyWeather } from '../../src/plant/index.ts';
import { Unit, type UnitFault, type UnitSpec } from '../../src/unit/index.ts';
import { DAY, family, HOUR, instants } from './units.ts';

const NOON = 12 * HOUR;

function spec(id: string): UnitSpec {
  const found = shippedLibrary().units.get(id);
  if (!found) throw new Error(`no unit ${id}`);
  return found;
}

function has(unit: UnitSpec, id: string, part?: string, more: Partial<UnitFault> = {}): UnitFault {
  const placed = faultOn(unit, id, part);
  if (!placed) throw new Error(`${unit.id} has no ${id} ${part ?? ''}`);
  return {
    id: placed.key,
    effect: placed.effect,
    onset_s: NOON,
    severity: placed.severity,
    ramp_s: 0,
    present: 'always',
    ...more,
  };
}

interface Hand {
  readonly at: number;
  readonly does: ControlEventName | ((unit: Unit) => void);
}

/** A family's unit with faults from the first noon on, what hands do to it, until so many days. */
function living(on: UnitSpec, faults: readonly UnitFault[], days: number, hands: readonly Hand[] = []): Unit {
  const unit = new Unit({
    spec: on,
    source: householdSource(family(4), 42),
    faults,
    seed: 42,
    weather: steadyWeather(20),
  });
  for (const { at, does } of hands) {
    unit.cutAt(at);
    if (typeof does === 'string') unit.send(does);
    else does(unit);
  }
  unit.advance(days * DAY);
  return unit;
}

const nights = (times: readonly number[]) => [
  ...new Set(times.filter((t) => t % DAY < 5 * HOUR).map((t) => Math.floor(t / DAY))),
];

describe('supply', () => {
  const long = has(spec('u1'), 'outage');
  const back = { at: NOON + 25 * HOUR, does: (u: Unit) => u.mend('outage') };

  it('gone for 25 h outlives the reserve of a digital clock: it blinks and no night doses until it is set', () => {
    const unit = living(spec('u1'), [long], 5.5, [back, { at: 4 * DAY + NOON, does: (u) => u.setClock(0) }]);
    expect(nights(instants(unit, 'timer.start').filter((t) => t > NOON))).toEqual([5]);
    expect(instants(unit, 'overrideFloat.rises').length).toBeGreaterThan(0);
  });

  it('gone for 25 h makes a mechanical clock late by the hour that it stood', () => {
    const dosing = spec('u1').panel.dosing;
    if (dosing.kind !== 'night') throw new Error('U1 doses at night');
    const mechanical: UnitSpec = {
      ...spec('u1'),
      panel: { ...spec('u1').panel, dosing: { ...dosing, clock: 'mechanical' } },
    };
    const unit = living(mechanical, [long], 4, [back]);
    expect(unit.clockAhead()).toBeCloseTo(-HOUR, 3);
    const starts = instants(unit, 'timer.start').filter((t) => t > 2 * DAY);
    expect(starts[0]).toBeCloseTo(2 * DAY + HOUR, 3);
  });

  it('gone for 2 h leaves the clock its reserve', () => {
    const unit = living(spec('u1'), [long], 2, [{ at: NOON + 2 * HOUR, does: (u) => u.mend('outage') }]);
    expect(unit.clockAhead()).toBe(0);
    expect(unit.control.regions.timerClock).toBe('keeping');
  });

  it('that sags cuts each dose short: the motor labours, its protector opens after 8 min and closes after 10', () => {
    const unit = living(spec('u1'), [has(spec('u1'), 'low-voltage')], 2);
    const on = instants(unit, 'pumpRuns.on').find((t) => t > DAY) ?? 0;
    const off = instants(unit, 'pumpRuns.off').find((t) => t > on) ?? 0;
    expect(off - on).toBeCloseTo(480, 3);
  });
});

describe('breakers', () => {
  it('one that tripped once holds when it is put off and on; one on a short trips again at each on', () => {
    const reset: Hand[] = [
      { at: NOON + HOUR, does: 'pumpBreaker.off' },
      { at: NOON + HOUR + 60, does: 'pumpBreaker.on' },
    ];
    const once = living(spec('u1'), [has(spec('u1'), 'breaker-tripped', 'pumpBreaker')], 1, reset);
    expect(once.control.regions.pumpBreaker).toBe('on');
    const again = living(spec('u1'), [has(spec('u1'), 'breaker-retrips', 'pumpBreaker')], 1, reset);
    expect(again.control.regions.pumpBreaker).toBe('tripped');
  });

  it('the pump’s holds on a chafed cord while nothing calls for the pump, and trips at the first dose', () => {
    const unit = living(spec('u1'), [has(spec('u1'), 'pump-cord-chafed')], 2);
    expect(instants(unit, 'pumpRuns.on').filter((t) => t > NOON)).toEqual([]);
    expect(unit.control.regions.pumpBreaker).toBe('tripped');
    const firstDose = instants(unit, 'timer.start').find((t) => t > NOON);
    expect(firstDose).toBe(DAY);
  });

  it('the outlet of U2 trips in place of the breaker, and does not stay set on a chafed cord', () => {
    const unit = living(spec('u2'), [has(spec('u2'), 'cord-chafed')], 1, [{ at: NOON + HOUR, does: 'gfci.reset' }]);
    expect(unit.control.regions).toMatchObject({ gfci: 'tripped', compressorBreaker: 'on' });
    expect(instants(unit, 'lamp.on').length).toBe(1);
  });
});

describe('lamps', () => {
  it('a dead one hides a true alarm: only the buzzer tells, and once silenced nothing does', () => {
    const pair = [has(spec('u1'), 'lamp-dead'), has(spec('u1'), 'compressor-stopped')];
    const unit = living(spec('u1'), pair, 1, [{ at: NOON + HOUR, does: 'silence.pressed' }]);
    expect(instants(unit, 'lamp.on')).toEqual([]);
    expect(instants(unit, 'buzzer.on').length).toBe(1);
    expect(unit.control.outputs).toMatchObject({ alarm: true, lamp: false, buzzer: false });
    expect(unit.registers.dialled).toBe(1);
  });

  it('of U3 tell air from water, and a dead ultraviolet lamp lights the air lamp after a minute', () => {
    const unit = living(spec('u3'), [has(spec('u3'), 'uv-lamp-out')], 1);
    expect(unit.control.outputs).toMatchObject({ airLamp: true, waterLamp: false });
    expect(instants(unit, 'lampOut.due')).toEqual([NOON + 60]);
    const wet = living(spec('u3'), [has(spec('u3'), 'panel-wet')], 1);
    expect(wet.control.outputs).toMatchObject({ airLamp: false, waterLamp: true });
  });

  it('of U2 goes out by itself when the air is back; that of U1 stays', () => {
    for (const [id, stays] of [
      ['u1', true],
      ['u2', false],
    ] as const) {
      const unit = living(spec(id), [has(spec(id), 'compressor-unplugged')], 1, [
        { at: NOON + HOUR, does: 'compressorCord.plugged' },
      ]);
      expect(instants(unit, 'lamp.on').length, id).toBe(1);
      expect(unit.control.outputs.lamp, id).toBe(stays);
    }
  });

  it('a hot housing lets a reset look like a cure: the alarm comes back within two hours', () => {
    const unit = living(spec('u1'), [has(spec('u1'), 'housing-hot')], 1, [
      { at: NOON + 90 * 60, does: 'alarmBreaker.off' },
      { at: NOON + 91 * 60, does: 'alarmBreaker.on' },
    ]);
    const lit = instants(unit, 'lamp.on');
    expect(lit.length).toBeGreaterThanOrEqual(2);
    expect((lit[1] ?? 0) - (lit[0] ?? 0)).toBeLessThan(2 * HOUR);
  });
});

describe('floats', () => {
  it('with the leads of override and high water swapped the lamp comes on at the override’s height, and nothing pumps', () => {
    const on = spec('u1');
    const unit = new Unit({
      spec: on,
      source: listSource([{ start_s: 13 * HOUR, end_s: 20 * HOUR, flow_m3s: 1.5e-4, fixture: 'bath' }]),
      faults: [has(on, 'floats-swapped', 'overrideFloat')],
      seed: 1,
      weather: steadyWeather(20),
    });
    unit.advance(DAY);
    const rises = instants(unit, 'overrideFloat.rises')[0] ?? 0;
    expect(instants(unit, 'lamp.on')[0]).toBeCloseTo(rises + 5, 3);
    const high = instants(unit, 'highWaterFloat.rises')[0] ?? 0;
    expect(instants(unit, 'pumpRuns.on').find((t) => t > rises)).toBe(high);
  });

  it('a welded relay pumps a tank down past every float, and only its breaker stops it', () => {
    const unit = living(spec('u1'), [has(spec('u1'), 'relay-welded')], 1, [
      { at: NOON + HOUR, does: 'selector.off' },
      { at: NOON + 2 * HOUR, does: 'pumpBreaker.off' },
    ]);
    const [on, off] = [instants(unit, 'pumpRuns.on').find((t) => t >= NOON), instants(unit, 'pumpRuns.off').at(-1)];
    expect([on, off]).toEqual([NOON, NOON + 2 * HOUR]);
    expect(unit.control.regions.stopFloat).toBe('down');
  });

  it('the redundant-off of U3 stops the pump in Hand too', () => {
    const unit = living(spec('u3'), [], 1, [{ at: NOON, does: 'selector.hand' }]);
    const redundant = instants(unit, 'redundantOffFloat.falls')[0] ?? Number.NaN;
    expect(redundant).toBeGreaterThan(NOON);
    expect(instants(unit, 'pumpRuns.off')).toContain(redundant);
  });

  it('tangled override and high water: no override, no alarm, water to the inlet and beyond', () => {
    const on = spec('u1');
    const unit = living(on, [has(on, 'tethers-tangled', 'overrideFloat'), has(on, 'timer-dead')], 8);
    expect(instants(unit, 'mark.inletReached').length).toBeGreaterThan(0);
    expect(instants(unit, 'lamp.on')).toEqual([]);
  });

  it('a loose terminal that comes and goes lets some doses run and not others', () => {
    const on = spec('u1');
    const unit = living(on, [has(on, 'terminal-loose', undefined, { present: { on_h: 3, off_h: 3 } })], 20);
    const pumped = instants(unit, 'pumpRuns.on').length;
    const asked = instants(unit, 'timer.start').length;
    expect(pumped).toBeGreaterThan(5);
    expect(pumped).toBeLessThan(asked);
  });
});
