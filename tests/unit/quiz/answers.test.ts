/** The answers of choices, sequences and parts, each worked out a second way: by a run of the unit, by a rule as published, by other data. */
import { describe, expect, it } from 'vitest';
import {
  PHONE_STEPS,
  phaseOf,
  procedureNext,
  procedureStart,
  SITE_STEPS,
  type StepId,
  stepState,
} from '../../../src/calls/procedure.ts';
import { faultsOf, PLACED_FAULTS } from '../../../src/faults/index.ts';
import { GALLON_m3, listSource, PASSED, STATE_SIZE, steadyWeather, WATER } from '../../../src/plant/index.ts';
import type { Choice, Drill, Ordering, Pointing, Skill } from '../../../src/quiz/drill.ts';
import { lived } from '../../../src/quiz/happens.ts';
import { drill } from '../../../src/quiz/index.ts';
import { ACTION_BY_ID, breachOf, newPerson, type Service } from '../../../src/service/index.ts';
import { Unit, type UnitSpec } from '../../../src/unit/index.ts';
import { speak } from '../../../src/words/speak.ts';
import { SPECS } from '../../control/panels.ts';
import { ENGLISH } from '../spoken.ts';
import { instants } from '../units.ts';

const SEEDS = 300;
const UNITS = [SPECS.u1, SPECS.u2, SPECS.u3];
const unitOf = (seed: number) => UNITS[seed % UNITS.length] ?? SPECS.u1;
const english = speak(ENGLISH, 'us', true);

function drillsOf<A extends Drill['ask']['kind']>(skill: Skill, kind: A) {
  return Array.from({ length: SEEDS }, (_, seed) => {
    const one = drill(skill, seed, unitOf(seed));
    if (one.ask.kind !== kind) throw new Error(`${skill} asks otherwise`);
    return { ...one, ask: one.ask as Extract<Drill['ask'], { kind: A }>, spec: unitOf(seed) };
  });
}

/** How often each answer was right: one that never is would be no question. */
function rightsOf(drills: readonly { ask: Choice | Pointing }[]): readonly string[] {
  return [...new Set(drills.map(({ ask }) => ask.right))].sort();
}

/** A sequence is that of some instants: what comes first stands first. */
function expectInOrder({ ask, seed }: { ask: Ordering; seed: number }, instantOf: (id: string) => number): void {
  const times = ask.right.map(instantOf);
  expect(times.every(Number.isFinite), `seed ${seed}: ${ask.right}: ${times}`).toBe(true);
  expect([seed, [...times].sort((a, b) => a - b)]).toEqual([seed, times]);
  expect(new Set(times).size).toBe(times.length);
}

describe('the order of the chambers', () => {
  /** When water first passes each part, after a tap is opened on a unit at rest; the pump is held back until all is there. */
  function firstPasses(spec: UnitSpec): ReadonlyMap<string, number> {
    const draws = [{ fixture: 'tap', start_s: 60, end_s: 4000, flow_m3s: 2e-4 }];
    const unit = new Unit({ spec, source: listSource(draws), faults: [], seed: 1, weather: steadyWeather(20) });
    const ledgers = {
      house: WATER.drawn,
      'trash-tank': PASSED.trashOut,
      aeration: PASSED.slot,
      clarifier: PASSED.clarifierOut,
      disinfection: PASSED.riserOut,
      field: WATER.sprayed,
    };
    unit.send('selector.off');
    const passed = new Map<string, number>();
    const y = new Float64Array(STATE_SIZE);
    const start = new Map<string, number>();
    for (let t = 0; t <= 9000; t += 1) {
      if (t === 8000) unit.send('selector.hand');
      unit.advance(t);
      unit.stateAt(t, y);
      for (const [part, i] of Object.entries(ledgers)) {
        const now = y[i] ?? 0;
        if (!start.has(part)) start.set(part, now);
        // A tenth of a litre that has come through.
        if (now - (start.get(part) ?? 0) > 1e-4 && !passed.has(part)) passed.set(part, t);
      }
    }
    // What leaves the clarifier runs through the riser at once, into the tank that holds it; the filter lies on the pump's line.
    const [riser, out] = [passed.get('disinfection') ?? Number.NaN, passed.get('field') ?? Number.NaN];
    expect(riser).toBeGreaterThanOrEqual(passed.get('clarifier') ?? Number.NaN);
    return passed
      .set('disinfection', riser + 0.1)
      .set('pump-tank', riser + 0.2)
      .set('disc-filter', out - 0.1);
  }

  it('is that in which the water of an opened tap comes through them', () => {
    const passes = new Map(UNITS.map((spec) => [spec, firstPasses(spec)]));
    for (const one of drillsOf('flow', 'order')) {
      expectInOrder(one, (id) => passes.get(one.spec)?.get(id) ?? Number.NaN);
    }
  });
});

