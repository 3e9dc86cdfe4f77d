/** What the control asks to be timed, when it starts over and when it is dropped. */
import { describe, expect, it } from 'vitest';
import { Bench } from './walk.ts';

describe('delays of the alarm circuit', () => {
  it('low air starts over when the circuit is powered again', () => {
    const bench = new Bench('air.falls');
    expect(bench.runs('lowAir')).toBe(true);
    bench.send('alarmBreaker.off');
    expect(bench.runs('lowAir')).toBe(false);
    bench.send('alarmBreaker.on');
    expect(bench.times('arm lowAir')).toBe(2);
    expect(bench.out.lamp).toBe(false);
    expect(bench.send('lowAir.due').out.lamp).toBe(true);
  });

  it('low air starts over when the pressure was back in between', () => {
    const bench = new Bench('air.falls', 'air.rises', 'air.falls');
    expect(bench.times('arm lowAir')).toBe(2);
    expect(bench.runs('lowAir')).toBe(true);
  });

  it('high water starts over when the float bobs', () => {
    const bench = new Bench('highWaterFloat.rises', 'highWaterFloat.falls');
    expect(bench.runs('highWater')).toBe(false);
    expect(bench.send('highWater.due').out.lamp).toBe(false);
  });

  it('silence is cleared by the due of either condition, and by nothing that only falls', () => {
    const quiet = () =>
      new Bench('air.falls', 'lowAir.due', 'highWaterFloat.rises', 'highWater.due', 'silence.pressed');
    expect(quiet().out.buzzer).toBe(false);
    expect(quiet().send('highWaterFloat.falls').out.buzzer).toBe(false);
    expect(quiet().send('highWaterFloat.falls', 'highWaterFloat.rises').out.buzzer).toBe(false);
    expect(quiet().send('highWaterFloat.falls', 'highWaterFloat.rises', 'highWater.due').out.buzzer).toBe(true);
    expect(quiet().send('air.rises', 'air.falls', 'lowAir.due').out.buzzer).toBe(true);
  });
});

describe('the dialler', () => {
  it('is never set going by the test button', () => {
    const bench = new Bench('test.pressed', 'dialler.due', 'dialler.again', 'test.released');
    expect(bench.asked).toEqual([]);
  });

  it('counts from the first lamp and is not set back by a second condition', () => {
    const bench = new Bench('air.falls', 'lowAir.due', 'highWaterFloat.rises', 'highWater.due', 'silence.pressed');
    expect(bench.times('arm dial')).toBe(1);
    expect(bench.send('dialler.due').times('dial')).toBe(1);
    expect(bench.runs('dialAgain')).toBe(true);
  });

  it('goes on over a cleared condition while the latch holds the lamp', () => {
    const bench = new Bench('air.falls', 'lowAir.due', 'air.rises', 'dialler.due');
    expect(bench.out.condition).toBe(false);
    expect(bench.times('dial')).toBe(1);
  });

  it('waits a day again after a call that a dead line swallowed', () => {
    const bench = new Bench('phoneLine.dies', 'air.falls', 'lowAir.due', 'dialler.due');
    expect(bench.times('dial')).toBe(0);
    expect(bench.runs('dialAgain')).toBe(true);
    expect(bench.send('phoneLine.mended', 'dialler.again').times('dial')).toBe(1);
  });

  it('waits each day anew while the line stays dead', () => {
    const bench = new Bench('phoneLine.dies', 'air.falls', 'lowAir.due', 'dialler.due', 'dialler.again');
    expect(bench.times('dial')).toBe(0);
    expect(bench.times('arm dialAgain')).toBe(2);
    expect(bench.send('dialler.again').times('arm dialAgain')).toBe(3);
  });

  it('is dropped by a reset', () => {
    const bench = new Bench('air.falls', 'lowAir.due', 'dialler.due', 'air.rises', 'alarmBreaker.off');
    expect(bench.runs('dialAgain')).toBe(false);
    expect(bench.send('alarmBreaker.on', 'dialler.again').times('dial')).toBe(1);
  });
});

describe('the timer and the dose', () => {
  const wet = () => new Bench('stopFloat.rises', 'doseFloat.rises');

  it('lives on its reserve in a short outage and keeps the time', () => {
    const bench = wet().send('supply.fails');
    expect(bench.runs('timerReserve')).toBe(true);
    bench.send('supply.returns');
    expect(bench.runs('timerReserve')).toBe(false);
    expect(bench.send('timer.start').out.pumpRuns).toBe(true);
  });

  it('cannot be set while it is unfed', () => {
    const bench = wet().send('supply.fails', 'timer.reserveEnds', 'timer.set', 'supply.returns');
    expect(bench.in('timerClock')).toBe('lost');
  });

  it('a dose that an outage broke off does not go on', () => {
    const bench = wet().send('timer.start', 'supply.fails');
    expect(bench.runs('dose')).toBe(false);
    expect(bench.send('supply.returns').out.pumpRuns).toBe(false);
  });

  it('a dose goes on below the dose float and ends at the stop float', () => {
    const bench = wet().send('timer.start', 'doseFloat.falls');
    expect(bench.out.pumpRuns).toBe(true);
    expect(bench.send('stopFloat.falls').out.pumpRuns).toBe(false);
    expect(bench.runs('dose')).toBe(false);
  });

  it('the dose takes over seamlessly when the override ends, and the other way round', () => {
    const bench = wet().send('overrideFloat.rises', 'timer.start', 'overrideFloat.falls');
    expect(bench.out.pumpRuns).toBe(true);
    expect(bench.send('overrideFloat.rises', 'dose.ends').out.pumpRuns).toBe(true);
    expect(bench.send('overrideFloat.falls').out.pumpRuns).toBe(false);
  });

  it('a dose runs its minutes in Off, unseen, and a welded relay hides even that', () => {
    const bench = wet().send('selector.off', 'timer.start');
    expect(bench.out.pumpRuns).toBe(false);
    expect(bench.send('relay.welds').out).toMatchObject({ coil: false, contact: true, pumpRuns: true });
  });
});

describe('thermal switches', () => {
  it('a stall that ends in time does not trip', () => {
    const bench = new Bench('rotor.seizes', 'selector.hand', 'selector.off');
    expect(bench.runs('protectorHeat')).toBe(false);
    expect(bench.send('protector.hot').in('protector')).toBe('closed');
  });

  it('cools with the power off', () => {
    const bench = new Bench('rotor.seizes', 'selector.hand', 'protector.hot', 'pumpBreaker.off');
    expect(bench.runs('protectorCool')).toBe(true);
    expect(bench.send('protector.cool').in('protector')).toBe('closed');
  });

  it('a free rotor does not heat it', () => {
    expect(new Bench('selector.hand').runs('protectorHeat')).toBe(false);
  });
});
