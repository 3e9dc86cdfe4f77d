/** Doing an action: what hinders it, what it breaches, the minutes that pass, what it mends. */
import { BREAKERS, type BreakerName } from '../control/index.ts';
import { PLACED_FAULTS } from '../faults/index.ts';
import { type Readout, readout, type Unit } from '../unit/index.ts';
import type { ActionDef, Answers, BreachId, Doing, Door, Fill, Label } from './action.ts';
import { type LiveFacts, learn } from './facts.ts';
import { showing } from './instruments.ts';
import { type Message, say } from './message.ts';
import { perceive } from './perceive.ts';
import type { LoadId, Note, Person } from './person.ts';

/** Somebody has to drive for a part that is not on the truck, minutes. */
export const FETCH_MIN = 90;

export interface Outcome {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly notes: readonly Note[];
  /** Faults this ended. */
  readonly mended: readonly string[];
  /** A mend that found nothing of its kind to mend. */
  readonly needless: boolean;
  /** A part that had to be fetched for it. */
  readonly fetched?: LoadId;
  /** What is seen and heard from where one stands when it is done. */
  readonly perceived: LiveFacts;
  /** Effluent was sprayed by this action while nobody had cleared the field. */
  readonly sprayedUncleared: boolean;
}

/** One person at work on one unit. Instants are engine milliseconds. */
export interface Service {
  readonly unit: Unit;
  readonly person: Person;
  readonly answers: Answers;
  /** On a routine visit: there the label is read and signed. */
  readonly label?: Label;
  readonly seed: number;
  /** Whether instruments show the truth itself, without scatter or steps: for what a reading is expected to be. */
  readonly exact?: boolean;
  now_ms: number;
}

/** Why an action cannot be done now; undefined when it can be. */
export function hindrance(service: Service, def: ActionDef, fill: Fill = {}): Message | undefined {
  const { person, unit } = service;
  if (person.onSite && def.place === 'phone') return say('why.on-site');
  if (!person.onSite && def.place !== 'phone') return say('why.on-the-phone');
  if (def.needs?.lid && !person.lids.has(def.needs.lid)) return say('why.lid', { lid: say(`lid.${def.needs.lid}`) });
  return def.hindered?.(person, unit, fill);
}

/** The circuits that an action wants locked out. */
export function circuitsToLock({ lockOut }: ActionDef, fill: Fill = {}): readonly BreakerName[] {
  if (typeof lockOut === 'function') return lockOut(fill);
  if (lockOut === undefined) return [];
  return lockOut === 'all' ? BREAKERS : [lockOut];
}

/** The life-safety step that doing it now would skip. */
export function breachOf(
  service: Service,
  def: ActionDef,
  dangerAsked: boolean,
  fill: Fill = {},
): BreachId | undefined {
  const { person } = service;
  const itself = typeof def.breach === 'function' ? def.breach(service.unit) : def.breach;
  if (itself) return itself;
  if (def.touches && !dangerAsked) return 'danger-not-asked';
  if (person.onSite && !def.handsOff && def.id !== 'make-safe' && !person.madeSafe) return 'site-not-made-safe';
  if (circuitsToLock(def, fill).some((circuit) => !person.locks.has(circuit))) return 'not-locked-out';
  if (def.id === 'leave-site' && person.lids.size > 0) return 'lid-left-open';
  return undefined;
}

/** Does an action that is neither hindered nor a breach. The unit is at `now_ms` exactly, before and after. */
export function perform(service: Service, def: ActionDef, fill: Fill): Outcome {
  const { unit, person } = service;
  const from_ms = service.now_ms;
  const firstNote = person.notebook.length;
  const firstEvent = unit.log.length;
  if (def.place !== person.place && person.onSite) person.place = def.place;
  const fetched = def.load && person.onSite && !person.load.has(def.load) ? def.load : undefined;
  const doing = makeDoing(service, def, fill);
  const minutes = def.minutes + (fetched ? FETCH_MIN : 0);
  doing.wait(minutes * 60 - (def.inner_s ?? 0));
  const before = new Set(unit.faults.filter((f) => f.mended_s <= unit.t).map((f) => f.fault.id));
  const concerned = unit.faults.filter(
    (f) => f.fault.onset_s <= unit.t && PLACED_FAULTS.get(f.fault.id)?.mendedBy.includes(def.id),
  );
  for (const state of concerned) unit.mend(state.fault.id);
  def.perform(doing);
  const perceived = perceive(person, unit, doing.read());
  person.facts = learn(person.facts, unit.t, perceived);
  const mended = concerned.map((f) => f.fault.id).filter((id) => !before.has(id));
  return {
    from_ms,
    to_ms: service.now_ms,
    notes: person.notebook.slice(firstNote),
    mended,
    needless: def.group === 'mend' && mended.length === 0 && !isRoutine(def.id),
    ...(fetched ? { fetched } : {}),
    perceived,
    sprayedUncleared:
      unit.spec.plant.discharge.kind === 'spray' &&
      person.onSite &&
      !person.fieldClear &&
      unit.log.slice(firstEvent).some((e) => e.what === 'pumpRuns.on'),
  };
}

/** Cleaning and filling up are part of every visit, needed or not. */
const ROUTINE = ['clean-intake-filter', 'clean-disc-filter', 'clean-sleeve', 'refill-disinfectant'];

export function isRoutine(id: string): boolean {
  return ROUTINE.includes(id);
}

/** Lets time pass while the person stands where they are. */
export function letPass(service: Service, to_ms: number): void {
  service.now_ms = to_ms;
  service.unit.cutAt(to_ms / 1000);
}

/** Lets the drive pass and stands the person on the property. */
export function arrive(service: Service, at_ms: number): void {
  letPass(service, at_ms);
  const { person } = service;
  person.onSite = true;
  person.seesLamp = true;
  person.place = 'house';
}

/** Stands the person at the door of a property that nobody called about. */
export function standAtDoor(service: Service, { load, buried }: Door): void {
  const { person } = service;
  for (const id of load) person.load.add(id);
  if (buried) person.buried.add(buried);
  arrive(service, service.now_ms);
}

function makeDoing(service: Service, def: ActionDef, fill: Fill): Doing {
  const { unit, person } = service;
  let reading: Readout | undefined;
  return {
    unit,
    person,
    answers: service.answers,
    ...(service.label ? { label: service.label } : {}),
    fill,
    wait(seconds) {
      letPass(service, service.now_ms + Math.round(seconds * 1000));
      reading = undefined;
    },
    read() {
      if (!reading || reading.control !== unit.control) reading = readout(unit, unit.t);
      return reading;
    },
    measure(instrument, truth) {
      const use = person.uses.get(instrument.id) ?? 0;
      person.uses.set(instrument.id, use + 1);
      return service.exact ? truth : showing(instrument, truth, service.seed, use);
    },
    learn(facts) {
      person.facts = learn(person.facts, unit.t, facts);
    },
    note(what, words, remark, asGoodAs) {
      person.notebook.push({
        id: `n${person.notebook.length + 1}`,
        at_s: unit.t,
        place: def.place,
        by: def.id,
        ...(asGoodAs ? { asGoodAs } : {}),
        what,
        reading: words,
        ...(remark ? { remark } : {}),
      });
    },
  };
}
