/**
 * `npm run diagrams`: writes what `docs/control-model.md` and `docs/control-coverage.md` take from the specifications in
 * `tests/control/spec`: state diagrams, the extent of every walk, and how wiring errors are caught.
 */
import { runnerImport } from 'vite';

const PAGES = 'tests/control/spec/pages.ts';

export async function main(): Promise<number> {
  const { module } = await runnerImport<{ writePages: () => void }>(PAGES, { logLevel: 'error' });
  module.writePages();
  return 0;
}
