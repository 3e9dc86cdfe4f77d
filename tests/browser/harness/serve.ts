/** Serves the harness page for tests, benches and looking at the drawing while it is made. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';
import { pixiParts } from '../../../src/tools/pixi-parts.ts';

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const PAGE = {
  configFile: false,
  root: 'tests/browser/harness',
  base: './',
  logLevel: 'error',
} as const;

/** Built and not served from source, so that it draws with the same parts of Pixi as the page. */
export async function serveHarness(): Promise<Served> {
  // A folder of its own: several files of tests serve it at once.
  const outDir = mkdtempSync(join(tmpdir(), 'harness-'));
  await build({
    ...PAGE,
    publicDir: false,
    plugins: [pixiParts()],
    build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0, minify: false },
  });
  const server = await preview({
    ...PAGE,
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, strictPort: false, open: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('the harness server has no address');
  const close = async () => {
    await server.close();
    rmSync(outDir, { recursive: true });
  };
  return { url, close };
}
