/** What the engine's worker tells a trainer of the call in progress. A file of its own: only a trainer wants it. */
import { droppablesOf, hoodOf, sessionAt } from '../calls/hood.ts';
import { stageOf, stepsOf } from '../calls/procedure.ts';
import type { CallSession } from '../calls/session.ts';
import { Trace } from '../calls/trace.ts';
import { clockAt } from '../calls/viewOf.ts';
import { EngineError } from './engine.ts';
import type { HoodAsk, HoodTold, SavedCall, Truth } from './protocol.ts';
import { truthOf } from './truth.ts';

export class Hood {
  private readonly session: CallSession;
  private readonly saved: (session: CallSession) => SavedCall;
  private readonly trace: Trace;

  constructor(session: CallSession, saved: (session: CallSession) => SavedCall) {
    this.session = session;
    this.saved = saved;
    this.trace = new Trace(session);
  }

  answer(ask: HoodAsk): HoodTold {
    const { session } = this;
    switch (ask.what) {
      case 'call': {
        const now = session.now_ms / 1000;
        return {
          what: 'call',
          call: { ...hoodOf(session, this.trace), ...truthOf(session, session.service.unit, now) },
        };
      }
      case 'scene':
        this.trace.follow(session);
        return { what: 'scene', ...this.truthAt(ask.at_ms) };
      case 'droppable':
        return { what: 'droppable', faults: droppablesOf(session.prepared) };
      case 'moment':
        return this.momentAt(ask.place);
    }
  }

  private truthAt(at_ms: number): Truth {
    const { session, trace } = this;
    const at = Math.min(Math.max(at_ms, trace.from_ms), session.now_ms);
    return truthOf(session, trace.unitAt(at), at / 1000);
  }

  private momentAt(place: number): HoodTold {
    const then = sessionAt(this.session, place);
    if (then === undefined) throw new EngineError({ id: 'why.no-such-moment' });
    return {
      what: 'moment',
      stage: stageOf(then.procedure, stepsOf(then.prepared.call.kind)),
      clock: clockAt(then, then.now_ms / 1000),
      saved: this.saved(then),
    };
  }
}
