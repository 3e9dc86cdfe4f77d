/** A call on a lot of the round: how it begins on the very property, and how the property is left. */
import { type PlacedFault, placedFault } from '../../faults/index.ts';
import type { LocalText } from '../../service/index.ts';
import {
  calendarDay,
  digest,
  type Json,
  restore,
  type Snapshot,
  snapshot,
  type Unit,
  type UnitFault,
} from '../../unit/index.ts';
import { isCleared } from '../flags.ts';
import type { CallFile } from '../schema.ts';
import type { CallSession } from '../session.ts';
import type { Prepared } from '../setup.ts';
import { entryOf, type Standing } from './book.ts';
import { cleanedUp, spilled_m3 } from './ledger.ts';
import { untreatedSince } from './live.ts';
import {
  DAY_s,
  type Door,
  doorFaults,
  faultsAt,
  type Lot,
  type LotState,
  placedOn,
  type Ring,
  setupOf,
  type Visit,
} from './lot.ts';

/** What has come half of its way is a cause; before that it is wear (convention). */
const HALF = 0.5;
/** Minutes and money that no visit of the round should need, and its pass mark (our choice, no source). */
const LIMITS = { minutes: 420, money_usd: 900 } as const;
const PASS = 70;
/** Alarms of the last thirty days are counted (as by phone). */
const COUNTED_d = 30;
const LATELY_d = 10;
/** After so many rings for the same cause a household has another firm mend what stands (convention). */
const FORGIVEN = 4;

/** A call's id: the round, the lot, and which door of the year it is there. */
export function callIdOf(lot: Lot, number: number): string {
  return `round-${lot.file.lot}-${number}`;
}

/** The lot and the door that an id names; undefined where it is the id of another kind of call. */
export function doorOf(callId: string): { readonly lot: string; readonly number: number } | undefined {
  const [, lot, number] = /^round-(\d+)-(\d+)$/.exec(callId) ?? [];
  return lot === undefined || number === undefined ? undefined : { lot, number: Number(number) };
}

/** The call that door `number` of a lot is, the one that rings now or one that is over. */
export function preparedOf(lot: Lot, state: LotState, number: number): Prepared | undefined {
  const past = state.visits.slice(0, number);
  const door = state.visits[number] ?? (number === state.visits.length ? state.door : undefined);
  if (!door) return undefined;
  const causes = keysOf(standing(lot, door));
  return {
    call: callOf(lot, door, past, number),
    spec: lot.spec,
    household: lot.household,
    firstDay: lot.firstDay,
    report_s: door.ring.at_s,
    lived: {
      setup: setupOf(lot, doorFaults(lot, door)),
      from: door.from,
      causes,
      wearing: keysOf(present(lot, door)).filter((key) => !causes.includes(key)),
      ...(door.left ? { left: door.left } : {}),
    },
  };
}

/** What stood when the phone rang: faults that had come and were not over, however far they had grown. */
function present(lot: Lot, door: Door): readonly UnitFault[] {
  const { at_s } = door.ring;
  return doorFaults(lot, door).filter(
    ({ onset_s, present }) =>
      onset_s <= at_s && (present === 'always' || ('for_h' in present && at_s < onset_s + present.for_h * 3600)),
  );
}

/** Of these what had come half of its way. */
function standing(lot: Lot, door: Door): readonly UnitFault[] {
  const full = new Map(lot.file.wears.map((w) => [placedOn(lot, w).key, w.severity ?? placedOn(lot, w).severity]));
  return present(lot, door).filter((f) => f.severity >= HALF * (full.get(f.id) ?? f.severity));
}

function keysOf(faults: readonly UnitFault[]): readonly string[] {
  return [...new Set(faults.map((f) => f.id))].filter((key) => placedFault(key).family !== 'use');
}

function callOf(lot: Lot, door: Door, past: readonly Visit[], number: number): CallFile {
  const { ring } = door;
  const { round, file } = lot;
  const words = wordsOf(lot, door, past);
  const rains = lot.weather.rain_mmh(ring.at_s) > 0;
  const label = { en: `${round.texts.lot.en} ${file.lot}`, es: `${round.texts.lot.es} ${file.lot}` };
  return {
    version: 1,
    id: callIdOf(lot, number),
    kind: ring.kind === 'alarm' ? 'alarm' : 'complaint',
    title: { en: `${label.en}: ${words.title.en}`, es: `${label.es}: ${words.title.es}` },
    summary: words.title,
    lot: label,
    story: round.texts.story,
    unit: file.unit,
    household: file.household,
    start: instantText(lot, ring.at_s),
    history_days: Math.min(60, Math.floor(ring.at_s / DAY_s) + 1),
    temperature_C: lot.weather.temperature_C(ring.at_s),
    weather: rains ? { cloud: 0.9, rain: 0.6 } : { cloud: 0.3, rain: 0 },
    seed: lot.seed,
    faults: [],
    report: {
      said: words.said,
      silenced: false,
      noticed: [...ring.symptoms],
      earlier_trips: past.filter((v) => v.ring.kind === 'alarm' && ring.at_s - v.ring.at_s < COUNTED_d * DAY_s).length,
      history: words.history,
      use: words.use,
    },
    limits: LIMITS,
    pass: PASS,
    expected: expectedOf(lot, door),
    solution: [],
  };
}

/** What households say is the same on every lot: by what they noticed, by the season, by when somebody was last there. */
export function whyOf({ round: { texts } }: Lot, { symptoms }: Ring): LocalText {
  const told = symptoms.flatMap((symptom) => texts.symptoms[symptom] ?? []);
  return (told[0] ?? texts.routine).title;
}