describe('the order of what rising water does', () => {
  /** The unit filled with a steady flow, its pump's lever off: when each float turns and each mark is reached. */
  function filled(spec: UnitSpec): Unit {
    const draws = [{ fixture: 'any', start_s: 1, end_s: 40 * 3600, flow_m3s: (2 * GALLON_m3) / 60 }];
    const unit = new Unit({ spec, source: listSource(draws), faults: [], seed: 1, weather: steadyWeather(20) });
    unit.send('pumpBreaker.off');
    unit.advance(40 * 3600);
    return unit;
  }
  const MARKS: Readonly<Record<string, string>> = {
    inlet: 'mark.inletReached',
    'clean-out': 'mark.cleanOutLifts',
    fixture: 'mark.fixtureFloods',
  };

  it('is that in which floats turn and marks are reached in a unit that is filled', () => {
    const units = new Map(UNITS.map((spec) => [spec, filled(spec)]));
    for (const one of drillsOf('rising', 'order')) {
      const unit = units.get(one.spec);
      if (!unit) throw new Error('no unit');
      const floats = one.spec.panel.floats;
      expectInOrder(one, (id) => {
        const mark = MARKS[id];
        const float = id.replace(/-(night|timed)$/, '');
        // A float that is under water from the start made before time: by its height.
        const makes_m = Object.entries(floats).find(([name]) => name === float)?.[1]?.makes_m ?? 0;
        const rises = instants(unit, mark ?? `${float}.rises`)[0];
        // A sound clean-out lets go first, so that indoors is never reached.
        if (rises === undefined && id === 'fixture') return Number.MAX_SAFE_INTEGER;
        return rises !== undefined && rises > 1 ? rises : makes_m - 100;
      });
    }
  });

  it('shows every float of every panel somewhere', () => {
    const said = new Set(drillsOf('rising', 'order').flatMap(({ ask }) => ask.right));
    for (const spec of UNITS) {
      for (const float of Object.keys(spec.panel.floats)) {
        expect(
          [...said].some((id) => id.startsWith(float)),
          float,
        ).toBe(true);
      }
    }
  });
});

describe('the order of a call', () => {
  const played = (steps: readonly StepId[], onSite: boolean) => {
    let state = procedureStart();
    if (onSite) for (const event of ['visit', 'arrive'] as const) state = procedureNext(state, event);
    expect(phaseOf(state)).toBe(onSite ? 'site' : 'phone');
    for (const step of steps) state = procedureNext(state, step);
    return steps.map((step) => stepState(state, step));
  };

  it('is one in which the procedure calls no step late, and any two neighbors turned round make one so', () => {
    for (const { ask, prompt } of drillsOf('phone', 'order')) {
      const onSite = prompt.id.endsWith('site');
      const steps = (onSite ? SITE_STEPS : PHONE_STEPS).filter((step) => ask.right.includes(step));
      const right = ask.right.map((id) => steps.find((step) => step === id) ?? 'danger');
      expect(new Set(played(right, onSite))).toEqual(new Set(['done']));
      for (let i = 1; i < right.length; i++) {
        const turned = [...right];
        turned.splice(i - 1, 2, right[i] ?? 'danger', right[i - 1] ?? 'danger');
        expect(played(turned, onSite)).toContain('late');
      }
    }
  });
});

describe('the order of a lock-out', () => {
  /** 29 CFR 1910.147(d) (from memory): notify, shut down, isolate, apply devices, release stored energy, verify; the meter proved about the test (common practice, no source). */
  const RULE = ['tell', 'shut-down', 'isolate', 'lock', 'release', 'prove-meter', 'test-dead', 'prove-again'];

  it('is the rule’s', () => {
    for (const { ask } of drillsOf('lockout', 'order')) {
      expect(ask.right).toEqual(RULE.filter((step) => ask.right.includes(step)));
    }
  });
});

describe('the part where a fault sits', () => {
  it('is where it is mended, where a check shows it, or the clarifier for its blanket, which a truck and a jar reach by the next lid', () => {
    const all = drillsOf('place', 'point');
    for (const { ask, prompt, seed } of all) {
      const { fault: name } = prompt.values ?? {};
      const found = [...PLACED_FAULTS.values()].find((fault) => {
        const label = english({
          id: `fault.${fault.id}`,
          values: fault.part ? { part: { id: `part.${fault.part}` } } : {},
        });
        return typeof name === 'object' && 'id' in name && english(name) === label;
      });
      const places = [...(found?.mendedBy ?? []), ...(found?.shownBy ?? [])].map((id) => ACTION_BY_ID.get(id)?.place);
      const known =
        found?.id === 'blanket-rising' ? ask.right === 'clarifier' : places.some((one) => one === ask.right);
      expect([seed, found?.key, known]).toEqual([seed, found?.key, true]);
    }
    expect(rightsOf(all).length).toBeGreaterThan(6);
  });
});

