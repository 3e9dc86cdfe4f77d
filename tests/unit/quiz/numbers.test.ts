/**
 * Every number worked out a second way: what stands on the sheet is turned into SI by the definitions of the units, the
 * physical law is applied to it there, and the result is turned back. Published worked examples stand beside.
 */
import { describe, expect, it } from 'vitest';
import { operatingPoint, pumpingInterval_y, SOUND, stillAir } from '../../../src/plant/index.ts';
import { checked, type Drill, type NumberAsked, type Skill, type System } from '../../../src/quiz/drill.ts';
import { drill } from '../../../src/quiz/index.ts';
import type { Message, MessageValue } from '../../../src/service/index.ts';
import { SPECS } from '../../control/panels.ts';

const SEEDS = 300;
const UNITS = [SPECS.u1, SPECS.u2, SPECS.u3];
const unitOf = (seed: number) => UNITS[seed % UNITS.length] ?? SPECS.u1;

const INCH = 0.0254;
const GALLON = 231 * INCH ** 3;
const POUND = 0.45359237;
const LITRE = 1e-3;

/** Each unit in SI: m, m2, m3, kg, kPa, A; by the minute, hour or day where its name has it. */
const SI: Readonly<Record<string, number>> = {
  gald: GALLON,
  Ld: LITRE,
  gal: GALLON,
  L: LITRE,
  ft: 12 * INCH,
  m: 1,
  in: INCH,
  cm: 0.01,
  ft2: (12 * INCH) ** 2,
  m2: 1,
  gpm: GALLON,
  Lmin: LITRE,
  cfm: (12 * INCH) ** 3,
  psi: (POUND * 9.80665) / INCH ** 2 / 1000,
  kPa: 1,
  oz: POUND / 16,
  g: 1e-3,
  lbgal: POUND / GALLON,
  gL: 1,
  mgL: 1e-3,
  lbd: POUND,
  gd: 1e-3,
  flozd: GALLON / 128,
  mLd: 1e-6,
  gald_ft2: GALLON / (12 * INCH) ** 2,
  mh: 24,
  mgminL: 1e-3,
  hp: 0.745699872,
  kW: 1,
  V: 1,
  A: 1,
  pct: 0.01,
  min: 1,
  h: 1,
  d: 1,
  y: 1,
};

type Sheet = Readonly<Record<string, number>>;

function isMessage(value: MessageValue | undefined): value is Message {
  return typeof value === 'object' && 'id' in value;
}

/** A number as it is written on the sheet, in SI. */
function inSI(said: MessageValue | undefined): number {
  if (!isMessage(said)) throw new Error('no message');
  const { m, s, n, u } = said.values ?? {};
  if (said.id === 'drill.minutes') return Number(m) + Number(s) / 60;
  if (typeof n !== 'object' || !('measure' in n)) throw new Error(said.id);
  const { resolution = 1, value } = n;
  const written = Math.round(value / resolution) * resolution;
  if (said.id === 'drill.figure') return written;
  const unit = said.id === 'drill.percent' ? 'pct' : isMessage(u) ? u.id.replace('drill.unit.', '') : '';
  return written * (SI[unit] ?? Number.NaN);
}

function sheetOf({ figure }: Drill): Sheet {
  if (figure.kind !== 'sheet') throw new Error('no sheet');
  const entries = figure.rows.map(({ values }): [string, number] => {
    const what = values?.what;
    return [isMessage(what) ? what.id.replace('drill.w.', '') : '', inSI(values?.n)];
  });
  return Object.fromEntries(entries);
}

interface Asked {
  readonly one: Drill;
  readonly ask: NumberAsked;
  readonly sheet: Sheet;
  readonly unit: string;
}

function asked(skill: Skill, seed: number, system: System): Asked {
  const one = drill(skill, seed, unitOf(seed), system);
  const { ask } = one;
  if (ask.kind !== 'number') throw new Error(`${skill} asks for no number`);
  return { one, ask, sheet: sheetOf(one), unit: ask.unit.id.replace('drill.unit.', '') };
}

const at = (sheet: Sheet, what: string): number => sheet[what] ?? Number.NaN;

