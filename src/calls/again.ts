/** What was done, done again. */
import type { CallSession, Logged } from './session.ts';

/** Does logged actions on a session, each at its instant. */
export function doAgain(session: CallSession, way: readonly Pick<Logged, 'at_ms' | 'do' | 'fill'>[]): void {
  for (const { at_ms, do: id, fill } of way) {
    session.advance(at_ms);
    session.act({ id, ...(fill ? { fill } : {}) });
  }
}
