/**
 * A call being taken: the property, the person, the procedure and the log. Every front end (page, command line, replay,
 * scripted people, tests) drives it by the same two calls, `advance` and `act`.
 */
import {
  type ActionDef,
  arrive,
  type BreachId,
  breachOf,
  type Door,
  type Fill,
  hindrance,
  LOADS,
  type LoadId,
  type Message,
  newPerson,
  type Outcome,
  perform,
  type Service,
  say,
  standAtDoor,
} from '../service/index.ts';
import { digest, type Json, snapshot, type Unit } from '../unit/index.ts';
import { doAgain } from './again.ts';
import { actionIn, isWithheld } from './allowed.ts';
import {
  type ProcedureEvent,
  type ProcedureState,
  phaseOf,
  procedureNext,
  procedureStart,
  stepOfAction,
} from './procedure.ts';
import { proofsShown } from './proof.ts';
import { listOf, STATE_CAUSE, stateCause, TICK } from './session-actions.ts';
import { doorOf, type Prepared, unitAtReport } from './setup.ts';
import { isTeaching, TEACH } from './teach-ids.ts';
import { isFrozen, teach, wayOf } from './teaching.ts';
import type { Action, CallMode } from './view.ts';
import { allTaken } from './visit/rows.ts';

/** Minutes from the decision to the arrival, and what of it counts as the person's own time. */
const ARRIVAL_MIN = { now: 45, 'before-dosing': 90 } as const;
const NEXT_VISIT_s = 9 * 3600;
export const DRIVE_MIN = 40;

export interface Done {
  readonly action: Action;
  readonly def: ActionDef;
  readonly at_ms: number;
  readonly outcome: Outcome;
  /** Suspects ticked when it was done. */
  readonly suspects: readonly string[];
}

/** An action as the record keeps it. */
export interface Logged {
  readonly at_ms: number;
  readonly do: string;
  readonly fill?: Fill;
  readonly state: string;
}

/** A life-safety step that was skipped, and when. */
export interface Breach {
  readonly id: BreachId;
  readonly at_ms: number;
}

export interface Cause {
  readonly keys: readonly string[];
  readonly evidence: readonly string[];
  readonly at_ms: number;
}

export class CallSession {
  readonly prepared: Prepared;
  readonly mode: CallMode;
  service: Service;
  readonly done: Done[] = [];
  readonly log: Logged[] = [];
  readonly suspects = new Set<string>();
  procedure: ProcedureState = procedureStart();
  /** More than one only in a coached call, which goes on after them. */
  readonly breaches: Breach[] = [];
  cause: Cause | undefined;
  urgency: 'now' | 'before-dosing' | 'next-visit' | undefined;
  arrived_ms: number | undefined;
  drove = false;
  /** What changed at the last advance or action, for the live region. */
  changes: Message[] = [];
  private noticed: number;
  private readonly observer: ((unit: Unit) => void) | undefined;

  constructor(prepared: Prepared, mode: CallMode, observer?: (unit: Unit) => void) {
    this.prepared = prepared;
    this.mode = mode;
    this.observer = observer;
    const unit = unitAtReport(prepared, observer);
    const { report, seed } = prepared.call;
    const door = doorOf(prepared);
    this.service = {
      unit,
      person: newPerson(),
      answers: { history: report.history, use: report.use },
      ...(door ? { label: door.label } : {}),
      seed,
      now_ms: prepared.report_s * 1000,
    };
    this.noticed = unit.log.length;
    if (door) this.beginAt(door);
    if (!unit.control.outputs.buzzer) this.happened('quiet');
  }

  get now_ms(): number {
    return this.service.now_ms;
  }

  get ended(): boolean {
    const phase = phaseOf(this.procedure);
    return phase === 'closed' || phase === 'closedByPhone' || phase === 'stopped';
  }

  /** Lets time pass up to an instant (whole milliseconds); earlier ones change nothing. */
  advance(to_ms: number): void {
    this.changes = [];
    if (this.ended || to_ms <= this.now_ms) return;
    this.service.now_ms = Math.floor(to_ms);
    this.service.unit.advance(this.now_ms / 1000);
    this.notice();
  }

  /** Lets time pass until something changes that the person sees or hears, at the latest until `limit_ms`. */
  nextChange(limit_ms: number): void {
    const { unit } = this.service;
    const limit = Math.floor(limit_ms);
    do {
      this.advance(Math.min(limit, Math.max(this.now_ms + 1, Math.ceil(unit.horizon() * 1000))));
    } while (!this.ended && this.now_ms < limit && this.changes.length === 0);
  }

