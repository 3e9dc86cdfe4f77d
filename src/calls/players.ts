/** Scripted people: what a call is worth shows in how they fare. */
import { playChecklist } from './players/checklist.ts';
import { playExpert } from './players/expert.ts';
import { playPartsSwapper, playRandom, playResetOnly } from './players/others.ts';
import { playVisit } from './players/visit.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import { playSteps } from './solution.ts';

export const PLAYERS = ['expert', 'checklist', 'parts-swapper', 'reset-only', 'random', 'solution'] as const;
export type PlayerId = (typeof PLAYERS)[number];

const PLAY: Readonly<Record<PlayerId, (session: CallSession) => void>> = {
  expert: (session) => (session.prepared.call.kind === 'visit' ? playVisit : playExpert)(session),
  checklist: playChecklist,
  'parts-swapper': playPartsSwapper,
  'reset-only': playResetOnly,
  random: (session) => playRandom(session, session.prepared.call.seed),
  solution: (session) => playSteps(session, session.prepared.call.solution),
};

/** Takes the call as one of them does. */
export function play(prepared: Prepared, player: PlayerId): CallSession {
  const session = new CallSession(prepared, 'practice');
  PLAY[player](session);
  return session;
}
