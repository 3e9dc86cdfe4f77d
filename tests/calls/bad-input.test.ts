import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LARGEST_FILE_bytes, loadCall, problemLine, shippedLibrary, tooLarge } from '../../src/calls/index.ts';

type Json = Record<string, unknown>;

const good = () =>
  JSON.parse(readFileSync('scenarios/calls/sunny-line.json', 'utf8')) as Json & { faults: Json[]; title: Json };

function problems(file: unknown) {
  const text = typeof file === 'string' ? file : JSON.stringify(file);
  const loaded = loadCall(text, shippedLibrary());
  return loaded.ok ? [] : loaded.problems;
}

/** A bad call file is refused with one line per problem: where, what, and how to mend it. */
describe('a call file', () => {
  it('that is whole is taken', () => expect(problems(good())).toEqual([]));

  const cases: readonly [string, unknown, string, RegExp][] = [
    ['an unknown key', { ...good(), colour: 'red' }, 'colour', /unknown key; take it out/],
    [
      'a wrong fault id',
      { ...good(), faults: [{ ...good().faults[0], fault: 'line-split-in-two' }] },
      'faults[0].fault',
      /no such id "line-split-in-two"; write one of/,
    ],
    [
      'a fault without its part',
      { ...good(), faults: [{ fault: 'stuck-down', onset: '2031-05-14T10:00' }] },
      'faults[0].part',
      /sits on a part; name one of/,
    ],
    [
      'an onset before the history starts',
      { ...good(), faults: [{ ...good().faults[0], onset: '2031-05-01T10:00' }] },
      'faults[0].onset',
      /before the history starts; move it later/,
    ],
    ['no fault in a call', { ...good(), faults: [] }, 'faults', /too few; at least 1/],
    ['a label on a call', { ...good(), visit: { last: '2031-01-20' } }, 'visit', /of routine visits only; take it out/],
    [
      'a routine visit without its label',
      { ...good(), kind: 'visit' },
      'visit',
      /missing; say when the last visit was/,
    ],
    [
      'a label signed on no day',
      { ...good(), kind: 'visit', visit: { last: '2031-02-30' } },
      'visit.last',
      /no such day; write a real day/,
    ],
    [
      'a label signed after the visit',
      { ...good(), kind: 'visit', visit: { last: '2032-01-20' } },
      'visit.last',
      /not before this visit; write a day before/,
    ],
    ['a day that does not exist', { ...good(), start: '2031-02-30T10:00' }, 'start', /no such day or hour; write/],
    ['a missing language', { ...good(), title: { en: 'Red light' } }, 'title.es', /Spanish text is missing; write it/],
    ['a missing key', { ...good(), seed: undefined }, 'seed', /missing; add it/],
    [
      'markup in a text',
      { ...good(), title: { en: '<script>alert(1)</script>', es: 'x' } },
      'title.en',
      /angle bracket; write plain words/,
    ],
    [
      'a severity beyond 1',
      { ...good(), faults: [{ ...good().faults[0], severity: 3 }] },
      'faults[0].severity',
      /too large; at most 1/,
    ],
    ['a wrong type', { ...good(), history_days: 'three' }, 'history_days', /./],
    [
      'an unknown action in the solution',
      { ...good(), solution: [{ do: 'pray' }] },
      'solution[0].do',
      /no such action "pray"/,
    ],
    ['a check withheld that there is not', { ...good(), withheld: ['pray'] }, 'withheld[0]', /no such action "pray"/],
    [
      'a safeguard withheld',
      { ...good(), withheld: ['look-at-field', 'lock-out:pumpBreaker'] },
      'withheld[1]',
      /keeps a visit safe or going; withhold only checks and mends/,
    ],
    [
      'a check withheld that the solution makes',
      { ...good(), withheld: ['follow-air-line'] },
      'withheld[0]',
      /the solution does "follow-air-line" at step \d+; let it be done/,
    ],
    ['an unknown household', { ...good(), household: 'castle' }, 'household', /no such id "castle"/],
    ['no object at all', [1, 2, 3], '', /./],
    ['broken JSON', '{ "version": 1, ', '', /not JSON .*; close every brace/],
  ];

  it.each(cases)('with %s is refused with its place and its mend', (_name, file, path, line) => {
    const found = problems(file);
    expect(found.map((p) => p.path)).toContain(path);
    const told = found.filter((p) => p.path === path).map((p) => problemLine('call.json', p));
    expect(told.some((t) => line.test(t))).toBe(true);
    for (const t of told) expect(t).not.toMatch(/\n/);
  });

  it('of 50 MB is refused by its size', () => {
    expect(problemLine('big.json', tooLarge(50_000_000))).toMatch(/big.json: 50000000 bytes, the most is 1000000; /);
    expect(problems(' '.repeat(LARGEST_FILE_bytes + 1))).toHaveLength(1);
  });
});
