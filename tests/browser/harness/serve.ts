/** Serves the harness page for tests, benches and looking at the drawing while it is made. */
import { createServer } from 'vite';

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

export async function serveHarness(): Promise<Served> {
  const server = await createServer({
    configFile: false,
    root: 'tests/browser/harness',
    cacheDir: '../../../node_modules/.vite-harness',
    logLevel: 'error',
    server: { host: '127.0.0.1', port: 0, hmr: false, watch: null, fs: { allow: ['../../..'] } },
    optimizeDeps: { include: ['pixi.js', 'pixi.js/graphics', 'pixi.js/unsafe-eval'] },
  });
  await server.listen();
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('the harness server has no address');
  return { url, close: () => server.close() };
}
