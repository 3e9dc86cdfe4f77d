import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { quantity, say } from '../../src/service/index.ts';
import { formatDate, formatMoment } from '../../src/words/calendar.ts';
import { course as en } from '../../src/words/en/course.ts';
import { offline as enOffline } from '../../src/words/en/offline.ts';
import { course as es } from '../../src/words/es/course.ts';
import { offline as esOffline } from '../../src/words/es/offline.ts';
import { formatClock, formatNumber, formatQuantity } from '../../src/words/measure.ts';
import { gapsOf, MissingWord, speak } from '../../src/words/speak.ts';
import { readNumber } from '../../src/words/typed.ts';
import { decimalsNear, decimalsOf } from '../../src/words/units.ts';
import { loadWords } from '../../src/words/words.ts';
import { ENGLISH, SPANISH } from './spoken.ts';

const english: Readonly<Record<string, string>> = ENGLISH.texts;
const spanish: Readonly<Record<string, string>> = SPANISH.texts;

describe('the dictionaries', () => {
  it('have the same texts, each with the same gaps', () => {
    expect(Object.keys(spanish).sort()).toEqual(Object.keys(english).sort());
    for (const [id, text] of Object.entries(english))
      expect([id, gapsOf(spanish[id] ?? '')]).toEqual([id, gapsOf(text)]);
  });

  it('are loaded one at a time', async () => {
    expect((await loadWords('en')).texts['part.panel']).toBe('Panel');
    expect((await loadWords('es')).texts['part.panel']).toBe('Tablero');
    expect((await loadWords('en')).texts['shows.line-split']).toBeUndefined();
    expect((await loadWords('en', 'debrief')).texts['drills.begin']).toBeUndefined();
    const all = [
      'debrief',
      'drills',
      'quiz',
      'share',
      'kept',
      'class',
      'build',
      'meter',
      'instructor',
      'home',
      'visit',
      'access',
      'find',
      'picture',
    ] as const;
    const withTheirFiles = [
      [ENGLISH, { ...en, ...enOffline }],
      [SPANISH, { ...es, ...esOffline }],
    ] as const;
    for (const [words, own] of withTheirFiles) {
      const { texts } = await loadWords(words.language, ...all);
      // What a course platform makes the page say comes with what launches it, what is said of the kept copy with what keeps it.
      expect({ ...texts, ...own }).toEqual(words.texts);
      expect(Object.keys(texts).filter((id) => id in own)).toEqual([]);
    }
  });

  it('say nothing as markup', () => {
    for (const text of [...Object.values(english), ...Object.values(spanish)]) expect(text).not.toMatch(/<\w|&\w+;/);
  });
});

describe('speaking', () => {
  const plain = speak(
    { language: 'en', texts: { ...english, n: '{n} {n:call|calls}', cap: '{^w} here', w: 'water' } },
    'us',
  );

  it('chooses the word by the number as it is shown', () => {
    expect(plain(say('n', { n: 1 }))).toBe('1 call');
    expect(plain(say('n', { n: 2 }))).toBe('2 calls');
    expect(plain(say('n', { n: quantity('count', 1.2) }))).toBe('1 call');
  });

  it('speaks messages within messages, with a capital where asked', () => {
    expect(plain(say('cap', { w: say('w') }))).toBe('Water here');
  });

  it('takes the language of a text from a data file, and leaves it alone', () => {
    const text = { en: '<b>{x}</b>', es: '<i>' };
    expect(plain(say('text', { text }))).toBe('<b>{x}</b>');
  });

  it('shows a missing text in brackets, and throws when strict', () => {
    expect(plain(say('no.such'))).toBe('[no.such]');
    const strict = speak(ENGLISH, 'us', true);
    expect(() => strict(say('no.such'))).toThrow(MissingWord);
    expect(() => strict(say('text'))).toThrow(MissingWord);
  });
});

