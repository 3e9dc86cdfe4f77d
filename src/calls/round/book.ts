/** A lot's book: what was found, mended, cleaned, advised and proved at each visit. */
import type { ProofId } from '../../faults/index.ts';
import { spent } from '../cost.ts';
import { actionsOf } from '../progress.ts';
import { proofsShown } from '../proof.ts';
import type { CallRecord } from '../schema.ts';
import type { CallSession, Done } from '../session.ts';

/** One fault as it came: the same one at a later door is the same cause. */
export interface Standing {
  readonly key: string;
  readonly since_s: number;
}

export interface BookEntry {
  readonly from_s: number;
  readonly to_ms: number;
  readonly onSite: boolean;
  readonly unsafe: boolean;
  /** Causes as they were named, by key. */
  readonly found: readonly string[];
  /** Actions that ended something, those that clean what wears, and what was told the household, by id. */
  readonly mended: readonly string[];
  readonly cleaned: readonly string[];
  readonly advised: readonly string[];
  readonly proved: readonly ProofId[];
  readonly minutes: number;
  readonly money_usd: number;
  /** What stood when the phone rang, whether or not anybody found it. */
  readonly stood: readonly Standing[];
  /** Whether the household, rung for in vain too often, had another firm mend all of it. */
  readonly lost: boolean;
  readonly actions: CallRecord['actions'];
  /** Digest of the lot as it was left. */
  readonly state: string;
}

const isCleaning = ({ def }: Done): boolean => def.id.startsWith('clean-') || def.id.startsWith('pump-out:');

export function entryOf(
  session: CallSession,
  { stood, lost, state }: Pick<BookEntry, 'stood' | 'lost' | 'state'>,
): BookEntry {
  const { prepared, done, cause, now_ms, drove, breach } = session;
  const ids = (such: (done: Done) => boolean) => [...new Set(done.filter(such).map((d) => d.def.id))];
  return {
    from_s: prepared.report_s,
    to_ms: now_ms,
    onSite: drove,
    unsafe: breach !== undefined,
    found: [...(cause?.keys ?? [])],
    mended: ids((d) => d.outcome.mended.length > 0 && !isCleaning(d) && d.def.group !== 'say'),
    cleaned: ids(isCleaning),
    advised: ids((d) => d.def.id.startsWith('advise-')),
    proved: [...proofsShown(done, prepared.spec.panel)],
    ...spent(session),
    stood,
    lost,
    actions: actionsOf(session),
    state,
  };
}
