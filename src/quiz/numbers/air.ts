/** Air by numbers: what a sound gauge reads, what oxygen the sewage takes, what a leak loses. */
import { operatingPoint, staticHead, stillAir } from '../../plant/air.ts';
import { SOUND } from '../../plant/spec.ts';
import { Draws } from '../draws.ts';
import type { Maker } from '../drill.ts';
import { load } from './loads.ts';
import { asDrill, fairInBoth } from './problem.ts';
import { AIR, DAILY, PRESSURE, TAPE } from './scales.ts';
import { amount, given, minus, over, plain, plus, root, type Term, times, Working } from './terms.ts';

/** Inches of water that one psi holds up, and kPa of a centimetre of water, as handbooks round them. */
const INCHES_A_PSI = 27.7;
const KPA_A_CM = 0.0981;

/** What the gauge of a sound air line reads: water, membranes, friction. */
export const gaugeDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'gauge');
  return fairInBoth(draws, asked, (system) => {
    const over_m = draws.between(1, 1.7);
    const depth = given(system, TAPE, over_m);
    const floor = amount(
      depth.value + given(system, TAPE, draws.between(0.15, 0.35)).value,
      system === 'us' ? 2 : 1,
      TAPE[system].unit,
    );
    const opening = given(system, PRESSURE, draws.between(0.8, 1.6));
    const friction = given(system, PRESSURE, draws.between(1.2, 3.2));
    const working = new Working();
    const sum = system === 'us' ? over(depth, plain(INCHES_A_PSI, 1)) : times(depth, plain(KPA_A_CM, 4));
    const unit = PRESSURE[system].unit;
    const decimals = system === 'us' ? 2 : 1;
    const head = working.line('head', sum, decimals, unit);
    const answer = working.line('gauge', plus(head, opening, friction), decimals, unit);
    const losses = opening.value + friction.value;
    return asDrill({
      ...{ skill: 'gauge', seed, system, working, answer, unit, decimals, waysDiffer: true },
      sheet: { depth, floor, opening, friction },
      slips: {
        head: head.value,
        floor: (head.value * floor.value) / depth.value + losses,
        losses,
        less: head.value - losses,
      },
    });
  });
};

/** Oxygen by weight of what it burns: a usual share for carbon with its slow decay, and the chemistry of nitrogen. */
const OXYGEN_FOR_BOD = [1.1, 1.2, 1.3, 1.4, 1.5] as const;
const OXYGEN_FOR_NITROGEN = 4.57;
const NITRIFIED_pct = [70, 80, 90] as const;

/** Oxygen that a day's sewage takes. */
export const oxygenDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'oxygen');
  return fairInBoth(draws, asked, (system) => {
    const flow = given(system, DAILY, draws.between(0.9, 2.8));
    const bod = amount(draws.whole(14, 32) * 10, 0, 'mgL');
    const nitrogen = amount(draws.whole(30, 70), 0, 'mgL');
    const nitrified = amount(draws.one(NITRIFIED_pct), 0, 'pct');
    const forBod = plain(draws.one(OXYGEN_FOR_BOD), 1);
    const forNitrogen = plain(OXYGEN_FOR_NITROGEN, 2);
    const working = new Working();
    const [unit, decimals] = system === 'us' ? (['lbd', 2] as const) : (['gd', 0] as const);
    const carbon = working.line('load', load(system, flow, bod), decimals, unit);
    const nitrogenous = working.line('nitrogenLoad', load(system, flow, nitrogen), decimals + 1, unit);
    const burnt = working.line('nitrifiedLoad', over(times(nitrogenous, nitrified), plain(100)), decimals + 1, unit);
    const answer = working.line('oxygen', plus(times(carbon, forBod), times(burnt, forNitrogen)), decimals, unit);
    return asDrill({
      ...{ skill: 'oxygen', seed, system, working, answer, unit, decimals, waysDiffer: true },
      sheet: { flow, bod, nitrogen, nitrified, forBod, forNitrogen },
      slips: {
        carbon: carbon.value * forBod.value,
        swapped: carbon.value * OXYGEN_FOR_NITROGEN + burnt.value * forBod.value,
        bare: carbon.value + burnt.value,
      },
    });
  });
};

/** Holes that are drawn, m: the gauge falls, and some air still comes. */
const HOLE_m = [0.0022, 0.0036] as const;

/** Air that a leak loses, by the gauge and the compressor's curve. */
export const leakDrill: Maker = (seed, { plant }, asked) => {
  const draws = new Draws(seed, 'leak');
  const depth_m = plant.aeration.outlet_m - plant.air.diffuser_elevation_m;
  const sound = operatingPoint(plant.air, SOUND, depth_m, stillAir());
  return fairInBoth(draws, asked, (system) => {
    const hole = { ...SOUND, lineHole_m: draws.between(...HOLE_m) };
    const point = operatingPoint(plant.air, hole, depth_m, stillAir());
    const flow = (Lmin: number) => given(system, AIR, Lmin / 1000);
    const opens = given(system, PRESSURE, staticHead(depth_m) + plant.air.cracking_kPa);
    const soundGauge = given(system, PRESSURE, sound.pressure_kPa);
    const soundAir = flow(sound.pump_Lmin);
    const nowGauge = given(system, PRESSURE, point.pressure_kPa);
    const nowAir = flow(point.pump_Lmin);
    if (nowGauge.value <= opens.value) return undefined;
    const working = new Working();
    const [pressure, unit] = [PRESSURE[system].unit, AIR[system].unit];
    const [fine, decimals] = system === 'us' ? [2, 2] : [1, 1];
    const spare = working.line('spareNow', minus(nowGauge, opens), fine, pressure);
    const spareThen = working.line('spareThen', minus(soundGauge, opens), fine, pressure);
    const through: Term = working.line('through', times(soundAir, root(over(spare, spareThen))), decimals, unit);
    const answer = working.line('lost', minus(nowAir, through), decimals, unit);
    return asDrill({
      ...{ skill: 'leak', seed, system, working, answer, unit, decimals },
      sheet: { soundGauge, soundAir, opens, nowGauge, nowAir },
      slips: {
        straight: nowAir.value - (soundAir.value * spare.value) / spareThen.value,
        through: through.value,
        curve: nowAir.value - soundAir.value * Math.sqrt(nowGauge.value / soundGauge.value),
        rise: nowAir.value - soundAir.value,
      },
    });
  });
};
