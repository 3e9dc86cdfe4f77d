/**
 * Answers the page's requests from a call session. Runs in the worker; in tests it runs without one. It names the files
 * it needs of `calls` and `scene`: their `index.ts` would bring along what judges a call, and the validator.
 */
import { callOfDay } from '../calls/day-call.ts';
import { makeProgress } from '../calls/progress.ts';
import type { Led } from '../calls/rungs.ts';
import { CallSession } from '../calls/session.ts';
import type { Prepared } from '../calls/setup.ts';
import { isFrozen } from '../calls/teaching.ts';
import type { Action } from '../calls/view.ts';
import { liveFacts, viewOf } from '../calls/viewOf.ts';
import { known } from '../scene/known.ts';
import { type Message, say } from '../service/index.ts';
import type { AfterCall } from './after-call.ts';
import { callBy } from './call-files.ts';
import { fetched } from './fetched.ts';
import type { Hood } from './hood.ts';
import { listIn } from './list.ts';
import type { CallCard, Reply, Request, SavedCall } from './protocol.ts';
import type { RoundDesk } from './round.ts';
import { isShipped } from './shipped-files.ts';
import { surroundings } from './surroundings.ts';

type ViewReply = Extract<Reply, { kind: 'view' }>;
interface Opening {
  readonly callId: string;
  /** Its file, where it did not ship. */
  readonly brought?: string | undefined;
  readonly led?: Led | undefined;
}
type Begun = { readonly session: CallSession } | { readonly why: Message };

/** Holds at most one call: the one on screen. Each request waits for the answer to the one before. */
export class Answerer {
  /** As they were listed last. */
  private calls: readonly CallCard[] = [];
  private session: CallSession | undefined;
  private after: AfterCall | undefined;
  private hood: Hood | undefined;
  /** Its file, where it did not ship. */
  private brought: string | undefined;
  private round: RoundDesk | undefined;
  /** How far a guide leads still. */
  private led: Led | undefined;

  async answer(request: Request): Promise<Reply> {
    switch (request.kind) {
      case 'list':
        this.calls = await listIn(request.language);
        return { kind: 'list', calls: this.calls };
      case 'ofDay':
        return { kind: 'ofDay', callId: callOfDay(request.day, this.calls) };
      case 'open':
        return this.open({ ...request, brought: unlessShipped(request) }, async (prepared) => ({
          session: new CallSession(prepared, request.mode),
        }));
      case 'resume': {
        const { saved } = request;
        return this.open({ ...saved, led: saved.assistance?.led }, async (prepared) => {
          const { resumeCall } = await fetched(import('./resume.ts'));
          return resumeCall(prepared, saved.mode, saved.record);
        });
      }
      case 'round': {
        const { RoundDesk } = await fetched(import('./round.ts'));
        const opened = await RoundDesk.open(request.kept);
        if (!(opened instanceof RoundDesk)) return { kind: 'error', message: opened };
        this.round = opened;
        return opened.reply();
      }
      case 'roundLive':
        this.round?.live();
        return this.round?.reply() ?? error('trouble.no-call');
      case 'roundClose':
        if (this.session) this.round?.close(this.session);
        return this.round?.reply() ?? error('trouble.no-call');
      case 'bring': {
        const { bring } = await fetched(import('./brought.ts'));
        return bring(request.from, request.text);
      }
      case 'sheet': {
        const { sheet } = await fetched(import('./printed.ts'));
        return sheet(request.who, await callBy(request.callId, unlessShipped(request)));
      }
      case 'pack':
      case 'unpack':
        return (await fetched(import('./left-call.ts'))).leftCall(request);
      default:
        return this.session ? this.about(this.session, request) : error('trouble.no-call');
    }
  }

