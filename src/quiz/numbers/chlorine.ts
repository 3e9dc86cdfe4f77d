/** Disinfection by numbers: bleach for a day, how long tablets last, what the germs meet. */
import { Draws } from '../draws.ts';
import type { Maker } from '../drill.ts';
import { load } from './loads.ts';
import { asDrill, fairInBoth } from './problem.ts';
import { DAILY, POUNDS_A_GALLON, RATE, STRENGTH, TABLET, VOLUME } from './scales.ts';
import { amount, given, over, plain, plus, times, Working } from './terms.ts';

const OUNCES = { inAGallon: 128, inAPound: 16 } as const;
/** Chlorine in bleach as it is sold, kg/m3. */
const BLEACH_kgm3 = [55, 60, 100, 125] as const;

/** Bleach for a day: what the water uses up, what must be left, how strong the bleach is. */
export const chlorineDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'chlorine');
  return fairInBoth(draws, asked, (system) => {
    const flow = given(system, DAILY, draws.between(0.8, 2.8));
    const demand = amount(draws.whole(4, 12), 0, 'mgL');
    const residual = amount(draws.whole(10, 30) / 10, 1, 'mgL');
    const strength = given(system, STRENGTH, draws.one(BLEACH_kgm3));
    const working = new Working();
    const us = system === 'us';
    const dose = working.line('chlorineDose', plus(demand, residual), 1, 'mgL');
    const chlorine = working.line('chlorine', load(system, flow, dose), us ? 4 : 1, us ? 'lbd' : 'gd');
    const [unit, decimals] = us ? (['flozd', 2] as const) : (['mLd', 0] as const);
    const bleach = over(times(chlorine, plain(us ? OUNCES.inAGallon : 1000)), strength);
    const answer = working.line('bleach', bleach, decimals, unit);
    return asDrill({
      ...{ skill: 'chlorine', seed, system, working, answer, unit, decimals, waysDiffer: true },
      sheet: { flow, demand, residual, strength },
      slips: {
        residual: (answer.value * residual.value) / dose.value,
        demand: (answer.value * demand.value) / dose.value,
        pure: (answer.value * strength.value) / (us ? POUNDS_A_GALLON : 1000),
      },
    });
  });
};

const TABLETS_kg = [0.115, 0.14] as const;

/** Days that a tube of tablets lasts. */
export const tabletsDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'tablets');
  return fairInBoth(draws, asked, (system) => {
    const tablets = plain(draws.whole(3, 8));
    const tablet = given(system, TABLET, draws.one(TABLETS_kg));
    const available = amount(draws.whole(65, 70), 0, 'pct');
    const flow = given(system, DAILY, draws.between(0.7, 2.4));
    const chlorineDose = amount(draws.whole(6, 14), 0, 'mgL');
    const working = new Working();
    const us = system === 'us';
    const stock = working.line(
      'stock',
      over(times(tablets, tablet, available), plain(100)),
      us ? 2 : 0,
      TABLET[system].unit,
    );
    const carried = load(system, flow, chlorineDose);
    const used = us
      ? working.line('used', times(carried, plain(OUNCES.inAPound)), 3, 'ozd')
      : working.line('used', carried, 1, 'gd');
    const answer = working.line('lasts', over(stock, used), 1, 'd');
    return asDrill({
      ...{ skill: 'tablets', seed, system, working, answer, unit: 'd', decimals: 1, waysDiffer: true },
      sheet: { tablets, tablet, available, flow, chlorineDose },
      slips: {
        pure: (answer.value * 100) / available.value,
        one: answer.value / tablets.value,
        twice: (answer.value * 10_000) / (available.value * available.value),
      },
    });
  });
};

/** Baffle factors of the guidance: none, poor, average, superior. */
const FACTORS = [0.1, 0.3, 0.5, 0.7] as const;

/** Residual times the contact that nearly all of the water gets. */
export const ctDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'ct');
  return fairInBoth(draws, asked, (system) => {
    const chlorineDose = amount(draws.whole(6, 14), 0, 'mgL');
    const left = amount(draws.whole(3, 25) / 10, 1, 'mgL');
    const contactVolume = given(system, VOLUME, draws.between(0.15, 0.9));
    const peak = given(system, RATE, draws.between(0.008, 0.03));
    const factor = plain(draws.one(FACTORS), 1);
    const working = new Working();
    const mean = working.line('meanTime', over(contactVolume, peak), 1, 'min');
    const counts = working.line('counts', times(mean, factor), 1, 'min');
    const answer = working.line('ct', times(left, counts), 1, 'mgminL');
    return asDrill({
      ...{ skill: 'ct', seed, system, working, answer, unit: 'mgminL', decimals: 1 },
      sheet: { chlorineDose, left, contactVolume, peak, factor },
      slips: {
        mean: left.value * mean.value,
        dose: chlorineDose.value * counts.value,
        time: counts.value,
        both: chlorineDose.value * mean.value,
      },
    });
  });
};
