/** Current by numbers: what wires and breaker of a motor must carry. */
import { Draws } from '../draws.ts';
import type { Maker } from '../drill.ts';
import { asDrill, fairInBoth } from './problem.ts';
import { POWER } from './scales.ts';
import { amount, given, plain, times, Working } from './terms.ts';

/** Full-load current of single-phase motors at 115 and 230 V, A, by horsepower (NEC Table 430.248). */
const FULL_LOAD_A: readonly (readonly [hp: number, at115_A: number, at230_A: number])[] = [
  [1 / 4, 5.8, 2.9],
  [1 / 3, 7.2, 3.6],
  [1 / 2, 9.8, 4.9],
  [3 / 4, 13.8, 6.9],
  [1, 16, 8],
];
const HP_kW = 0.745699872;
/** Wires carry a quarter more than the table, an inverse-time breaker at most two and a half times it (430.22, 430.52). */
const WIRE = 1.25;
const BREAKER = 2.5;

export const ampsDrill: Maker = (seed, _, asked) => {
  const draws = new Draws(seed, 'amps');
  return fairInBoth(draws, asked, (system) => {
    const [hp, at115_A, at230_A] = draws.one(FULL_LOAD_A);
    const volts = draws.one([115, 230]);
    const table = amount(volts === 115 ? at115_A : at230_A, 1, 'A');
    const plate = amount(Math.round(table.value * draws.between(8, 9.2)) / 10, 1, 'A');
    const wire = draws.chance(0.6);
    const working = new Working();
    const answer = working.line(wire ? 'wire' : 'breaker', times(table, plain(wire ? WIRE : BREAKER, 2)), 2, 'A');
    const other = table.value * (wire ? BREAKER : WIRE);
    return asDrill({
      ...{ skill: 'amps', variant: wire ? 'wire' : 'breaker', seed, system, working, answer, unit: 'A', decimals: 2 },
      sheet: { power: given(system, POWER, hp * HP_kW), volts: amount(volts, 0, 'V'), table, plate },
      slips: { plate: plate.value * (wire ? WIRE : BREAKER), bare: table.value, other },
    });
  });
};
