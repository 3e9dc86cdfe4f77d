/**
 * One person's record of one call, replayed: what came out of it, or why it does not count. It names the files it needs of
 * `calls`: their `index.ts` would bring along all that ships.
 */
import { loadRecord } from '../calls/loadRecord.ts';
import type { Problem } from '../calls/problems.ts';
import { judged, replay } from '../calls/record.ts';
import type { Prepared } from '../calls/setup.ts';
import { isTaught } from '../calls/taught.ts';
import { type Message, say } from '../service/index.ts';
import { digest } from '../unit/index.ts';

/** A record's file, under the name that was typed for whose it is. */
export interface Handed {
  readonly who: string;
  readonly text: string;
}

export interface Counts {
  readonly state: 'counts';
  readonly who: string;
  readonly call: string;
  readonly passed: boolean;
  readonly score: number;
  readonly minutes: number;
  readonly money_usd: number;
  /** What there was to look at again, each time it was. */
  readonly flags: readonly string[];
  /** Lines of the score that were not had in full. */
  readonly short: readonly string[];
  readonly mode: 'coached' | 'practice' | 'graded';
  /** Whether hints or a guide helped, as the page counted it: nothing that a replay could tell. */
  readonly helped: boolean;
  /** Whether a trainer had a hand in it: they stopped the clock, went back, or changed what was broken. */
  readonly taught: boolean;
  /** Digest of the call and of what was done on it, and when: all that a review of it hangs on. */
  readonly deeds: string;
}

export interface Refused {
  readonly state: 'refused';
  readonly who: string;
  /** The call it names, where it could be read at all. */
  readonly call?: string;
  /** Of another engine: neither right nor wrong, it cannot be told here. */
  readonly otherEngine: boolean;
  readonly why?: Message;
  readonly problems: readonly Problem[];
}

export type Marked = Counts | Refused;

/** Replays a record on the call it names; `callOf` knows the calls there are. */
export function marked({ who, text }: Handed, callOf: (id: string) => Prepared | undefined): Marked {
  const loaded = loadRecord(text);
  if (!loaded.ok) return { state: 'refused', who, otherEngine: false, problems: loaded.problems };
  const record = loaded.value;
  const { call, callHash, mode, actions, end_ms, assistance } = record;
  const refused = (why: Message, otherEngine = false): Refused => ({
    state: 'refused',
    who,
    call,
    otherEngine,
    why,
    problems: [],
  });
  const prepared = callOf(call);
  if (!prepared) return refused(say('class.call-unknown', { call }));
  const { session, firstDifference } = replay(prepared, record);
  if (firstDifference) return refused(firstDifference, firstDifference.id === 'replay.engine');
  const { passed, score, spent, flags, lines } = judged(session);
  return {
    state: 'counts',
    who,
    call,
    passed,
    score,
    minutes: spent.minutes,
    money_usd: spent.money_usd,
    flags: flags.map(({ id }) => id),
    short: lines.filter(({ points, of }) => points < of).map(({ id }) => id),
    mode,
    deeds: digest({ callHash, mode, actions, end_ms }),
    taught: isTaught(record.actions),
    helped: assistance !== undefined && (assistance.hints > 0 || assistance.likely || assistance.led !== undefined),
  };
}
