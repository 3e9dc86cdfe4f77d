/**
 * First load, gzipped kilobytes (1 kB = 1000 bytes) of JavaScript in `dist/web`: the shell, which is what the page
 * imports at once, and all that is loaded until a call can be played. Of alternatives a visitor gets one: one language,
 * one renderer (the larger counts). Anything not named here counts, so that a new chunk cannot hide.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { isFresh } from '../../src/tools/fresh.mjs';

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
}

const WEB = 'dist/web';
const LIMIT_KB = { shell: 60, call: 260 };

/** Never loaded on the way into a call: no such renderer is asked for, and this is the other language. */
const NOT_ON_THE_WAY = /^(?:WebGPURenderer|webworkerAll|es|debrief)-/;
const RENDERERS = ['CanvasRenderer', 'WebGLRenderer'];

export async function run(print: (line: string) => void): Promise<void> {
  const sources = ['src', 'scenarios', 'assets', 'package.json', 'vite.config.ts'];
  if (!isFresh(join(WEB, 'index.html'), sources)) await build({ logLevel: 'error' });
  const shell = sum(shellFiles());
  const files = readdirSync(join(WEB, 'assets')).filter((file) => file.endsWith('.js') && !NOT_ON_THE_WAY.test(file));
  const isRenderer = (file: string) => RENDERERS.some((name) => file.startsWith(name));
  const common = sum(files.filter((file) => !isRenderer(file)));
  const renderer = Math.max(...RENDERERS.map((name) => sum(files.filter((file) => file.startsWith(name)))));
  for (const [part, kB] of [['shell', shell] as const, ['call', common + renderer] as const]) {
    const limit = LIMIT_KB[part];
    print(
      JSON.stringify({ bench: 'size', part, gzip_kB: round(kB), limit_kB: limit, ratioToLimit: round(kB / limit) }),
    );
  }
}

/** The page's own script and all it imports before it can run. */
function shellFiles(): readonly string[] {
  const manifest = JSON.parse(readFileSync(join(WEB, '.vite/manifest.json'), 'utf8')) as Record<string, Chunk>;
  const seen = new Set<string>();
  const visit = (key: string) => {
    const chunk = manifest[key];
    if (chunk === undefined || seen.has(chunk.file)) return;
    seen.add(chunk.file);
    for (const next of chunk.imports ?? []) visit(next);
  };
  visit('index.html');
  return [...seen].map((file) => file.replace(/^assets\//, ''));
}

function sum(files: readonly string[]): number {
  return files.reduce((total, file) => total + gzipSync(readFileSync(join(WEB, 'assets', file))).length / 1000, 0);
}

function round(x: number): number {
  return Math.round(x * 100) / 100;
}
