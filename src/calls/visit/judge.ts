/** A routine visit's outcome, 50 points: readings taken 20, decisions 20, record 10. The weights are our choice, no source. */
import { quantity, say } from '../../service/index.ts';
import type { Flag } from '../flags.ts';
import type { CallSession } from '../session.ts';
import type { ScoreLine } from '../view.ts';
import { decisionsOf, writtenRecord } from './decisions.ts';
import { rowsOf } from './rows.ts';

const READINGS = 20;
const DECISIONS = 20;
const RECORD = 10;

/** Solved: every decision right, and the record written. */
export function visitOutcome(
  session: CallSession,
  flags: readonly Flag[],
): { readonly lines: readonly ScoreLine[]; readonly solved: boolean } {
  const rows = rowsOf(session);
  const asked = rows.reduce((sum, row) => sum + row.wants.length, 0);
  const taken = rows.reduce((sum, row) => sum + row.met, 0);
  const written = writtenRecord(session) !== undefined;
  const decisions = decisionsOf(session);
  const right = decisions.filter((one) => one.right).length;
  const has = (id: Flag['id']) => flags.some((f) => f.id === id);
  const whole = written && !has('label-unsigned') && !has('household-not-told');
  const share = (part: number, of: number, points: number) => Math.round((10 * points * part) / of) / 10;
  return {
    solved: written && right === decisions.length,
    lines: [
      {
        id: 'readings',
        points: share(taken, asked, READINGS),
        of: READINGS,
        reason: say('score.readings-made', { n: quantity('count', taken), of: quantity('count', asked) }),
      },
      {
        id: 'decisions',
        points: written ? share(right, decisions.length, DECISIONS) : 0,
        of: DECISIONS,
        reason: written
          ? say('score.decisions-right', { n: quantity('count', right), of: quantity('count', decisions.length) })
          : say('score.unwritten'),
      },
      {
        id: 'record',
        points: whole ? RECORD : 0,
        of: RECORD,
        reason: say(whole ? 'score.record-yes' : 'score.visit-record-no'),
      },
    ],
  };
}
