/** A year of the round: its lots, each lived up to its next door, and the doors taken in the order of their dates. */
import { type Message, say } from '../../service/index.ts';
import type { Checked } from '../check.ts';
import type { Judgement } from '../judge.ts';
import { playPartsSwapper, playResetOnly } from '../players/others.ts';
import { parseJson, problemsOf } from '../problems.ts';
import { ENGINE_VERSION, replayActions } from '../progress.ts';
import { judged } from '../record.ts';
import { playLiving } from '../reference.ts';
import { CallSession } from '../session.ts';
import type { Prepared } from '../setup.ts';
import { roundHash } from './hash.ts';
import { liveOn } from './live.ts';
import { firstState, type Lot, type LotState } from './lot.ts';
import { type RoundFile, type YearRecord, yearSchema } from './schema.ts';
import { leaveLot, preparedOf } from './visit.ts';

export const ROUND_PLAYERS = ['expert', 'parts-swapper', 'reset-only'] as const;
export type RoundPlayer = (typeof ROUND_PLAYERS)[number];

const TAKE: Readonly<Record<RoundPlayer, (session: CallSession) => void>> = {
  expert: playLiving,
  'parts-swapper': playPartsSwapper,
  'reset-only': playResetOnly,
};

/** Takes the door that rings now, and leaves the lot as it then is. */
export function takeDoor(lot: Lot, state: LotState, take: (session: CallSession) => void): LotState {
  const prepared = ringing(lot, state);
  const session = new CallSession(prepared, 'practice');
  take(session);
  return leaveLot(lot, state, session);
}

function ringing(lot: Lot, state: LotState): Prepared {
  const prepared = preparedOf(lot, state, state.visits.length);
  if (!prepared) throw new Error(`nobody rang at lot ${lot.file.lot}`);
  return prepared;
}

/** A whole year of one lot. Lots have nothing to do with each other, so each can be lived by itself. */
export function liveYear(lot: Lot, take: (session: CallSession) => void): LotState {
  let state = liveOn(lot, firstState(lot));
  while (state.door) state = liveOn(lot, takeDoor(lot, state, take));
  return state;
}

export function liveYearAs(lot: Lot, player: RoundPlayer): LotState {
  return liveYear(lot, TAKE[player]);
}

/** A visit of the book judged like any other call, against the expert on the very same one. */
export function judgedVisit(lot: Lot, state: LotState, number: number): Judgement {
  const prepared = preparedOf(lot, state, number);
  const entry = state.visits[number]?.entry;
  if (!prepared || !entry) throw new Error(`lot ${lot.file.lot} has no visit ${number}`);
  const session = new CallSession(prepared, 'practice');
  replayActions(session, entry.actions);
  session.advance(entry.to_ms);
  return judged(session);
}

/** A year as it was lived, to be lived again. */
export function yearRecord(round: RoundFile, states: readonly (readonly [Lot, LotState])[], seed: number): YearRecord {
  return {
    kind: 'underlawn-round',
    version: 1,
    engine: ENGINE_VERSION,
    round: round.id,
    roundHash: roundHash(round),
    seed,
    visits: states.flatMap(([lot, { visits }]) =>
      visits.map(({ entry: { actions, to_ms, state } }) => ({
        lot: lot.file.lot,
        actions: [...actions],
        end_ms: to_ms,
        state,
      })),
    ),
  };
}

/** A recorded year from the text of its file. */
export function loadYear(text: string): Checked<YearRecord> {
  const parsed = parseJson(text);
  if ('problem' in parsed) return { ok: false, problems: [parsed.problem] };
  const result = yearSchema.safeParse(parsed.value, { reportInput: true });
  return result.success ? { ok: true, value: result.data } : { ok: false, problems: problemsOf(result.error) };
}

/** Lives a recorded year again. Returns the first difference, if there is one. */
export function replayYear(lots: readonly Lot[], record: YearRecord): Message | undefined {
  const [first] = lots;
  if (record.engine !== ENGINE_VERSION) return say('replay.engine', { made: record.engine, here: ENGINE_VERSION });
  if (!first || roundHash(first.round) !== record.roundHash) return say('replay.call-changed', { call: record.round });
  for (const lot of lots) {
    const difference = replayLot(
      lot,
      record.visits.filter((v) => v.lot === lot.file.lot),
    );
    if (difference) return difference;
  }
  return undefined;
}

function replayLot(lot: Lot, visits: YearRecord['visits']): Message | undefined {
  let state = liveOn(lot, firstState(lot));
  for (const [i, visit] of visits.entries()) {
    if (!state.door) return say('replay.round-quiet', { lot: lot.file.lot, n: i + 1 });
    let difference: Message | undefined;
    const after = takeDoor(lot, state, (session) => {
      difference = replayActions(session, visit.actions);
      session.advance(visit.end_ms);
    });
    if (difference) return difference;
    if (after.visits.at(-1)?.entry.state !== visit.state)
      return say('replay.round-state', { lot: lot.file.lot, n: i + 1 });
    state = liveOn(lot, after);
  }
  return state.door ? say('replay.round-more', { lot: lot.file.lot }) : undefined;
}
