/** `pack`: calls as a package for a course platform, with the page that shows them. */
import { existsSync, readdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { parseArgs } from 'node:util';
import { allShipped, type CallFile, prepareCall, problemLine } from '../calls/index.ts';
import { BeyondLimit } from '../records/limits.ts';
import { courseStructure } from '../records/package/cmi5-course.ts';
import { activityOf, type Course, courseTitle, type PackedActivity } from '../records/package/course.ts';
import { entryPage, NOT_PACKED } from '../records/package/entry.ts';
import { PACKED_MODES, PLATFORMS, type Platform } from '../records/package/platforms.ts';
import { type ManifestLanguage, manifest12, manifest2004 } from '../records/package/scorm-manifest.ts';
import { fileText } from '../share/index.ts';
import { oneOf } from './args.ts';
import { findCall } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';
import { zipOf } from './zip.ts';

/** Beside the command line, where `npm run build` puts both. */
const builtPage = () => join(dirname(realpathSync(process.argv[1] ?? '.')), '..', 'web');
const START = 'index.html';

export function pack(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      as: { type: 'string' },
      mode: { type: 'string', default: 'graded' },
      language: { type: 'string', default: 'en' },
      out: { type: 'string', short: 'o' },
      page: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  if (positionals.length === 0) throw new UsageError('pack needs CALLS; name files or ids of shipped calls');
  const { out } = values;
  if (!out) throw new UsageError('pack needs -o FILE.zip');
  const platform = oneOf('as', values.as ?? '', PLATFORMS);
  const mode = oneOf('mode', values.mode, PACKED_MODES);
  const language = oneOf('language', values.language, ['en', 'es']);
  const page = values.page ?? builtPage();
  if (!existsSync(join(page, START))) {
    throw new UsageError(`${page} holds no built page; run npm run build, or name it with --page FOLDER`);
  }
  const calls: CallFile[] = [];
  for (const name of positionals) {
    const call = findCall(name);
    if (!call.ok) {
      for (const problem of call.problems) process.stderr.write(`${problemLine(name, problem)}\n`);
      return BAD;
    }
    calls.push(call.value);
  }
  const twin = calls.find(({ id }, at) => calls.findIndex((one) => one.id === id) !== at);
  if (twin) throw new UsageError(`"${twin.id}" is named twice; name each call once`);
  try {
    const files = packageOf(calls, { platform, mode, language, page });
    writeFileSync(out, zipOf(files));
    if (values.json) printJson({ out, as: platform, mode, calls: calls.map(({ id }) => id), files: files.size });
    else print(`${out}: ${platform}, ${mode}, ${calls.map(({ id }) => id).join(', ')}`);
    return GOOD;
  } catch (error) {
    if (!(error instanceof BeyondLimit)) throw error;
    process.stderr.write(`${error.message}\n`);
    return BAD;
  }
}

interface Choice {
  readonly platform: Platform;
  readonly mode: Course['mode'];
  readonly language: ManifestLanguage;
  /** Folder of the built page. */
  readonly page: string;
}

/** All files of the package by their names in it. */
export function packageOf(
  calls: readonly CallFile[],
  { platform, mode, language, page }: Choice,
): ReadonlyMap<string, Uint8Array | string> {
  const files = pageFiles(page);
  const own = calls.filter((call) => allShipped().every(({ id }) => id !== call.id));
  for (const call of own) files.set(fileOf(call.id), fileText(call));
  const activities = calls.map((call) => activityOf(prepareCall(call)));
  const course: Course = { title: courseTitle(activities), mode, activities, files: [...files.keys()].sort() };
  const start = readFileSync(join(page, START), 'utf8');
  const entry = (activity: PackedActivity) => {
    const file = own.some(({ id }) => id === activity.call) ? fileOf(activity.call) : undefined;
    return entryPage(start, platform, activity, mode, file);
  };
  const [name, text] =
    platform === 'cmi5'
      ? ['cmi5.xml', courseStructure(course)]
      : ['imsmanifest.xml', (platform === 'scorm12' ? manifest12 : manifest2004)(course, language)];
  return new Map([...files, ...activities.map((one) => [one.entry, entry(one)] as const), [name, text]]);
}

/** Where a call lies that does not ship. */
function fileOf(id: string): string {
  return `calls/${id}.json`;
}

/** What the page is made of, without its start, whose place the entry pages take, what installs it, and the bundler's own notes. */
function pageFiles(folder: string): Map<string, Uint8Array | string> {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((name) => name !== START && !name.startsWith('.') && !NOT_PACKED.test(name));
  return new Map(names.sort().map((name) => [name, readFileSync(join(folder, name))]));
}
