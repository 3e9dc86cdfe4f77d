/** Each deliberate wiring error is caught by the specification: told by which path, and after which step. */
import { readFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { type Caught, catching, caughtLines } from './spec/caught.ts';
import { errorLine, MODEL_PAGE } from './spec/pages.ts';
import { WIRING_ERRORS } from './spec/wiring-errors.ts';

const all: Caught[] = [];
const page = readFileSync(MODEL_PAGE, 'utf8');

it.each(WIRING_ERRORS.map((e) => [`${e.error} (${e.unit})`, e] as const))('%s', (_, error) => {
  const caught = catching(error);
  all.push(caught);
  expect(caught.shortest).not.toEqual([]);
  expect(page, 'if stale, run: npm run diagrams').toContain(errorLine(caught));
  if (!error.deep) expect(caught.failed).toBeGreaterThan(0);
});

afterAll(() => console.log(all.flatMap(caughtLines).join('\n')));
