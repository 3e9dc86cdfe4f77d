/** What every family of questions promises, over more than 10,000 of them, in both languages and both systems of units. */
import { describe, expect, it } from 'vitest';
import { type Answer, checked, type Drill, SKILLS, type Skill, type System } from '../../../src/quiz/drill.ts';
import { figureWords } from '../../../src/quiz/figure-words.ts';
import { drill } from '../../../src/quiz/index.ts';
import { TOPICS as QUIZ_TOPICS, skillsOf, TOPIC_OF } from '../../../src/quiz/topics.ts';
import type { Message } from '../../../src/service/index.ts';
import { speak } from '../../../src/words/speak.ts';
import { SPECS } from '../../control/panels.ts';
import { ENGLISH, messagesIn, SPANISH, TOPICS } from '../spoken.ts';

const SEEDS = Math.ceil(10_000 / SKILLS.length);
const UNITS = [SPECS.u1, SPECS.u2, SPECS.u3];
const unitOf = (seed: number) => UNITS[seed % UNITS.length] ?? SPECS.u1;
const systemOf = (seed: number): System => (seed % 2 === 0 ? 'us' : 'si');
const made = (skill: Skill, seed: number) => drill(skill, seed, unitOf(seed), systemOf(seed));

const ALL: ReadonlyMap<Skill, readonly Drill[]> = new Map(
  SKILLS.map((skill) => [skill, Array.from({ length: SEEDS }, (_, seed) => made(skill, seed))]),
);
const EVERY = [...ALL.values()].flat();

const SPEAKERS = (['us', 'si'] as const).flatMap((system) =>
  [ENGLISH, SPANISH].map((words) => speak(words, system, true)),
);

/** Every explanation that an answer can get. */
function explanations({ ask }: Drill): readonly Message[] {
  switch (ask.kind) {
    case 'choice':
    case 'point':
      return ask.options.map(({ why }) => why);
    case 'order':
      return [...ask.items.map(({ why }) => why), ask.whole];
    case 'number':
      return [...ask.slips.map(({ why }) => why), ask.other, ask.right];
  }
}

/** The answers that a person could give, as far as they can be listed. */
function answers({ ask }: Drill): readonly Answer[] {
  switch (ask.kind) {
    case 'choice':
    case 'point':
      return ask.options.map(({ id }) => id);
    case 'order':
      return orders(ask.items.map(({ id }) => id));
    case 'number':
      return [ask.value, ...ask.slips.map(({ value }) => value)];
  }
}

function orders(ids: readonly string[]): readonly (readonly string[])[] {
  if (ids.length < 2) return [ids];
  return ids.flatMap((first) => orders(ids.filter((id) => id !== first)).map((rest) => [first, ...rest]));
}

const PERSON =
  /\b(you|your|yours|usted|ustedes|careless|excellent|perfect|well done|descuidad[oa]|excelente|perfecto|bien hecho)\b/i;

it('there are at least 25 families, and each topic has two or more', () => {
  expect(SKILLS.length).toBeGreaterThanOrEqual(25);
  expect(EVERY.length).toBeGreaterThanOrEqual(10_000);
  for (const topic of QUIZ_TOPICS) expect([topic, skillsOf(topic).length > 1]).toEqual([topic, true]);
});

describe.each(SKILLS)('the family %s', (skill) => {
  const all = ALL.get(skill) ?? [];

  it('offers no answer twice, in any language or units', () => {
    for (const { seed, ask } of all) {
      if (ask.kind === 'number') continue;
      const options = ask.kind === 'order' ? ask.items : ask.options;
      const [least, most] = ask.kind === 'choice' ? [3, 5] : ask.kind === 'order' ? [4, 6] : [4, 12];
      expect(options.length, `seed ${seed}`).toBeGreaterThanOrEqual(least);
      expect(options.length, `seed ${seed}`).toBeLessThanOrEqual(most);
      for (const say of SPEAKERS) {
        const labels = options.map(({ label }) => say(label));
        expect(new Set(labels).size, `seed ${seed}: ${labels}`).toBe(labels.length);
      }
      expect(new Set(options.map(({ id }) => id)).size).toBe(options.length);
    }
  });

  it('has one right answer and no other', () => {
    for (const one of all) {
      const right = answers(one).filter((answer) => checked(one, answer).right);
      expect(right.length, `seed ${one.seed}`).toBe(1);
    }
  });

  it('a number is finite, its slips are told from it and from one another, and its way is worked out to it', () => {
    for (const one of all) {
      const { ask, seed } = one;
      if (ask.kind !== 'number') continue;
      expect(Number.isFinite(ask.value), `seed ${seed}`).toBe(true);
      expect(ask.tolerance).toBeGreaterThan(0);
      for (const slip of ask.slips) {
        expect(Math.abs(slip.value - ask.value), `seed ${seed}`).toBeGreaterThan(ask.tolerance);
        expect(checked(one, slip.value).why.id, `seed ${seed}`).toBe(slip.why.id);
      }
      // Rounded as it is shown, the answer still counts.
      expect(checked(one, Number(ask.value.toFixed(ask.decimals))).right, `seed ${seed}`).toBe(true);
      expect(checked(one, -999).why).toBe(ask.other);
      expect(ask.worked.length).toBeGreaterThan(0);
    }
  });

  it('explains every answer in its own words: at most 60, of the work and not of the person, ending in a question', () => {
    for (const one of all) {
      for (const say of SPEAKERS) {
        const whys = explanations(one);
        const said = whys.map(say);
        // The same slip may come to two numbers.
        const asked = one.ask.kind === 'number' ? new Set(whys.map(({ id }) => id)).size : said.length;
        expect(new Set(said).size, `seed ${one.seed}`).toBe(asked);
        for (const text of said) {
          expect(text.split(/\s+/).length, text).toBeLessThanOrEqual(60);
          expect(text).toMatch(/\?$/);
          expect(text).not.toMatch(PERSON);
          expect(text).not.toMatch(/[[\]{}]|NaN|Infinity|undefined/);
        }
        for (const message of [one.prompt, one.source, ...figureWords(one.figure)]) say(message);
      }
    }
  });

  it('gives the same question for the same seed, and has its topic and source', () => {
    const some = all.slice(0, 40);
    expect(some.map(({ seed }) => made(skill, seed))).toEqual(some);
    for (const { topic, source } of some) {
      expect(topic).toBe(TOPIC_OF[skill]);
      expect(SPEAKERS[0]?.(source)).toMatch(/\w/);
    }
  });
});

it('says every text that the families have', () => {
  const said = new Set(messagesIn(EVERY).map(({ id }) => id));
  const ours = ['quiz-numbers', 'quiz-questions'].flatMap((topic) => Object.keys(TOPICS.get(topic) ?? {}));
  expect(ours.length).toBeGreaterThan(400);
  expect(ours.filter((id) => id.startsWith('drill.') && !said.has(id))).toEqual([]);
});
