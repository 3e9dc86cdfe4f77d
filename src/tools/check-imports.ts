/** Checks every source of `src` against `imports/rules.ts`, and that `docs/imports.md` still tells it (`--write`). */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkFile } from './imports/check.ts';
import { importsPage } from './imports/table.ts';

const PAGE = 'docs/imports.md';

export function main(args: readonly string[]): number {
  const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.(ts|tsx|mts|mjs)$/.test(path))
    .sort();
  const findings = sources.flatMap((path) => checkFile(path, readFileSync(join('src', path), 'utf8')));
  for (const { file, line, rule, mend } of findings) console.error(`src/${file}:${line}: ${rule}; ${mend}`);

  const page = importsPage();
  if (args.includes('--write')) writeFileSync(PAGE, page);
  const stale = readOr(PAGE, '') !== page;
  if (stale) console.error(`${PAGE}:1: does not tell the rules as they are; run: npm run imports`);
  if (findings.length > 0 || stale) return 1;
  console.log(`${sources.length} sources keep the import rules.`);
  return 0;
}

function readOr(file: string, otherwise: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return otherwise;
  }
}
