/** Each deliberate wiring error is caught by the specification: told by which path, and after which step. */
import { afterAll, expect, it } from 'vitest';
import { type Caught, catching, caughtLines } from './spec/caught.ts';
import { WIRING_ERRORS } from './spec/wiring-errors.ts';

const all: Caught[] = [];

it.each(WIRING_ERRORS.map((e) => [`${e.error} (${e.unit})`, e] as const))('%s', (_, error) => {
  const caught = catching(error);
  all.push(caught);
  expect(caught.shortest).not.toEqual([]);
  if (!error.deep) expect(caught.failed).toBeGreaterThan(0);
});

afterAll(() => console.log(all.flatMap(caughtLines).join('\n')));
