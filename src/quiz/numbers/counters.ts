/** What a panel's counters tell of the water since the last visit. */
import { Draws } from '../draws.ts';
import type { Maker } from '../drill.ts';
import { asDrill, fairInBoth } from './problem.ts';
import { DAILY, RATE } from './scales.ts';
import { amount, given, minus, over, plain, times, Working } from './terms.ts';

export const countersDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'counters');
  return fairInBoth(draws, asked, (system) => {
    const days = amount(draws.whole(90, 140), 0, 'd');
    const rate = given(system, RATE, draws.between(0.022, 0.06));
    const hourly_m3h = draws.between(0.022, 0.06) * 60;
    const then = amount(draws.whole(300, 9000) / 10, 1, 'h');
    const now = amount(then.value + Math.round((days.value * draws.between(0.7, 2.2) * 10) / hourly_m3h) / 10, 1, 'h');
    const doses = plain(Math.round((now.value - then.value) * draws.between(4, 7)));
    const working = new Working();
    const hours = working.line('hoursRun', minus(now, then), 1, 'h');
    const run = working.line('minutesRun', times(hours, plain(60)), 0, 'min');
    const unit = DAILY[system].unit;
    const answer = working.line('waterDay', over(times(run, rate), days), 0, unit);
    return asDrill({
      ...{ skill: 'counters', seed, system, working, answer, unit, decimals: 0 },
      sheet: { then, now, days, rate, doses },
      slips: {
        hours: answer.value / 60,
        reading: (answer.value * now.value) / hours.value,
        days: answer.value * days.value,
        doses: (doses.value * rate.value) / days.value,
      },
    });
  });
};
