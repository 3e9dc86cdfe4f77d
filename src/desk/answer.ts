/** Answers the page's requests from a call session. Runs in the worker; in tests it runs without one. */
import {
  CallSession,
  clockAt,
  debriefOf,
  liveFacts,
  makeProgress,
  makeRecord,
  type Prepared,
  prepareCall,
  resumeCall,
  shippedCalls,
  solutionMinutes,
  Trace,
  viewOf,
} from '../calls/index.ts';
import { known, type Surroundings, xray } from '../scene/index.ts';
import { type Message, say } from '../service/index.ts';
import { calendarDay, parseInstant } from '../unit/index.ts';
import type { CallCard, Reply, Request, SavedCall } from './protocol.ts';

/** Holds at most one call: the one on screen. */
export class Answerer {
  private session: CallSession | undefined;
  private trace: Trace | undefined;

  answer(request: Request): Reply {
    switch (request.kind) {
      case 'list':
        return { kind: 'list', calls: shippedCalls().map((call) => cardOf(prepareCall(call))) };
      case 'open':
        return this.open(request.callId, (prepared) => ({ session: new CallSession(prepared, request.mode) }));
      case 'resume':
        return this.open(request.saved.callId, (prepared) =>
          resumeCall(prepared, request.saved.mode, request.saved.record),
        );
      default:
        return this.session ? this.about(this.session, request) : error('trouble.no-call');
    }
  }

  private open(callId: string, begin: (prepared: Prepared) => { session: CallSession } | { why: Message }): Reply {
    const call = shippedCalls().find((c) => c.id === callId);
    if (!call) return error('trouble.call-unknown');
    const begun = begin(prepareCall(call));
    if ('why' in begun) return { kind: 'error', message: begun.why };
    this.session = begun.session;
    this.trace = undefined;
    return view(this.session);
  }

  private about(session: CallSession, request: Exclude<Request, { kind: 'list' | 'open' | 'resume' }>): Reply {
    switch (request.kind) {
      case 'advance':
        session.advance(request.to_ms);
        return view(session);
      case 'nextChange':
        session.nextChange(request.limit_ms);
        return view(session);
      case 'act':
        return act(session, request.at_ms, request.action);
      case 'tick':
        return act(session, request.at_ms, {
          id: 'tick-suspect',
          fill: { fault: request.fault, on: request.on ? 'yes' : 'no' },
        });
      case 'save':
        return { kind: 'saved', saved: savedOf(session) };
      case 'record':
        return { kind: 'record', record: makeRecord(session), fileName: `${session.prepared.call.id}.record.json` };
      case 'debrief':
        return { kind: 'debrief', debrief: debriefOf(session, this.traceOf(session)) };
      case 'xray':
        return { kind: 'xray', scene: truthAt(session, this.traceOf(session), request.at_ms) };
    }
  }

  private traceOf(session: CallSession): Trace {
    this.trace ??= new Trace(session);
    return this.trace;
  }
}

function act(session: CallSession, at_ms: number, action: Parameters<CallSession['act']>[0]): Reply {
  session.advance(at_ms);
  const noticed = session.changes;
  const refused = session.act(action);
  const changes = [...noticed, ...session.changes];
  return { ...view(session, changes), ...(refused ? { refused } : {}) };
}

function view(session: CallSession, changes = session.changes): Extract<Reply, { kind: 'view' }> {
  return { kind: 'view', view: { ...viewOf(session, knownScene(session)), changes } };
}

function knownScene(session: CallSession) {
  return known({
    spec: session.prepared.spec,
    person: session.service.person,
    live: liveFacts(session),
    now_s: session.now_ms / 1000,
    around: surroundings(session, session.now_ms / 1000),
  });
}

function truthAt(session: CallSession, trace: Trace, at_ms: number) {
  const at = Math.min(Math.max(at_ms, trace.from_ms), session.now_ms);
  return xray(trace.unitAt(at), at / 1000, surroundings(session, at / 1000));
}

function surroundings(session: CallSession, t_s: number): Surroundings {
  const clock = clockAt(session, t_s);
  return { day: clock, secondOfDay: clock.secondOfDay, ...session.prepared.call.weather };
}

function cardOf(prepared: Prepared): CallCard {
  const { call } = prepared;
  const start = parseInstant(call.start);
  return {
    id: call.id,
    title: call.title,
    summary: call.summary,
    unit: call.unit,
    lot: call.lot,
    minutes: Math.round(solutionMinutes(prepared)),
    starts: { secondOfDay: start?.secondOfDay ?? 0, month: calendarDay(start?.day ?? 0).month },
  };
}

function savedOf(session: CallSession): SavedCall {
  return {
    version: 1,
    callId: session.prepared.call.id,
    mode: session.mode,
    record: makeProgress(session),
    now_ms: session.now_ms,
    title: session.prepared.call.title,
  };
}

function error(id: string): Reply {
  return { kind: 'error', message: say(id) };
}
