/** Water by numbers: how long it stays, how far floats lie apart, what a pump moves, how a timer is set. */
import { say } from '../../service/message.ts';
import { Draws } from '../draws.ts';
import type { Made, Maker, System } from '../drill.ts';
import { asDrill, fairInBoth } from './problem.ts';
import {
  CUBIC_INCHES_A_GALLON,
  DAILY,
  DRAWN,
  GALLONS_A_CUBIC_FOOT,
  RATE,
  ROUND,
  SIDE,
  TAPE,
  VOLUME,
} from './scales.ts';
import { amount, given, minus, over, plain, plus, type Term, times, Working } from './terms.ts';

const HOURS_A_DAY = 24;
const MINUTES_A_DAY = 1440;

/** How long water stays in a rectangular tank. */
export const detentionDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'detention');
  return fairInBoth(draws, asked, (system) => {
    const length = given(system, SIDE, draws.between(1.5, 2.6));
    const width = given(system, SIDE, draws.between(0.9, 1.4));
    const water = given(system, SIDE, draws.between(0.9, 1.5));
    const wall = amount(
      water.value + given(system, SIDE, draws.between(0.25, 0.5)).value,
      system === 'us' ? 1 : 2,
      lengthOf(system),
    );
    const flow = given(system, DAILY, draws.between(0.9, 2.8));
    const working = new Working();
    const volume = working.line('volume', times(length, width, water), 2, system === 'us' ? 'ft3' : 'm3');
    const content =
      system === 'us'
        ? working.line('content', times(volume, plain(GALLONS_A_CUBIC_FOOT, 2)), 0, 'gal')
        : working.line('content', times(volume, plain(1000)), 0, 'L');
    const answer = working.line('stay', times(over(content, flow), plain(HOURS_A_DAY)), 1, 'h');
    return asDrill({
      ...{ skill: 'detention', seed, system, working, answer, unit: 'h', decimals: 1, waysDiffer: true },
      sheet: { length, width, water, wall, flow },
      slips: {
        wall: (answer.value * wall.value) / water.value,
        days: answer.value / HOURS_A_DAY,
        ...(system === 'us' ? { 'cubic-us': answer.value / GALLONS_A_CUBIC_FOOT } : { 'cubic-si': answer.value / 100 }),
      },
    });
  });
};

function lengthOf(system: System): string {
  return SIDE[system].unit;
}

/** What a unit of height holds, from the plan of a tank in inches or centimetres. */
function perHeight(working: Working, system: System, area: Term): Term {
  return system === 'us'
    ? working.line('perHeight', over(area, plain(CUBIC_INCHES_A_GALLON)), 2, 'galin')
    : working.line('perHeight', over(area, plain(1000)), 2, 'Lcm');
}

/** How far apart two floats are set for a dose, in a round tank. */
export const floatGapDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'float-gap');
  return fairInBoth(draws, asked, (system) => {
    const diameter = given(system, DRAWN, draws.between(1.2, 2));
    const dose = given(system, VOLUME, draws.between(0.25, 0.6));
    const flow = given(system, DAILY, draws.between(1.2, 2.8));
    const working = new Working();
    const area = working.line('area', times(plain(ROUND, 3), diameter, diameter), 0, system === 'us' ? 'in2' : 'cm2');
    const answer = working.line('gap', over(dose, perHeight(working, system, area)), 1, system === 'us' ? 'in' : 'cm');
    return asDrill({
      ...{
        skill: 'float-gap',
        seed,
        system,
        working,
        answer,
        unit: system === 'us' ? 'in' : 'cm',
        decimals: 1,
        waysDiffer: true,
      },
      sheet: { diameter, dose, flow },
      slips: { radius: answer.value / 4, square: answer.value * ROUND, day: (answer.value * flow.value) / dose.value },
    });
  });
};

/** What a pump moves, by tape and watch. */
export const drawDownDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'draw-down');
  return fairInBoth(draws, asked, (system) => {
    const length = given(system, DRAWN, draws.between(1.4, 1.8));
    const width = given(system, DRAWN, draws.between(1, 1.4));
    const before = given(system, TAPE, draws.between(0.6, 0.95));
    const after = amount(
      before.value + given(system, TAPE, draws.between(0.06, 0.14)).value,
      system === 'us' ? 2 : 1,
      TAPE[system].unit,
    );
    const minutes = draws.whole(3, 6);
    const seconds = draws.one([15, 30, 45]);
    const time: Term = {
      value: minutes + seconds / 60,
      said: say('drill.minutes', { m: minutes, s: seconds }),
      firm: 3,
    };
    const working = new Working();
    const drop = working.line('drop', minus(after, before), system === 'us' ? 2 : 1, TAPE[system].unit);
    const whole = times(length, width, drop);
    const water =
      system === 'us'
        ? working.line('water-out', over(whole, plain(CUBIC_INCHES_A_GALLON)), 1, 'gal')
        : working.line('water-out', over(whole, plain(1000)), 1, 'L');
    const run = working.line('run', plus(plain(minutes), over(plain(seconds), plain(60))), 2, 'min');
    const unit = RATE[system].unit;
    const answer = working.line('rate', over(water, run), 2, unit);
    return asDrill({
      ...{ skill: 'draw-down', seed, system, working, answer, unit, decimals: 2, waysDiffer: true },
      sheet: { length, width, before, after, time },
      slips: {
        reading: (answer.value * after.value) / drop.value,
        seconds: water.value / (minutes + seconds / 100),
        cut: water.value / minutes,
        hour: answer.value * 60,
      },
    });
  });
};

/** On-time and off-time of a timer that spreads a day's water over equal doses. */
export const timerDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'timer');
  return fairInBoth(draws, asked, (system) => {
    const flow = given(system, DAILY, draws.between(1, 2.8));
    const rate = given(system, RATE, draws.between(0.022, 0.06));
    const cycles = plain(draws.one([6, 8, 12, 16, 18, 24]));
    return draws.chance(0.5) ? onTime(seed, system, flow, rate, cycles) : offTime(seed, system, flow, rate, cycles);
  });
};

function onTime(seed: number, system: System, flow: Term, rate: Term, cycles: Term): Made | undefined {
  const working = new Working();
  const answer = working.line('on', over(doseOf(working, system, flow, cycles), rate), 2, 'min');
  return asDrill({
    ...{ skill: 'timer', variant: 'on', seed, system, working, answer, unit: 'min', decimals: 2 },
    sheet: { flow, rate, cycles },
    slips: { whole: flow.value / rate.value, period: MINUTES_A_DAY / cycles.value, seconds: answer.value * 60 },
  });
}

function offTime(seed: number, system: System, flow: Term, rate: Term, cycles: Term): Made | undefined {
  const working = new Working();
  const on = working.line('on', over(doseOf(working, system, flow, cycles), rate), 2, 'min');
  const period = working.line('period', over(amount(MINUTES_A_DAY, 0, 'min'), cycles), 1, 'min');
  const answer = working.line('off', minus(period, on), 1, 'min');
  return asDrill({
    ...{ skill: 'timer', variant: 'off', seed, system, working, answer, unit: 'min', decimals: 1 },
    sheet: { flow, rate, cycles },
    slips: { period: period.value, on: on.value, sum: period.value + on.value },
  });
}

function doseOf(working: Working, system: System, flow: Term, cycles: Term): Term {
  return working.line('dose', over(flow, cycles), 1, VOLUME[system].unit);
}
