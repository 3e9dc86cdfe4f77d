import { resolve } from 'node:path';
import { defineConfig } from 'vite';

/** The selection as one file. The mutants all stand in it; a variable switches one on. */
export default defineConfig({
  publicDir: false,
  resolve: { alias: { vitest: resolve('tests/mutation/harness.ts') } },
  build: { ssr: 'tests/mutation/selection.ts', outDir: '.stryker/bundle', target: 'node20', minify: false },
  ssr: { noExternal: true },
});
