/** The panel by itself, without plant or engine: what it counts, times, and writes down when an event reaches it. */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import type { ControlEventName } from '../../src/control/index.ts';
import type { FaultState, UnitFault } from '../../src/unit/fault.ts';
import { PanelState } from '../../src/unit/panel.ts';
import type { PanelSpec } from '../../src/unit/spec.ts';
import { DAY, fault, HOUR } from './units.ts';

function spec(unit: string): PanelSpec {
  const found = shippedLibrary().units.get(unit);
  if (!found) throw new Error(`no unit ${unit}`);
  return found.panel;
}

/** A panel to which some events came, a second apart from second 1 on. */
function panel(unit: string | PanelSpec, ...events: ControlEventName[]): PanelState {
  const p = new PanelState(typeof unit === 'string' ? spec(unit) : unit, []);
  events.forEach((event, i) => {
    p.deliver(event, i + 1);
  });
  return p;
}

function standing(fault: UnitFault): FaultState {
  return { fault, switches: [fault.onset_s], mended_s: Number.POSITIVE_INFINITY, fades_s: undefined };
}

const said = (p: PanelState) => p.log.map(({ t, what }) => `${t} ${what}`);
const WET = ['stopFloat.rises', 'doseFloat.rises'] as const;

describe('at rest', () => {
  it('its clock goes and is right, nothing was counted, nothing is written down', () => {
    const p = panel('u1');
    expect(p.registers).toEqual({
      clock_s: 0,
      clockStopped_s: -1,
      dosed_s: 0,
      doseSince_s: -1,
      airStopped_s: 0,
      airStopped_kPa: 0,
      pumpStopped_s: -1,
      pumpCycles: 0,
      dialled: 0,
    });
    expect(p.log).toEqual([]);
  });

  it('of a night timer nothing is timed; one that doses all day is in the first half of its rest', () => {
    expect([...panel('u1').due]).toEqual([]);
    expect([...panel('u3').due]).toEqual([['restFirst', (30 - 4.7) * 60]]);
  });
});

describe('the log', () => {
  it('tells the event, then what changes that a person sees or hears', () => {
    const p = panel('u1', 'test.pressed', 'test.released');
    expect(said(p)).toEqual([
      '1 test.pressed',
      '1 lamp.on',
      '1 buzzer.on',
      '2 test.released',
      '2 lamp.off',
      '2 buzzer.off',
    ]);
  });

  it('leaves out an event that changes nothing', () => {
    expect(said(panel('u1', 'silence.pressed', 'supply.returns'))).toEqual([]);
  });

  it('tells an event that changes no state but makes a call', () => {
    const p = panel('u1', 'air.falls', 'lowAir.due', 'dialler.due', 'dialler.again');
    expect(said(p).slice(-2)).toEqual(['4 dialler.again', '4 dialled']);
    expect(p.registers.dialled).toBe(2);
  });
});

describe('the counter of pump starts', () => {
  it('counts a contact that closes, not one that stays closed or opens', () => {
    const p = panel('u1', 'selector.hand');
    expect(p.registers.pumpCycles).toBe(1);
    p.deliver('test.pressed', 5);
    expect(p.registers.pumpCycles).toBe(1);
    p.deliver('selector.off', 6);
    expect(p.registers.pumpCycles).toBe(1);
    p.deliver('selector.hand', 7);
    expect(p.registers.pumpCycles).toBe(2);
  });
});

describe('a delay', () => {
  it('is due as long after it was asked for as the unit’s file says', () => {
    const p = panel('u1', 'air.falls');
    expect([...p.due]).toEqual([['lowAir', 61]]);
  });

  it('is dropped when it is called off', () => {
    expect([...panel('u1', 'air.falls', 'air.rises').due]).toEqual([]);
  });

  it('that the unit’s file gives no length is refused by name', () => {
    const { lowAir: _, ...delays_s } = spec('u1').delays_s;
    expect(() => panel({ ...spec('u1'), delays_s }, 'air.falls')).toThrow('no length for the delay lowAir');
  });

  it('of a panel that is asked for twice is refused by name', () => {
    const p = panel('u1');
    p.due.set('lowAir', 5);
    expect(() => p.deliver('air.falls', 1)).toThrow('delay lowAir armed while it runs');
  });
});

