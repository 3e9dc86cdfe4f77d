/** Which folder may use what. This is the only place where it is written; `docs/imports.md` is made from it. */

/** The folders of `src` in order: each may import those before it, never those after it. */
export const FOLDERS = [
  'plant',
  'control',
  'unit',
  'faults',
  'service',
  'diagnosis',
  'calls',
  'share',
  'quiz',
  'records',
  'build',
  'home',
  'scene',
  'yard',
  'sound',
  'words',
  'desk',
  'cli',
  'tools',
] as const;
export type Folder = (typeof FOLDERS)[number];

export type Access = 'all' | 'types' | 'none';

/** Folders that must give the same bits in Node, in a worker and in every browser: no machine, no clock, no chance. */
export const PURE: readonly Folder[] = [...FOLDERS.slice(0, FOLDERS.indexOf('scene') + 1), 'words'];

/** Folders that see only the listed files or folders, and only as types. */
const TYPES_ONLY: Partial<Record<Folder, readonly string[]>> = {
  yard: ['scene', 'service/message.ts', 'calls/view.ts'],
  sound: ['scene', 'service/message.ts', 'calls/view.ts'],
  words: ['service/message.ts'],
};

/** Folders that only the named ones may import, though they come earlier in the order. */
const RESERVED: Partial<Record<Folder, readonly Folder[]>> = {
  yard: ['desk'],
  sound: ['desk'],
  words: ['desk', 'cli'],
  desk: [],
};

/** Single files that may take types from where their folder may not. */
const EXCEPTIONS: readonly (readonly [from: string, to: string])[] = [
  ['calls/view.ts', 'scene/types.ts'],
  ['tools/offline.ts', 'desk/offline/listing.ts'],
];

/** What `from` may take of `to`; both are paths below `src`, such as `calls/view.ts`. */
export function access(from: string, to: string): Access {
  const [a, b] = [folderOf(from), folderOf(to)];
  if (a === undefined || b === undefined) return 'none';
  if (a === b) return 'all';
  if (EXCEPTIONS.some(([file, target]) => file === from && target === to)) return 'types';
  const listed = TYPES_ONLY[a];
  if (listed !== undefined) return listed.some((path) => to === path || to.startsWith(`${path}/`)) ? 'types' : 'none';
  if (a === 'control') return 'none';
  if (FOLDERS.indexOf(b) > FOLDERS.indexOf(a)) return 'none';
  const reserved = RESERVED[b];
  return reserved === undefined || reserved.includes(a) ? 'all' : 'none';
}

export function folderOf(path: string): Folder | undefined {
  return FOLDERS.find((folder) => path.startsWith(`${folder}/`));
}

const CORE_PACKAGES = ['xstate', 'zod', '@noble/hashes'];

/** Packages a folder may import; `node:` stands for Node's own modules, `*` for anything. */
export const PACKAGES: Readonly<Record<Folder, readonly string[]>> = {
  plant: [],
  control: ['xstate'],
  unit: CORE_PACKAGES,
  faults: CORE_PACKAGES,
  service: CORE_PACKAGES,
  diagnosis: CORE_PACKAGES,
  calls: CORE_PACKAGES,
  share: CORE_PACKAGES,
  quiz: CORE_PACKAGES,
  records: CORE_PACKAGES,
  build: CORE_PACKAGES,
  home: CORE_PACKAGES,
  scene: [],
  yard: ['pixi.js'],
  sound: [],
  words: [],
  desk: [
    ...CORE_PACKAGES,
    'preact',
    '@preact/signals',
    'idb',
    'ts-fsrs',
    '@fontsource-variable/atkinson-hyperlegible-next',
  ],
  cli: [...CORE_PACKAGES, 'fflate', 'node:'],
  tools: ['*'],
};

/** Places beside `src` that a file may import data from, and the folders that may. */
export const DATA = ['scenarios', 'assets', 'package.json'];
export const MAY_READ_DATA: readonly Folder[] = ['unit', 'calls', 'quiz', 'yard', 'sound', 'desk', 'cli', 'tools'];