describe('the chamber that a sample is from', () => {
  /**
   * Bands of the trade: mixed liquor 2,000 to 6,000 mg/L (EPA 2002, Fact Sheet 1, from memory); septic tank effluent with
   * its ammonia and no oxygen, 1e6 coliform and somewhat fewer; an aerobic unit's own effluent some ten thousand and more;
   * 200 per 100 mL at the most where it is disinfected (30 TAC 285.91(4)).
   */
  function chamberOf(solids: number, ammonia: number, oxygen: number, coliform: number): string {
    if (solids >= 2000 && solids <= 6000) return 'aeration';
    if (ammonia > 10 && oxygen < 0.2) return 'trash-tank';
    return coliform <= 200 ? 'pump-tank' : 'clarifier';
  }

  it('is the one in whose band its numbers lie', () => {
    const all = drillsOf('sample', 'point');
    for (const { ask, prompt, seed } of all) {
      const value = (name: string) => {
        const found = prompt.values?.[name];
        return typeof found === 'object' && 'measure' in found ? found.value : Number.NaN;
      };
      const chamber = chamberOf(value('solids'), value('ammonia'), value('oxygen'), value('coliform'));
      expect([seed, chamber]).toEqual([seed, ask.right]);
    }
    expect(rightsOf(all)).toEqual(['aeration', 'clarifier', 'pump-tank', 'trash-tank']);
  });
});

describe('what happens next', () => {
  /**
   * By the trade's rules (trade articles on air pumps and floats; common practice where they are silent): pressure lost
   * trips the air alarm; air that only thins, or an intake that clogs, trips nothing; water that is not pumped rises to
   * the alarm; a dead timer leaves the override; a shut way before the tanks lets sewage out.
   */
  const RULES: readonly (readonly [RegExp, string, string?])[] = [
    [/^(line-off-fitting|diaphragm-torn|compressor-|breaker-retrips:compressor)/, 'air'],
    [/^(joint-leak|diaphragm-worn|intake-clogged)/, 'quiet'],
    [/^(winding-open|pump-seized|relay-open|terminal-loose|stuck-down|breaker-retrips:pump)/, 'water'],
    [/^timer-dead/, 'water', 'spray'],
    [/-blocked$/, 'overflows'],
  ];

  it('is what the rules of the trade say', () => {
    const all = drillsOf('happens', 'choice');
    for (const { ask, figure, spec, seed } of all) {
      const shown = figure.kind === 'sheet' ? figure.rows[0]?.values?.fault : undefined;
      const name = typeof shown === 'object' && 'id' in shown ? english(shown) : '';
      const fault = faultsOf(spec).find(({ id, part }) => {
        return english({ id: `fault.${id}`, values: part ? { part: { id: `part.${part}` } } : {} }) === name;
      });
      const [, day, night = day] = RULES.find(([pattern]) => pattern.test(fault?.key ?? '')) ?? [];
      const expected = spec.panel.dosing.kind === 'night' ? night : day;
      expect([seed, fault?.key, ask.right]).toEqual([seed, fault?.key, expected]);
    }
    expect(rightsOf(all)).toEqual(['air', 'overflows', 'quiet', 'spray', 'water']);
  });

  it('is nothing in a sound unit', () => {
    for (const spec of UNITS) expect([spec.id, lived(spec)?.outcome]).toEqual([spec.id, 'quiet']);
  });
});

/** What a question's sheet or options name, in English. */
const labels = ({ ask }: { ask: Choice }) => new Map(ask.options.map(({ id, label }) => [id, english(label)]));

describe('the job that wants a lock-out', () => {
  it('is the only one whose doing without locks is a breach', () => {
    for (const { ask, spec, seed } of drillsOf('locked', 'choice')) {
      const unit = new Unit({ spec, source: listSource([]), faults: [], seed: 1, weather: steadyWeather(20) });
      const person = Object.assign(newPerson(), { onSite: true, madeSafe: true, place: 'house' });
      const service = { unit, person } as unknown as Service;
      const breaches = ask.options.filter(({ id }) => {
        const def = ACTION_BY_ID.get(id);
        return def && breachOf(service, def, true) === 'not-locked-out';
      });
      expect([seed, breaches.map(({ id }) => id)]).toEqual([seed, [ask.right]]);
    }
  });
});

