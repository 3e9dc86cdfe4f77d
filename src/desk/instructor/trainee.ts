/** What a trainee's window does for a trainer: tells how the call stands, and does what is asked for in turn with the trainee. */
import { effect } from '@preact/signals';
import type { Rung } from '../../calls/rungs.ts';
import { TEACH } from '../../calls/teach-ids.ts';
import type { Action } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import type { Rate } from '../clockwork.ts';
import type { Desk } from '../desk.ts';
import { EngineError, toldOf } from '../engine.ts';
import type { HoodAsk, HoodTold } from '../protocol.ts';
import { writeRoute } from '../routes.ts';
import type { Session } from '../session.ts';
import type { Progress } from '../stored.ts';
import type { Answer, Ask, Told } from './line.ts';

/** While only time goes by, so often it is told, ms. */
const EVERY_ms = 500;

/** The clock's rate before a trainer stopped it. */
const before = new WeakMap<Session, Rate>();

/** Tells how the call stands: at once after whatever was done, now and again while time goes by. */
export function follow(desk: Desk, tell: (told: Told) => void): { now(): void; stop(): void } {
  const { session } = desk;
  let asking = false;
  let again = false;
  let stopped = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  async function now(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    if (asking) {
      again = true;
      return;
    }
    asking = true;
    do {
      again = false;
      const told = await standing(desk);
      if (!stopped) tell(told);
    } while (again && !stopped);
    asking = false;
  }
  const shown = () => void now();
  document.addEventListener('visibilitychange', shown);
  const stopDoing = effect(() => {
    session.kept.value;
    session.rate.value;
    session.finishedKey.value;
    session.elsewhere.value;
    void now();
  });
  const stopTiming = effect(() => {
    session.view.value;
    timer ??= setTimeout(() => void now(), EVERY_ms);
  });
  return {
    now: shown,
    stop() {
      stopped = true;
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', shown);
      stopDoing();
      stopTiming();
    },
  };
}

async function standing({ engine, session }: Desk): Promise<Told> {
  const shown = !document.hidden;
  const rate = session.rate.peek();
  if (session.view.peek() === null) return { call: null, rate, shown };
  try {
    const { told } = await engine.ask({ kind: 'hood', ask: { what: 'call' } });
    return { call: told.what === 'call' ? told.call : null, rate, shown };
  } catch {
    // Let go of meanwhile: the page says what went wrong, if anything did.
    return { call: null, rate, shown };
  }
}

export async function answerAsk(desk: Desk, ask: Ask): Promise<Answer> {
  try {
    if (ask.kind === 'begin') return await begin(desk, ask.callId, ask.rung);
    if (ask.kind === 'take-up') return await begin(desk, ask.from.callId, 'alone', ask.from);
    if (desk.session.view.peek()?.callId !== ask.callId) return refused({ id: 'instructor.otherCall' });
    switch (ask.kind) {
      case 'teach':
        return await teach(desk.session, ask.action);
      case 'next-change':
        return await nextChange(desk.session);
      case 'saved': {
        const saved = desk.session.kept.peek();
        return saved === null ? refused({ id: 'instructor.notDone' }) : { kind: 'saved', saved };
      }
      case 'scene':
        return answerOf(desk, await hood(desk, { what: 'scene', at_ms: ask.at_ms }));
      case 'droppable':
        return answerOf(desk, await hood(desk, { what: 'droppable' }));
      case 'moment':
        return answerOf(desk, await hood(desk, { what: 'moment', place: ask.place }));
    }
  } catch (error) {
    return refused(toldOf(error));
  }
}

async function hood({ engine }: Desk, ask: HoodAsk): Promise<HoodTold> {
  return (await engine.ask({ kind: 'hood', ask })).told;
}

function refused(why: Message): Answer {
  return { kind: 'refused', why };
}

function answerOf({ session, wallClock }: Desk, told: HoodTold): Answer {
  switch (told.what) {
    case 'scene':
      return { kind: 'scene', scene: told.scene, whys: told.whys };
    case 'droppable':
      return { kind: 'droppable', faults: told.faults };
    case 'moment': {
      const { stage, clock, saved } = told;
      const assistance = saved.mode === 'coached' ? { assistance: session.assistance.peek() } : {};
      const kept = { callId: saved.callId, savedAt: wallClock(), stage, clock: { ...clock } };
      return { kind: 'moment', kept: { version: 1, ...kept, saved: { ...saved, ...assistance } } };
    }
    case 'call':
      return refused({ id: 'instructor.notDone' });
  }
}

async function teach(session: Session, action: Action): Promise<Answer> {
  const why = await session.teach(action);
  if (why === undefined) return refused({ id: 'instructor.notDone' });
  if (why !== null) return refused(why);
  heed(session, action);
  return { kind: 'done' };
}

/** What of it concerns the page and not the works: how fast the clock runs, and what was begun since a moment. */
function heed(session: Session, { id, fill }: Action): void {
  const { rate } = session;
  const frozen = session.view.peek()?.frozen === true;
  if (id === TEACH.freeze) {
    if (rate.peek() !== 0) before.set(session, rate.peek());
    rate.value = 0;
  } else if (id === TEACH.go) {
    if (rate.peek() === 0) rate.value = before.get(session) ?? 1;
  } else if (id === TEACH.speed) {
    const asked = [1, 10, 60].find((one) => one === Number(fill?.rate)) as Rate | undefined;
    if (asked !== undefined && frozen) before.set(session, asked);
    else if (asked !== undefined) rate.value = asked;
  } else if (id === TEACH.back) {
    session.asking.value = null;
    session.caution.value = null;
    session.coachWord.value = null;
    session.news.value = null;
    session.closeUp.value = 'yard';
    const stands = session.view.peek()?.scene.standsAt ?? 'phone';
    session.select(stands === 'yard' ? 'house' : stands);
  }
}

async function nextChange(session: Session): Promise<Answer> {
  if (session.view.peek()?.frozen) return refused({ id: 'why.frozen' });
  if (session.busy.peek() !== null) return refused({ id: 'instructor.busy' });
  const logged = await teach(session, { id: TEACH.speed, fill: { rate: 'next' } });
  if (logged.kind === 'done') await session.runToNextChange();
  return logged;
}

/** Begins a call here in place of whatever is open, which is kept; or takes one up `from` a moment that was kept. */
async function begin(desk: Desk, callId: string, rung: Rung, from?: Progress): Promise<Answer> {
  const { session } = desk;
  await session.leave();
  try {
    const why = await makeReady(desk, callId, from);
    if (why !== undefined) throw new EngineError(why);
  } catch (error) {
    // What was open here is kept, and stands on the list.
    desk.go({ screen: 'start' });
    return refused(toldOf(error));
  }
  const route = { screen: 'call', callId, rung } as const;
  if (writeRoute(route) === writeRoute(desk.route.peek())) await session.take(callId, rung);
  else desk.go(route);
  return { kind: 'done' };
}

/** Puts what a call begins from where it is taken up from. Says why not, where it cannot. */
async function makeReady({ engine, store }: Desk, callId: string, from?: Progress): Promise<Message | undefined> {
  if (!(await store.claim(callId, false, () => {}))) return { id: 'instructor.elsewhere' };
  if (from === undefined) {
    await store.dropProgress(callId);
    return undefined;
  }
  // One that cannot be taken up, of another engine, is not to take the place of what was left of the call.
  await engine.ask({ kind: 'resume', saved: from.saved });
  await store.takeProgress(callId);
  await store.putProgress(from);
  return undefined;
}
