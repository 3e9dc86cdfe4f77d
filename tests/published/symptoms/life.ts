/** Properties that live from a sound past, through a cause, up to the look; each is lived once and kept. */
import { shippedLibrary } from '../../../src/calls/index.ts';
import { type Reading, Twin } from '../../../src/diagnosis/index.ts';
import { placedFault } from '../../../src/faults/index.ts';
import { type Flows, type HouseholdSpec, householdSource, steadyWeather, useOf } from '../../../src/plant/index.ts';
import { actionOn, newPerson } from '../../../src/service/index.ts';
import {
  type Happening,
  type Readout,
  readout,
  type Snapshot,
  snapshot,
  Unit,
  type UnitFault,
  type UnitSetup,
} from '../../../src/unit/index.ts';
import type { Cause, Put, Setting } from './kind.ts';

const HOUR_s = 3600;
const DAY_s = 24 * HOUR_s;
/** Sound for three days; the cause comes on the fourth morning at eight (convention, as in the signatures). */
const ONSET_s = 3 * DAY_s + 8 * HOUR_s;
const SEED = 1;
const NOTHING_SAID = { en: '', es: '' };

export class Life {
  readonly setting: Setting;
  readonly cause: Cause;
  /** Hours from the onset to the look. */
  readonly after_h: number;
  readonly twin: Twin;
  readonly unit: Unit;
  /** What happened from the onset to the look, in hours from the onset. */
  readonly log: readonly { readonly h: number; readonly what: Happening['what'] }[];
  readonly now: Readout;
  private readonly happened: readonly Happening[];
  private readonly readings = new Map<string, Reading>();

  constructor(setting: Setting, cause: Cause, after_h: number) {
    this.setting = setting;
    this.cause = cause;
    this.after_h = after_h;
    const setup = setupOf(setting, cause);
    const report_s = ONSET_s + Math.round(after_h * HOUR_s);
    const property = { setup, report_s, silenced: false, answers: { history: NOTHING_SAID, use: NOTHING_SAID } };
    this.twin = new Twin(property, setup.faults, pastOf(setting, cause));
    this.unit = this.twin.unit;
    this.happened = [...this.unit.log];
    this.log = this.happened.map(({ t, what }) => ({ h: (t - ONSET_s) / HOUR_s, what }));
    this.now = readout(this.unit, this.unit.t);
    Object.assign(this.twin.person, { ...newPerson(), seesLamp: true, madeSafe: true, place: 'house' });
  }

  /** What the last of these checks shows, done in a row with the steps around them; the property is left as it was. */
  read(acts: readonly string[]): Reading {
    const key = acts.join();
    const known = this.readings.get(key);
    if (known) return known;
    const defs = acts.map((id) => {
      const def = actionOn(this.unit.spec, id);
      if (!def) throw new Error(`no action "${id}" on ${this.setting.unit}`);
      return def;
    });
    this.twin.person.onSite = defs.every((def) => def.place !== 'phone');
    const reading = this.twin.predict({ id: key, acts: defs });
    // What was tried is taken back, and with it the unit forgets what happened before.
    this.unit.log.splice(0, this.unit.log.length, ...this.happened);
    this.readings.set(key, reading);
    return reading;
  }

  /** Hours at which something happened since the onset. */
  hours(what: Happening['what']): readonly number[] {
    return this.log.filter((e) => e.h >= 0 && e.what === what).map((e) => e.h);
  }

  /** The same property, looked at at another hour. */
  at(after_h: number): Life {
    return lived(this.setting, this.cause, after_h);
  }

  /** The same property with nothing wrong, at the same hour. */
  get sound(): Life {
    return lived(this.setting, {}, this.after_h);
  }

  /** The most that a flow came to between the onset and the look, m3/s. */
  most(flow: (flows: Flows) => number): number {
    const unit = new Unit(setupOf(this.setting, this.cause));
    unit.resume(pastOf(this.setting, this.cause));
    let most = 0;
    unit.observer = ({ t }) => {
      most = Math.max(most, flow(readout(unit, t).flows));
    };
    unit.cutAt(this.unit.t);
    return most;
  }
}

const lives = new Map<string, Life>();

export function lived(setting: Setting, cause: Cause, after_h: number): Life {
  return kept(lives, [setting, cause, after_h], () => new Life(setting, cause, after_h));
}

const pasts = new Map<string, Snapshot>();

/** The property as it was before the onset, the same for all that happens after it. */
function pastOf(setting: Setting, { years, load, hauled }: Cause): Snapshot {
  return kept(pasts, [setting, years, load, hauled], () => {
    const unit = new Unit(setupOf(setting, { ...(years ? { years } : {}), ...(load ? { load } : {}) }));
    unit.cutAt(ONSET_s - 1);
    if (hauled) unit.haul('aeration');
    return snapshot(unit);
  });
}

function kept<T>(store: Map<string, T>, of: readonly unknown[], make: () => T): T {
  const key = JSON.stringify(of);
  const known = store.get(key) ?? make();
  store.set(key, known);
  return known;
}

function setupOf(setting: Setting, cause: Cause): UnitSetup {
  const { units, households } = shippedLibrary();
  const spec = units.get(setting.unit);
  const people = households.get(setting.household);
  if (!spec || !people) throw new Error(`no unit ${setting.unit} or household ${setting.household}`);
  // What is so on the sound property too is so from the beginning.
  const also = setting.also.map((put) => putIn(put, 0));
  const faults = (cause.faults ?? []).map((put) => putIn(put, ONSET_s));
  return {
    spec,
    source: sourceOf(loaded(people, cause.load ?? 1), faults),
    faults: [...also, ...faults],
    seed: SEED,
    weather: steadyWeather(setting.temperature_C, stormsOf(cause)),
    sludgeAge_y: cause.years ?? setting.years,
  };
}

function putIn({ fault, severity, present, effect }: Put, onset_s: number): UnitFault {
  const placed = placedFault(fault);
  return {
    id: placed.key,
    effect: effect ?? placed.effect,
    onset_s,
    severity: severity ?? placed.severity,
    ramp_s: onset_s > 0 ? (placed.ramp_h ?? 0) * HOUR_s : 0,
    present: present ?? 'always',
  };
}

/** The household with what faults of use let run besides, and without what does not run while nobody is at home. */
function sourceOf(people: HouseholdSpec, faults: readonly UnitFault[]) {
  const extra = faults.flatMap(({ effect: { uses }, onset_s }) => {
    const fixture = uses && people.fixtures.find((f) => f.id === uses.fixture);
    if (!fixture) return [];
    return Array.from({ length: uses.times }, (_, i) => useOf(fixture, onset_s + i * uses.every_min * 60)).flat();
  });
  const away = faults.flatMap(({ effect: { away_d }, onset_s }) =>
    away_d === undefined ? [] : [{ from_s: onset_s, to_s: onset_s + away_d * DAY_s }],
  );
  return householdSource(people, SEED, extra, away);
}

function loaded(people: HouseholdSpec, times: number): HouseholdSpec {
  const { bod5_gPersonDay, solids_gPersonDay } = people.strength;
  const strength = { bod5_gPersonDay: times * bod5_gPersonDay, solids_gPersonDay: times * solids_gPersonDay };
  return { ...people, strength: { ...people.strength, ...strength } };
}

function stormsOf({ rain }: Cause) {
  if (!rain) return [];
  const start_s = ONSET_s + rain.from_h * HOUR_s;
  return [{ start_s, end_s: start_s + rain.hours * HOUR_s, rain_mmh: rain.depth_mm / rain.hours }];
}
