/** What is asked of a call that has ended. A file of its own: until then nobody needs it. */
import { debriefOf } from '../calls/debrief.ts';
import { makeRecord } from '../calls/record.ts';
import type { CallSession } from '../calls/session.ts';
import { Trace } from '../calls/trace.ts';
import type { Assistance } from '../calls/view.ts';
import { learntOfCall, type Wall } from '../records/learnt/of-call.ts';
import { say } from '../service/index.ts';
import type { Reply } from './protocol.ts';
import { truthOf } from './truth.ts';

export class AfterCall {
  private readonly session: CallSession;
  private traced: Trace | undefined;

  constructor(session: CallSession) {
    this.session = session;
  }

  record(assistance?: Assistance): Reply {
    const fileName = `${this.session.prepared.call.id}.record.json`;
    return { kind: 'record', record: makeRecord(this.session, assistance), fileName };
  }

  learnt(wall: Wall): Reply {
    const { session } = this;
    if (!session.ended) return { kind: 'error', message: say('trouble.no-call') };
    return { kind: 'learnt', learnt: learntOfCall(session, wall) };
  }

  debrief(): Reply {
    return { kind: 'debrief', debrief: debriefOf(this.session, this.trace()) };
  }

  /** The truth at an instant. */
  xray(at_ms: number): Reply {
    const { session } = this;
    const trace = this.trace();
    const at = Math.min(Math.max(at_ms, trace.from_ms), session.now_ms);
    return { kind: 'xray', ...truthOf(session, trace.unitAt(at), at / 1000) };
  }

  private trace(): Trace {
    this.traced ??= new Trace(this.session);
    return this.traced;
  }
}
