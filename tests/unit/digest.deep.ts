/** The same bits everywhere: histories played in Node and in three families of engines give the same digests. */
import * as fc from 'fast-check';
import { build } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import { digest } from '../../src/unit/index.ts';
import { anyLife } from './any-history.ts';
import { inChromium, inFirefox, inJavaScriptCore, type Told } from './engines.ts';
import { digestOf, type History } from './histories.ts';

const SEED = Number(process.env.SEED ?? 20310514);
const HISTORIES = Number(process.env.HISTORIES ?? 60);

let histories: readonly History[];
let here: readonly string[];
let script: string;

async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      minify: false,
      target: 'es2022',
      lib: { entry: 'tests/unit/digest-page.ts', formats: ['iife'], name: 'digestPage' },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  const chunk = first && 'output' in first ? first.output[0] : undefined;
  if (!chunk) throw new Error('nothing was built');
  return chunk.code;
}

describe(`${HISTORIES} histories of seed ${SEED}`, () => {
  beforeAll(async () => {
    const drawn = fc.sample(anyLife, { numRuns: HISTORIES, seed: SEED }).map((life) => life.history);
    const text = JSON.stringify(drawn);
    histories = JSON.parse(text) as History[];
    here = histories.map(digestOf);
    script = `globalThis.HISTORIES = ${text};\n${await bundled()}`;
    console.info(`Node ${process.version}: ${digest(here)}`);
  }, 600_000);

  it.for([
    ['Chromium', () => inChromium(script)],
    ['Firefox', () => inFirefox(script)],
    ['JavaScriptCore', () => inJavaScriptCore(script)],
  ] as const)('are the same bits in %s as in Node', async ([name, run], { skip }) => {
    const told: Told | undefined = await run();
    if (told === undefined) {
      console.info(`${name}: not on this machine, and it cannot be installed; skipped`);
      skip();
      return;
    }
    console.info(`${name} (${told.engine}): ${digest(told.digests)}`);
    const differs = histories.findIndex((_, i) => told.digests[i] !== here[i]);
    expect(differs, JSON.stringify(histories[differs])).toBe(-1);
    expect(told.digests).toHaveLength(here.length);
  });
});
