import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type CallFile, loadCall, shippedCalls, shippedLibrary } from '../../../src/calls/index.ts';
import { fileText, readShared, sameCall } from '../../../src/share/index.ts';

const library = shippedLibrary();
const [first, second] = shippedCalls() as [CallFile, CallFile];

describe.each(shippedCalls().map(({ id }) => id))('the file of %s', (id) => {
  it('saved, loaded and saved again is the same bytes, with the keys where they were', () => {
    const shipped = readFileSync(`scenarios/calls/${id}.json`, 'utf8');
    const save = (text: string) => {
      const loaded = loadCall(text, library);
      return loaded.ok ? fileText(loaded.value) : '';
    };
    const saved = save(shipped);
    expect(save(saved)).toBe(saved);
    // Only the line breaks of short lists are a formatter's.
    expect(JSON.stringify(JSON.parse(saved))).toBe(JSON.stringify(JSON.parse(shipped)));
  });
});

it('two calls are the same whatever the order of their keys and wherever an editor finds the schema', () => {
  const { $schema: _, id, ...more } = first;
  expect(sameCall({ ...more, id }, first)).toBe(true);
  expect(sameCall({ ...first, seed: first.seed + 1 }, first)).toBe(false);
});

/** A set of two calls, spoiled by what is laid over it. */
const set = (over: object = {}) => ({
  $schema: '../set.schema.json',
  set: 1,
  title: { en: 'Week one', es: 'Semana uno' },
  calls: [first, second],
  ...over,
});

function read(file: unknown) {
  return readShared(JSON.stringify(file), library);
}

describe('a set of calls', () => {
  it('that is whole is taken, with its title', () => {
    expect(read(set())).toEqual({ ok: true, file: set() });
  });

  it('saved, loaded and saved again is the same bytes', () => {
    const text = fileText({ set: 1, title: set().title, calls: [first, second] });
    const loaded = readShared(text, library);
    if (!loaded.ok) throw new Error('not taken');
    expect(fileText(loaded.file)).toBe(text);
  });

  const fault = { ...first.faults[0], onset: '2031-02-30T10:00' };
  const cases: readonly [string, object, string, RegExp][] = [
    ['no calls', { calls: [] }, '/calls', /too few; at least 1/],
    ['calls that are no list', { calls: first }, '/calls', /not an array; write an array/],
    ['a missing title', { title: undefined }, '/title', /missing; add it/],
    ['a title in one language', { title: { en: 'Week' } }, '/title/es', /Spanish text is missing; write it/],
    ['markup in its title', { title: { en: '<b>', es: 'x' } }, '/title/en', /angle bracket/],
    ['a key of its own', { colour: 'red' }, '/colour', /unknown key; take it out/],
    ['something that is no call', { calls: [first, 7] }, '/calls/1', /./],
    [
      'an impossible instant deep inside',
      { calls: [first, { ...second, faults: [fault] }] },
      '/calls/1/faults/0/onset',
      /no such day or hour; write a real local instant/,
    ],
    [
      'the same id twice',
      { calls: [first, second, { ...first, seed: 1 }] },
      '/calls/2/id',
      /is that of \/calls\/0 too; give each call an id of its own/,
    ],
  ];
  it.each(cases)('with %s is refused with its place and its mend', (_name, over, path, line) => {
    const found = read(set(over));
    if (found.ok) throw new Error('taken');
    expect(found.why.id).toBe('share.not-a-set');
    expect(found.problems.map((p) => p.path)).toContain(path);
    const told = found.problems.filter((p) => p.path === path).map((p) => `${p.message}; ${p.mend}`);
    expect(
      told.some((one) => line.test(one)),
      told.join('\n'),
    ).toBe(true);
  });

  it('of a later version, or with a call of a later one, is refused as newer', () => {
    for (const over of [{ set: 2 }, { calls: [first, { ...second, version: 2 }] }]) {
      expect(read(set(over))).toEqual({ ok: false, why: { id: 'share.newer' }, problems: [] });
    }
  });
});