function wordsOf(lot: Lot, door: Door, past: readonly Visit[]) {
  const { texts } = lot.round;
  const { ring } = door;
  const told = ring.symptoms.flatMap((symptom) => texts.symptoms[symptom] ?? []);
  const { month } = calendarDay(lot.firstDay + Math.floor(ring.at_s / DAY_s));
  const first = told[0] ?? texts.routine;
  const last = past.at(-1);
  const lately = last !== undefined && ring.at_s - last.entry.to_ms / 1000 < LATELY_d * DAY_s;
  const habit = standing(lot, door).flatMap((f) => texts.use.habits[f.id] ?? [])[0];
  const said: LocalText[] = [first, ...told.slice(1)].map((t) => t.said);
  return {
    title: first.title,
    said: [...said.slice(0, 4), texts.seasons[seasonOf(month)]],
    history: last ? (lately ? texts.history.lately : texts.history.visited) : texts.history.first,
    use: habit ?? texts.use.ordinary,
  };
}

export function seasonOf(month: number): 'winter' | 'spring' | 'summer' | 'autumn' {
  if (month <= 2 || month === 12) return 'winter';
  return month <= 5 ? 'spring' : month <= 8 ? 'summer' : 'autumn';
}

/** A cause that a householder's hands at the closed panel end needs no visit; an alarm that left none behind, neither. */
function expectedOf(lot: Lot, door: Door): CallFile['expected'] {
  const causes = keysOf(standing(lot, door)).map(placedFault);
  const byPhone = causes.every((f) => f.mendedBy.includes('guide-reset'));
  if (door.ring.kind === 'alarm' && byPhone) return { decision: 'close', urgency: [] };
  const urgent = (urgency: string) => causes.some((f) => f.urgency === urgency);
  if (door.ring.symptoms.includes('sewage-out') || urgent('now')) return { decision: 'visit', urgency: ['now'] };
  return {
    decision: 'visit',
    urgency: urgent('before-dosing') ? ['now', 'before-dosing'] : ['before-dosing', 'next-visit'],
  };
}

function instantText(lot: Lot, t_s: number): string {
  const { year, month, day } = calendarDay(lot.firstDay + Math.floor(t_s / DAY_s));
  const two = (n: number) => String(n).padStart(2, '0');
  const minute = Math.floor((t_s % DAY_s) / 60);
  return `${year}-${two(month)}-${two(day)}T${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

/** The lot after a call on it: what was mended has ended, what was cleaned begins anew, what was only hidden is still there. */
export function leaveLot(lot: Lot, state: LotState, session: CallSession): LotState {
  const { door } = state;
  if (!door) throw new Error('nobody rang');
  const { unit, now_ms } = session.service;
  unit.cutAt(now_ms / 1000);
  const untreated_h = untreatedSince(door.from, unit);
  const t_s = now_ms / 1000;
  const stood = standing(lot, door).map(({ id, onset_s }): Standing => ({ key: id, since_s: onset_s }));
  const lost = isLost(session, door.ring, stood, state.visits);
  if (lost) mendAll(unit);
  const since_s = lot.file.wears.map((wear, i) => {
    const since = state.since_s[i] ?? null;
    return since === null ? null : sinceAfter(session, placedOn(lot, wear), since, lost);
  });
  const over = lot.file.happens.map((h, i) => {
    const { key } = placedOn(lot, h);
    return state.over[i] === true || (hasCome(unit, key) && isCleared(session, key));
  });
  const now = snapshot(unit);
  const next = faultsAt(lot, { since_s, over }, t_s);
  const after = { t_s, snapshot: cleanedUp({ ...now, mended: next.map(() => null) }), since_s, over };
  const entry = entryOf(session, { stood, lost, state: digest(after as unknown as Json) });
  return {
    ...after,
    harm: {
      ground_m3: state.harm.ground_m3 + spilled_m3(now),
      untreated_h: state.harm.untreated_h + untreated_h,
    },
    left: cleanedUp(allSound(lot, door, now)),
    visits: [...state.visits, { ...door, entry }],
  };
}

/** Whether this was one ring too many for the same cause, and it is there still. */
function isLost(session: CallSession, ring: Ring, stood: readonly Standing[], past: readonly Visit[]): boolean {
  if (ring.kind === 'routine') return false;
  const rung = past.filter((v) => v.ring.kind !== 'routine').slice(1 - FORGIVEN);
  return stood.some(
    (one) =>
      !session.service.unit.isOver(one.key) &&
      rung.length === FORGIVEN - 1 &&
      rung.every((v) => v.entry.stood.some((s) => s.key === one.key && s.since_s === one.since_s)),
  );
}

function mendAll(unit: Unit): void {
  for (const { fault } of unit.faults) if (fault.onset_s <= unit.t) unit.mend(fault.id);
}

function hasCome(unit: Unit, key: string): boolean {
  return unit.faults.some((f) => f.fault.id === key && f.fault.onset_s <= unit.t);
}

/** From when a wear grows after a visit; null where the household was told what ends it. Another firm tells it too. */
function sinceAfter(session: CallSession, placed: PlacedFault, since_s: number, lost: boolean): number | null {
  const state = session.service.unit.faults.find((f) => f.fault.id === placed.key);
  if (!state || state.mended_s === Number.POSITIVE_INFINITY) return since_s;
  const by = session.done.find((d) => d.outcome.mended.includes(placed.key));
  const told = lost ? placed.mendedBy.some((id) => id.startsWith('advise-')) : by?.def.group === 'say';
  return told ? null : state.mended_s;
}

/** The same state, had every fault on it been mended: what somebody who was there expects to find. */
function allSound(lot: Lot, door: Door, now: Snapshot): Snapshot {
  const unit = restore(setupOf(lot, doorFaults(lot, door)), now);
  mendAll(unit);
  return { ...snapshot(unit), mended: [] };
}
