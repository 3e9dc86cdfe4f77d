import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { build, type Plugin } from 'vite';
import { ENGINE_VERSION } from '../calls/engine-version.ts';
import type { ListedFile, Listing } from '../desk/offline/listing.ts';

/** Where the service worker lies: its place bounds what it may answer for. */
export const WORKER = 'sw.js';
const SOURCE = 'src/desk/offline/sw.ts';
const CALLS = ['scenarios/calls', 'scenarios/visits'];
const GROUNDS = ['scenarios/units', 'scenarios/households', 'scenarios/weather', 'scenarios/round.json'];
/** As `digestOf` of `desk/offline/listing.ts`. */
const DIGITS = 16;

/** Once the page is written, adds its service worker, with the list of all files there are and what they come to. */
export function offline(): Plugin {
  let folder = '';
  return {
    name: 'offline',
    apply: 'build',
    configResolved({ root, build: { outDir } }) {
      folder = resolve(root, outDir);
    },
    async closeBundle() {
      const code = await bundled();
      const listing = listingOf(folder, code);
      writeFileSync(join(folder, WORKER), `const LISTING=${JSON.stringify(listing)};\n${code}`);
    },
  };
}

/** By itself and in one piece: a worker that imports what the page does would be split. */
async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: {
      write: false,
      target: 'es2022',
      rolldownOptions: { input: SOURCE, output: { format: 'iife', entryFileNames: WORKER } },
    },
  });
  const outputs = (Array.isArray(made) ? made : [made]).flatMap((one) => ('output' in one ? one.output : []));
  const [chunk] = outputs;
  if (chunk?.type !== 'chunk' || outputs.length !== 1) throw new Error(`${SOURCE} does not come out in one piece`);
  return chunk.code;
}

/** `code` counts in the version: what keeps a copy is part of it. */
export function listingOf(folder: string, code: string): Listing {
  const files: ListedFile[] = namesIn(folder)
    .filter((path) => path !== WORKER && !path.startsWith('.'))
    .map((path) => {
      const bytes = readFileSync(join(folder, path));
      return { path, bytes: bytes.length, digest: digestOf(bytes) };
    });
  const calls = Object.fromEntries(
    CALLS.flatMap((from) => namesIn(from).map((name) => [name.replace(/\.json$/, ''), digestOf(read(from, name))])),
  );
  const grounds = digestOf([ENGINE_VERSION, ...GROUNDS.map(allOf)].join('\n'));
  return { version: digestOf(JSON.stringify({ files, calls, grounds, code })), grounds, calls, files };
}

function allOf(place: string): string {
  if (place.endsWith('.json')) return digestOf(read('.', place));
  return namesIn(place)
    .map((name) => `${name} ${digestOf(read(place, name))}`)
    .join('\n');
}

/** What a data file says, however it is laid out. */
function read(folder: string, name: string): string {
  return JSON.stringify(JSON.parse(readFileSync(join(folder, name), 'utf8')));
}

/** Names of all files below a folder, in one order everywhere. */
function namesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

function digestOf(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex').slice(0, DIGITS);
}
