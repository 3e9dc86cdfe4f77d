/** A call of the round needs the round itself in the engine's worker, as it was kept. */
import type { Engine } from './engine.ts';

const IS_ROUND = /^round-\d+-\d+$/;

export function isRoundCall(callId: string): boolean {
  return IS_ROUND.test(callId);
}

/** Has the round at hand where a call is one of its doors. */
export async function haveRound(callId: string, engine: Engine, kept: () => Promise<unknown>): Promise<void> {
  if (isRoundCall(callId)) await engine.ask({ kind: 'round', kept: await kept() });
}
