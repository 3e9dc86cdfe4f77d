/** `npm run contrast`: writes `docs/contrast.md` from the tokens and the pairs. */
import { writeFileSync } from 'node:fs';
import { contrastPage, PAGE } from './contrast/page.ts';

export function main(): number {
  writeFileSync(PAGE, contrastPage());
  return 0;
}
