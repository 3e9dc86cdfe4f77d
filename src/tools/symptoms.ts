/** `npm run symptoms`: writes `docs/symptoms.md` from the table of published symptoms in `tests/published/symptoms`. */
import { runnerImport } from 'vite';

const PAGE = 'tests/published/symptoms/page.ts';

export async function main(): Promise<number> {
  const { module } = await runnerImport<{ writePage: () => void }>(PAGE, { logLevel: 'error' });
  module.writePage();
  return 0;
}
