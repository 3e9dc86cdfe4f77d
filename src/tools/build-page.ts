import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { isFresh } from './fresh.mjs';

/** Where `npm run build` puts the page. */
export const PAGE = 'dist/web';

const SOURCES = ['src', 'scenarios', 'assets', 'package.json', 'vite.config.ts'];

/**
 * Builds the page where it is older than its sources. In a process of its own: Vite goes by the NODE_ENV it finds, and
 * Vitest and Vite's own runner set one, so that here it would build the larger page for development, which names the
 * folders of this machine.
 */
export function buildPage(): void {
  if (isFresh(join(PAGE, 'index.html'), SOURCES)) return;
  const vite = join(dirname(createRequire(import.meta.url).resolve('vite/package.json')), 'bin/vite.js');
  const env = { ...process.env, NODE_ENV: 'production' };
  const { status } = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'error'], { stdio: 'inherit', env });
  if (status !== 0) throw new Error('the page does not build');
}
