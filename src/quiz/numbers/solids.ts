/** Solids by numbers: what comes in, what lies, when it is pumped out, what a surge does to a clarifier. */
import { GALLON_m3 } from '../../plant/standardLoading.ts';
import { say } from '../../service/message.ts';
import { Draws } from '../draws.ts';
import type { Maker } from '../drill.ts';
import { load } from './loads.ts';
import { asDrill, fairInBoth } from './problem.ts';
import { AREA, DAILY, POUNDS_A_GALLON, RATE, TANK, TAPE, VOLUME } from './scales.ts';
import { amount, given, minus, over, plain, plus, times, Working } from './terms.ts';

/** Load of a day. */
export const loadDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'load');
  return fairInBoth(draws, asked, (system) => {
    const flow = given(system, DAILY, draws.between(0.7, 2.8));
    const bod = amount(draws.whole(14, 45) * 10, 0, 'mgL');
    const persons = plain(draws.whole(2, 7));
    const working = new Working();
    const [unit, decimals] = system === 'us' ? (['lbd', 2] as const) : (['gd', 0] as const);
    const answer = working.line('load', load(system, flow, bod), decimals, unit);
    return asDrill({
      ...{ skill: 'load', seed, system, working, answer, unit, decimals, waysDiffer: true },
      sheet: { flow, bod, persons },
      slips: {
        each: answer.value / persons.value,
        all: answer.value * persons.value,
        ...(system === 'us' ? { 'weight-us': answer.value / POUNDS_A_GALLON } : { 'thousand-si': answer.value * 1000 }),
      },
    });
  });
};

/** Sludge and scum as a share of the depth at which a first tank is pumped out, percent. */
const PUMP_OUT_pct = 25;
/** How far from it a fair question stays, percent. */
const CLEAR_pct = 2;

export const sludgeDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'sludge');
  return fairInBoth(draws, asked, (system) => {
    const mean_m = draws.between(0.08, 0.36);
    const spot = () => given(system, TAPE, mean_m * draws.between(0.75, 1.25));
    const [spot1, spot2, spot3] = [spot(), spot(), spot()];
    const scum = given(system, TAPE, draws.between(0.025, 0.11));
    const water = given(system, TAPE, draws.between(1, 1.4));
    const working = new Working();
    const [unit, decimals] = [TAPE[system].unit, system === 'us' ? 2 : 1];
    const mean = working.line('mean', over(plus(spot1, spot2, spot3), plain(3)), decimals, unit);
    const share = times(over(plus(mean, scum), water), plain(100));
    const answer = working.line('share', share, 1, 'pct');
    if (Math.abs(answer.value - PUMP_OUT_pct) < CLEAR_pct) return undefined;
    const shareOf = (depth: number) => (100 * depth) / water.value;
    const most = Math.max(spot1.value, spot2.value, spot3.value);
    return asDrill({
      ...{ skill: 'sludge', seed, system, working, answer, unit: 'pct', decimals: 1 },
      sheet: { spot1, spot2, spot3, scum, water },
      slips: {
        bare: shareOf(mean.value),
        most: shareOf(most + scum.value),
        sum: shareOf(3 * mean.value + scum.value),
      },
      next: say(answer.value > PUMP_OUT_pct ? 'drill.sludge.out' : 'drill.sludge.stays'),
    });
  });
};

/** A day of water that must stay clear, and the sludge and scum of a year, both for each person, m3 (the tables' gallons). */
const CLEAR_m3 = 50 * GALLON_m3;
const YEARLY_m3 = 76.8 * GALLON_m3;

/** Years from one pump-out of a first tank to the next, by the extension tables. */
export const pumpOutDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'pump-out');
  return fairInBoth(draws, asked, (system) => {
    const tank = given(system, TANK, draws.between(1.8, 5.8));
    const persons = plain(draws.whole(2, 7));
    const clear = given(system, VOLUME, CLEAR_m3);
    const yearly = given(system, VOLUME, YEARLY_m3);
    const working = new Working();
    const unit = VOLUME[system].unit;
    const room = working.line('room', minus(tank, times(persons, clear)), 0, unit);
    const growth = working.line('growth', times(persons, yearly), 0, unit);
    const answer = working.line('years', over(room, growth), 1, 'y');
    return asDrill({
      ...{ skill: 'pump-out', seed, system, working, answer, unit: 'y', decimals: 1 },
      sheet: { tank, persons, clear, yearly },
      slips: {
        full: tank.value / growth.value,
        one: room.value / yearly.value,
        single: (tank.value - clear.value) / yearly.value,
        turned: growth.value / room.value,
      },
    });
  });
};

const MINUTES_A_DAY = 1440;

/** How fast a surge makes the water of a clarifier rise. */
export const overflowDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'overflow');
  return fairInBoth(draws, asked, (system) => {
    const surge = given(system, RATE, draws.between(0.008, 0.03));
    const surface = given(system, AREA, draws.between(0.35, 0.8));
    const flow = given(system, DAILY, draws.between(1, 2.4));
    const working = new Working();
    const us = system === 'us';
    const moved = us
      ? working.line('surgeDay', times(surge, plain(MINUTES_A_DAY)), 0, 'gald')
      : working.line('surgeHour', over(times(surge, plain(60)), plain(1000)), 3, 'm3h');
    const [unit, decimals] = us ? (['gald_ft2', 0] as const) : (['mh', 2] as const);
    const answer = working.line('overflow', over(moved, surface), decimals, unit);
    return asDrill({
      ...{ skill: 'overflow', seed, system, working, answer, unit, decimals, waysDiffer: true },
      sheet: { surge, surface, flow },
      slips: us
        ? {
            'average-us': flow.value / surface.value,
            'hour-us': (surge.value * 60) / surface.value,
            surface: moved.value,
          }
        : {
            'average-si': flow.value / 24_000 / surface.value,
            'day-si': (surge.value * 1.44) / surface.value,
            surface: moved.value,
          },
    });
  });
};
