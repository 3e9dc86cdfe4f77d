/**
 * A living twin of a property under one hypothesis: the same draws, weather and seed, other faults. What the person did on
 * the property is done on the twin at the same instants; what it shows there is what the hypothesis predicts.
 */
import {
  ACTION_BY_ID,
  type ActionDef,
  type Answers,
  arrive,
  type Door,
  type Fill,
  hindrance,
  LOADS,
  letPass,
  type Note,
  newPerson,
  type Person,
  perform,
  type Service,
  standAtDoor,
} from '../service/index.ts';
import { type Snapshot, snapshot, Unit, type UnitFault, type UnitSetup } from '../unit/index.ts';
import type { Probe } from './probes.ts';
import { hindered, NO_READING, type Reading, readingOf } from './reading.ts';
import { costAround, isReachable, stepsAround } from './steps.ts';
import type { ToldFact } from './told.ts';

/** A property without its hidden faults: what every hypothesis shares. */
export interface Property {
  readonly setup: Omit<UnitSetup, 'faults'>;
  /** As it was left at the last visit, were everything sound; where there was none it lives from its beginning. */
  readonly left?: Snapshot;
  readonly report_s: number;
  /** Whether the buzzer had been silenced when the phone rang. */
  readonly silenced: boolean;
  readonly answers: Answers;
  /** Where the person stands at its door from the beginning, and nobody rang. */
  readonly door?: Door;
  /** What the household tells when it is asked what went before. */
  readonly told?: readonly ToldFact[];
}

/** One thing that was done on the property, with the instants it took from and to. */
export interface Deed {
  readonly id: string;
  readonly fill: Fill;
  readonly from_ms: number;
  readonly to_ms: number;
  /** When the person stood on the property, where the deed was to drive there. */
  readonly arrived_ms?: number;
}

export class Twin {
  readonly unit: Unit;
  private service: Service;

  /**
   * Lives from a snapshot of the sound property (or from the beginning) to the report. One that was taken of itself at the
   * report stands where it stood.
   */
  constructor(property: Property, faults: readonly UnitFault[], from = property.left) {
    const { setup, report_s, silenced, answers, door } = property;
    this.unit = new Unit({ ...setup, faults });
    if (from) this.unit.resume(from);
    this.unit.cutAt(report_s);
    if (silenced && !(from && from.t >= report_s)) this.unit.send('silence.pressed');
    this.service = {
      unit: this.unit,
      person: newPerson(),
      answers,
      ...(door ? { label: door.label } : {}),
      seed: setup.seed,
      exact: true,
      now_ms: report_s * 1000,
    };
    if (door) standAtDoor(this.service, door);
  }

  get person(): Person {
    return this.service.person;
  }

  /** Does what was done on the property, and tells what it shows here. */
  follow(deed: Deed): Reading {
    letPass(this.service, deed.from_ms);
    const reading = this.act(ACTION_BY_ID.get(deed.id), deed.fill);
    if (deed.arrived_ms !== undefined) {
      for (const id of [deed.fill.load ?? []].flat()) {
        const load = LOADS.find((l) => l === id);
        if (load) this.person.load.add(load);
      }
      arrive(this.service, deed.arrived_ms);
    }
    letPass(this.service, Math.max(this.service.now_ms, deed.to_ms));
    return reading;
  }

  /** What a check would show now, with the steps that make it possible; the twin is left as it was. */
  predict(probe: Probe): Reading {
    return this.tried(probe, (def) => this.act(def, {})) ?? NO_READING;
  }

  /** The same as it would be written down; nothing where it cannot be done. */
  noted(probe: Probe): readonly Note[] {
    const notes = this.tried(probe, (def) =>
      hindrance(this.service, def) ? [] : perform(this.service, def, {}).notes,
    );
    return notes ?? [];
  }

  /** Does a check, and makes it undone. Gives what its last act shows. */
  private tried<T>({ acts }: Probe, show: (def: ActionDef) => T): T | undefined {
    const before = snapshot(this.unit);
    const kept = this.service;
    this.service = { ...kept, person: copyOf(kept.person) };
    let shown: T | undefined;
    for (const def of acts) {
      for (const id of stepsAround(this.service, def).before) this.act(ACTION_BY_ID.get(id), {});
      shown = show(def);
    }
    this.service = kept;
    this.unit.resume(before);
    return shown;
  }

  /** Minutes of a check with the steps around it, its money reckoned in. */
  costOf({ acts }: Probe): number {
    return acts.reduce((sum, def) => sum + costAround(this.service, def), 0);
  }

  /** Whether a check can be made from where the person is, by phone or on site. */
  canReach({ acts }: Probe): boolean {
    return acts.every((def) => isReachable(this.service, def));
  }

  private act(def: ActionDef | undefined, fill: Fill): Reading {
    if (!def) return NO_READING;
    const why = hindrance(this.service, def);
    if (why) return hindered(why);
    const { notes, perceived } = perform(this.service, def, fill);
    return readingOf(notes, perceived);
  }
}

function copyOf(person: Person): Person {
  return {
    ...person,
    lids: new Set(person.lids),
    buried: new Set(person.buried),
    locks: new Set(person.locks),
    load: new Set(person.load),
    notebook: [...person.notebook],
    uses: new Map(person.uses),
  };
}
