import { describe, expect, it } from 'vitest';
import { type AnswersFile, isAnswers, loadAnswers } from '../../../src/quiz/answers.ts';
import { SPECS } from '../../control/panels.ts';
import { sat } from './sat.ts';

const unitOf = (id: string) => (id === 'u1' ? SPECS.u1 : undefined);
const good = sat(5, (place) => (place % 3 === 0 ? null : place % 2 === 0));
const pathsOf = (changed: unknown) => {
  const loaded = loadAnswers(JSON.stringify(changed), unitOf);
  return loaded.ok ? [] : loaded.problems.map(({ path }) => path);
};
const withItem = (at: number, change: Partial<AnswersFile['items'][number]>) => ({
  ...good,
  items: good.items.map((item, i) => (i === at ? { ...item, ...change } : item)),
});

describe('answers', () => {
  it('are read as they were saved, and name nobody', () => {
    expect(loadAnswers(JSON.stringify(good), unitOf)).toEqual({ ok: true, value: good });
    expect(isAnswers(JSON.stringify(good))).toBe(true);
    expect(isAnswers('{"kind":"underlawn-record"}')).toBe(false);
    expect(isAnswers('nothing of the kind')).toBe(false);
    const named = Object.keys(good).filter((key) => /name|who|person/.test(key));
    expect(named).toEqual([]);
    expect(pathsOf({ ...good, name: 'somebody' })).toEqual(['name']);
  });

  it('count as they come out here, not as the file claims', () => {
    expect(pathsOf(withItem(1, { right: true }))).toEqual(['items[1].right']);
    expect(pathsOf(withItem(2, { right: false }))).toEqual(['items[2].right']);
    // Left out is wrong.
    expect(pathsOf(withItem(0, { right: true }))).toEqual(['items[0].right']);
  });

  it('are refused with file, path and mend', () => {
    expect(pathsOf({ ...good, unit: 'u9' })).toEqual(['unit']);
    expect(pathsOf({ ...good, kind: 'underlawn-record' })).toEqual(['kind']);
    expect(pathsOf({ ...good, used_s: -1, items: [] })).toEqual(['used_s', 'items']);
    const at = good.items.findIndex(({ given }) => typeof given === 'string');
    expect(pathsOf(withItem(at, { given: 'no-such-answer' }))).toEqual([`items[${at}].given`]);
    expect(pathsOf(withItem(3, { skill: 'alchemy' as 'jar' }))).toEqual(['items[3].skill']);
  });
});