  /** Definition of an action as it stands now (the cause form lists the notebook). */
  definition(id: string): ActionDef | undefined {
    return id === STATE_CAUSE
      ? stateCause(this.service.person.notebook, this.prepared.spec)
      : actionIn(this.prepared, id);
  }

  /** The first life-safety step that was skipped: with it the call has failed. */
  get breach(): BreachId | undefined {
    return this.breaches[0]?.id;
  }

  /**
   * Does an action now. Returns why not, when it cannot be done. At a breach it is not done: the call ends, a coached one
   * goes on to learn from.
   */
  act(action: Action): Message | undefined {
    this.changes = [];
    if (this.ended) return say('why.call-over');
    if (isTeaching(action.id)) return this.taught(action);
    if (isFrozen(this.log)) return say('why.frozen');
    if (action.id === TICK) return this.tick(action);
    const def = this.definition(action.id);
    if (!def) {
      const withheld = isWithheld(this.prepared.call, action.id);
      return withheld ? say('why.withheld') : say('why.no-such-action', { id: action.id });
    }
    const fill = action.fill ?? {};
    const why = hindrance(this.service, def, fill) ?? formProblem(def, fill);
    if (why) return why;
    this.service.unit.cutAt(this.now_ms / 1000);
    this.notice();
    const at_ms = this.now_ms;
    const breach = breachOf(this.service, def, this.dangerAsked(), fill);
    if (breach) {
      this.breaches.push({ id: breach, at_ms });
      this.changes.push(say('change.breach'));
      if (this.mode !== 'coached') this.happened('breach');
      this.record(action, at_ms);
      return undefined;
    }
    const outcome = perform(this.service, def, fill);
    this.done.push({ action, def, at_ms, outcome, suspects: [...this.suspects] });
    this.changes.push(...outcome.notes.map((n) => say('note.line', { what: n.what, reading: n.reading })));
    this.notice();
    this.follow(def, action, outcome);
    this.record(action, at_ms);
    return undefined;
  }

  /** Whether danger was asked about by phone. */
  dangerAsked(): boolean {
    return this.done.some((d) => d.def.id === 'ask-danger');
  }

  private tick(action: Action): undefined {
    const { fault, on } = action.fill ?? {};
    for (const key of listOf(fault)) {
      if (on === 'yes') this.suspects.add(key);
      else this.suspects.delete(key);
    }
    this.service.unit.cutAt(this.now_ms / 1000);
    this.notice();
    this.record(action, this.now_ms);
    return undefined;
  }

  /** What a trainer does stands in the log like all else. */
  private taught(action: Action): Message | undefined {
    if (this.prepared.lived) return say('why.not-in-round');
    const fill = action.fill ?? {};
    this.service.unit.cutAt(this.now_ms / 1000);
    this.notice();
    const at_ms = this.now_ms;
    if (action.id === TEACH.back) {
      const place = Number(fill.moment);
      if (this.log[place]?.do !== TEACH.moment) return say('why.no-such-moment');
      this.become(wayOf(this.log.slice(0, place + 1)));
    } else {
      const why = teach(this, action.id, fill);
      if (why) return why;
      this.notice();
    }
    this.record(action, at_ms);
    return undefined;
  }

  /** Goes back to how things stood after these entries of the log, by doing them again; the log itself keeps all. */
  private become(way: readonly Logged[]): void {
    const again = new CallSession(this.prepared, this.mode, this.observer);
    doAgain(again, way);
    const { service, procedure, cause, urgency, arrived_ms, drove, noticed } = again;
    Object.assign(this, { service, procedure, cause, urgency, arrived_ms, drove, noticed });
    this.done.splice(0, this.done.length, ...again.done);
    this.breaches.splice(0, this.breaches.length, ...again.breaches);
    this.suspects.clear();
    for (const key of again.suspects) this.suspects.add(key);
  }

  /** What an action means for the procedure. */
  private follow(def: ActionDef, action: Action, outcome: Outcome): void {
    const step = stepOfAction(def.id);
    if (step) this.happened(step);
    if (this.service.person.onSite) this.followOnSite(def, outcome);
    const fill = action.fill ?? {};
    if (def.id === STATE_CAUSE) {
      this.cause = { keys: listOf(fill.cause), evidence: listOf(fill.evidence), at_ms: this.now_ms };
    } else if (def.id === 'decide-close') this.happened('close');
    else if (def.id === 'decide-visit') this.drive(fill);
    else if (def.id === 'leave-site') this.happened('leave');
  }

