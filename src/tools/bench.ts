/**
 * `npm run bench [-- NAME…]`: runs `tests/bench/NAME.bench.ts`, all of them unless named, one after another. Each
 * exports `run(print)` and prints one JSON line per result. Each is bundled, as what it measures is when people run it,
 * and has a process of its own.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const FOLDER = 'tests/bench';
const ENDING = '.bench.ts';

export async function main(asked: readonly string[]): Promise<number> {
  const all = readdirSync(FOLDER)
    .filter((file) => file.endsWith(ENDING))
    .map((file) => file.slice(0, -ENDING.length))
    .sort();
  const unknown = asked.find((name) => !all.includes(name));
  if (unknown !== undefined) {
    console.error(`No benchmark is called ${unknown}; there are: ${all.join(', ')}`);
    return 2;
  }
  const failed = [];
  for (const name of asked.length > 0 ? asked : all) {
    const file = await bundle(name);
    const start = `import(${JSON.stringify(pathToFileURL(file).href)}).then(({ run }) => run(console.log))`;
    const { status } = spawnSync(process.execPath, ['-e', start], { stdio: 'inherit' });
    if (status !== 0) failed.push(name);
  }
  if (failed.length > 0) console.error(`These benchmarks failed: ${failed.join(', ')}`);
  return failed.length > 0 ? 1 : 0;
}

/** Path of the bundled benchmark. */
async function bundle(name: string): Promise<string> {
  const outDir = resolve('dist/bench');
  await build({
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: { ssr: join(FOLDER, `${name}${ENDING}`), outDir, emptyOutDir: false, target: 'node20', minify: false },
  });
  return join(outDir, `${name}.bench.js`);
}
