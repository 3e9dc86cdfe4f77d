/**
 * `npm test`: every check there is, cheapest first, stopping at the first that fails. The last line is always
 * `N passed, N failed`.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join, resolve } from 'node:path';
import { findBrowser, howToGetBrowser, installBrowser } from './browser.ts';

const PROJECTS = ['unit', 'published', 'control', 'browser'];

const STEPS: readonly (readonly [name: string, command: string])[] = [
  ['types', 'tsc --noEmit -p .'],
  ['types without a DOM', 'tsc --noEmit -p src/tsconfig.core.json'],
  ['lint and format', 'biome check --error-on-warnings .'],
  ['imports and bans', 'node src/tools/run.mjs check-imports'],
  ['JSON Schemas', 'node src/tools/run.mjs make-schemas --check'],
  ['dead code', 'knip'],
  ['build the page', 'vite build --logLevel warn'],
  ['build the command line', 'vite build --mode cli --logLevel warn'],
];

export function main(): number {
  const started = performance.now();
  for (const [name, command] of STEPS) {
    if (!run(name, command, {})) return fail(name);
  }
  if (!browserIsSettled()) return fail('browser');

  const folder = mkdtempSync(join(tmpdir(), 'underlawn-'));
  const closing = join(folder, 'closing-line');
  const projects = PROJECTS.map((project) => `--project ${project}`).join(' ');
  const passed = run('tests', `vitest run ${projects}`, {
    CLOSING_LINE: closing,
    UNDERLAWN_BUILT: '1',
    ...(findBrowser() === undefined ? { NO_BROWSER: '1' } : {}),
  });
  const line = readOr(closing, '0 passed, 1 failed');
  rmSync(folder, { recursive: true });
  console.log(`${seconds(performance.now() - started)}  all`);
  // A run that fails for a reason no test stands for must not end in "0 failed".
  console.log(!passed && line.endsWith(', 0 failed') ? line.replace(/0 failed$/, '1 failed') : line);
  return passed ? 0 : 1;
}

/** True when the browser tests can run, or are skipped with a word about it. */
function browserIsSettled(): boolean {
  const { CHROME_PATH, NO_BROWSER, REQUIRE_BROWSER } = process.env;
  if (findBrowser() !== undefined) return true;
  if (NO_BROWSER && !REQUIRE_BROWSER) {
    console.log('NO_BROWSER is set: browser tests are skipped.');
    return true;
  }
  if (!NO_BROWSER && !CHROME_PATH && installBrowser() && findBrowser() !== undefined) return true;
  const reason = NO_BROWSER ? 'NO_BROWSER and REQUIRE_BROWSER are both set.' : howToGetBrowser();
  console.log(REQUIRE_BROWSER ? reason : `${reason} Browser tests are skipped.`);
  return !REQUIRE_BROWSER;
}

function run(name: string, command: string, env: Record<string, string>): boolean {
  const started = performance.now();
  // What runs this tool sets NODE_ENV, under which Vite would build the page for development.
  const { NODE_ENV: _, ...inherited } = process.env;
  const PATH = [resolve('node_modules/.bin'), process.env.PATH].join(delimiter);
  const { status, signal } = spawnSync(command, {
    shell: true,
    stdio: 'inherit',
    env: { ...inherited, PATH, ...env },
  });
  console.log(
    `${seconds(performance.now() - started)}  ${name}${status === 0 ? '' : `: failed (${signal ?? status})`}`,
  );
  return status === 0;
}

function fail(step: string): number {
  console.log(`Stopped at: ${step}`);
  console.log('0 passed, 1 failed');
  return 1;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1).padStart(6)} s`;
}

function readOr(file: string, otherwise: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return otherwise;
  }
}
