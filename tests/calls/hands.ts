/** Hands of a test: they do what must be possible, lock out what must be locked, and say what was noted. */
import type { CallSession } from '../../src/calls/index.ts';
import { ACTION_BY_ID, circuitsToLock, type Note } from '../../src/service/index.ts';

/** Does it, and gives the last note. Throws where it is refused or a life-safety step is skipped. */
export function must(session: CallSession, id: string, fill?: Record<string, string | string[]>): Note {
  const refused = session.act({ id, ...(fill ? { fill } : {}) });
  if (refused ?? session.breach) throw new Error(`${id}: ${refused?.id ?? session.breach}`);
  return session.service.person.notebook.at(-1) as Note;
}

/** Does an action with its circuit locked out, and puts the circuit back. */
export function safely(session: CallSession, id: string): void {
  const def = ACTION_BY_ID.get(id);
  const locks = def ? circuitsToLock(def) : [];
  for (const lock of locks) must(session, `lock-out:${lock}`);
  must(session, id);
  for (const lock of locks) for (const way of ['unlock', 'breaker-on']) must(session, `${way}:${lock}`);
}

/** The same, and what it noted, without the numbers. */
export function doing(session: CallSession, id: string): string {
  const before = session.service.person.notebook.length;
  safely(session, id);
  const notes = session.service.person.notebook.slice(before).filter((n) => n.by === id);
  return notes.map((n) => `${n.reading.id} ${n.remark?.text.id} ${n.remark?.tone}`).join('; ');
}
