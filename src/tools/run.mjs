/**
 * Runs one of our TypeScript tools on Node 20, which cannot read TypeScript by itself:
 * `node src/tools/run.mjs NAME [ARG…]` calls `main(args)` of `src/tools/NAME.ts` and exits with what it returns.
 */
import { fileURLToPath } from 'node:url';

const vite = await import('vite').catch(() => undefined);
if (vite === undefined) {
  console.error('The packages are not installed. Run: npm ci');
  process.exit(2);
}
const [name, ...args] = process.argv.slice(2);
const file = fileURLToPath(new URL(`./${name}.ts`, import.meta.url));
const { module } = await vite.runnerImport(file, { logLevel: 'error' });
process.exitCode = await module.main(args);
