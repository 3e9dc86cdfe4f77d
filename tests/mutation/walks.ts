/** Promises kept, walked jointly: every sequence of events of a sound unit. */
import { describe, expect, it } from 'vitest';
import { tableOf } from '../control/panels.ts';
import { PROMISES } from '../control/spec/promises.ts';
import { SOUND } from '../control/spec/vocabulary.ts';
import { shortestFailure, told } from '../control/spec/walk.ts';

describe.each(PROMISES.map((p) => [`${p.name} of ${p.unit}`, p] as const))('%s', (_, promised) => {
  it('is kept', () => {
    const failure = shortestFailure(promised, SOUND, tableOf(promised.unit));
    expect(failure && told(failure)).toBeUndefined();
  });
});
