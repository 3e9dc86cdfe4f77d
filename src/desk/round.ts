/** The round in the engine's worker: lives the lots on, makes their calls, keeps their books. A file of its own, fetched when it is opened. */
import { config } from 'zod/mini';
import { engineAge } from '../calls/progress.ts';
import { keepRound, keptStates } from '../calls/round/kept.ts';
import { liveOn } from '../calls/round/live.ts';
import { firstState, type Lot, type LotState } from '../calls/round/lot.ts';
import { doorOf, leaveLot, preparedOf } from '../calls/round/visit.ts';
import type { CallSession } from '../calls/session.ts';
import type { Prepared } from '../calls/setup.ts';
import { type Message, say } from '../service/index.ts';
import type { Reply } from './protocol.ts';
import { fetchLots } from './round-files.ts';
import { roundView } from './round-view.ts';

// The page's policy forbids building code from text, which the validator would otherwise try.
config({ jitless: true });

export class RoundDesk {
  private readonly lots: readonly Lot[];
  private readonly states: LotState[];
  /** What was kept could not be taken up, so that the year begins anew. */
  private readonly anew: boolean;

  private constructor(lots: readonly Lot[], kept: readonly LotState[] | undefined, anew: boolean) {
    this.lots = lots;
    this.states = kept ? [...kept] : lots.map(firstState);
    this.anew = anew;
  }

  /** The round as it was kept, or from its first day; that of a newer engine is left to it. */
  static async open(kept: unknown): Promise<RoundDesk | Message> {
    if (engineAge(kept) === 'newer') return say('trouble.round-newer');
    const lots = await fetchLots();
    const states = kept === undefined ? undefined : keptStates(lots, kept);
    return new RoundDesk(lots, states, kept !== undefined && states === undefined);
  }

  reply(): Extract<Reply, { kind: 'round' }> {
    return {
      kind: 'round',
      view: roundView(this.lots, this.states, (lot, state) => this.waits(lot, state)),
      kept: keepRound(this.lots, this.states),
      anew: this.anew,
    };
  }

  /** Lives one lot on to its next door; nothing where every phone rings or every year is over. */
  live(): void {
    const i = this.lots.findIndex((lot, at) => this.waits(lot, this.states[at]));
    const [lot, state] = [this.lots[i], this.states[i]];
    if (lot && state) this.states[i] = liveOn(lot, state);
  }

  /** The call with an id, over or ringing. */
  prepared(callId: string): Prepared | undefined {
    const named = doorOf(callId);
    const i = this.lots.findIndex((lot) => lot.file.lot === named?.lot);
    const [lot, state] = [this.lots[i], this.states[i]];
    return named && lot && state ? preparedOf(lot, state, named.number) : undefined;
  }

  /** Folds a call that is over into its lot; a second time changes nothing. */
  close(session: CallSession): void {
    const named = doorOf(session.prepared.call.id);
    const i = this.lots.findIndex((lot) => lot.file.lot === named?.lot);
    const [lot, state] = [this.lots[i], this.states[i]];
    if (!lot || !state?.door || !session.ended || named?.number !== state.visits.length) return;
    this.states[i] = leaveLot(lot, state, session);
  }

  private waits(lot: Lot, state: LotState | undefined): boolean {
    return state !== undefined && state.door === undefined && state.t_s < lot.end_s;
  }
}