describe('what cannot wait', () => {
  /** Sewage where people are, an open tank, a mixture that may explode (common practice, no source). */
  const NOW = ['lid-unsafe', 'sewer-blocked', 'inlet-blocked', 'outlet-blocked', 'wrong-tablets'];

  it('is the one finding that harms people at once', () => {
    const all = drillsOf('urgent', 'choice');
    for (const { ask, prompt, seed } of all) {
      const now = ask.options.filter(({ id }) => NOW.includes(id)).map(({ id }) => id);
      if (prompt.id === 'drill.urgent.ask.now') expect([seed, now]).toEqual([seed, [ask.right]]);
      else expect(now).not.toContain(ask.right);
      expect(labels({ ask }).size).toBe(4);
    }
  });

  it('what may wait lets no sewage out and lights no lamp within two days, as the unit is run', () => {
    const waits = drillsOf('urgent', 'choice').filter(({ prompt }) => prompt.id === 'drill.urgent.ask.waits');
    const asked = new Map(waits.map(({ ask, spec }) => [`${spec.id} ${ask.right}`, { ask, spec }]));
    expect(asked.size).toBeGreaterThan(20);
    for (const [name, { ask, spec }] of asked) {
      const fault = faultsOf(spec).find(({ key }) => key === ask.right);
      expect([name, fault && lived(spec, fault)?.outcome]).toEqual([name, expect.stringMatching(/^(quiet|spray)$/)]);
    }
  });
});

/** The number in a line of a sheet. */
function numberIn(rows: readonly string[], start: string): number {
  const row = rows.find((one) => one.startsWith(start)) ?? '';
  return Number(
    row
      .slice(start.length)
      .replace(/,/g, '')
      .match(/[\d.]+/)?.[0],
  );
}

const rowsOf = ({ figure }: Pick<Drill, 'figure'>) => (figure.kind === 'sheet' ? figure.rows.map(english) : []);

describe('gas', () => {
  /** 29 CFR 1910.146(b): under 19.5 or over 23.5 % oxygen, over 10 % of the lower flammable limit; OSHA ceiling 20 ppm. */
  it('is hazardous by the one reading that is past its limit', () => {
    const all = drillsOf('gas', 'choice');
    for (const one of all) {
      const rows = rowsOf(one);
      const oxygen = numberIn(rows, 'Oxygen: ');
      const past = [
        ...(oxygen < 19.5 ? ['thin'] : []),
        ...(oxygen > 23.5 ? ['rich'] : []),
        ...(numberIn(rows, 'Flammable gas: ') > 10 ? ['flammable'] : []),
        ...(numberIn(rows, 'Hydrogen sulfide: ') > 20 ? ['toxic'] : []),
      ];
      expect([one.seed, past]).toEqual([one.seed, one.ask.right === 'none' ? [] : [one.ask.right]]);
    }
    expect(rightsOf(all)).toEqual(['flammable', 'none', 'rich', 'thin', 'toxic']);
  });
});

describe('results', () => {
  /** Buchanan and Seabloom 2004, Table 2: 25 and 30 mg/L over 30 days, pH 6 to 9; 30 TAC 285.91(4): 0.1 mg/L or 200 per 100 mL. */
  it('break the one limit that is past', () => {
    const all = drillsOf('limits', 'choice');
    for (const one of all) {
      const rows = rowsOf(one);
      const pH = numberIn(rows, 'pH: ');
      const past = [
        ...(numberIn(rows, 'CBOD5, average of 30 days: ') > 25 ? ['bod'] : []),
        ...(numberIn(rows, 'Suspended solids, average of 30 days: ') > 30 ? ['solids'] : []),
        ...(pH < 6 || pH > 9 ? ['pH'] : []),
        ...(numberIn(rows, 'Total chlorine in the pump tank: ') < 0.1 && numberIn(rows, 'Fecal coliform: ') > 200
          ? ['germs']
          : []),
      ];
      expect([one.seed, past]).toEqual([one.seed, one.ask.right === 'none' ? [] : [one.ask.right]]);
    }
    expect(rightsOf(all)).toEqual(['bod', 'germs', 'none', 'pH', 'solids']);
  });
});

describe('the check that tells two causes apart', () => {
  /** The catalogue's own word, which the simulation is not asked for: what shows each cause itself. */
  it('is one that shows the one cause and not the other, and none of the others offered shows either', () => {
    const all = drillsOf('split', 'choice');
    for (const { ask, figure, spec, seed } of all) {
      const rows = figure.kind === 'sheet' ? figure.rows : [];
      const pair = rows.slice(0, 2).map(({ values }) => {
        return faultsOf(spec).find(({ id }) => JSON.stringify(values?.cause) === JSON.stringify({ id: `fault.${id}` }));
      });
      const showing = (id: string) => pair.filter((fault) => fault?.shownBy.includes(id)).length;
      const shown = ask.options.map(({ id }) => [id, showing(id)]);
      const offered = ask.options.map(({ id }) => [id, id === ask.right ? 1 : expect.not.toBeOneOf([1])]);
      expect([seed, shown]).toEqual([seed, offered]);
    }
    expect(rightsOf(all).length).toBeGreaterThan(8);
  });
});
