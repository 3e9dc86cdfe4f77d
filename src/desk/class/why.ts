import { problemLine } from '../../calls/problems.ts';
import type { Refused } from '../../records/marked.ts';
import type { Desk } from '../desk.ts';

/** Why a record does not count, in one line. */
export function whyOf({ speak }: Desk, { who, why, problems }: Refused): string {
  return why ? speak.value(why) : problems.map((problem) => problemLine(who, problem)).join(' | ');
}