/** By the law, in SI, of what the sheet says. */
const LAWS: Readonly<Record<string, (given: (what: string) => number, prompt: string) => number>> = {
  // Volume over flow.
  detention: (g) => (24 * g('length') * g('width') * g('water')) / g('flow'),
  // A cylinder's height.
  'float-gap': (g) => g('dose') / ((Math.PI / 4) * g('diameter') ** 2),
  'draw-down': (g) => (g('length') * g('width') * (g('after') - g('before'))) / g('time'),
  timer: (g, prompt) => {
    const on = g('flow') / g('rate') / g('cycles');
    return prompt === 'drill.timer.on.ask' ? on : (24 * 60) / g('cycles') - on;
  },
  // Hydrostatics: rho g h, with water at 4 degC.
  gauge: (g) => 9.80665 * g('depth') + g('opening') + g('friction'),
  // Stoichiometry of each part of the load.
  oxygen: (g) => g('flow') * (g('bod') * g('forBod') + g('nitrogen') * g('nitrified') * g('forNitrogen')),
  load: (g) => g('flow') * g('bod'),
  sludge: (g) => ((g('spot1') + g('spot2') + g('spot3')) / 3 + g('scum')) / g('water'),
  // The plant has the table's closed form.
  'pump-out': (g) => pumpingInterval_y(g('tank') / GALLON, g('persons')),
  overflow: (g) => (g('surge') * 60 * 24) / g('surface'),
  chlorine: (g) => (g('flow') * (g('demand') + g('residual'))) / g('strength'),
  tablets: (g) => (g('tablets') * g('tablet') * g('available')) / (g('flow') * g('chlorineDose')),
  ct: (g) => (g('left') * g('factor') * g('contactVolume')) / g('peak'),
  counters: (g) => ((g('now') - g('then')) * 60 * g('rate')) / g('days'),
};

const FAMILIES = Object.keys(LAWS) as Skill[];
const SYSTEMS = ['us', 'si'] as const;

describe.each(FAMILIES)('%s', (skill) => {
  it.each(SYSTEMS)('is what the law gives in SI, asked in %s', (system) => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { one, ask, sheet, unit } = asked(skill, seed, system);
      const law = LAWS[skill]?.((what) => at(sheet, what), one.prompt.id) ?? Number.NaN;
      const value = law / (SI[unit] ?? Number.NaN);
      expect([seed, checked(one, value).right], `${value} for ${ask.value}`).toEqual([seed, true]);
    }
  });

  it('is the same thing in both systems: only the rounding of what is given differs', () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const [us, si] = [asked(skill, seed, 'us'), asked(skill, seed, 'si')];
      const physical = ({ ask, unit }: Asked) => ask.value * (SI[unit] ?? Number.NaN);
      expect(us.one.prompt.id).toBe(si.one.prompt.id);
      const share = physical(us) / physical(si);
      expect(Math.abs(share - 1), `seed ${seed}: ${us.ask.value} ${us.unit}, ${si.ask.value} ${si.unit}`).toBeLessThan(
        0.09,
      );
    }
  });
});

/** NEC Table 430.248, single phase, A at 115 V and at 230 V by horsepower. */
const TABLE_430_248: readonly (readonly [hp: number, at115: number, at230: number])[] = [
  [0.25, 5.8, 2.9],
  [0.33, 7.2, 3.6],
  [0.5, 9.8, 4.9],
  [0.75, 13.8, 6.9],
  [1, 16, 8],
];

describe('amps', () => {
  it.each(SYSTEMS)('go by the code’s table and its factors, asked in %s', (system) => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { one, sheet } = asked('amps', seed, system);
      const hp = at(sheet, 'power') / 0.745699872;
      const [row] = [...TABLE_430_248].sort(([a], [b]) => Math.abs(a - hp) - Math.abs(b - hp));
      const table = (at(sheet, 'volts') === 115 ? row?.[1] : row?.[2]) ?? Number.NaN;
      expect(at(sheet, 'table')).toBeCloseTo(table, 9);
      const factor = one.prompt.id === 'drill.amps.wire.ask' ? 1.25 : 2.5;
      expect(checked(one, factor * table).right, `seed ${seed}`).toBe(true);
    }
  });

  it('give the published example: 9.8 A make 12.25 A of wire and 24.5 A of breaker (NEC 430.22, 430.52)', () => {
    const made = Array.from({ length: SEEDS }, (_, seed) => asked('amps', seed, 'us'));
    const half = made.filter(({ sheet }) => at(sheet, 'table') === 9.8).map(({ ask }) => ask.value);
    expect(new Set(half.map((amps) => amps.toFixed(2)))).toEqual(new Set(['12.25', '24.50']));
  });
});

describe('an air leak', () => {
  it.each(SYSTEMS)('is what the plant loses by the hole that makes the gauge read so, asked in %s', (system) => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { ask, sheet, unit } = asked('leak', seed, system);
      const { plant } = unitOf(seed);
      const depth_m = plant.aeration.outlet_m - plant.air.diffuser_elevation_m;
      const through = (lineHole_m: number) => operatingPoint(plant.air, { ...SOUND, lineHole_m }, depth_m, stillAir());
      // The gauge falls as the hole grows: halved until it reads as on the sheet.
      let [low, high] = [0, 0.006];
      for (let i = 0; i < 50; i++) {
        const middle = (low + high) / 2;
        if (through(middle).pressure_kPa > at(sheet, 'nowGauge')) low = middle;
        else high = middle;
      }
      const lost_m3min = through(low).leak_Lmin / 1000;
      // The gauge is read to 0.01 psi or 0.1 kPa of some 1 kPa to spare, which moves the root by some percent.
      const share = (ask.value * (SI[unit] ?? Number.NaN)) / lost_m3min;
      expect(Math.abs(share - 1), `seed ${seed}: ${share}`).toBeLessThan(0.12);
    }
  });
});