describe('measures', () => {
  const us = (...q: Parameters<typeof quantity>) =>
    formatQuantity(ENGLISH, 'us', quantity(...q)).replace(/\u00a0/g, ' ');
  const si = (...q: Parameters<typeof quantity>) =>
    formatQuantity(SPANISH, 'si', quantity(...q)).replace(/\u00a0/g, ' ');

  // Expected values from the definitions: 1 psi = 6.894757 kPa, 1 in = 25.4 mm, 1 gal = 3.785411784 L, 1 ft3 = 28.3168 L.
  it.each([
    [us('pressure_kPa', 16.06, 0.1), '2.33 psi'],
    [si('pressure_kPa', 16.06, 0.1), '16,1 kPa'],
    [us('pressure_kPa', 14.5, 0.5), '2.1 psi'],
    [us('pressure_kPa', 17.9, 0.5), '2.6 psi'],
    [si('pressure_kPa', 14.5, 0.5), '14,5 kPa'],
    [si('pressure_kPa', 17.9, 0.5), '17,9 kPa'],
    [us('pressure_kPa', 206, 10), '30 psi'],
    [si('pressure_kPa', 210, 10), '210 kPa'],
    [us('length_m', 1.31, 0.01), '52 in'],
    [us('length_m', 1.315, 0.005), '51.8 in'],
    [si('length_m', 1.315, 0.005), '131,5 cm'],
    [us('length_m', 8.78), '28.8 ft'],
    [us('length_m', 0.003, 0.001), '0.1 in'],
    [si('length_m', 1.31, 0.01), '131 cm'],
    [si('length_m', 0.01, 0.01), '1 cm'],
    [si('length_m', 8.78), '8,8 m'],
    [si('length_m', 0.003), '3 mm'],
    [us('volume_m3', 1.893), '500 gal'],
    [si('volume_m3', 1.893), '1893 L'],
    [si('volume_m3', 12.34), '12,3 m³'],
    [us('waterFlow_Ls', 0.8416), '13.3 gpm'],
    [si('waterFlow_Ls', 0.8416), '0,84 L/s'],
    [us('airFlow_Lmin', 83), '2.9 cfm'],
    // 400 gal a day on a square foot are 0.68 m/h.
    [us('rise_mh', 0.679), '400 gpd/ft²'],
    [si('rise_mh', 0.679), '0,68 m/h'],
    [us('temperature_C', 20), '68 °F'],
    [si('temperature_C', -2), '\u22122 °C'],
    [us('duration_min', 161), '2 h 41 min'],
    [us('duration_min', 120), '2 h'],
    [us('duration_min', 0.5, 0.1), '0.5 min'],
    [us('money_usd', 44), '$44'],
    [si('share', 0.6), '60 %'],
    [us('clock_s', 60_120), '16:42'],
    [us('volume_m3', 100), '26,417 gal'],
  ])('shows %s', (shown, expected) => expect(shown).toBe(expected));

  it('reads a number as it is typed: either decimal mark, and grouped as the language groups', () => {
    const typed = (words: typeof ENGLISH, text: string) => readNumber(words, text);
    for (const words of [ENGLISH, SPANISH]) {
      for (const [text, value] of [
        ['12', 12],
        [' 0.45 ', 0.45],
        ['0,45', 0.45],
        ['0,450', 0.45],
        ['1.33', 1.33],
        ['10 944', 10_944],
        ['-3,5', -3.5],
      ] as const) {
        expect([text, typed(words, text)]).toEqual([text, value]);
      }
      for (const text of ['', ' ', 'x', '1.2.3']) expect([text, typed(words, text)]).toEqual([text, Number.NaN]);
      // What is shown can be typed.
      for (const n of [1685, 10_944, 0.5, 1234.5]) {
        expect(typed(words, formatNumber(words, n, Number.isInteger(n) ? 0 : 1))).toBe(n);
      }
    }
    // In English a comma before three digits groups; in Spanish it is the decimal mark.
    expect(typed(ENGLISH, '1,685')).toBe(1685);
    expect(typed(SPANISH, '1,685')).toBe(1.685);
  });

  it('shows every decimal that a step needs', () => {
    expect([10, 5, 1, 0.5, 0.25, 0.1, 0.05, 0.01].map(decimalsOf)).toEqual([0, 0, 0, 1, 2, 1, 2, 2]);
  });

  it('rounds a step from another unit to the nearest decade', () => {
    // 1 cm and 5 mm in inches; 10, 0.5 and 0.1 kPa in psi.
    expect([0.394, 0.197, 1.45, 0.0725, 0.0145].map(decimalsNear)).toEqual([0, 1, 0, 1, 2]);
  });

  it('writes no minus before a nought', () => expect(formatNumber(ENGLISH, -0.04, 1)).toBe('0.0'));

  it('reads the clock round the day', () => {
    expect(formatClock(-60)).toBe('23:59');
    expect(formatClock(90_000, true)).toBe('01:00:00');
    expect(formatClock(59.999)).toBe('00:00');
  });

  it('names the day in both languages', () => {
    const day = { month: 5, day: 14, weekday: 1 };
    expect(formatDate(ENGLISH, day)).toBe('Tue 14 May');
    expect(formatDate(SPANISH, day)).toBe('mar 14 may');
    expect(formatMoment(ENGLISH, { ...day, secondOfDay: 60_120 })).toBe('Tue 14 May · 16:42');
  });

  it('uses nothing that differs between browsers', () => {
    for (const file of ['measure', 'units', 'speak', 'calendar']) {
      expect(readFileSync(`src/words/${file}.ts`, 'utf8')).not.toMatch(/\bIntl\b|toLocale|new Date/);
    }
  });
});