describe('a dose of the night', () => {
  const dosing = () => panel('u1', ...WET, 'timer.start');

  it('lasts its minutes', () => {
    const p = dosing();
    expect([...p.due]).toEqual([['dose', 3 + 9 * 60]]);
    expect(p.registers.doseSince_s).toBe(3);
  });

  it('that ends early counts for as long as it ran', () => {
    const p = dosing();
    p.deliver('stopFloat.falls', 103);
    expect(p.registers).toMatchObject({ dosed_s: 100, doseSince_s: -1 });
    p.deliver('stopFloat.rises', 110);
    p.deliver('timer.start', 200);
    p.deliver('dose.ends', 500);
    expect(p.registers).toMatchObject({ dosed_s: 400, doseSince_s: -1 });
  });

  it('is cut to what is left of the night’s 45 minutes; one more that a hand starts when none are left runs its time', () => {
    const p = panel('u1', ...WET);
    p.registers.dosed_s = 43 * 60;
    p.deliver('timer.start', 100);
    expect(p.due.get('dose')).toBe(100 + 2 * 60);
    p.deliver('dose.ends', 220);
    p.deliver('timer.start', 300);
    expect(p.due.get('dose')).toBe(300 + 9 * 60);
  });

  it('that begins at second 0 counts too', () => {
    const p = new PanelState(spec('u1'), []);
    for (const event of [...WET, 'timer.start'] as const) p.deliver(event, 0);
    p.deliver('dose.ends', 540);
    expect(p.registers.dosed_s).toBe(540);
  });

  it('goes on being counted when another delay is called off', () => {
    const p = dosing();
    p.deliver('air.falls', 50);
    p.deliver('air.rises', 60);
    p.deliver('dose.ends', 543);
    expect(p.registers.dosed_s).toBe(540);
  });

  it('counts nothing of other delays', () => {
    const p = panel('u1', 'air.falls', 'air.rises');
    expect(p.registers).toMatchObject({ dosed_s: 0, doseSince_s: -1 });
  });
});

describe('a timer of many small doses', () => {
  const hurried = ['redundantOffFloat.rises', ...WET, 'timer.start'] as const;

  it('gives each dose its minutes, whatever a night would have left', () => {
    const p = panel('u3', ...hurried);
    expect(p.due.get('dose')).toBeCloseTo(4 + 4.7 * 60, 9);
  });

  it('comes to the next start a period after the last one', () => {
    const p = panel('u3', ...hurried);
    p.deliver('dose.ends', 4 + 282);
    expect(p.due.get('restFirst')).toBe(286 + (30 - 4.7) * 60);
    p.deliver('rest.half', 1804);
    expect([...p.due]).toEqual([['restSecond', 1804 + 1800]]);
  });

  it('times the rest of its delays by the unit’s file', () => {
    expect(panel('u3', 'air.falls').due.get('lowAir')).toBe(61);
  });
});

describe('the clock', () => {
  it('shows true time while nothing is wrong with it', () => {
    expect(panel('u1').clockAhead(500)).toBe(0);
  });

  it('that stands falls behind by as long as it stands, and keeps that when it goes again', () => {
    const p = panel('u1');
    p.deliver('timer.dies', 100);
    expect(p.registers.clockStopped_s).toBe(100);
    expect(p.clockAhead(160)).toBe(-60);
    p.deliver('timer.renewed', 200);
    expect(p.registers).toMatchObject({ clock_s: -100, clockStopped_s: -1 });
    expect(p.clockAhead(300)).toBe(-100);
  });

  it('that stands since second 0 stands', () => {
    const p = panel('u1');
    p.deliver('timer.dies', 0);
    expect(p.clockAhead(60)).toBe(-60);
    expect(p.nextTimerStart(60)).toBe(Number.POSITIVE_INFINITY);
  });

  it('set while it goes shows what it was set to', () => {
    const p = panel('u1');
    p.setClock(90, 1000);
    expect(p.clockAhead(1000)).toBe(90);
    expect(p.registers.clockStopped_s).toBe(-1);
  });

  it('set while it has lost the time goes again from what it was set to', () => {
    const p = panel('u1', 'timer.loses');
    p.setClock(0, 1000);
    expect(p.control.regions.timerClock).toBe('keeping');
    expect(p.clockAhead(2000)).toBe(0);
  });

  it('set while it cannot go stands from what it was set to', () => {
    const p = panel('u1', 'timer.dies');
    p.setClock(0, 1000);
    expect(p.clockAhead(1000)).toBe(0);
    expect(p.clockAhead(1060)).toBe(-60);
  });

  it('set when it began to stand at second 0 stands from then on', () => {
    const p = panel('u1');
    p.deliver('timer.dies', 0);
    p.setClock(0, 1000);
    expect(p.clockAhead(1060)).toBe(-60);
  });

  it('set over a fault that shifts it shows what it was set to', () => {
    const p = new PanelState(spec('u1'), [standing(fault('clock', { clock_h: 2 }))]);
    expect(p.clockAhead(0)).toBe(2 * HOUR);
    p.setClock(30, 1000);
    expect(p.clockAhead(1000)).toBe(30);
  });
});