  /** A routine visit begins where a drive ends, with what rides along on every one. */
  private beginAt(door: Door): void {
    this.happened('visit');
    standAtDoor(this.service, door);
    this.arrived();
  }

  private arrived(): void {
    this.drove = true;
    this.arrived_ms = this.now_ms;
    this.happened('arrive');
    this.notice();
  }

  /** On a routine visit all is found when the whole list is gone through; cleaning and filling up are lines of it. */
  private followOnSite(def: ActionDef, outcome: Outcome): void {
    if (this.prepared.call.kind === 'visit') {
      if (allTaken(this)) this.happened('find');
      return;
    }
    if (def.group === 'mend' || outcome.mended.length > 0) this.happened('mend');
    else if ((def.group === 'look' || def.group === 'measure') && def.place !== 'house') this.happened('find');
    if (proofsShown(this.done, this.prepared.spec.panel).size > 0) this.happened('prove');
  }

  private drive(fill: Fill): void {
    const { person } = this.service;
    this.urgency = String(fill.urgency) as typeof this.urgency;
    for (const id of listOf(fill.load)) if ((LOADS as readonly string[]).includes(id)) person.load.add(id as LoadId);
    this.happened('visit');
    arrive(this.service, this.arrival());
    this.arrived();
    this.changes.push(say('change.arrived'));
  }

  private arrival(): number {
    if (this.urgency === 'next-visit') {
      const tomorrow = (Math.floor(this.now_ms / 86_400_000) + 1) * 86_400_000;
      return tomorrow + NEXT_VISIT_s * 1000;
    }
    return this.now_ms + ARRIVAL_MIN[this.urgency ?? 'before-dosing'] * 60_000;
  }

  private happened(type: ProcedureEvent['type']): void {
    this.procedure = procedureNext(this.procedure, type);
  }

  private record(action: Action, at_ms: number): void {
    this.log.push({
      at_ms,
      do: action.id,
      ...(action.fill ? { fill: action.fill } : {}),
      state: this.stateDigest().slice(0, 12),
    });
  }

  /** Digest of the unit's whole state at the last event before now. */
  stateDigest(): string {
    return digest(snapshot(this.service.unit) as unknown as Json);
  }

  /** Writes down what changed where the person can see or hear it. Depends on event times only, not on who asks when. */
  private notice(): void {
    const { unit, person } = this.service;
    for (; this.noticed < unit.log.length; this.noticed++) {
      const event = unit.log[this.noticed];
      if (!event || event.t * 1000 > this.now_ms) break;
      const seen = SEEN[event.what];
      if (!seen || !(person.onSite || person.seesLamp)) continue;
      if (seen.yardOnly && !person.onSite) continue;
      this.changes.push(say(seen.id));
      person.notebook.push({
        id: `n${person.notebook.length + 1}`,
        at_s: event.t,
        place: 'panel',
        what: say('note.seen'),
        reading: say(seen.id),
      });
    }
  }
}

/** Changes that are seen or heard from anywhere in the yard. */
const SEEN: Readonly<Partial<Record<string, { id: string; yardOnly?: boolean }>>> = {
  'lamp.on': { id: 'seen.lamp-on' },
  'lamp.off': { id: 'seen.lamp-off' },
  'buzzer.on': { id: 'seen.buzzer-on' },
  'pumpRuns.on': { id: 'seen.spray-on', yardOnly: true },
  'pumpRuns.off': { id: 'seen.spray-off', yardOnly: true },
};

/** A form must be answered where one answer is asked for, and not with more ticks than it allows. */
export function formProblem(def: ActionDef, fill: Fill): Message | undefined {
  for (const field of def.form ?? []) {
    const answers = listOf(fill[field.id]);
    if (answers.some((a) => !field.options.some((o) => o.id === a)))
      return say('why.no-such-answer', { field: field.id });
    if (field.kind === 'one' && answers.length !== 1) return say('why.choose-one', { field: say(`field.${field.id}`) });
    if (field.most !== undefined && answers.length > field.most) return say('why.too-many', { most: field.most });
  }
  return undefined;
}
