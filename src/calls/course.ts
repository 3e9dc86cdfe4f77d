/**
 * The course: shipped calls by computed difficulty, and which comes next. A trainee goes up family by family; what was
 * passed without help counts, what was not is met again, and once some families are held they are mixed.
 */

export interface CourseEntry {
  readonly call: string;
  /** Bits between the report and a certain cause, and minutes of the scripted expert (`course` on the command line). */
  readonly bits: number;
  readonly minutes: number;
  /** Families of what is really wrong. Never shown before the call is over. */
  readonly families: readonly string[];
}

/** A call that was taken before. */
export interface Taken {
  readonly call: string;
  readonly passed: boolean;
  readonly score: number;
  /** Highest hint that was taken, 0 to 4. A call led to its end by hints shows nothing yet. */
  readonly assistance?: number;
}

/** An hour of the expert weighs as much as a bit (our choice, no source). */
export function difficulty({ bits, minutes }: CourseEntry): number {
  return bits + minutes / 60;
}

/** How far a family is mastered, 0 to 1: scores of its calls, later ones weighing more; nothing known is a little. */
export function mastery(course: readonly CourseEntry[], taken: readonly Taken[], family: string): number {
  const ofFamily = new Set(course.filter((e) => e.families.includes(family)).map((e) => e.call));
  return taken.filter((t) => ofFamily.has(t.call)).reduce((known, t) => known + LEARNS * (shown(t) - known), UNKNOWN);
}

const UNKNOWN = 0.2;
const LEARNS = 0.5;
const LED = 4;

function shown({ passed, score, assistance = 0 }: Taken): number {
  if (!passed || assistance >= LED) return 0;
  return (score / 100) * (1 - assistance / (2 * LED));
}

/**
 * The call that comes next: of those within reach (a step beyond the hardest that was passed) one of the weakest family, so
 * that families are mixed as they come to be held; after a failure another one first. Any, once all are passed.
 */
export function nextCall(course: readonly CourseEntry[], taken: readonly Taken[]): string | undefined {
  const last = taken.at(-1)?.call;
  const held = (e: CourseEntry) => taken.some((t) => t.call === e.call && shown(t) > 0);
  const open = course.filter((e) => !held(e) && e.call !== last);
  if (open.length === 0) return course.find((e) => e.call !== last)?.call;
  const weakest = (e: CourseEntry) => Math.min(...e.families.map((f) => mastery(course, taken, f)));
  const reach = difficultyReached(course, taken) + STEP;
  const near = open.filter((e) => difficulty(e) <= reach);
  const from = near.length > 0 ? near : open.slice(0, 1);
  return [...from].sort((a, b) => weakest(a) - weakest(b) || difficulty(a) - difficulty(b))[0]?.call;
}

/** How much harder than what was passed the next call may be. */
const STEP = 0.8;

function difficultyReached(course: readonly CourseEntry[], taken: readonly Taken[]): number {
  const passed = course.filter((e) => taken.some((t) => t.call === e.call && shown(t) > 0));
  return Math.max(course[0] ? difficulty(course[0]) : 0, ...passed.map(difficulty));
}
