/**
 * A guide leads through the call's own solution: to the next step that is not done yet, with the answers its form wants and
 * why it comes now. It weighs nothing, looks only at what was done, and so has its answer at once.
 */
import {
  type ActionDef,
  breachOf,
  circuitsToLock,
  type Fill,
  hindrance,
  type Message,
  type Place,
  say,
} from '../service/index.ts';
import { isInHand, openSteps } from './guide-steps.ts';
import { isMended, questionBefore, reasonFor } from './guide-words.ts';
import { placeWords } from './places.ts';
import type { Led } from './rungs.ts';
import type { SolutionStep } from './schema.ts';
import type { CallSession } from './session.ts';
import { listOf, STATE_CAUSE } from './session-actions.ts';
import { asAction } from './solution.ts';

export interface GuideStep {
  readonly id: string;
  readonly label: Message;
  readonly part: Place;
  /** The part's name. */
  readonly where: Message;
  /** What its form wants, where it has one. */
  readonly answers: readonly { readonly field: Message; readonly chosen: readonly Message[] }[];
  /** What is worth a thought before it is done. */
  readonly question?: Message;
  readonly why: Message;
}

/** Where the guide leads to next; to no step once the rest is the trainee's. */
export interface Guidance {
  readonly step?: GuideStep;
}

export function guideOn(session: CallSession, led: Led): Guidance {
  const { solution } = session.prepared.call;
  const [next] = openSteps(session, solution.slice(0, stepsLed(solution, led)));
  return next ? { step: inWords(session, firstOf(session, next)) } : {};
}

/**
 * How many steps of a solution are led. A call closed by phone has no cause to state and no site: there the decision is left
 * to the trainee on one rung, and on the next all that follows the reading of the levers (conventions).
 */
function stepsLed(solution: readonly SolutionStep[], led: Led): number {
  if (led === 'led-whole') return solution.length;
  const upTo = (id: string) => solution.findIndex((step) => step.do === id) + 1;
  const byPhone = upTo('decide-close') > 0;
  if (led === 'led-to-cause') return upTo(byPhone ? 'guide-watch' : STATE_CAUSE);
  return upTo(byPhone ? 'ask-breakers' : 'decide-visit');
}

/** What comes before a step, where it cannot be done as things stand or not safely; else the step itself. */
function firstOf(session: CallSession, step: SolutionStep): SolutionStep {
  const def = session.definition(step.do);
  const before = def && (safeguard(session, def, asAction(session, step).fill) ?? readying(session, step));
  return before === undefined ? step : firstOf(session, { do: before });
}

function safeguard(session: CallSession, def: ActionDef, fill?: Fill): string | undefined {
  const { service } = session;
  const { lids, locks } = service.person;
  const lid = def.needs?.lid;
  if (lid && !lids.has(lid)) return `open-lid:${lid}`;
  switch (breachOf(service, def, session.dangerAsked(), fill)) {
    case 'site-not-made-safe':
      return 'make-safe';
    case 'not-locked-out':
      return `lock-out:${circuitsToLock(def, fill).find((circuit) => !locks.has(circuit))}`;
    case 'lid-left-open':
      return `close-lid:${[...lids][0]}`;
    default:
      return undefined;
  }
}

/**
 * What a proof wants: a field that is dosed while it is looked at, a clock that did not lose its time while a lock was on, and
 * Auto for all that is not to be done in Hand.
 */
function readying(session: CallSession, step: SolutionStep): string | undefined {
  const { outputs, regions } = session.service.unit.control;
  if (!isMended(session) || step.do.startsWith('selector-')) return undefined;
  if (step.do === 'advance-timer' && regions.timerClock === 'lost') return 'set-timer';
  if (step.do === 'look-at-field') return outputs.pumpRuns ? undefined : 'selector-hand';
  return regions.selector === 'hand' && !isInHand(session, step) ? 'selector-auto' : undefined;
}

function inWords(session: CallSession, step: SolutionStep): GuideStep {
  const { id, fill = {} } = asAction(session, step);
  // Steps come from a solution that was checked against the unit, and from what its actions need.
  const def = session.definition(id) as ActionDef;
  const question = questionBefore(session, def);
  return {
    id,
    label: def.label,
    part: def.place,
    where: placeWords(def.place, session.prepared.spec).name,
    answers: (def.form ?? []).map((field) => ({
      field: say(`field.${field.id}`),
      chosen: field.options.filter((option) => listOf(fill[field.id]).includes(option.id)).map(({ label }) => label),
    })),
    ...(question ? { question } : {}),
    why: hindrance(session.service, def, fill) ?? reasonFor(session, def),
  };
}