describe('the next start of the timer', () => {
  it('is the next hour of the dial', () => {
    const p = panel('u1');
    expect(p.nextTimerStart(1800)).toBe(HOUR);
    expect(p.nextTimerStart(4 * HOUR)).toBe(DAY);
  });

  it('comes by the panel’s own clock', () => {
    const p = panel('u1');
    p.registers.clock_s = 600;
    expect(p.nextTimerStart(1800)).toBe(HOUR - 600);
    expect(p.nextTimerStart(3300)).toBe(2 * HOUR - 600);
  });

  it('is exact on a clock that goes evenly: engine time is not rounded on the way', () => {
    const p = panel('u1');
    p.registers.clock_s = 0.1;
    expect(p.nextTimerStart(900.3)).toBe(HOUR - 0.1);
  });

  it('comes never on a panel without a night timer, nor while the clock stands', () => {
    expect(panel('u2').nextTimerStart(0)).toBe(Number.POSITIVE_INFINITY);
    expect(panel('u3').nextTimerStart(0)).toBe(Number.POSITIVE_INFINITY);
    expect(panel('u1', 'timer.dies').nextTimerStart(0)).toBe(Number.POSITIVE_INFINITY);
  });

  it('comes sooner on a clock that gains', () => {
    const gaining = fault('clock', { clock_h: 1 }, { ramp_s: HOUR });
    const p = new PanelState(spec('u1'), [standing(gaining)]);
    expect(p.nextTimerStart(900)).toBe(1800);
  });

  it('comes never on a clock that a fault holds or turns back', () => {
    for (const clock_h of [-1, -2]) {
      const losing = fault('clock', { clock_h }, { ramp_s: HOUR });
      const p = new PanelState(spec('u1'), [standing(losing)]);
      expect(p.nextTimerStart(900)).toBe(Number.POSITIVE_INFINITY);
    }
  });
});

describe('a start of the timer', () => {
  const wet = () => panel('u1', ...WET);

  it('doses where the clock stands at one, and tells so', () => {
    const p = wet();
    expect(p.timerStart(HOUR)).toBe(true);
    expect(p.control.regions.doseDemand).toBe('on');
  });

  it('is none at any other time, nor on a panel without a night timer, nor while the clock stands', () => {
    const p = wet();
    expect(p.timerStart(HOUR + 5)).toBe(false);
    expect(p.log).toHaveLength(2);
    expect(panel('u2', 'startStopFloat.rises').timerStart(HOUR)).toBe(false);
    expect(panel('u3').timerStart(HOUR)).toBe(false);
    expect(panel('u1', 'timer.dies').timerStart(HOUR)).toBe(false);
  });

  it('is none on a clock that stands since second 0', () => {
    const p = panel('u1');
    p.deliver('timer.dies', 0);
    expect(p.timerStart(0)).toBe(false);
  });

  it('comes by the panel’s own clock', () => {
    const p = wet();
    p.registers.clock_s = 600;
    expect(p.timerStart(HOUR)).toBe(false);
    expect(p.timerStart(HOUR - 600)).toBe(true);
  });

  it('that is the first of a night begins the count of its minutes anew', () => {
    const p = wet();
    p.registers.dosed_s = 45 * 60;
    expect(p.timerStart(DAY)).toBe(true);
    expect(p.registers.dosed_s).toBe(0);
    expect(p.control.regions.doseDemand).toBe('on');
  });

  it('later in a night whose minutes are used up doses no more, and is met all the same', () => {
    const p = wet();
    p.registers.dosed_s = 45 * 60;
    expect(p.timerStart(HOUR)).toBe(true);
    expect(p.control.regions.doseDemand).toBe('off');
    p.registers.dosed_s = 45 * 60 - 1;
    expect(p.timerStart(2 * HOUR)).toBe(true);
    expect(p.control.regions.doseDemand).toBe('on');
  });
});
