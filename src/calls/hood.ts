/**
 * A call in progress with everything open, for a trainer: what the trainee did and believes beside what the works really do.
 * Plain JSON: it goes from one window to another.
 */
import { type FaultFamily, placedFault } from '../faults/index.ts';
import { type Balance, balance } from '../plant/balance.ts';
import { STATE_SIZE } from '../plant/index.ts';
import { type Measure, type Message, type Quantity, quantity, say } from '../service/index.ts';
import { isOver, readout, severityAt, type Unit } from '../unit/index.ts';
import { doAgain } from './again.ts';
import { CURVES, type CurveId, curvesIn, curvesOn, type Mark, marksOf } from './curves.ts';
import { placeWords } from './places.ts';
import { stageOf, stepsOf } from './procedure.ts';
import { CallSession, type Done, type Logged } from './session.ts';
import { faultName, listOf, TICK } from './session-actions.ts';
import type { Prepared } from './setup.ts';
import { type Moment, momentsOf, teachingWords } from './taught.ts';
import { isTeaching, TEACH } from './teach-ids.ts';
import { canDropIn, droppable, isFrozen, wayOf } from './teaching.ts';
import { blocksOf, eventsOf } from './timeline.ts';
import type { Trace } from './trace.ts';
import type { CalendarClock, CallMode, DebriefView, StageId, TimelineBlock } from './view.ts';
import { clockAt } from './viewOf.ts';

/** Something that was done, by the trainee or the trainer. */
export interface Deed {
  readonly at_ms: number;
  readonly by: 'trainee' | 'trainer';
  readonly label: Message;
  readonly readings: readonly Message[];
  /** Gone back over: it does not hold any more. */
  readonly undone: boolean;
}

/** A fault that is there or has come and is not over. */
export interface FaultThere {
  readonly key: string;
  readonly name: Message;
  /** As it is now and as it is to become, 0 to 1. */
  readonly severity: number;
  readonly full: number;
  readonly way: 'grows' | 'stands' | 'fades';
  readonly droppedIn: boolean;
  /** Whether a trainer can take it out: what a household draws is settled. */
  readonly removable: boolean;
}

/** A fault that can be dropped in. */
export interface Droppable {
  readonly key: string;
  readonly name: Message;
  readonly family: FaultFamily;
  readonly severity: number;
  readonly ramp_h: number;
}

/** A curve of the works over the call so far. */
export interface Curve {
  readonly id: CurveId;
  readonly label: Message;
  readonly measure: Measure;
  /** Pairs of instant (ms) and value, thinned for drawing; the last is now. */
  readonly points: readonly (readonly [number, number])[];
  /** Levels at which something switches. */
  readonly marks: readonly Mark[];
}

export interface HoodView {
  readonly callId: string;
  readonly title: DebriefView['title'];
  readonly mode: CallMode;
  readonly now_ms: number;
  readonly clock: CalendarClock;
  readonly from_ms: number;
  readonly startOfDay_ms: number;
  readonly stage: StageId;
  readonly ended: boolean;
  readonly frozen: boolean;
  /** A call of the round: a trainer may look, and has no hand in it. */
  readonly inRound: boolean;
  readonly deeds: readonly Deed[];
  readonly blocks: readonly TimelineBlock[];
  readonly events: DebriefView['events'];
  readonly ticked: readonly Message[];
  /** What was stated as the cause. */
  readonly stated: readonly Message[];
  readonly notebook: readonly {
    readonly at_ms: number;
    readonly where: Message;
    readonly what: Message;
    readonly reading: Message;
  }[];
  readonly faults: readonly FaultThere[];
  readonly moments: readonly Moment[];
  readonly curves: readonly Curve[];
  readonly readings: readonly { readonly label: Message; readonly value: Quantity }[];
  /** Closure errors since the phone rang. */
  readonly balance: Balance;
}

/** Most points of a curve: enough for the width of a window. */
const POINTS = 240;

/** `trace` is one of this call; it follows from here on. */
export function hoodOf(session: CallSession, trace: Trace): HoodView {
  trace.follow(session);
  const { prepared, now_ms, log } = session;
  const { unit } = session.service;
  return {
    callId: prepared.call.id,
    title: prepared.call.title,
    mode: session.mode,
    now_ms,
    clock: clockAt(session, now_ms / 1000),
    from_ms: trace.from_ms,
    startOfDay_ms: Math.floor((prepared.report_s * 1000) / 86_400_000) * 86_400_000,
    stage: stageOf(session.procedure, stepsOf(prepared.call.kind)),
    ended: session.ended,
    frozen: isFrozen(log),
    inRound: prepared.lived !== undefined,
    deeds: deedsOf(session),
    blocks: blocksOf(session),
    events: eventsOf(session, trace.from_ms),
    ticked: [...session.suspects].map(faultName),
    stated: (session.cause?.keys ?? []).map(faultName),
    notebook: session.service.person.notebook.map(({ at_s, place, what, reading }) => ({
      at_ms: Math.round(at_s * 1000),
      where: placeWords(place, prepared.spec).name,
      what,
      reading,
    })),
    faults: faultsThere(session),
    moments: momentsOf(log),
    curves: curves(session, trace),
    readings: readings(session),
    balance: balance(trace.atReport, stateNow(unit, now_ms / 1000)),
  };
}

