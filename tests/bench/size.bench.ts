/**
 * First load, gzipped kilobytes (1 kB = 1000 bytes) of JavaScript in `dist/web`: the shell, which is what the page
 * imports at once, and all that is loaded until a call can be played and heard. Of alternatives a visitor gets one: one
 * language, one renderer. Whatever is not named here counts, so that a new part cannot hide.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { buildPage, PAGE } from '../../src/tools/build-page.ts';

interface Chunk {
  readonly file: string;
  readonly isDynamicEntry?: boolean;
  readonly imports?: readonly string[];
}
type Manifest = Readonly<Record<string, Chunk>>;

const LIMIT_kB = { shell: 60, call: 265 };

/**
 * Loaded on no way into a call taken by oneself: renderers and environments nobody asks for, the other language, close-ups,
 * a coach, a trainer, the round, a routine visit, the drills and the quiz, a household, calls from elsewhere
 * or being made, the sheet of a class, a course platform, what comes after, the copy for work without a network.
 */
const NOT_ON_THE_WAY =
  /(?:WebGPURenderer|webworkerAll|browserAll)\.mjs$|words\/(?:es|extras|e[ns]-(?:later|drills|quiz|share|kept|class|build|meter|instructor|home|visit|access|find))\.ts$|Closeup\.ts$|^\.\.\/scenarios\/|^desk\/screens\.tsx$|^desk\/(?:copy|class|home|offline|visit|build|instructor|platform|elsewhere|faults|find|access|debrief|drills|quiz|round|brought|printed|call\/(?:coach|meter))\//;
/**
 * Of the workers: what takes up a call that was left or came from elsewhere, what is asked of one that has ended, the round
 * and its data, a guide, a trainer's view, and what these share; a coach, who replays the records of a class and who proves a
 * call, with all that is only theirs.
 */
const NOT_ON_THE_WORKERS_WAY =
  /^assets\/(?:worker-(?:cards-es|resume|left-call|after-call|hood|xray|caution|guide|brought|printed|round|schema|cost|flags|solution|drawn-down|progress|pack)|(?:expert|class|look|prove|home)-worker|round|weather|visits)-/;
/** Of each kind of data file a call has one; the largest there is stands for it. */
const DATA = ['calls', 'units', 'households'];
const RENDERERS = { canvas: /CanvasRenderer\.mjs$/, webgl: /WebGLRenderer\.mjs$|yard\/webgl\.ts$/ };

export async function run(print: (line: string) => void): Promise<void> {
  buildPage();
  const manifest = JSON.parse(readFileSync(join(PAGE, '.vite/manifest.json'), 'utf8')) as Manifest;
  const show = (part: keyof typeof LIMIT_kB, files: readonly string[], renderer?: string) => {
    const gzip_kB = files.reduce((sum, file) => sum + gzipped_kB(file), 0);
    const limit_kB = LIMIT_kB[part];
    const ratioToLimit = round(gzip_kB / limit_kB);
    print(JSON.stringify({ bench: 'size', part, renderer, gzip_kB: round(gzip_kB), limit_kB, ratioToLimit }));
  };
  show('shell', closure(manifest, ['index.html']));
  const worker = filesOfWorker(manifest);
  const late = Object.keys(manifest).filter((key) => manifest[key]?.isDynamicEntry && !NOT_ON_THE_WAY.test(key));
  const common = late.filter((key) => !Object.values(RENDERERS).some((it) => it.test(key)));
  for (const [renderer, its] of Object.entries(RENDERERS)) {
    const roots = ['index.html', ...common, ...late.filter((key) => its.test(key))];
    show('call', [...closure(manifest, roots), ...worker], renderer);
  }
}

/** A worker is a bundle of its own, whose files the manifest leaves out. */
function filesOfWorker(manifest: Manifest): readonly string[] {
  const listed = new Set(Object.values(manifest).map(({ file }) => file));
  const scripts = readdirSync(join(PAGE, 'assets')).flatMap((name) => (name.endsWith('.js') ? `assets/${name}` : []));
  const own = scripts.filter((file) => !listed.has(file) && !NOT_ON_THE_WORKERS_WAY.test(file));
  const folders = DATA.map((folder) => own.filter((file) => file.startsWith(`assets/${folder}-`)));
  return [...own.filter((file) => !folders.flat().includes(file)), ...folders.flatMap(largest)];
}

function largest(files: readonly string[]): readonly string[] {
  return [...files].sort((a, b) => gzipped_kB(b) - gzipped_kB(a)).slice(0, 1);
}

function gzipped_kB(file: string): number {
  return gzipSync(readFileSync(join(PAGE, file))).length / 1000;
}

/** The files of these entries and of all they import at once. */
function closure(manifest: Manifest, roots: readonly string[]): readonly string[] {
  const files = new Set<string>();
  const visit = (key: string) => {
    const chunk = manifest[key];
    if (chunk === undefined || files.has(chunk.file)) return;
    files.add(chunk.file);
    for (const next of chunk.imports ?? []) visit(next);
  };
  for (const root of roots) visit(root);
  return [...files].filter((file) => file.endsWith('.js'));
}

function round(x: number): number {
  return Math.round(x * 100) / 100;
}
