import { describe, expect, it } from 'vitest';
import { type Choice, checked, type Drill, type Skill } from '../../src/quiz/drill.ts';
import type {
  FloatShown,
  FloatsFigure,
  JarFigure,
  LineFigure,
  MeterFigure,
  PanelFigure,
} from '../../src/quiz/figure.ts';
import { drill } from '../../src/quiz/index.ts';
import type { Message } from '../../src/service/index.ts';
import { speak } from '../../src/words/speak.ts';
import { SPECS } from '../control/panels.ts';
import { ENGLISH, messagesIn, SPANISH, TOPICS } from './spoken.ts';

/** Those that show a part of a unit: what all families promise is held by quiz/items.test.ts too. */
const SKILLS = ['floats', 'air-line', 'jar', 'panel', 'meter'] as const satisfies readonly Skill[];
const SEEDS = 2000;
const UNITS = [SPECS.u1, SPECS.u2, SPECS.u3];

const unitOf = (seed: number) => UNITS[seed % UNITS.length] ?? SPECS.u1;
const drills = new Map<Skill, readonly Drill[]>();

/** The drills of a skill over all seeds, the three units taking turns. */
function drillsOf(skill: Skill): readonly Drill[] {
  const made = drills.get(skill) ?? Array.from({ length: SEEDS }, (_, seed) => drill(skill, seed, unitOf(seed)));
  drills.set(skill, made);
  return made;
}

const english = speak(ENGLISH, 'us', true);
const SPEAKERS = [english, speak(SPANISH, 'si', true)];

/** Every explanation of a drill, wrong ones first. */
function explanations({ ask }: Drill): readonly Message[] {
  if (ask.kind === 'point' || ask.kind === 'order') throw new Error(`no drill of these asks to ${ask.kind}`);
  if (ask.kind === 'choice') return ask.options.map(({ why }) => why);
  return [...ask.slips.map(({ why }) => why), ask.other, ask.right];
}

const PERSON =
  /\b(you|your|yours|usted|ustedes|careless|excellent|perfect|well done|descuidad[oa]|excelente|perfecto|bien hecho)\b/i;

describe.each(SKILLS)('the drill %s', (skill) => {
  const all = drillsOf(skill);

  it('has three to five answers, each once, or a number that no slip comes to', () => {
    for (const { seed, ask } of all) {
      if (ask.kind === 'number') {
        expect(Number.isFinite(ask.value)).toBe(true);
        for (const slip of ask.slips) {
          expect(Math.abs(slip.value - ask.value), `seed ${seed}`).toBeGreaterThan(ask.tolerance);
        }
        continue;
      }
      if (ask.kind !== 'choice') throw new Error(`seed ${seed} asks to ${ask.kind}`);
      const labels = ask.options.map(({ label }) => english(label));
      expect(labels.length, `seed ${seed}`).toBeGreaterThanOrEqual(3);
      expect(labels.length, `seed ${seed}`).toBeLessThanOrEqual(5);
      expect(new Set(labels).size, `seed ${seed}: ${labels}`).toBe(labels.length);
      expect(new Set(ask.options.map(({ id }) => id)).size).toBe(labels.length);
    }
  });

  it('has exactly one right answer', () => {
    for (const one of all) {
      const { ask } = one;
      if (ask.kind === 'number') {
        expect(checked(one, ask.value).right).toBe(true);
        for (const { value, why } of ask.slips) expect(checked(one, value).right || !why).toBe(false);
        expect(checked(one, -999).why).toBe(ask.other);
      } else if (ask.kind === 'choice') {
        expect(ask.options.filter(({ id }) => checked(one, id).right).length, `seed ${one.seed}`).toBe(1);
      }
    }
  });

  it('explains every answer in its own words: at most 60, of the work and not of the person, ending in a question', () => {
    for (const one of all) {
      for (const say of SPEAKERS) {
        const said = explanations(one).map(say);
        const asked = one.ask.kind === 'choice' ? new Set(said).size : said.length;
        expect(asked, `seed ${one.seed}`).toBe(said.length);
        for (const text of said) {
          expect(text.split(/\s+/).length, text).toBeLessThanOrEqual(60);
          expect(text).toMatch(/\?$/);
          expect(text).not.toMatch(PERSON);
        }
        say(one.prompt);
      }
    }
  });

  it('gives the same drill for the same seed, another for another', () => {
    const some = all.slice(0, 60);
    expect(some.map(({ seed }) => drill(skill, seed, unitOf(seed)))).toEqual(some);
    expect(new Set(some.map(({ figure, prompt }) => JSON.stringify([figure, prompt]))).size).toBeGreaterThan(50);
  });
});