/** The call as it stood at a moment, on a session of its own: to be kept, and taken up from there. */
export function sessionAt({ prepared, mode, log }: CallSession, place: number): CallSession | undefined {
  if (log[place]?.do !== TEACH.moment) return undefined;
  const session = new CallSession(prepared, mode);
  doAgain(session, wayOf(log.slice(0, place + 1)));
  return session;
}

export function droppablesOf({ spec }: Prepared): readonly Droppable[] {
  return droppable(spec).map(({ key, family, severity, ramp_h }) => ({
    key,
    name: faultName(key),
    family,
    severity,
    ramp_h: ramp_h ?? 0,
  }));
}

/** The state at an instant with the processes caught up, as the balance wants it. */
function stateNow(unit: Unit, t: number): Float64Array {
  const y = unit.stateAt(t, new Float64Array(STATE_SIZE));
  unit.passage.advance(y, t, unit.driveAt(t));
  return y;
}

function deedsOf(session: CallSession): Deed[] {
  const holds = new Set(wayOf(session.log));
  const left = [...session.done];
  return session.log.map((one): Deed => {
    const undone = !holds.has(one) && !isTeaching(one.do);
    const done = undone || left[0]?.action.id !== one.do || left[0].at_ms !== one.at_ms ? undefined : left.shift();
    return {
      at_ms: one.at_ms,
      by: isTeaching(one.do) ? 'trainer' : 'trainee',
      label: labelOf(session, one),
      readings: done ? readingsOf(done) : [],
      undone,
    };
  });
}

function readingsOf({ outcome }: Done): Message[] {
  return outcome.notes.map(({ what, reading }) => say('note.line', { what, reading }));
}

function labelOf(session: CallSession, one: Logged): Message {
  if (isTeaching(one.do)) return teachingWords(one);
  if (one.do !== TICK) return session.definition(one.do)?.label ?? say(`act.${one.do}`);
  const [first = ''] = listOf(one.fill?.fault);
  return say(one.fill?.on === 'yes' ? 'hood.ticked' : 'hood.unticked', { fault: faultName(first) });
}

function faultsThere({ service, now_ms, log }: CallSession): FaultThere[] {
  const now = now_ms / 1000;
  const ins = new Set(wayOf(log).flatMap(({ do: id, fill }) => (id === TEACH.faultIn ? [String(fill?.fault)] : [])));
  return service.unit.faults
    .filter((state) => state.fault.onset_s <= now && !isOver(state, now))
    .map((state): FaultThere => {
      const { id, severity, onset_s, ramp_s } = state.fault;
      const grows = now < onset_s + ramp_s;
      return {
        key: id,
        name: faultName(id),
        severity: severityAt(state, now),
        full: severity,
        way: state.fades_s !== undefined ? 'fades' : grows ? 'grows' : 'stands',
        droppedIn: ins.has(id),
        removable: canDropIn(placedFault(id)),
      };
    });
}

function curves(session: CallSession, trace: Trace): Curve[] {
  const { unit } = session.service;
  const { spec } = session.prepared;
  const now = curvesIn(readout(unit, session.now_ms / 1000));
  return curvesOn(spec).map((id) => ({
    id,
    label: say(`series.${id}`),
    measure: CURVES[id].measure,
    points: [...trace.points(id, POINTS), [session.now_ms, now[id]] as const],
    marks: marksOf(spec, id),
  }));
}

/** What is worth a number beside the curves. */
function readings({ service, now_ms }: CallSession): HoodView['readings'] {
  const now = readout(service.unit, now_ms / 1000);
  const { pump, aeration } = now.water;
  const line = (id: string, measure: Measure, value: number, resolution: number) => ({
    label: say(`hood.${id}`),
    value: quantity(measure, value, resolution),
  });
  return [
    line('air-flow', 'airFlow_Lmin', now.flows.air.diffuser_Lmin, 1),
    line('liquor', 'concentration_mgL', aeration.solids_mgL, 10),
    line('cbod5', 'concentration_mgL', pump.cbod5_mgL, 1),
    line('solids', 'concentration_mgL', pump.solids_mgL, 1),
    line('ammonia', 'concentration_mgL', pump.ammonia_mgL, 0.1),
    line('inflow', 'waterFlow_Ls', now.inflow_m3s * 1000, 0.01),
    line('discharge', 'waterFlow_Ls', now.flows.discharge * 1000, 0.01),
  ];
}
