/** Makes the round's screen value from its lots: the year in weeks, whose phone rings, what the books say. */
import type { BookEntry } from '../calls/round/book.ts';
import { DAY_s, type Lot, type LotState } from '../calls/round/lot.ts';
import { rowOf, rowWords, totalOf } from '../calls/round/sheet.ts';
import { callIdOf, whyOf } from '../calls/round/visit.ts';
import { faultName } from '../calls/session-actions.ts';
import type { CalendarClock } from '../calls/view.ts';
import { ACTION_BY_ID, type Message, say } from '../service/index.ts';
import { calendarDay, weekday } from '../unit/index.ts';
import type { BookView, LotView, RoundView } from './protocol.ts';

const WEEK_s = 7 * DAY_s;

type Waits = (lot: Lot, state: LotState) => boolean;

export function roundView(lots: readonly Lot[], states: readonly LotState[], waits: Waits): RoundView {
  const joined = lots.flatMap((lot, i) => {
    const state = states[i];
    return state ? [{ lot, state }] : [];
  });
  const living = joined.filter(({ lot, state }) => waits(lot, state)).length;
  const ringing = joined.filter(({ state }) => state.door).sort((a, b) => ringOf(a.state) - ringOf(b.state));
  const next = living > 0 ? undefined : ringing[0];
  const rows = joined.map(({ lot, state }) => rowOf(lot, state));
  const [first] = lots;
  return {
    title: first?.round.title ?? { en: '', es: '' },
    source: first?.round.source ?? { en: '', es: '' },
    weeks: first ? weeksOf(first, states, next?.state) : [],
    lots: joined.map(({ lot, state }) => lotView(lot, state, lot === next?.lot, waits(lot, state))),
    living,
    over: living === 0 && next === undefined,
    all: say('round.sheet.all', { row: rowWords(totalOf(rows)) }),
    ...(next ? { next: next.lot.file.lot } : {}),
  };
}

function ringOf({ door }: LotState): number {
  return door?.ring.at_s ?? Number.POSITIVE_INFINITY;
}

function weeksOf(lot: Lot, states: readonly LotState[], next: LotState | undefined): RoundView['weeks'] {
  const opened = states.flatMap(({ visits }) => visits.map((v) => v.ring.at_s));
  const now = next ? ringOf(next) : undefined;
  return Array.from({ length: Math.ceil(lot.end_s / WEEK_s) }, (_, week) => {
    const within = (t: number) => Math.floor(t / WEEK_s) === week;
    return {
      from: clockOf(lot, week * WEEK_s),
      doors: opened.filter(within).length,
      now: now !== undefined && within(now),
    };
  });
}

function lotView(lot: Lot, state: LotState, isNext: boolean, waits: boolean): LotView {
  const { door, visits } = state;
  return {
    lot: lot.file.lot,
    unit: lot.file.unit,
    state: isNext ? 'rings' : waits ? 'living' : 'quiet',
    ...(isNext && door
      ? { callId: callIdOf(lot, visits.length), why: whyOf(lot, door.ring), at: clockOf(lot, door.ring.at_s) }
      : {}),
    book: visits.map((visit) => bookView(lot, visit.entry, whyOf(lot, visit.ring))),
    row: say('round.sheet.lot', { lot: lot.file.lot, row: rowWords(rowOf(lot, state)) }),
  };
}

function bookView(lot: Lot, entry: BookEntry, why: BookView['why']): BookView {
  const line = (id: string, names: readonly Message[]) =>
    names.length === 0 ? [] : [say(`round.book.${id}`, { list: together(names) })];
  const acts = (ids: readonly string[]) => ids.flatMap((id) => ACTION_BY_ID.get(id)?.label ?? []);
  return {
    at: clockOf(lot, entry.from_s),
    why,
    lines: [
      ...(entry.onSite || entry.unsafe ? [] : [say('round.book.by-phone')]),
      ...line('found', entry.found.map(faultName)),
      ...line('mended', acts(entry.mended)),
      ...line('cleaned', acts(entry.cleaned)),
      ...line('advised', acts(entry.advised)),
      ...line(
        'proved',
        entry.proved.map((proof) => say(`proof.${proof}`)),
      ),
      ...(entry.unsafe ? [say('round.book.unsafe')] : []),
      ...(entry.lost ? [say('round.book.lost')] : []),
    ],
  };
}

function together([first, ...more]: readonly Message[]): Message {
  if (first === undefined) return say('word.nothing');
  return more.length === 0 ? first : say('word.and', { one: first, other: together(more) });
}

function clockOf(lot: Lot, t_s: number): CalendarClock {
  const day = lot.firstDay + Math.floor(t_s / DAY_s);
  return { ...calendarDay(day), weekday: weekday(day), secondOfDay: t_s % DAY_s };
}
