/** The diagrams in `docs/control-model.md` are those of the specifications. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { drawings } from './spec/drawings.ts';
import { MODEL_PAGE, withSection } from './spec/pages.ts';

it('tells the machines as they are; if not, run: npm run diagrams', () => {
  const page = readFileSync(MODEL_PAGE, 'utf8');
  expect(withSection(page, 'diagrams', drawings())).toBe(page);
});
