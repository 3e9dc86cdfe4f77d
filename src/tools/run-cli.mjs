/**
 * `npm run -s underlawn -- VERB …`: the command line straight from a clone. Builds it when it is missing or older
 * than its sources, then runs it where the person called npm, so that relative paths mean what they typed.
 */
import { spawnSync } from 'node:child_process';
import { renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isFresh } from './fresh.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const at = (path) => join(root, path);
const program = at('dist/cli/underlawn.js');

const sources = ['src', 'scenarios', 'package.json', 'vite.config.ts'].map(at);
if (!isFresh(program, sources)) await build();
// Only a package takes the page along.
if (process.argv[2] === 'pack' && !isFresh(at('dist/web/index.html'), [...sources, at('assets')])) buildPage();
const { status, signal } = spawnSync(process.execPath, [program, ...process.argv.slice(2)], {
  cwd: process.env.INIT_CWD ?? process.cwd(),
  stdio: 'inherit',
});
process.exitCode = status ?? (signal === 'SIGINT' ? 130 : 1);

/** In a process of its own, as `npm run build` does. */
function buildPage() {
  const { status } = spawnSync(
    process.execPath,
    [at('node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'error'],
    {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, NODE_ENV: 'production' },
    },
  );
  if (status !== 0) process.exit(2);
}

/** Builds beside the old program and swaps, so that two calls at once never see half a build. */
async function build() {
  const vite = await import('vite').catch(() => undefined);
  if (vite === undefined) {
    console.error('The packages are not installed. Run: npm ci');
    process.exit(2);
  }
  const beside = at(`dist/cli-${process.pid}`);
  await vite.build({
    root,
    configFile: at('vite.config.ts'),
    mode: 'cli',
    logLevel: 'error',
    build: { outDir: beside },
  });
  rmSync(at('dist/cli'), { recursive: true, force: true });
  try {
    renameSync(beside, at('dist/cli'));
  } catch {
    // Another call swapped its own build in between: the same program.
    rmSync(beside, { recursive: true, force: true });
  }
}