export interface Ban {
  /** What is banned, as the page lists it. */
  readonly names: readonly string[];
  /** Matched against code whose comments and strings are blanked. */
  readonly pattern: RegExp;
  readonly folders: readonly Folder[];
  /** What is wrong, after the matched text, and what to do instead. */
  readonly rule: string;
  readonly mend: string;
}

/** Bans names used by themselves, not as a property (`x.name`) or a key (`name:`). */
function globals(names: readonly string[]): Pick<Ban, 'names' | 'pattern'> {
  return { names, pattern: new RegExp(`(?<![.\\w$])(?:${names.join('|')})(?![\\w$]|\\s*:)`, 'g') };
}

const EXACT_MATH = [
  ...['abs', 'ceil', 'clz32', 'floor', 'fround', 'imul', 'max', 'min', 'round', 'sign', 'sqrt', 'trunc'],
  ...['E', 'LN2', 'LN10', 'LOG2E', 'LOG10E', 'PI', 'SQRT1_2', 'SQRT2'],
];
const SHOWN: readonly Folder[] = FOLDERS.filter((folder) => folder !== 'tools');

export const BANS: readonly Ban[] = [
  {
    names: [`Math other than ${EXACT_MATH.join(' ')}`],
    pattern: new RegExp(
      `(?<![.\\w$])Math(?!\\s*\\.)|(?<![.\\w$])Math\\s*\\.\\s*(?!(?:${EXACT_MATH.join('|')}|random)\\b)\\w+`,
      'g',
    ),
    folders: PURE,
    rule: 'differs in its last bits between engines',
    mend: 'use exp, log, pow, cos of plant/num',
  },
  {
    names: ['**'],
    pattern: /\*\*=?/g,
    folders: PURE,
    rule: 'differs in its last bits between engines',
    mend: 'multiply, or use pow of plant/num',
  },
  {
    names: ['Math.random'],
    pattern: /(?<![.\w$])Math\s*\.\s*random\b/g,
    folders: [...PURE, 'yard'],
    rule: 'makes every run different',
    mend: 'draw from a seeded stream',
  },
  {
    ...globals(['Date', 'performance', 'Temporal']),
    folders: PURE,
    rule: 'reads the clock of the machine',
    mend: "use the call's own time",
  },
  {
    ...globals([
      ...['setTimeout', 'setInterval', 'setImmediate', 'clearTimeout', 'clearInterval'],
      ...['queueMicrotask', 'requestAnimationFrame', 'requestIdleCallback'],
    ]),
    folders: PURE,
    rule: 'waits in real time',
    mend: 'make it a known instant of the engine',
  },
  {
    names: ['Intl', 'toLocale…', 'localeCompare'],
    pattern: /(?<![.\w$])Intl(?![\w$]|\s*:)|\.\s*(?:toLocale\w+|localeCompare)\b/g,
    folders: PURE,
    rule: 'depends on the language data of the machine',
    mend: 'write the format out, or compare with < and >',
  },
  {
    ...globals([
      ...['document', 'window', 'navigator', 'localStorage', 'sessionStorage', 'indexedDB'],
      ...['fetch', 'XMLHttpRequest', 'globalThis'],
    ]),
    folders: PURE,
    rule: 'belongs to a browser or to Node',
    mend: 'take what you need as a value from desk or cli',
  },
  {
    names: ['innerHTML', 'outerHTML', 'insertAdjacentHTML', 'dangerouslySetInnerHTML', 'document.write'],
    pattern:
      /\b(?:innerHTML|outerHTML|insertAdjacentHTML|dangerouslySetInnerHTML)\b|(?<![.\w$])document\s*\.\s*write\w*/g,
    folders: SHOWN,
    rule: 'turns text into markup',
    mend: 'set textContent, or write the elements',
  },
  {
    names: ['eval', 'new Function'],
    pattern: /(?<![.\w$])eval(?=\s*\()|(?<![.\w$])new\s+Function\b/g,
    folders: SHOWN,
    rule: 'runs text as code, which the content policy forbids',
    mend: 'write the code',
  },
];
