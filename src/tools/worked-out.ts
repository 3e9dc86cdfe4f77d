import { resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';

/** Modules whose exports are plain values, the same for every visitor. */
const MODULES = ['src/desk/cards-en.ts', 'src/desk/cards-es.ts', 'src/desk/faults/cards.ts'];

/** Works modules out when the page is built, so that it is fetched with what they come to and not with what they need. */
export function workedOut(): Plugin {
  const files = MODULES.map((file) => resolve(file));
  return {
    name: 'worked-out',
    apply: 'build',
    enforce: 'pre',
    async load(id) {
      if (!files.includes(resolve(id))) return undefined;
      const { module } = await runnerImport<Readonly<Record<string, unknown>>>(id, { logLevel: 'error' });
      const values = Object.entries(module).map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`);
      return values.join('\n');
    },
  };
}