/** The families' own arithmetic, at numbers that are published or follow from them (source beside each). */
describe('published worked examples', () => {
  const law = (skill: string, sheet: Sheet, prompt = '') =>
    LAWS[skill]?.((what) => at(sheet, what), prompt) ?? Number.NaN;

  it('135 gal in a round tank of 72 in stand 7.7 in high (OSU Bulletin 829)', () => {
    expect(law('float-gap', { dose: 135 * GALLON, diameter: 72 * INCH }) / INCH).toBeCloseTo(7.66, 1);
  });

  it('42 by 60 in and 6 in of fall are 65.4 gal (trade journal, 2015), and 4.0 in in 6 min 7.27 gpm (by Marion County’s procedure)', () => {
    const plan = { length: 60 * INCH, width: 42 * INCH, before: 0 };
    expect(law('draw-down', { ...plan, after: 6 * INCH, time: 1 }) / GALLON).toBeCloseTo(65.45, 1);
    expect(law('draw-down', { ...plan, after: 4 * INCH, time: 6 }) / GALLON).toBeCloseTo(7.27, 2);
  });

  it('500 gal/day at 7.27 gpm in 12 doses: 5.73 min on, 114.3 min off (arithmetic)', () => {
    const sheet = { flow: 500 * GALLON, rate: 7.27 * GALLON, cycles: 12 };
    expect(law('timer', sheet, 'drill.timer.on.ask')).toBeCloseTo(5.73, 2);
    expect(law('timer', sheet, 'drill.timer.off.ask')).toBeCloseTo(114.3, 1);
  });

  it('500 gal/day at 200 mg/L carry 0.379 kg, and take 0.766 kg of oxygen with 40 mg/L of nitrogen (stoichiometry, from memory)', () => {
    const sheet = { flow: 500 * GALLON, bod: 0.2, nitrogen: 0.04, nitrified: 0.9, forBod: 1.2, forNitrogen: 4.57 };
    expect(law('load', sheet)).toBeCloseTo(0.379, 3);
    expect(law('oxygen', sheet)).toBeCloseTo(0.766, 2);
  });

  it('1.5 m of water hold 14.7 kPa (hydrostatics)', () => {
    expect(law('gauge', { depth: 1.5, opening: 0, friction: 0 })).toBeCloseTo(14.7, 1);
  });

  it('5 gpm on 5 ft2 are 1440 gal/day per ft2, or 2.44 m/h (arithmetic)', () => {
    const rate = law('overflow', { surge: 5 * GALLON, surface: 5 * (12 * INCH) ** 2 });
    expect(rate / (SI.gald_ft2 ?? 0)).toBeCloseTo(1440, 6);
    expect(rate / 24).toBeCloseTo(2.44, 2);
  });

  it('500 gal at 10 mg/L want 151 mL of bleach at 125 g/L, and a tablet of 140 g at 68% lasts 5.0 days (arithmetic)', () => {
    expect(law('chlorine', { flow: 500 * GALLON, demand: 0.009, residual: 0.001, strength: 125 }) * 1e6).toBeCloseTo(
      151,
      0,
    );
    const tube = { tablets: 1, tablet: 0.14, available: 0.68, flow: 500 * GALLON, chlorineDose: 0.01 };
    expect(law('tablets', tube)).toBeCloseTo(5.03, 2);
  });

  it('pump-out years keep to the extension table within half a year (table as printed on a service page)', () => {
    const table: readonly (readonly [gal: number, years: readonly number[]])[] = [
      [500, [6, 2.5, 1.5, 1, 0.5, 0.5]],
      [1000, [12.5, 6, 3.5, 2.5, 2, 1.5]],
      [1500, [19, 9, 6, 4, 3.5, 2.5]],
    ];
    for (const [gal, years] of table) {
      years.forEach((published, i) => {
        const ours = law('pump-out', { tank: gal * GALLON, persons: i + 1 });
        expect(Math.abs(ours - published), `${gal} gal, ${i + 1} persons`).toBeLessThanOrEqual(0.5);
      });
    }
  });

  it('sludge and scum are pumped out at 25% of the depth (University of Minnesota authors, 2026)', () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const { ask, sheet } = asked('sludge', seed, 'us');
      const out = law('sludge', sheet) > 0.25;
      const { next } = ask.right.values ?? {};
      expect(isMessage(next) && next.id).toBe(out ? 'drill.sludge.out' : 'drill.sludge.stays');
    }
  });
});
