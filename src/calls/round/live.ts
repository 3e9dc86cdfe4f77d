/** A lot lives on, day by day, until something makes the phone ring or the year is over. */
import { GAUGES } from '../../plant/index.ts';
import { SYMPTOMS, type SymptomId } from '../../service/index.ts';
import { restore, snapshot, type Unit } from '../../unit/index.ts';
import { spilled_m3 } from './ledger.ts';
import { DAY_s, faultsAt, type Lot, type LotState, type Ring, setupOf } from './lot.ts';

const HOUR_s = 3600;
/** How often what wears is looked at anew, s. */
const WEEK_s = 7 * DAY_s;
/** Hours at which somebody is up and about, and at which everybody is at home and looks round (conventions). */
const AWAKE_h = { from: 7, to: 21 } as const;
const EVENING_h = 18;
/** A lamp or a buzzer is given that long before one rings, s (convention). */
const LIT_s = 600;
/** A household that was told to wait and see rings again for the same after so many days (convention). */
const PATIENCE_d = 7;

/**
 * What a household notices in the evening, and rings for when it is so on the next evening too. For a whiff of chlorine over
 * a field that is meant to be chlorinated nobody rings (convention).
 */
const NOTICED = [
  'sprays-by-day',
  'smell-outdoors',
  'smell-indoors',
  'wet-lawn',
  'slow-drains',
] as const satisfies readonly SymptomId[];

/** Lives from a state without a door to the next door; without one at the end of the year. */
export function liveOn(lot: Lot, state: LotState): LotState {
  const ear = new Ear(lot, state);
  let { snapshot: from } = state;
  let untreated_h = 0;
  for (let t = state.t_s; t < lot.end_s; ) {
    const unit = restore(setupOf(lot, faultsAt(lot, state, t)), from);
    const until = Math.min(lot.end_s, (Math.floor(t / WEEK_s) + 1) * WEEK_s);
    for (let hour = (Math.floor(t / HOUR_s) + 1) * HOUR_s; hour <= until; hour += HOUR_s) {
      const before = snapshot(unit);
      // What is smelt and seen in the evening is that of the very instant, as at the call that may begin with it.
      if ((hour % DAY_s) / HOUR_s === EVENING_h) unit.cutAt(hour);
      else unit.advance(hour);
      untreated_h += untreatedSince(before, unit) > 0 ? 1 : 0;
      const ring = ear.hears(unit, hour);
      if (ring) {
        const harm = { ...state.harm, untreated_h: state.harm.untreated_h + untreated_h };
        const { since_s, over, left } = state;
        const door = { ring, from: before, looked_s: t, since_s, over, ...(left ? { left } : {}) };
        return { ...state, t_s: hour, snapshot: before, harm, door };
      }
    }
    unit.cutAt(until);
    from = snapshot(unit);
    t = until;
  }
  const harm = { ...state.harm, untreated_h: state.harm.untreated_h + untreated_h };
  return { ...state, t_s: lot.end_s, snapshot: from, harm };
}

/** Hours without oxygen that the liquor is over by the next morning, as after every busy evening; beyond them it goes stale. */
const PASSING_h = 6;

interface Held {
  readonly y: ArrayLike<number>;
}

/** Hours without treatment that came between two states: the liquor without oxygen, and for longer than passes. */
export function untreatedSince(before: Held, now: Held): number {
  const hours = ({ y }: Held) => y[GAUGES.hoursWithoutOxygen] ?? 0;
  return hours(now) > PASSING_h ? Math.max(0, hours(now) - hours(before)) : 0;
}

/** The household's ear and nose, and the technician's calendar. */
class Ear {
  private readonly lot: Lot;
  private readonly state: LotState;
  private readonly last: Ring | undefined;
  private evening: ReadonlySet<SymptomId> = new Set();

  constructor(lot: Lot, state: LotState) {
    this.lot = lot;
    this.state = state;
    this.last = state.visits.at(-1)?.ring;
  }

  /** Whether the phone rings at a full hour. */
  hears(unit: Unit, at_s: number): Ring | undefined {
    const hour = (at_s % DAY_s) / HOUR_s;
    const found = hour >= AWAKE_h.from && hour <= AWAKE_h.to ? this.notices(unit, at_s, hour) : [];
    const symptoms = found.filter((symptom) => this.isUp(symptom, at_s));
    if (symptoms.length > 0) {
      return { at_s, kind: found.includes('lamp-lit') ? 'alarm' : 'complaint', symptoms: found };
    }
    return this.isVisit(at_s) ? { at_s, kind: 'routine', symptoms: [] } : undefined;
  }

  private notices(unit: Unit, at_s: number, hour: number): readonly SymptomId[] {
    const now: SymptomId[] = [];
    if (litFor(unit, at_s) >= LIT_s) now.push('lamp-lit');
    if (spilled_m3(unit) > 0 && SYMPTOMS['sewage-out'](unit)) now.push('sewage-out');
    if (hour !== EVENING_h) return now;
    const before = this.evening;
    this.evening = new Set(NOTICED.filter((symptom) => SYMPTOMS[symptom](unit)));
    return [...now, ...[...this.evening].filter((symptom) => before.has(symptom))];
  }

  /** One does not ring twice in a week for the same; with sewage about, the next day. */
  private isUp(symptom: SymptomId, at_s: number): boolean {
    if (!this.last?.symptoms.includes(symptom)) return true;
    const patience_d = symptom === 'sewage-out' ? 1 : PATIENCE_d;
    return at_s - this.state.t_s >= patience_d * DAY_s;
  }

  /** A visit that fell due while another was being made, or within the week after, is not made. */
  private isVisit(at_s: number): boolean {
    const { visits_s } = this.lot;
    const lately = this.state.visits.length > 0 && at_s - this.state.t_s < PATIENCE_d * DAY_s;
    return !lately && visits_s.some((visit) => visit > at_s - HOUR_s && visit <= at_s);
  }
}

/** Seconds the lamp has been lit; as long as the unit's log reaches where it does not say since when. */
function litFor(unit: Unit, at_s: number): number {
  if (!unit.control.outputs.lamp) return 0;
  const since = unit.log.findLast((event) => event.what === 'lamp.on')?.t;
  return since === undefined ? Number.POSITIVE_INFINITY : at_s - since;
}
