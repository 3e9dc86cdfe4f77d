import { describe, expect, it } from 'vitest';
import { allShipped } from '../../../src/calls/index.ts';
import { FAULT_CARDS, UNIT_NAMES } from '../../../src/desk/faults/cards.ts';
import { ANYTHING, isWithin } from '../../../src/desk/find/filters.tsx';
import { alikeOf, indexOf, wordsOf } from '../../../src/desk/find/index-of-words.ts';
import { callIndex, faultIndex, seasonOf } from '../../../src/desk/find/searched.ts';
import { listIn } from '../../../src/desk/list.ts';
import { FAULTS } from '../../../src/faults/index.ts';
import { speak } from '../../../src/words/speak.ts';
import { ENGLISH, SPANISH } from '../spoken.ts';

const LANGUAGES = await Promise.all(
  [ENGLISH, SPANISH].map(async (words) => {
    const cards = await listIn(words.language);
    const say = speak(words, 'us', true);
    const calls = callIndex(cards, words);
    const faults = faultIndex(FAULT_CARDS, words, say);
    return {
      words,
      cards,
      say,
      calls: (query: string) => calls.find(query).map(({ id }) => id),
      faults: (query: string) => faults.find(query).map(({ id }) => id),
    };
  }),
);
const [english, spanish] = LANGUAGES;
if (!english || !spanish) throw new Error('both languages are searched');

describe('words', () => {
  const index = indexOf(
    [
      { what: 'olor', name: 'Huele en el pasillo', about: ['Válvula de retención', 'invierno'] },
      { what: 'luz', name: 'Luz roja', about: ['No huele a nada'] },
    ],
    alikeOf('olor huel peste; luz'),
  );

  it('are compared without accents and in small letters', () => {
    expect(wordsOf('¡VÁLVULA, niño!')).toEqual(['valvula', 'nino']);
    expect(index.find('valvula')).toEqual(['olor']);
    expect(index.find('VÁLVULA RETENCION')).toEqual(['olor']);
  });

  it('are found by their beginnings, not by what stands within them', () => {
    expect(index.find('inv')).toEqual(['olor']);
    expect(index.find('vierno')).toEqual([]);
  });

  it('must all be there', () => {
    expect(index.find('luz roja')).toEqual(['luz']);
    expect(index.find('luz pasillo')).toEqual([]);
  });

  it('of the name come before those of the text', () => {
    expect(index.find('huele')).toEqual(['olor', 'luz']);
  });

  it('find what says the same in another word', () => {
    expect(index.find('peste')).toEqual(['olor', 'luz']);
    expect(index.find('pest')).toEqual(['olor', 'luz']);
    expect(index.find('pe')).toEqual([]);
  });

  it('that are none leave everything in its order', () => {
    expect(index.find(' – ')).toEqual(['olor', 'luz']);
  });
});

describe.each(LANGUAGES)('the search in $words.language', ({ words, cards, say, calls, faults }) => {
  it('finds every call by its title, first or next to it', () => {
    for (const { id, title } of cards) expect(calls(title[words.language]).slice(0, 2)).toContain(id);
  });

  it('finds every fault by its name, before all others', () => {
    for (const { id, name } of FAULT_CARDS)
      expect([id, faults(say(name)).slice(0, 2)]).toContainEqual(expect.arrayContaining([id]));
  });

  it('finds calls by lot, season and unit', () => {
    const [card] = cards;
    if (card === undefined) throw new Error('there are calls');
    expect(calls(card.lot[words.language])).toContain(card.id);
    const winter = calls(words.texts['find.season.winter'] ?? '');
    for (const { id, starts } of cards) if (seasonOf(starts.month) === 'winter') expect(winter).toContain(id);
    for (const unit of Object.keys(UNIT_NAMES)) {
      const on = cards.filter((one) => one.unit === unit).map(({ id }) => id);
      expect(calls(unit)).toEqual(expect.arrayContaining(on));
    }
  });
});

it('finds symptoms by the words of who has them', () => {
  expect(english.faults('sewer smell indoors')).toContain('trap-dry');
  expect(english.faults('stink indoors')).toContain('trap-dry');
  expect(english.calls('Beeping')).not.toEqual([]);
  expect(spanish.faults('peste')).not.toEqual([]);
  expect(spanish.calls('TORMENTA')).toContain('storm-light');
});

/** What is really wrong on each shipped call and visit. */
const CAUSES = new Map(allShipped().map(({ id, faults }) => [id, faults.map(({ fault }) => fault)]));

