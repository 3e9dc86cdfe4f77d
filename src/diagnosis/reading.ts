/** What a check brought, in a form in which two of them can be compared: what was seen, and the numbers that were read. */
import { exp } from '../plant/index.ts';
import type { LiveFacts, Measure, Message, MessageValue, Note, Quantity } from '../service/index.ts';

export interface Reading {
  readonly words: readonly string[];
  readonly numbers: readonly Quantity[];
  /** What was seen and heard on the side, whatever was done. */
  readonly side: readonly string[];
}

export const NO_READING: Reading = { words: [], numbers: [], side: [] };

/** What is seen and heard on the side of any action. */
const SIDE = [
  'lamp',
  'airLamp',
  'waterLamp',
  'buzzer',
  'compressorRuns',
  'rattle',
] as const satisfies readonly (keyof LiveFacts)[];

/** The reading that notes make, with what was perceived besides. */
export function readingOf(notes: readonly Note[], perceived: LiveFacts): Reading {
  const words: string[] = [];
  const numbers: Quantity[] = [];
  for (const note of notes) {
    flatten(note.what, words, numbers);
    flatten(note.reading, words, numbers);
  }
  const side = SIDE.flatMap((fact) => (perceived[fact] === undefined ? [] : [`${fact}:${perceived[fact]}`]));
  return { words, numbers, side };
}

/** What it tells that an action cannot be done. */
export function hindered(why: Message): Reading {
  return { ...NO_READING, words: [why.id] };
}

function flatten(message: Message, words: string[], numbers: Quantity[]): void {
  words.push(message.id);
  for (const value of Object.values(message.values ?? {})) flattenValue(value, words, numbers);
}

function flattenValue(value: MessageValue, words: string[], numbers: Quantity[]): void {
  if (typeof value === 'string') words.push(value);
  else if (typeof value === 'number') numbers.push({ measure: 'count', value });
  else if ('measure' in value) numbers.push(value);
  else if ('id' in value) flatten(value, words, numbers);
}

/**
 * How far a twin may be from the property though its fault is the right one, since severities and onsets are tried on a
 * grid: a share of the reading, and at least so much in its own measure (conventions).
 */
const SHARE = 0.04;
/** Starts add up since the onset, and the ages that are tried lie a day apart. */
const SHARE_OF_COUNT = 0.15;
const LEAST: Readonly<Partial<Record<Measure, number>>> = {
  pressure_kPa: 0.6,
  length_m: 0.04,
  concentration_mgL: 0.4,
  current_A: 0.4,
  voltage_V: 3,
  resistance_ohm: 0.2,
  waterFlow_Ls: 0.03,
  clock_s: 120,
  count: 2,
  share: 0.05,
  duration_h: 1,
};

/** No reading rules a cause out for good: a slip of eye or pen is always possible (convention). */
export const DOUBT = 0.01;

/** How well what was seen fits what is expected, from `DOUBT` (not at all) to 1. */
export function likelihood(seen: Reading, expected: Reading): number {
  return sideDifferences(seen, expected).size > 0 ? DOUBT : likelihoodInItself(seen, expected);
}

/** How what was seen stands to what is expected, after what differed on the side before. */
export interface Comparison {
  /** How well it fits by itself. */
  readonly fit: number;
  /** How well what is new in it fits: a lamp that is dark where it should be lit speaks once, and not as long as it stays so. */
  readonly news: number;
  readonly differs: SideDifferences;
}

export function compared(before: SideDifferences, seen: Reading, expected: Reading): Comparison {
  const inItself = likelihoodInItself(seen, expected);
  const aside = sideDifferences(seen, expected);
  const isNew = [...aside].some(([fact, differs]) => before.get(fact) !== differs);
  return {
    fit: aside.size > 0 ? DOUBT : inItself,
    news: isNew ? DOUBT : inItself,
    differs: differencesAfter(before, aside, seen, expected),
  };
}

/** By fact, what was seen on the side and what was expected where it differs. */
export type SideDifferences = ReadonlyMap<string, string>;

/** What differs on the side now, and what differed last of what is not seen now. */
function differencesAfter(
  before: SideDifferences,
  aside: SideDifferences,
  seen: Reading,
  expected: Reading,
): SideDifferences {
  if (before.size === 0) return aside;
  const now = new Set([...seen.side, ...expected.side].map(factOf));
  return new Map([...[...before].filter(([fact]) => !now.has(fact)), ...aside]);
}

function sideDifferences(seen: Reading, expected: Reading): SideDifferences {
  const facts = new Set([...seen.side, ...expected.side].map(factOf));
  const at = ({ side }: Reading, fact: string) => side.find((one) => factOf(one) === fact) ?? 'unseen';
  return new Map(
    [...facts].flatMap((fact) => {
      const [one, other] = [at(seen, fact), at(expected, fact)];
      return one === other ? [] : [[fact, `${one} ${other}`] as const];
    }),
  );
}

function factOf(side: string): string {
  return side.slice(0, side.indexOf(':'));
}

/** The same, leaving out what was seen on the side. */
function likelihoodInItself(seen: Reading, expected: Reading): number {
  if (!same(seen.words, expected.words) || seen.numbers.length !== expected.numbers.length) return DOUBT;
  let squares = 0;
  seen.numbers.forEach((number, i) => {
    const other = expected.numbers[i];
    if (other) squares += squaredDeviation(number, other);
  });
  return Math.max(DOUBT, exp(-squares / 2));
}

function same(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word, i) => word === b[i]);
}

/** In spreads, squared. */
function squaredDeviation(seen: Quantity, expected: Quantity): number {
  const share = seen.measure === 'count' ? SHARE_OF_COUNT : SHARE;
  const spread = Math.max((seen.resolution ?? 0) / 2, LEAST[seen.measure] ?? 0, share * Math.abs(expected.value), 1e-9);
  const off = (seen.value - expected.value) / spread;
  return off * off;
}

/** Readings that a person would not tell apart. */
export function alike(a: Reading, b: Reading): boolean {
  return isAlike(likelihood(a, b));
}

/** What a check shows in itself, whatever the lamp does meanwhile. */
export function alikeInItself(a: Reading, b: Reading): boolean {
  return isAlike(likelihoodInItself(a, b));
}

/** Two spreads apart is told apart (convention). */
export function isAlike(likelihood: number): boolean {
  return likelihood > 0.135;
}
