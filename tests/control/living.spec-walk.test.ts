/**
 * Every promise of a sound unit, walked on the whole unit: ordinary hands, water that really fills and drains, air that
 * really leaks, delays that really run out.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import { type LivingRow, walkLiving } from './spec/living-walk.ts';
import { PROMISES } from './spec/promises.ts';
import { SOUND } from './spec/vocabulary.ts';
import { told } from './spec/walk.ts';

const rows: LivingRow[] = [];
/** The timer of U3 is always in a rest that ends before water has come far: its motor's paths begin with water. */
const NO_TIME = 'motor and protector of u3';

const units = PROMISES.flatMap((promised) => {
  if (`${promised.name} of ${promised.unit}` === NO_TIME) return [];
  const spec = shippedLibrary().units.get(promised.unit);
  return spec ? [[`${promised.name} of ${promised.unit}`, promised, spec] as const] : [];
});

describe.each(units)('%s, lived', (_, promised, spec) => {
  it('keeps its promise on every path, as far as time lets it go', () => {
    const { row, failures } = walkLiving(promised, SOUND, spec);
    rows.push(row);
    expect(row.steps).toBeGreaterThan(10);
    expect(failures.slice(0, 2).map(told).join('\n'), `${failures.length} of ${row.paths} paths failed`).toBe('');
  });
});

afterAll(() => {
  const lines = rows.map(
    (r) =>
      `${r.promise} ${r.unit}: ${r.paths} paths, ${r.steps} steps, ${r.transitionsDone} of ${r.transitions} transitions`,
  );
  console.log(lines.join('\n'));
});
