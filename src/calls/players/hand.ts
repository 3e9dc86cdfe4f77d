/** A scripted person's hands: does one thing after the other on a call, with the steps around each. */
import { stepsAround } from '../../diagnosis/index.ts';
import type { Fill } from '../../service/index.ts';
import type { CallSession, Done } from '../session.ts';

export class Hand {
  readonly session: CallSession;
  private readonly watching: (done: Done) => void;

  constructor(session: CallSession, watching: (done: Done) => void = () => undefined) {
    this.session = session;
    this.watching = watching;
  }

  get ended(): boolean {
    return this.session.ended;
  }

  /** Does it now; undefined where it could not be done. */
  do(id: string, fill?: Fill): Done | undefined {
    const before = this.session.done.length;
    this.session.act(fill ? { id, fill } : { id });
    const done = this.session.done[before];
    if (done) this.watching(done);
    return done;
  }

  /** Takes the steps it wants before, does it, and puts back what the steps changed. */
  doSafely(id: string, fill?: Fill): Done | undefined {
    const def = this.session.definition(id);
    if (!def) return undefined;
    const { before, after } = stepsAround(this.session.service, def);
    for (const step of before) this.do(step);
    const done = this.do(id, fill);
    for (const step of after) this.do(step);
    return done;
  }

  has(id: string): boolean {
    return this.session.definition(id) !== undefined;
  }
}
