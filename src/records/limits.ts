/**
 * How much each field of a course platform holds, what becomes of what is longer, and where the standard says so. All writers
 * go through here. Sections marked `*` are cited from memory of the standard; the figures are also those that the platforms'
 * own checks use.
 */

/** `cut`: what is beyond is left out, at a whole element of a list. `refuse`: nothing is written, and it is said which field. */
export type Beyond = 'cut' | 'refuse';

export interface TextLimit {
  readonly field: string;
  readonly most: number;
  readonly beyond: Beyond;
  readonly source: string;
  /** What every character must be; anything goes where it is left out. */
  readonly only?: RegExp;
}

export interface NumberLimit {
  readonly field: string;
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

/** SCORM 1.2 speaks of sets of ASCII characters. */
const ASCII = /^[\x20-\x7e]*$/;
const NO_BLANK = /^[\x21-\x7e]+$/;

const RTE12 = 'SCORM 1.2 RTE 3.4.4';
const RTE2004 = 'SCORM 2004 4th Ed. RTE';

export const TEXT = {
  location12: {
    field: 'cmi.core.lesson_location',
    most: 255,
    beyond: 'refuse',
    only: ASCII,
    source: `${RTE12}*, CMIString255`,
  },
  suspended12: {
    field: 'cmi.suspend_data',
    most: 4096,
    beyond: 'refuse',
    only: ASCII,
    source: `${RTE12}*, CMIString4096`,
  },
  interaction12: {
    field: 'cmi.interactions.n.id',
    most: 255,
    beyond: 'refuse',
    only: NO_BLANK,
    source: `${RTE12}*, CMIIdentifier`,
  },
  response12: {
    field: 'cmi.interactions.n.student_response',
    most: 255,
    beyond: 'cut',
    only: ASCII,
    source: `${RTE12}*, CMIFeedback`,
  },
  pattern12: {
    field: 'cmi.interactions.n.correct_responses.n.pattern',
    most: 255,
    beyond: 'cut',
    only: ASCII,
    source: `${RTE12}*, CMIFeedback`,
  },
  location2004: {
    field: 'cmi.location',
    most: 1000,
    beyond: 'refuse',
    source: `${RTE2004} 4.2.14*`,
  },
  suspended2004: {
    field: 'cmi.suspend_data',
    // 64,000 by the standard; one limit for both versions keeps what was left in one of them good for the other.
    most: 4096,
    beyond: 'refuse',
    source: `${RTE2004} 4.2.23*: 64000; ours is that of SCORM 1.2`,
  },
  interaction2004: {
    field: 'cmi.interactions.n.id',
    most: 4000,
    beyond: 'refuse',
    only: NO_BLANK,
    source: `${RTE2004} 4.2.9*, long_identifier_type`,
  },
  step2004: {
    field: 'one step of a performance',
    most: 250,
    beyond: 'refuse',
    only: NO_BLANK,
    source: `${RTE2004} 4.2.9*, short_identifier_type`,
  },
  suspendedState: {
    field: 'the state document of a call left half way',
    most: 4096,
    beyond: 'refuse',
    source: 'xAPI 1.0.3 sets none; ours is that of SCORM 1.2',
  },
  itemIdentifier: {
    field: 'identifier of an item, an answer or a file of a question package',
    most: 128,
    beyond: 'refuse',
    only: /^[A-Za-z_][\w.-]*$/,
    source: 'QTI 2.2 and 3.0: an NCName; 128 characters, `common practice, no source`',
  },
  title12: {
    field: 'title of an organization or an item',
    most: 200,
    beyond: 'cut',
    source: 'IMS Content Packaging 1.1.2, titleType: 200',
  },
} as const satisfies Record<string, TextLimit>;

/** How many of something there may be; what is beyond is left out. */
export const COUNT = {
  /** A platform need not keep more. */
  interactions: { field: 'cmi.interactions', most: 250, source: `${RTE2004} 4.2.9*` },
  choices: { field: 'elements of a choice', most: 36, source: `${RTE2004} 4.2.9*` },
  steps: { field: 'steps of a performance', most: 125, source: `${RTE2004} 4.2.9*` },
  patterns: { field: 'correct responses of a choice', most: 10, source: `${RTE2004} 4.2.9*` },
} as const;

export const NUMBER = {
  score12: { field: 'cmi.core.score.raw', least: 0, most: 100, source: `${RTE12}*, CMIDecimal, 0 to 100` },
  weighting12: {
    field: 'cmi.interactions.n.weighting',
    least: -100,
    most: 100,
    source: `${RTE12}*, CMIDecimal, -100 to 100`,
  },
  scaled2004: { field: 'cmi.score.scaled', least: -1, most: 1, source: `${RTE2004} 4.2.20*` },
  scaledXapi: { field: 'result.score.scaled', least: 0, most: 1, source: 'cmi5 9.5.1' },
  mastery: { field: 'masteryScore', least: 0, most: 1, source: 'cmi5 13.1.4' },
} as const satisfies Record<string, NumberLimit>;

/** A value that a platform could not hold, and that is not to be changed without a word. */
export class BeyondLimit extends Error {
  readonly field: string;

  constructor(field: string, what: string, source: string) {
    super(`${field}: ${what} (${source})`);
    this.field = field;
  }
}

/** A text within its limit. */
export function text({ field, most, beyond, only, source }: TextLimit, value: string): string {
  if (only && !only.test(value)) throw new BeyondLimit(field, 'a character that it must not have', source);
  if (value.length <= most) return value;
  if (beyond === 'refuse') throw new BeyondLimit(field, `${value.length} characters, at most ${most}`, source);
  // Never half of a character that takes two.
  return value.slice(0, /[\ud800-\udbff]/.test(value.charAt(most - 1)) ? most - 1 : most);
}

/** A list written as one text: cut after the last element that fits whole. */
export function listed(limit: TextLimit, elements: readonly string[], between: string): string {
  const fits = elements.findLastIndex((_, i) => elements.slice(0, i + 1).join(between).length <= limit.most);
  return text(limit, elements.slice(0, fits + 1).join(between));
}

/** A finite number within its limits; beyond them it is refused. */
export function number({ field, least, most, source }: NumberLimit, value: number): number {
  if (value >= least && value <= most) return value;
  throw new BeyondLimit(field, `${value}, from ${least} to ${most}`, source);
}

/** A number as decimal digits, at most seven after the point, never with an exponent. */
export function decimal(value: number): string {
  const digits = value.toFixed(7).replace(/\.?0+$/, '');
  return digits === '-0' ? '0' : digits;
}
