/** Takes real calls along the paths of the procedure, by the actions that a screen sends, and reads what a screen shows. */
import { getSimplePaths } from 'xstate/graph';
import {
  type Action,
  CallSession,
  judged,
  type Prepared,
  prepareCall,
  shippedCalls,
  viewOf,
} from '../../../src/calls/index.ts';
import { edgeKey, planFor } from './paths.ts';
import {
  PHONE_ORDER,
  type PhoneEvent,
  type ProcedureSays,
  phoneMachine,
  type Shown,
  SITE_ORDER,
  type SiteEvent,
  type Step,
  siteMachine,
} from './procedure.ts';
import { keyOf, Remembered } from './remembered.ts';
import type { Failure, Row } from './walk.ts';
import type { CallEvent, CallSays } from './whole-call.ts';
import { callMachine } from './whole-call.ts';

/** A call with a split air line whose alarm sounds, with little to live through before the phone rings. */
export function splitLine(): Prepared {
  const call = shippedCalls().find((c) => c.id === 'sunny-line');
  if (!call) throw new Error('no call "sunny-line"');
  const day = call.start.slice(0, 11);
  return prepareCall({
    ...call,
    start: `${day}00:20`,
    history_days: 0,
    faults: call.faults.map((f) => ({ ...f, onset: `${day}00:05` })),
    report: { ...call.report, silenced: false },
  });
}

const VISIT: Action = { id: 'decide-visit', fill: { urgency: 'before-dosing', load: ['tubing', 'diaphragm-kit'] } };
const CLOSE: Action = {
  id: 'decide-close',
  fill: { 'follow-up': ['call-tomorrow', 'count-trip', 'visit-if-again'] },
};
const CAUSE: Action = { id: 'state-cause', fill: { cause: ['line-split'], evidence: [] } };
const RECORD: Action = {
  id: 'write-record',
  fill: { lines: ['found', 'readings', 'mended', 'parts', 'proved', 'left-on-auto', 'follow-up'] },
};
const TELL: Action = {
  id: 'tell-household',
  fill: { told: ['what-was-wrong', 'what-alarm-means', 'keep-lids-shut'] },
};
const of = (...ids: string[]): Action[] => ids.map((id) => ({ id }));

const PHONE: Readonly<Record<PhoneEvent, readonly Action[]>> = {
  'danger asked about': of('ask-danger'),
  'questions asked': of('ask-history'),
  'silence guided': of('guide-silence'),
  'breakers read out': of('ask-breakers'),
  'reset guided': of('guide-reset'),
  'five minutes watched': of('guide-watch'),
  'closed by phone': [CLOSE],
  'visit decided': [VISIT],
  'householder told to open the panel': of('tell-open-panel'),
  'householder told to open the tank': of('tell-open-tank'),
};

const SITE: Readonly<Record<SiteEvent, readonly Action[]>> = {
  'site made safe': of('make-safe'),
  'compressor listened to': of('listen-compressor'),
  'gauge read': of('tee-pressure'),
  'cause named': [CAUSE],
  'line spliced': of('splice-air-line'),
  'record written': [RECORD],
  'household told': [TELL],
  'diaphragms renewed on a live circuit': of('renew-diaphragms'),
  left: of('leave-site'),
};

const WHOLE: Readonly<Record<CallEvent, readonly Action[]>> = {
  'danger and history asked': of('ask-danger', 'ask-history'),
  silenced: of('guide-silence'),
  'breakers read out': of('ask-breakers'),
  reset: of('guide-reset'),
  'five minutes watched': of('guide-watch'),
  'closed by phone': [CLOSE],
  'visit decided': [VISIT],
  'site made safe, pressure read': of('make-safe', 'listen-compressor', 'tee-pressure', 'follow-air-line'),
  'cause named': [CAUSE],
  'line spliced': of('splice-air-line'),
  'cure proved': of('tee-pressure', 'reset-panel', 'make-air-alarm', 'reset-panel', 'watch-panel'),
  'record written': [RECORD],
  'household told': [TELL],
  left: of('leave-site'),
};

/** Steps by phone in their turn, up to the arrival. */
const ARRIVE: readonly Action[] = [
  ...of('ask-danger', 'ask-history', 'guide-silence', 'ask-breakers', 'guide-reset', 'guide-watch'),
  VISIT,
];

/** What is wanted of the screen after a step of the procedure. */
export interface Screen {
  readonly key: string;
  readonly says: readonly ProcedureSays[];
}

export interface Procedure {
  readonly name: string;
  readonly machine: typeof phoneMachine | typeof siteMachine;
  readonly does: Readonly<Record<string, readonly Action[]>>;
  readonly before: readonly Action[];
  readonly order: readonly Step[];
}

export const PROCEDURES: readonly Procedure[] = [
  { name: 'procedure by phone', machine: phoneMachine, does: PHONE, before: [], order: PHONE_ORDER },
  { name: 'procedure on site', machine: siteMachine, does: SITE, before: ARRIVE, order: SITE_ORDER },
];

