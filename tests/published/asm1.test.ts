/**
 * Activated Sludge Model No. 1 against the IWA Task Group's BSM1 package (Alex et al. 2008, "Benchmark Simulation
 * Model no. 1", and its open-loop results sheet of 21 May 2009), and against the open reimplementation bsm2-python
 * for the single reactor. Rate vectors are from our own trial code (regression values, marked so).
 */
import { describe, expect, it } from 'vitest';
import {
  ASM,
  ASM_SIZE,
  type Asm1Parameters,
  asm1Rates,
  asm1React,
  atTemperature,
  BOD5_SHARE,
  BSM1_15C,
  bod5,
  chemicalDemand,
  kjeldahlNitrogen,
  RATES,
  suspendedSolids,
} from '../../src/plant/index.ts';
import { R5_STEADY, STABLE_INFLUENT } from './bsm1.ts';

/** IWA STR1 at 20 degC as in its table; the decay of autotrophs is a reference file's (the report gives none). */
const STR1_20C: Asm1Parameters = {
  ...BSM1_15C,
  iXB: 0.086,
  muH: 6,
  kS: 20,
  bH: 0.62,
  etaH: 0.4,
  kX: 0.03,
  muA: 0.8,
  bA: 0.2,
  kA: 0.08,
};

const STATE_A = Float64Array.from([30, 5, 1000, 100, 500, 100, 100, 2, 20, 2, 1, 1, 7]);

function rates(y: Float64Array, p: Asm1Parameters): Float64Array {
  const r = new Float64Array(RATES);
  asm1Rates(y, 0, p, r);
  return r;
}

function changes(y: Float64Array, p: Asm1Parameters): Float64Array {
  const dy = new Float64Array(ASM_SIZE);
  asm1React(rates(y, p), p, 1, dy, 0);
  return dy;
}

function close(values: Iterable<number>, wanted: readonly number[], relative: number): void {
  [...values].forEach((value, i) => {
    const want = wanted[i] ?? Number.NaN;
    expect(Math.abs(value - want), `entry ${i}: ${value}, not ${want}`).toBeLessThanOrEqual(relative * Math.abs(want));
  });
}

describe('rates (regression values of a trial code made from the published equations; 1e-7)', () => {
  it('of a plain state', () => {
    close(rates(STATE_A, BSM1_15C), [606.06061, 47.302291, 27.777778, 150, 5, 25, 980.04435, 9.8004435], 1e-7);
    close(
      changes(STATE_A, BSM1_15C).slice(1),
      [
        4.8758425, 0, -837.44435, 503.3629, 22.777778, 12.4, -799.66487, 107.59454, -145.23199, -15.199557, 1.8555565,
        -18.059038,
      ],
      1e-7,
    );
  });

  it('of reactor 5 of the benchmark', () => {
    close(
      rates(R5_STEADY, BSM1_15C),
      [594.16931, 184.77265, 26.172174, 767.80311, 7.489855, 88.077254, 1155.2811, 82.645939],
      1e-7,
    );
    const dy = changes(R5_STEADY, BSM1_15C);
    close(
      [1, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((i) => dy[i] as number),
      [
        -7.3188129, -442.0116, 11.138853, 18.682319, 62.023437, -764.8402, 77.229948, -85.382604, -5.4313151,
        -24.343908, -11.615182,
      ],
      1e-7,
    );
  });

  it('of the STR1 set at 20 degC', () => {
    close(rates(STATE_A, STR1_20C), [545.45455, 42.572062, 44.444444, 310, 20, 40, 1232.0447, 12.320447], 1e-7);
  });
});

describe('stoichiometry keeps what it must (1e-12 of the turnover)', () => {
  const each = Array.from({ length: RATES }, (_, i) => i + 1);
  const one = (process: number): Float64Array => {
    const r = new Float64Array(RATES);
    r[process - 1] = 1;
    const dy = new Float64Array(ASM_SIZE);
    asm1React(r, BSM1_15C, 1, dy, 0);
    return dy;
  };
  /** Nitrogen gas of growth with nitrate, g N a g COD grown. */
  const gas = (process: number) => (process === 2 ? (1 - BSM1_15C.yieldH) / (2.86 * BSM1_15C.yieldH) : 0);

  it.each(each)('process %i: COD, with oxygen -1, nitrate -4.57 and the gas -1.71', (process) => {
    const dy = one(process);
    const at = (i: number) => dy[i] as number;
    const organic = [0, 1, 2, 3, 4, 5, 6].reduce((sum, i) => sum + at(i), 0);
    const balance = organic - at(ASM.oxygen) - 4.57 * at(ASM.nitrate) - 1.71 * gas(process);
    expect(Math.abs(balance)).toBeLessThan(1e-12 * 20);
  });

  it.each(each)('process %i: nitrogen', (process) => {
    const dy = one(process);
    const at = (i: number) => dy[i] as number;
    const biomass = BSM1_15C.iXB * (at(ASM.heterotrophs) + at(ASM.autotrophs));
    const inert = BSM1_15C.iXP * (at(ASM.decayProducts) + at(ASM.inertParticulate));
    const free = at(ASM.nitrate) + at(ASM.ammonia) + at(ASM.solubleNitrogen) + at(ASM.particulateNitrogen);
    expect(Math.abs(free + biomass + inert + gas(process))).toBeLessThan(1e-12 * 5);
  });
});

describe('temperature: the BSM2 law (its reactor code; 1e-4 of the printed figure)', () => {
  it.each([
    [5, 2.25, 0.1333, 0.18, 0.018, 2.0833, 0.032],
    [10, 3, 0.2, 0.3, 0.03, 2.5, 0.04],
    [12, 3.3659, 0.2352, 0.368, 0.0368, 2.6891, 0.0437],
    [15, 4, 0.3, 0.5, 0.05, 3, 0.05],
    [20, 5.3333, 0.45, 0.8333, 0.0833, 3.6, 0.0625],
    [25, 7.1111, 0.675, 1.3889, 0.1389, 4.32, 0.0781],
  ])('at %i degC', (temperature_C, ...wanted) => {
    const p = atTemperature(BSM1_15C, temperature_C);
    [p.muH, p.bH, p.muA, p.bA, p.kH, p.kA].forEach((value, i) => {
      expect(Math.abs(value - (wanted[i] ?? Number.NaN))).toBeLessThan(6e-5);
    });
  });

  it('stops rising at 30 degC', () => {
    expect(atTemperature(BSM1_15C, 38)).toEqual(atTemperature(BSM1_15C, 30));
  });
});

describe('composite quantities of the stabilisation influent (TSS from the results sheet, the others derived)', () => {
  it('solids 211.2675, COD 381.19, Kjeldahl nitrogen 54.4256, BOD5 193.529', () => {
    const y = Float64Array.from(STABLE_INFLUENT);
    expect(suspendedSolids(y, 0)).toBeCloseTo(211.2675, 4);
    expect(chemicalDemand(y, 0)).toBeCloseTo(381.19, 6);
    expect(kjeldahlNitrogen(y, 0, BSM1_15C)).toBeCloseTo(54.4256, 4);
    expect(bod5(y, 0, BSM1_15C, BOD5_SHARE.raw)).toBeCloseTo(193.529, 3);
  });
});