  private async open({ callId, brought, led }: Opening, begin: (prepared: Prepared) => Promise<Begun>): Promise<Reply> {
    const prepared = this.round?.prepared(callId) ?? (await callBy(callId, brought));
    if (!prepared) return error('trouble.call-unknown');
    const begun = await begin(prepared);
    if ('why' in begun) return { kind: 'error', message: begun.why };
    this.session = begun.session;
    this.after = undefined;
    this.hood = undefined;
    this.brought = brought;
    this.led = led;
    return this.guided(begun.session, view(begun.session));
  }

  private async about(
    session: CallSession,
    request: Extract<
      Request,
      { kind: 'advance' | 'nextChange' | 'act' | 'tick' | 'save' | 'record' | 'learnt' | 'debrief' | 'xray' | 'hood' }
    >,
  ): Promise<Reply> {
    switch (request.kind) {
      case 'advance':
        if (!isFrozen(session.log)) session.advance(request.to_ms);
        return view(session);
      case 'nextChange':
        if (!isFrozen(session.log)) session.nextChange(request.limit_ms);
        return view(session);
      case 'act':
        return this.guided(session, await act(session, request.at_ms, request.action, request.sure));
      case 'tick':
        return act(session, request.at_ms, {
          id: 'tick-suspect',
          fill: { fault: request.fault, on: request.on ? 'yes' : 'no' },
        });
      case 'save':
        return { kind: 'saved', saved: savedOf(session, this.brought) };
      case 'record':
        return (await this.afterCall(session)).record(request.assistance);
      case 'learnt':
        return (await this.afterCall(session)).learnt(request.wall);
      case 'debrief':
        return (await this.afterCall(session)).debrief();
      case 'xray':
        return (await this.afterCall(session)).xray(request.at_ms);
      case 'hood':
        return { kind: 'hood', told: (await this.hoodOf(session)).answer(request.ask) };
    }
  }

  /** Adds where the guide leads next. Once it has said that the rest is the trainee's, it says no more. */
  private async guided(session: CallSession, reply: ViewReply): Promise<ViewReply> {
    if (this.led === undefined) return reply;
    const { guideOn } = await fetched(import('../calls/guide.ts'));
    const guide = guideOn(session, this.led);
    if (guide.step === undefined) this.led = undefined;
    return { ...reply, guide };
  }

  private async hoodOf(session: CallSession): Promise<Hood> {
    const { Hood } = await fetched(import('./hood.ts'));
    this.hood ??= new Hood(session, (of) => savedOf(of, this.brought));
    return this.hood;
  }

  private async afterCall(session: CallSession): Promise<AfterCall> {
    const { AfterCall } = await fetched(import('./after-call.ts'));
    this.after ??= new AfterCall(session);
    return this.after;
  }
}

async function act(session: CallSession, at_ms: number, action: Action, sure = false): Promise<ViewReply> {
  session.advance(at_ms);
  const noticed = session.changes;
  if (session.mode === 'coached' && !sure) {
    const { cautionBefore } = await fetched(import('../calls/caution.ts'));
    const caution = cautionBefore(session, action);
    if (caution) return { ...view(session), caution };
  }
  const refused = session.act(action);
  const changes = [...noticed, ...session.changes];
  return { ...view(session, changes), ...(refused ? { refused } : {}) };
}

function view(session: CallSession, changes = session.changes): ViewReply {
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

function savedOf(session: CallSession, brought: string | undefined): SavedCall {
  return {
    version: 1,
    callId: session.prepared.call.id,
    mode: session.mode,
    record: makeProgress(session),
    now_ms: session.now_ms,
    title: session.prepared.call.title,
    ...(brought === undefined ? {} : { brought }),
  };
}

/** The file of a call that was brought; none where a call of its id ships by now, which comes first. */
function unlessShipped({ callId, brought }: Pick<SavedCall, 'callId' | 'brought'>): string | undefined {
  return isShipped(callId) ? undefined : brought;
}

function error(id: string): Reply {
  return { kind: 'error', message: say(id) };
}
