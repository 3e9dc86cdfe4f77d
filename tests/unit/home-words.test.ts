/** The household's part in plain words: reading grade of its English, ease of its Spanish, and nothing that asks to open. */
import { describe, expect, it } from 'vitest';
import { STOPS } from '../../src/desk/home/stops.ts';
import { homeWords as en } from '../../src/words/en/home.ts';
import { homeWords as es } from '../../src/words/es/home.ts';

/** What people read in one go, by the beginning of its keys. */
const PIECES = [
  'home.lead',
  ...STOPS.map((part) => `home.part.${part}`),
  'home.walk',
  'home.drop',
  'home.dirt.',
  'home.whatif',
  'home.year',
  'home.neglect.',
  'home.scenario.',
  'home.effect.',
  'home.sign.',
  'home.cost',
  'home.card',
];
const HIGHEST_GRADE = 8;
const LEAST_EASE = 60;

const english: Readonly<Record<string, string>> = en;
const spanish: Readonly<Record<string, string>> = es;

function piece(texts: Readonly<Record<string, string>>, start: string): readonly string[] {
  // A gap counts as a word of one syllable.
  return Object.entries(texts).flatMap(([id, text]) =>
    id.startsWith(start) ? [text.replace(/\{\w+:([^|]*)\|[^}]*\}/g, '$1').replace(/\{\^?\w+\}/g, 'so')] : [],
  );
}

function counted(texts: readonly string[], syllables: (word: string) => number) {
  const sentences = texts.flatMap((text) => text.split(/[.!?:…]+(?:\s|$)/).filter((part) => /\p{L}/u.test(part)));
  const words = texts.flatMap((text) => text.toLowerCase().match(/\p{L}+(?:’\p{L}+)?/gu) ?? []);
  return {
    perSentence: words.length / sentences.length,
    perWord: words.reduce((sum, word) => sum + syllables(word), 0) / words.length,
  };
}

/** By the letters: a silent e inside a word (household) counts one too many, so the grade errs upwards. */
function englishSyllables(word: string): number {
  const bare = word.replace(/(?:[^laeiouyszxcgh]es|[^td]ed|[^l]e)$/, (end) => end.charAt(0));
  return Math.max(1, bare.match(/[aeiouy]+/g)?.length ?? 0);
}

/** A weak vowel without an accent beside another one makes no syllable of its own. */
function spanishSyllables(word: string): number {
  const vowels = word.replace(/(qu|gu)(?=[eiéí])/g, 'q').replace(/y$/, 'i');
  return Math.max(1, vowels.match(/[iuü]?[aeoáéó][iuü]?|[íú]|[iuü]+/g)?.length ?? 0);
}

/** Source: Kincaid and others 1975 (from memory): 0.39 words a sentence + 11.8 syllables a word - 15.59. */
function grade(texts: readonly string[]): number {
  const { perSentence, perWord } = counted(texts, englishSyllables);
  return 0.39 * perSentence + 11.8 * perWord - 15.59;
}

/** Source: Fernandez Huerta 1959 (from memory): 206.84 - 60 syllables a word - 1.02 words a sentence. */
function ease(texts: readonly string[]): number {
  const { perSentence, perWord } = counted(texts, spanishSyllables);
  return 206.84 - 60 * perWord - 1.02 * perSentence;
}

describe('the measure', () => {
  it('counts syllables as a dictionary divides', () => {
    const words = {
      water: 2,
      tank: 1,
      bubbles: 2,
      rises: 2,
      smelled: 1,
      started: 2,
      people: 2,
      oxygen: 3,
      table: 2,
    };
    for (const [word, syllables] of Object.entries(words))
      expect([word, englishSyllables(word)]).toEqual([word, syllables]);
    const palabras = { agua: 2, tanque: 2, aire: 2, día: 2, limpia: 2, desagüe: 3, lavadora: 4, quien: 1, bomba: 2 };
    for (const [word, syllables] of Object.entries(palabras))
      expect([word, spanishSyllables(word)]).toEqual([word, syllables]);
  });

  it('tells a lawyer’s sentence from plain talk', () => {
    const law = [
      'The installation’s proprietor acknowledges responsibility for continuous supervision of disinfection apparatus.',
    ];
    expect(grade(law)).toBeGreaterThan(16);
    expect(
      ease([
        'La responsabilidad de la supervisión continuada corresponde exclusivamente al propietario de la instalación.',
      ]),
    ).toBeLessThan(40);
  });
});

describe('the household’s words', () => {
  it.each(PIECES)('of %s read at grade 8 or below in English', (start) => {
    expect(piece(english, start).length).toBeGreaterThan(0);
    expect(grade(piece(english, start))).toBeLessThanOrEqual(HIGHEST_GRADE);
  });

  it.each(PIECES)('of %s read with ease in Spanish', (start) => {
    expect(ease(piece(spanish, start))).toBeGreaterThanOrEqual(LEAST_EASE);
  });

  it('speak of opening, lifting and reaching in only to forbid it', () => {
    const asks = Object.entries(english).filter(([id, text]) => {
      const speaks = /\b(?:open|lift|reach in|climb|unscrew|wires?)\b/i.test(text);
      return speaks && !id.endsWith('.never') && !id.startsWith('home.card.never.');
    });
    // The lead says that nothing here asks for it; the picture is drawn cut open.
    expect(asks.map(([id]) => id)).toEqual(['home.lead', 'home.walk.picture']);
  });

  it('say where the decision lies wherever numbers stand', () => {
    for (const text of [english['home.advice'], english['home.whatif.caution'], english['home.card.foot']])
      expect(text).toMatch(/^.*Local code.*decide/);
    expect(english['home.cost.source']).toMatch(/no advice/);
  });
});
