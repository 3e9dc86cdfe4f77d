/** Which steps of a call's solution are still to do, by what was done and as things stand. */
import { placedFault } from '../faults/index.ts';
import { hindrance } from '../service/index.ts';
import { isOverAlarm } from './drawn-down.ts';
import { trueFaults } from './flags.ts';
import type { SolutionStep } from './schema.ts';
import type { CallSession, Done } from './session.ts';
import { listOf, STATE_CAUSE } from './session-actions.ts';

/** Steps that lead up to a decision, a cause or a mend, and that; the last stretch proves the cure and closes the call. */
interface Stretch {
  readonly steps: readonly SolutionStep[];
  readonly end?: SolutionStep;
}

/**
 * The steps that are still to do, in order. Whoever has come to the end of a stretch needs nothing more of it. Within the
 * present one the order is free; what is done beyond it, or besides, stands for no step of the solution.
 */
export function openSteps(session: CallSession, solution: readonly SolutionStep[]): readonly SolutionStep[] {
  let open = stretchesOf(session, solution);
  const missed = new Set<string>();
  for (const done of session.done) {
    const ended = open.findIndex(({ end }) => end && isStep(end, done));
    if (ended >= 0) open = open.filter((_, i) => i !== ended);
    else if (open[0]?.end || !isMiss(done) || missed.has(done.def.id))
      open = open.map((stretch, i) => (i === 0 ? without(stretch, done) : stretch));
    else missed.add(done.def.id);
  }
  return open.flatMap(({ steps, end }) => (end ? [...steps, end] : steps)).filter((step) => !isIdle(session, step));
}

function stretchesOf(session: CallSession, solution: readonly SolutionStep[]): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let steps: SolutionStep[] = [];
  for (const step of solution) {
    if (isEnd(session, step)) {
      stretches.push({ steps, end: step });
      steps = [];
    } else steps.push(step);
  }
  return [...stretches, { steps }];
}

/** Whether a step is what those before it were for. */
function isEnd(session: CallSession, { do: id }: SolutionStep): boolean {
  if (id === STATE_CAUSE || id.startsWith('decide-')) return true;
  const def = session.definition(id);
  if (!def || def.place === 'phone') return false;
  return def.group === 'mend' || trueFaults(session).some((key) => placedFault(key).mendedBy.includes(id));
}

function without(stretch: Stretch, done: Done): Stretch {
  const at = stretch.steps.findIndex((step) => isStep(step, done));
  if (at < 0) return stretch;
  const before = stretch.steps.slice(0, at);
  // With the selector back in Auto nothing is waited for any more.
  const kept = done.def.id === 'selector-auto' ? before.filter((step) => !isWait(step)) : before;
  return { ...stretch, steps: [...kept, ...stretch.steps.slice(at + 1)] };
}

/** A proof that did not show: the field between two doses, a timer turned on while the pump was just stopping. Worth a second try. */
function isMiss({ outcome }: Done): boolean {
  return outcome.notes.some(({ reading }) => MISSES.includes(reading.id));
}

const MISSES: readonly string[] = ['reading.heads-down', 'reading.dose-does-not-start'];

/** Whether what was done is a step of the solution. A cause counts when it is the one that was there. */
function isStep(step: SolutionStep, { def, action }: Done): boolean {
  if (step.do !== def.id) return false;
  if (step.do !== STATE_CAUSE) return true;
  const [wanted, named] = [step.fill, action.fill].map((fill) => [...listOf(fill?.cause)].sort().join());
  return wanted === named;
}

/**
 * Whether a step has nothing left to do as things stand: a lid is open, a lock is off, the phone was hung up, or the water is
 * drawn down that it waits for. How long that takes depends on how long somebody thinks meanwhile.
 */
function isIdle(session: CallSession, step: SolutionStep): boolean {
  if (isWait(step) && isInHand(session, step)) return !isOverAlarm(session.service);
  const def = session.definition(step.do);
  const why = def && hindrance(session.service, def);
  if (why?.id === 'why.locked') return step.do.startsWith('lock-out:');
  return !def || (why !== undefined && IDLE.includes(why.id));
}

const IDLE: readonly string[] = ['why.on-site', 'why.lid-open', 'why.lid-closed', 'why.not-locked'];

/** Whether the solution has the pump run in Hand meanwhile. */
export function isInHand({ prepared }: CallSession, step: SolutionStep): boolean {
  const { solution } = prepared.call;
  const before = solution.slice(0, Math.max(0, solution.indexOf(step)));
  return before.findLast(({ do: id }) => id.startsWith('selector-'))?.do === 'selector-hand';
}

function isWait({ do: id }: SolutionStep): boolean {
  return id === 'watch-panel' || id === 'look-into-pump-tank';
}