describe.each(LANGUAGES)('no search in $words.language gives a cause away', ({ words, cards, calls, faults }) => {
  it.each(allShipped().map(({ id }) => id))('of %s: neither its title nor its summary leads to its fault', (id) => {
    const card = cards.find((one) => one.id === id);
    const causes = CAUSES.get(id) ?? [];
    for (const text of [card?.title, card?.summary]) {
      const found = faults(text?.[words.language] ?? '');
      expect(found.filter((fault) => causes.includes(fault))).toEqual([]);
    }
  });

  it.each(allShipped().map(({ id }) => id))('of %s: none of its words finds it alone and its fault alone', (id) => {
    const card = cards.find((one) => one.id === id);
    const causes = CAUSES.get(id) ?? [];
    const said = [card?.title, card?.summary, card?.lot].flatMap((text) => wordsOf(text?.[words.language] ?? ''));
    const telling = said.filter((word) => {
      const found = faults(word);
      return calls(word).join() === id && found.length > 0 && found.every((fault) => causes.includes(fault));
    });
    expect(telling).toEqual([]);
  });
});

it('what is said of a fault names no call, no lot and no household', () => {
  for (const { words, say } of LANGUAGES) {
    const said = FAULT_CARDS.map((card) => `${JSON.stringify(card)} ${say({ id: `shows.${card.id}` })}`).join('\n');
    for (const call of allShipped()) {
      expect(said).not.toContain(call.id);
      expect(said).not.toContain(call.title[words.language]);
      expect(said).not.toContain(call.lot[words.language]);
    }
  }
});

it('a call is known to the search by its card alone', () => {
  for (const { cards } of LANGUAGES) {
    for (const card of cards) {
      expect(Object.keys(card).sort()).toEqual(['id', 'kind', 'lot', 'minutes', 'starts', 'summary', 'title', 'unit']);
    }
  }
});

describe('what is to be read of a fault', () => {
  it('is there for every fault of the catalogue, in both languages', () => {
    expect(FAULT_CARDS.map(({ id }) => id)).toEqual(FAULTS.map(({ id }) => id));
    for (const { say } of LANGUAGES) {
      for (const card of FAULT_CARDS) {
        const { name, where, about, parts, checks, hides, mends, proof, urgency, family, cautions } = card;
        for (const one of [name, where, about, ...parts, ...checks, ...hides, ...mends, ...cautions]) say(one);
        for (const one of proof) say({ id: `proof.${one}` });
        for (const id of [`shows.${card.id}`, `urgency.${urgency}`, `family.${family}`]) say({ id });
      }
    }
  });

  it('says what mends it, and which cautions bite there', () => {
    for (const card of FAULT_CARDS) {
      expect([card.id, card.mends.length]).not.toEqual([card.id, 0]);
      expect([card.id, card.cautions.length]).not.toEqual([card.id, 0]);
      expect(new Set(card.cautions.map(({ id }) => id)).size).toBe(card.cautions.length);
    }
    const cautions = (id: string) => FAULT_CARDS.find((one) => one.id === id)?.cautions.map((one) => one.id);
    expect(cautions('relay-open')).toContain('caution.live-parts');
    expect(cautions('wrong-tablets')).toContain('caution.chlorine');
    expect(cautions('uv-lamp-out')).toContain('caution.ultraviolet');
    expect(cautions('stuck-down')).toEqual(expect.arrayContaining(['caution.open-tank', 'caution.live-parts']));
  });

  it('speaks of a part in general where the fault can sit on several', () => {
    const said = FAULT_CARDS.filter(({ parts }) => parts.length > 0).map(({ name }) => english.say(name));
    expect(said).toContain('Float held down');
    expect(said).toContain('Breaker tripped');
    for (const { parts, checks, hides, mends } of FAULT_CARDS.filter((one) => one.name.id !== 'fault.lamp-dead')) {
      const names = parts.map(english.say);
      const labels = [...checks, ...mends, ...hides].map(english.say);
      expect(labels.filter((label) => names.some((name) => label.includes(`the ${name}`)))).toEqual([]);
    }
  });
});

it('the list is narrowed by kind, unit, season, and whether it was passed', () => {
  const [card] = english.cards.filter(({ id }) => id === 'storm-light');
  if (card === undefined) throw new Error('the call does not ship');
  const within = (some: Partial<typeof ANYTHING>, passed = false) => isWithin({ ...ANYTHING, ...some }, card, passed);
  expect(within({})).toBe(true);
  expect(within({ kind: 'alarm', unit: 'u1', season: 'summer', passed: 'no' })).toBe(true);
  expect(within({ kind: 'complaint' })).toBe(false);
  expect(within({ unit: 'u2' })).toBe(false);
  expect(within({ season: 'winter' })).toBe(false);
  expect(within({ passed: 'yes' })).toBe(false);
  expect(within({ passed: 'yes' }, true)).toBe(true);
});