it('says every text that the drills have', () => {
  const said = new Set(SKILLS.flatMap((skill) => messagesIn(drillsOf(skill)).map(({ id }) => id)));
  // The figure's names of the line's parts are put into words by the page.
  for (const { figure } of drillsOf('air-line')) {
    if (figure.kind === 'line') for (const { id } of figure.parts) said.add(`drill.part.${id}`);
  }
  const ours = Object.keys(TOPICS.get('drills') ?? {}).filter((id) => id.startsWith('drill.'));
  expect(ours.length).toBeGreaterThan(150);
  expect(ours.filter((id) => !said.has(id))).toEqual([]);
});

/** Drills that ask one thing, each with its figure and choice. */
function asking<F>(skill: Skill, prompt: RegExp): readonly { seed: number; figure: F; ask: Choice }[] {
  const found = drillsOf(skill).flatMap(({ seed, figure, ask, prompt: { id } }) =>
    prompt.test(id) && ask.kind === 'choice' ? [{ seed, figure: figure as F, ask }] : [],
  );
  expect(found.length).toBeGreaterThan(100);
  return found;
}

function rightsOf(drills: readonly { ask: Choice }[]): readonly string[] {
  return [...new Set(drills.map(({ ask }) => ask.right))].sort();
}

/** By the heights on the sheet and the trade's rules alone (unit.md section 2), without the control. */
describe('the answers of the float tree, worked out by hand', () => {
  const by = (floats: readonly FloatShown[], id: string) => floats.find((float) => float.id === id)?.position === 'up';

  it('what the panel does follows from which floats are up, the timer and the kind of dosing', () => {
    const all = asking<FloatsFigure>('floats', /floats\.now/);
    for (const { seed, figure, ask } of all) {
      const up = (id: string) => by(figure.floats, id);
      const { dosing } = unitOf(seed).panel;
      const ready = up('stopFloat') && (dosing.kind === 'night' || up('redundantOffFloat'));
      const runs =
        dosing.kind === 'demand'
          ? up('startStopFloat')
          : ready && (figure.timer === 'doses' || (dosing.kind === 'night' && up('overrideFloat')));
      const waits = ready && (up('doseFloat') || (dosing.kind === 'timed' && up('overrideFloat')));
      const expected = up('highWaterFloat')
        ? `alarm-${runs ? 'runs' : 'rests'}`
        : runs
          ? 'runs'
          : waits
            ? 'waits'
            : 'rests';
      expect([seed, ask.right]).toEqual([seed, expected]);
    }
    expect(rightsOf(all)).toEqual(['alarm-rests', 'alarm-runs', 'rests', 'runs', 'waits']);
  });

  it('a float stands as the water has it, outside its swing', () => {
    for (const { seed, figure } of asking<FloatsFigure>('floats', /floats\.now/)) {
      for (const { id, makes_m, breaks_m, position, made } of figure.floats) {
        const { level_m } = figure;
        if (level_m >= makes_m) expect([seed, id, position]).toEqual([seed, id, 'up']);
        if (level_m <= breaks_m) expect([seed, id, position]).toEqual([seed, id, 'hanging']);
        expect(made).toBe(position === 'up');
      }
    }
  });

  it('the odd float is the only one at odds with the level or with its own contact', () => {
    const all = asking<FloatsFigure>('floats', /tree/);
    for (const { seed, figure, ask } of all) {
      const odd = figure.floats.filter(({ makes_m, breaks_m, position, made }) => {
        const forced = figure.level_m >= makes_m ? 'up' : figure.level_m <= breaks_m ? 'hanging' : position;
        return forced !== position || made !== (position === 'up');
      });
      expect([seed, odd.map(({ id }) => id)]).toEqual([seed, ask.right === 'none' ? [] : [ask.right]]);
    }
    expect(rightsOf(all).length).toBe(7);
  });
});

/** Expected tests by trying every order of cuts, with nothing of the planner. */
function fewestTests(weights: readonly number[]): number {
  if (weights.length < 2) return 0;
  return Math.min(...weights.slice(1).map((_, i) => testsAfter(weights, i + 1)));
}

function testsAfter(weights: readonly number[], cut: number): number {
  const sum = (part: readonly number[]) => part.reduce((total, w) => total + w, 0);
  const [a, b] = [weights.slice(0, cut), weights.slice(cut)];
  return 1 + (sum(a) * fewestTests(a) + sum(b) * fewestTests(b)) / sum(weights);
}

