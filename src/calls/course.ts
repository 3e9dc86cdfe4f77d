/**
 * The course: shipped calls by computed difficulty, which comes next, and with how much help. A trainee goes up family by
 * family; what was passed without help counts, what was not is met again, and once some families are held they are mixed.
 */
import { RUNGS, type Rung } from './rungs.ts';

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
  /** The rung it was taken on; alone when left out. */
  readonly rung?: Rung;
}

const PLAINEST = 4;

/** Where a call stood on the ladder, 0 led whole to 4 alone. The plainest hint makes a worked example of it. */
function stoodOn({ rung = 'alone', assistance = 0 }: Taken): number {
  return assistance >= PLAINEST ? 0 : RUNGS.indexOf(rung);
}

/** Whether somebody was led in it, all the way or a part of it. */
function isLed(taken: Taken): boolean {
  return stoodOn(taken) < RUNGS.indexOf('coached');
}

/** An hour of the expert weighs as much as a bit (our choice, no source). */
export function difficulty({ bits, minutes }: CourseEntry): number {
  return bits + minutes / 60;
}

/**
 * How far a family is mastered, 0 to 1: scores of its calls, later ones weighing more; nothing known is a little. It does not
 * fall because somebody was led to a pass.
 */
export function mastery(course: readonly CourseEntry[], taken: readonly Taken[], family: string): number {
  return ofFamily(course, taken, family).reduce((known, t) => {
    const learnt = known + LEARNS * (shown(t) - known);
    return t.passed && isLed(t) ? Math.max(known, learnt) : learnt;
  }, UNKNOWN);
}

function ofFamily(course: readonly CourseEntry[], taken: readonly Taken[], family: string): readonly Taken[] {
  const calls = new Set(course.filter((e) => e.families.includes(family)).map((e) => e.call));
  return taken.filter((t) => calls.has(t.call));
}

const UNKNOWN = 0.2;
const LEARNS = 0.5;

/** What a call showed of mastery: its score, less for hints, and less the farther somebody was led (conventions). */
function shown(taken: Taken): number {
  if (!taken.passed) return 0;
  const own = Math.min(1, stoodOn(taken) / RUNGS.indexOf('coached'));
  return (taken.score / 100) * own * (1 - (taken.assistance ?? 0) / (2 * PLAINEST));
}

/**
 * The rung on which to take a call: that of the family in it that stands lowest. A family that is unknown begins at the
 * lowest; a pass lifts it to one above the rung of the call, to two above with 90 or more and neither hint nor walkthrough; a
 * call not passed on its rung or below takes it down by one, one tried above it takes nothing away (conventions).
 */
export function rungOf(course: readonly CourseEntry[], taken: readonly Taken[], call: string): Rung {
  const families = course.find((e) => e.call === call)?.families ?? [];
  return RUNGS[Math.min(TOP, ...families.map((family) => standing(ofFamily(course, taken, family))))] ?? 'alone';
}

const TOP = RUNGS.length - 1;
const WELL = 90;

function standing(taken: readonly Taken[]): number {
  return taken.reduce((stands, t) => {
    const on = stoodOn(t);
    if (!t.passed) return on > stands ? stands : Math.max(0, stands - 1);
    const up = t.score >= WELL && on > 0 && (t.assistance ?? 0) === 0 ? 2 : 1;
    return Math.max(stands, Math.min(TOP, on + up));
  }, 0);
}

/**
 * The call that comes next: of those within reach (a step beyond the hardest that was passed) one of the weakest family, so
 * that families are mixed as they come to be held; after a failure another one first, after a walkthrough another one of its
 * family where there is one. Any, once all are passed.
 */
export function nextCall(course: readonly CourseEntry[], taken: readonly Taken[]): string | undefined {
  const last = taken.at(-1);
  const open = course.filter((e) => !isHeld(e, taken) && e.call !== last?.call);
  if (open.length === 0) return course.find((e) => e.call !== last?.call)?.call;
  const another = last && stoodOn(last) === 0 ? open.find((e) => isAkin(course, e, last.call)) : undefined;
  if (another) return another.call;
  const weakest = (e: CourseEntry) => Math.min(...e.families.map((f) => mastery(course, taken, f)));
  const reach = difficultyReached(course, taken) + STEP;
  const near = open.filter((e) => difficulty(e) <= reach);
  const from = near.length > 0 ? near : open.slice(0, 1);
  return [...from].sort((a, b) => weakest(a) - weakest(b) || difficulty(a) - difficulty(b))[0]?.call;
}

/** Whether a call was passed with nobody leading. */
function isHeld({ call }: CourseEntry, taken: readonly Taken[]): boolean {
  return taken.some((t) => t.call === call && t.passed && !isLed(t));
}

/** Whether a call has a family in common with another. */
function isAkin(course: readonly CourseEntry[], entry: CourseEntry, other: string): boolean {
  return course.some((e) => e.call === other && e.families.some((family) => entry.families.includes(family)));
}

/** How much harder than what was passed the next call may be. */
const STEP = 0.8;

function difficultyReached(course: readonly CourseEntry[], taken: readonly Taken[]): number {
  const passed = course.filter((e) => isHeld(e, taken));
  return Math.max(course[0] ? difficulty(course[0]) : 0, ...passed.map(difficulty));
}