export function planOfProcedure({ machine, does }: Procedure) {
  const tells = (key: string, says: readonly unknown[]): Screen => ({ key, says: says as ProcedureSays[] });
  /** Until the call is over anything may be done, also twice. */
  const allows = (_state: unknown, _event: string, { says }: Screen): boolean => says.some((s) => s.ended === false);
  const logic = new Remembered<Screen>(machine, tells, allows);
  return planFor(logic, Object.keys(does));
}

export function walkProcedure(procedure: Procedure, prepared: Prepared): { row: Row; failures: Failure[] } {
  const began = performance.now();
  const plan = planOfProcedure(procedure);
  const met = new Set([plan.start.key]);
  const taken = new Set<string>();
  const failures: Failure[] = [];
  for (const path of plan.paths) {
    const session = new CallSession(prepared, 'practice');
    let problems = done(session, procedure.before);
    let steps = 0;
    for (const edge of path) {
      if (problems.length > 0) break;
      problems = [...done(session, procedure.does[edge.event] ?? []), ...wrong(session, edge.to, procedure.order)];
      steps++;
      taken.add(edgeKey(edge));
      met.add(edge.to.key);
    }
    if (problems.length > 0) failures.push({ path: path.slice(0, steps).map((e) => e.event), problems });
  }
  const steps = plan.paths.reduce((sum, path) => sum + path.length, 0);
  return {
    row: {
      promise: procedure.name,
      unit: prepared.spec.id,
      fault: 'line-split',
      states: plan.edges.size,
      transitions: plan.transitions,
      paths: plan.paths.length,
      steps,
      pairs: 0,
      statesDone: met.size / plan.edges.size,
      transitionsDone: taken.size / plan.transitions,
      ms: performance.now() - began,
    },
    failures,
  };
}

function done(session: CallSession, actions: readonly Action[]): string[] {
  return actions.flatMap((action) => {
    const why = session.act(action);
    return why ? [`${action.id} cannot be done: ${why.id}`] : [];
  });
}

/** Differences between the screen and what the procedure wants of it. */
function wrong(session: CallSession, { says }: Screen, order: readonly Step[]): string[] {
  const view = viewOf(session, {} as never);
  const shown = new Map<Step, Shown>();
  const found: string[] = [];
  for (const s of says) {
    if (s.step && s.shown) shown.set(s.step, s.shown);
    if (s.ended !== undefined && s.ended !== view.ended) found.push(`ended is ${view.ended}: ${s.says}`);
    if (s.onSite !== undefined && s.onSite !== session.service.person.onSite) found.push(`place: ${s.says}`);
    if (view.breach?.id !== s.breach && (s.breach || s.ended === false))
      found.push(`breach ${view.breach?.id}: ${s.says}`);
  }
  for (const [step, want] of shown) {
    const state = view.stages.find((s) => s.id === step)?.state;
    const is = state === 'done' || state === 'skipped' ? state : 'open';
    // The last step stays the present one while the call waits to be closed.
    const lastNow = state === 'now' && step === order.at(-1);
    if (is !== want && !lastNow) found.push(`${step} is shown ${is}, want ${want}`);
  }
  const first = order.find((step) => shown.get(step) === 'open');
  const here = says.some((s) => s.onSite === order.includes('safe') && s.ended === false);
  if (here && first && view.stage !== first) found.push(`the stage is ${view.stage}, the first open step is ${first}`);
  return found;
}

/** Every way from the first ring to the end of the call that goes through no state twice. */
export function wholeCalls(): {
  readonly events: readonly CallEvent[];
  readonly stages: readonly string[];
  readonly flags: readonly string[];
}[] {
  const paths = getSimplePaths(callMachine, {
    serializeState: (state) => keyOf(state),
    // What is remembered of the way changes only when the call itself goes on.
    filterEvents: (state, { type }) => state._nodes.some((n) => n.path[0] === 'progress' && n.ownEvents.includes(type)),
    toState: (state) => state.matches({ progress: 'closed' }),
  });
  const saysOf = (state: (typeof paths)[number]['state']) => Object.values(state.getMeta()) as CallSays[];
  return paths.map(({ state, steps }) => ({
    events: steps.slice(1).map((s) => s.event.type as CallEvent),
    stages: steps.slice(1).flatMap((s) => saysOf(s.state).flatMap((m) => m.stage ?? [])),
    flags: saysOf(state)
      .flatMap((m) => m.flags ?? [])
      .sort(),
  }));
}

/** Takes a whole call and tells what a person would find wrong with what was shown. */
export function takeCall(
  prepared: Prepared,
  { events, stages, flags }: ReturnType<typeof wholeCalls>[number],
): string[] {
  const session = new CallSession(prepared, 'practice');
  const found: string[] = [];
  events.forEach((event, i) => {
    found.push(...done(session, WHOLE[event]));
    const { stage } = viewOf(session, {} as never);
    if (stage !== stages[i]) found.push(`after ${event} the stage is ${stage}, want ${stages[i]}`);
  });
  const given = [...new Set(judged(session).flags.map((f) => f.id))].sort();
  if (given.join() !== flags.join()) found.push(`flags ${given.join(', ')}; want ${flags.join(', ')}`);
  return found;
}