describe('the answers of the air line, worked out by hand', () => {
  it('the best point needs the fewest tests of all orders of cuts, and each other says by how much it needs more', () => {
    for (const { seed, figure, ask } of asking<LineFigure>('air-line', /line/)) {
      const first = figure.parts.findIndex((part) => part.left);
      const weights = figure.parts.filter((part) => part.left).map((part) => part.weight);
      const fewest = fewestTests(weights);
      for (const { id, why } of ask.options) {
        const cut = Number(id) - first;
        const inside = cut > 0 && cut < weights.length;
        const tests = inside ? testsAfter(weights, cut) : 1 + fewest;
        const said = why.values as Record<string, { value: number }>;
        expect(said.e?.value, `seed ${seed}, point ${id}`).toBeCloseTo(tests, 9);
        expect(id === ask.right).toBe(Math.abs(tests - fewest) < 1e-9);
        if (id !== ask.right) expect(said.more?.value).toBeCloseTo(tests - fewest, 9);
      }
    }
  });

  it('a line squeezed shut before the leak holds the compressor’s dead head, one behind it falls under the air switch', () => {
    for (const { seed, figure } of asking<LineFigure>('air-line', /line\.ask$/)) {
      const { air } = unitOf(seed).plant;
      for (const { point, leak, pressure_kPa } of figure.readings) {
        if (leak === 'beyond') expect(pressure_kPa).toBeCloseTo(air.deadHead_kPa, 0);
        else expect(pressure_kPa).toBeLessThan(air.deadHead_kPa / 2);
        // The parts that are left lie on the leak's side of every reading.
        figure.parts.forEach(({ left }, i) => {
          if (left) expect(i < point).toBe(leak === 'before');
        });
      }
    }
  });
});

/** Source: common practice and a handbook (published.md 4.2, from memory): 300 to 500 mL ordinary, 600 pump; 80 to 120 mL/g good, 150 bulking. */
describe('the answers of the jar, worked out by hand', () => {
  it('judge by what can be read, its air, its index and its amount', () => {
    const all = asking<JarFigure>('jar', /jar\.ask$/);
    for (const { seed, figure, ask } of all) {
      const { settled_mLL: line, solids_mgL, floats, colour, foam } = figure;
      const index = (line * 1000) / solids_mgL;
      const rules: readonly [string, boolean][] = [
        ['floats', floats],
        ['stale', /grey|black/.test(colour)],
        ['old', index < 80 && foam === 'dark-greasy'],
        ['bulking', index > 150],
        ['thin', line < 300],
        ['ordinary', line <= 500],
        ['thick', line <= 600],
        ['remove', true],
      ];
      const expected = rules.find(([, holds]) => holds)?.[0];
      expect([seed, ask.right]).toEqual([seed, expected]);
    }
    expect(rightsOf(all).length).toBe(8);
  });

  it('the index is settled volume times 1000 over solids, and known slips are named', () => {
    const all = drillsOf('jar').filter(({ ask }) => ask.kind === 'number');
    expect(all.length).toBeGreaterThan(100);
    for (const one of all) {
      const { settled_mLL, solids_mgL } = one.figure as JarFigure;
      const index = (settled_mLL * 1000) / solids_mgL;
      expect(checked(one, Math.round(index)).right).toBe(true);
      expect(checked(one, Math.round(index * 1.1)).right).toBe(false);
      expect(checked(one, Math.round(index) / 10).why.id).toBe('drill.jar.index.percent');
    }
  });
});

describe('the answers of the panel, worked out by hand', () => {
  const notes = (figure: PanelFigure) => figure.notes.map(({ id }) => id);

  it('a dose wants lever, selector, clock and water', () => {
    const all = asking<PanelFigure>('panel', /start/);
    for (const { seed, figure, ask } of all) {
      const lacking = [
        ...(figure.levers.pumpBreaker === 'on' ? [] : ['lever']),
        ...(figure.selector === 'auto' ? [] : ['selector']),
        ...(figure.timer?.keeps ? [] : ['clock']),
        ...(notes(figure).includes('drill.panel.over-dose') ? [] : ['water']),
      ];
      // A timer that its own lever leaves unfed lives on its reserve, or is dark: the lever is the cause.
      const [cause = 'doses'] = lacking;
      expect([seed, ask.right]).toEqual([seed, cause]);
    }
    expect(rightsOf(all)).toEqual(['clock', 'doses', 'lever', 'selector', 'water']);
  });

  it('a reset leaves a lamp dark that only the latch kept lit; a condition that stands lights it after its delay', () => {
    const all = asking<PanelFigure>('panel', /reset/);
    for (const { seed, figure, ask } of all) {
      const { airSwitch, delays_s } = unitOf(seed).panel;
      expect(figure.lamps.some(({ lit }) => lit)).toBe(true);
      const low = figure.gauge_kPa < airSwitch.falls_kPa;
      const high = notes(figure).includes('drill.panel.over-high');
      const delay_s = high ? delays_s.highWater : low ? delays_s.lowAir : undefined;
      const expected = delay_s === undefined ? 'dark' : delay_s < 30 ? 'seconds' : 'minute';
      expect([seed, ask.right]).toEqual([seed, expected]);
    }
    expect(rightsOf(all)).toEqual(['dark', 'minute', 'seconds']);
  });

  it('a held Test tells by what is lit and heard', () => {
    const all = asking<PanelFigure>('panel', /test/);
    for (const { seed, figure, ask } of all) {
      const lit = figure.lamps.every((lamp) => lamp.lit);
      const dark = figure.lamps.every((lamp) => !lamp.lit) && !figure.buzzer;
      const expected = dark ? 'circuit' : !lit ? 'lamp' : figure.buzzer ? 'sound' : 'buzzer';
      expect([seed, ask.right]).toEqual([seed, expected]);
      expect(dark).toBe(figure.levers.alarmBreaker !== 'on');
    }
    expect(rightsOf(all)).toEqual(['buzzer', 'circuit', 'lamp', 'sound']);
  });
});

/** Loads of the ways through a panel: the first takes all the volts. */
const LOADS = ['drill.link.coil', 'drill.link.motor', 'drill.link.input'];

/** Which link of the chain a case opens; none for a sound one. A float's is named as its link is. */
const OPENS: Readonly<Record<string, string>> = {
  'pumpBreaker.trips': 'drill.link.pump-lever',
  'alarmBreaker.trips': 'drill.link.alarm-lever',
  'selector.off': 'drill.link.selector',
  'timer.dies': 'drill.link.timer',
  'relay.opens': 'drill.link.relay',
  'motorLead.opens': 'drill.link.lead',
  'winding.opens': 'drill.link.motor',
};

function linkOf(id: string): string | undefined {
  return OPENS[id] ?? (id.endsWith('.wireOpens') ? `float.${id.replace('.wireOpens', '')}` : undefined);
}

/** Volts of a series circuit: all of them across the first break, or across the load where there is none. */
function seriesVolts({ chain, red, black }: MeterFigure, opened: string | undefined, supply_V: number): number {
  const at = chain.parts.findIndex(({ id }) => (opened ? id === opened : LOADS.includes(id)));
  return red <= at && at < black ? supply_V : 0;
}

describe('the answers of the meter, worked out by hand', () => {
  it('in volts, the right part is the only one that gives the reading in a series circuit', () => {
    const all = asking<MeterFigure>('meter', /ask-volts/);
    for (const { seed, figure, ask } of all) {
      const fitting = ask.options.filter(
        ({ id }) => Math.abs(seriesVolts(figure, linkOf(id), 118) - (figure.reading ?? 0)) < 12,
      );
      expect([seed, fitting.map(({ id }) => id)]).toEqual([seed, [ask.right]]);
    }
    expect(rightsOf(all).length).toBeGreaterThan(8);
  });

  it('in ohms, a float’s own two screws are closed or open as its cable and the water have it', () => {
    const all = asking<MeterFigure>('meter', /ask-ohms/);
    const across = all.filter(
      ({ figure }) => figure.black === figure.red + 1 && figure.chain.parts[figure.red]?.id.startsWith('float.'),
    );
    expect(across.length).toBeGreaterThan(30);
    for (const { seed, figure, ask } of across) {
      const high = figure.notes.some(({ id }) => id === 'drill.meter.water-high');
      const closed = ask.right.endsWith('.wireBridged') || (high && !ask.right.endsWith('.wireOpens'));
      expect([seed, figure.reading !== null]).toEqual([seed, closed]);
    }
  });

  it('where a sound circuit is asked for, the whole supply stands across its load and next to nothing elsewhere', () => {
    const all = drillsOf('meter').filter(({ ask }) => ask.kind === 'number');
    expect(all.length).toBeGreaterThan(200);
    for (const one of all) {
      const volts = seriesVolts(one.figure as MeterFigure, undefined, 118);
      expect(checked(one, volts).right, `seed ${one.seed}`).toBe(true);
      expect(checked(one, 118 - volts).right).toBe(false);
    }
  });
});
