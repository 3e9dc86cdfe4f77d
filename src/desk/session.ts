import { type Signal, signal } from '@preact/signals';
import type { Guidance } from '../calls/guide.ts';
import { ledOn, type Rung } from '../calls/rungs.ts';
import type { Action, ActionView, Assistance, CallView, PartView } from '../calls/view.ts';
import type { Message } from '../service/message.ts';
import type { ViewName } from '../yard/index.ts';
import { type Rate, startClockwork } from './clockwork.ts';
import { type Engine, toldOf } from './engine.ts';
import { createKeeping } from './keeping.ts';
import { CLOSE_UPS } from './picture.ts';
import type { SavedCall } from './protocol.ts';
import { haveRound, isRoundCall } from './round-call.ts';
import { HeldElsewhere, type Store } from './store.ts';

/** What just changed, for the news strip and the live region. */
export interface News {
  readonly key: number;
  readonly at_s: number;
  readonly messages: readonly Message[];
  readonly refused: boolean;
  /** That somebody's act made it, and not the clock alone. */
  readonly byAction: boolean;
}

/** One call being worked on: the last view of it, the clock, and the one way in for everything a person does. */
export interface Session {
  readonly view: Signal<CallView | null>;
  readonly rate: Signal<Rate>;
  /** What is being waited for, so that nothing is pressed twice. */
  readonly busy: Signal<'open' | 'act' | 'seek' | null>;
  readonly part: Signal<PartView['id']>;
  readonly closeUp: Signal<ViewName>;
  readonly news: Signal<News | null>;
  /** The action that was just done, a new value each time. */
  readonly handled: Signal<Action | null>;
  /** The action whose form is open. */
  readonly asking: Signal<ActionView | null>;
  /** What a coach says before an action, which waits for a second thought. */
  readonly caution: Signal<{ readonly action: Action; readonly message: Message } | null>;
  /** Help that was taken so far. */
  readonly assistance: Signal<Assistance>;
  /** Where a guide leads next, or its word that it leads no further; null where none leads. */
  readonly guide: Signal<Guidance | null>;
  /** A word that a coach has unasked. */
  readonly coachWord: Signal<Message | null>;
  /** The call as it was last kept: all that was done. */
  readonly kept: Signal<SavedCall | null>;
  /** Key of the finished record once the call has ended. */
  readonly finishedKey: Signal<number | null>;
  /** That another tab has the call open, or has taken it over since. */
  readonly elsewhere: Signal<'open' | 'taken' | null>;
  /** Takes a call up where it was left, or from its beginning on this rung; `over` from whatever tab has it open. */
  take(callId: string, rung?: Rung, over?: boolean): Promise<void>;
  /** Does an action; `sure` once the coach's caution was heard. */
  dispatch(action: Action, sure?: boolean): Promise<void>;
  /**
   * Does what a trainer asks for, in turn with the trainee, who hears nothing of it but what can be seen or heard. Gives why
   * not, null once it is done, undefined where the call is gone.
   */
  teach(action: Action): Promise<Message | null | undefined>;
  /** Notes help that was taken. */
  help(taken: Partial<Assistance>): Promise<void>;
  /** Does an action, or opens its form where it has one. */
  press(action: ActionView): void;
  tick(fault: string, on: boolean): Promise<void>;
  setRate(rate: Rate): void;
  runToNextChange(): Promise<void>;
  select(part: PartView['id']): void;
  /** Saves and lets go of the call, to come back to later. */
  leave(): Promise<void>;
}

interface Needs {
  readonly engine: Engine;
  readonly store: Store;
  readonly wallClock: () => number;
  readonly fail: (told: Message) => void;
  /** How a call is taken alone; for practice unless it is said. */
  readonly alone?: 'practice' | 'graded' | undefined;
}

/** What a coached call begins with. */
export const NO_HELP: Assistance = { hints: 0, likely: false };
const LOOK_AHEAD_MS = 48 * 3_600_000;

export function createSession({ engine, store, wallClock, fail, alone = 'practice' }: Needs): Session {
  const view = signal<CallView | null>(null);
  const rate = signal<Rate>(0);
  const busy = signal<'open' | 'act' | 'seek' | null>(null);
  const part = signal<PartView['id']>('phone');
  const closeUp = signal<ViewName>('yard');
  const news = signal<News | null>(null);
  const handled = signal<Action | null>(null);
  const asking = signal<ActionView | null>(null);
  const caution = signal<{ readonly action: Action; readonly message: Message } | null>(null);
  const assistance = signal(NO_HELP);
  const guide = signal<Guidance | null>(null);
  const coachWord = signal<Message | null>(null);
  const finishedKey = signal<number | null>(null);
  const elsewhere = signal<'open' | 'taken' | null>(null);
  const { kept, due, keep, finish } = createKeeping({ engine, store, wallClock }, assistance);
  let line: Promise<unknown> = Promise.resolve();
  let newsKey = 0;

  /** Everything waits its turn, so that an action's instant is the one that was last shown. */
  function inTurn<T>(work: () => Promise<T>): Promise<T | undefined> {
    const done = line.then(work).catch((error: unknown) => {
      rate.value = 0;
      if (error instanceof HeldElsewhere) lose();
      else fail(toldOf(error));
      return undefined;
    });
    line = done;
    return done;
  }

  function tell(at: CallView, messages: readonly Message[], refused: boolean, byAction: boolean) {
    if (messages.length === 0) return;
    newsKey += 1;
    news.value = { key: newsKey, at_s: at.now_ms / 1000, messages, refused, byAction };
  }

  /** What was done is kept before it is seen: whatever becomes of the page then, it was done. */
  async function show(next: CallView, byAction: boolean, refused?: Message) {
    const ends = next.ended && finishedKey.value === null;
    const saved = ends || (byAction && !next.ended) ? await keep(next) : null;
    const before = view.value;
    view.value = next;
    if (refused !== undefined) tell(next, [refused], true, true);
    else if (byAction || !sameMessages(before?.changes, next.changes)) tell(next, next.changes, false, byAction);
    if (before?.lamp === 'dark' && next.lamp === 'lit' && rate.value > 1) rate.value = 1;
    if (ends) rate.value = 0;
    // The debrief may not be to be had just now: kept, the call comes to its end when it is next taken up.
    if (ends && saved !== null) finishedKey.value = await finish(next.callId, saved);
    else if (saved === null && due()) await save();
  }

  async function save() {
    const at = view.value;
    if (at !== null && !at.ended) await keep(at);
  }

  /** Another tab has taken the call over: all that was seen done here is there now. */
  function lose() {
    clear();
    elsewhere.value = 'taken';
  }

  function lost(callId: string) {
    void inTurn(async () => {
      if (view.value?.callId === callId) lose();
    });
  }

  function clear() {
    view.value = null;
    news.value = null;
    handled.value = null;
    asking.value = null;
    caution.value = null;
    assistance.value = NO_HELP;
    guide.value = null;
    coachWord.value = null;
    kept.value = null;
    finishedKey.value = null;
    elsewhere.value = null;
    rate.value = 0;
    closeUp.value = 'yard';
  }

  /** The call's file, where it was brought. */
  async function fileOf(callId: string) {
    const brought = await store.broughtBy(callId);
    return brought && { brought: brought.text };
  }

  /** What was left is asked for in turn too: a call that has just ended is still being put away. */
  async function take(callId: string, rung: Rung = 'alone', over = false) {
    busy.value = 'open';
    await inTurn(async () => {
      clear();
      if (!(await store.claim(isRoundCall(callId) ? 'round' : callId, over, () => lost(callId)))) {
        elsewhere.value = 'open';
        return;
      }
      const left = await store.takeProgress(callId);
      await haveRound(callId, engine, () => store.takeRound());
      const mode = rung === 'alone' ? alone : 'coached';
      const led = ledOn(rung);
      const further = led === undefined ? {} : { led };
      const reply = await engine.ask(
        left === undefined
          ? { kind: 'open', callId, mode, ...further, ...(await fileOf(callId)) }
          : { kind: 'resume', saved: left.saved },
      );
      assistance.value = left === undefined ? { ...NO_HELP, ...further } : (left.saved.assistance ?? NO_HELP);
      guide.value = reply.guide ?? null;
      const stands = reply.view.scene.standsAt;
      part.value = stands === 'yard' ? 'house' : stands;
      // Before the view: whoever sees it may press Pause at once.
      rate.value = left === undefined ? 1 : 0;
      await show(reply.view, left === undefined, reply.refused);
    });
    busy.value = null;
  }

  function act(action: Action, sure: boolean, taught = false): Promise<Message | null | undefined> {
    return inTurn(async () => {
      const at = view.value;
      if (at === null || at.ended) return undefined;
      const reply = await engine.ask({ kind: 'act', action, at_ms: at.now_ms, ...(sure ? { sure } : {}) });
      const { refused } = reply;
      if (reply.caution !== undefined) caution.value = { action, message: reply.caution };
      else if (refused === undefined && !taught) handled.value = { ...action };
      await show(reply.view, true, taught ? undefined : refused);
      // The last word of a call that is over stands as long as the call is seen.
      if (!reply.view.ended) guide.value = reply.guide ?? null;
      return refused ?? null;
    });
  }

  const session: Session = {
    view,
    rate,
    busy,
    part,
    closeUp,
    news,
    handled,
    asking,
    caution,
    assistance,
    guide,
    coachWord,
    kept,
    finishedKey,
    elsewhere,
    take,
    async dispatch(action, sure = false) {
      if (busy.value !== null) return;
      busy.value = 'act';
      await act(action, sure);
      busy.value = null;
    },
    teach: (action) => act(action, true, true),
    async help(taken) {
      assistance.value = { ...assistance.value, ...taken };
      await inTurn(save);
    },
    press(action) {
      if (!action.available || busy.value !== null) return;
      if (action.form === undefined || action.form.length === 0) {
        void session.dispatch(action.action);
        return;
      }
      session.select(action.part);
      asking.value = action;
    },
    async tick(fault, on) {
      await inTurn(async () => {
        const at = view.value;
        if (at === null || at.ended) return;
        const reply = await engine.ask({ kind: 'tick', fault, on, at_ms: at.now_ms });
        await show(reply.view, true, reply.refused);
      });
    },
    setRate(next) {
      if (view.value !== null && !view.value.ended && !view.value.frozen) rate.value = next;
    },
    async runToNextChange() {
      if (busy.value !== null) return;
      busy.value = 'seek';
      rate.value = 0;
      await inTurn(async () => {
        const at = view.value;
        if (at === null || at.ended) return;
        const reply = await engine.ask({ kind: 'nextChange', limit_ms: at.now_ms + LOOK_AHEAD_MS });
        await show(reply.view, true, reply.refused);
      });
      busy.value = null;
    },
    select(next) {
      if (next !== part.value) asking.value = null;
      part.value = next;
      if (closeUp.value !== CLOSE_UPS[next]) closeUp.value = 'yard';
    },
    async leave() {
      rate.value = 0;
      await inTurn(save);
      clear();
      store.letGo();
    },
  };

  startClockwork({
    rate: () => (busy.value === null ? rate.value : 0),
    async step(by_ms) {
      await inTurn(async () => {
        const at = view.value;
        if (at === null || at.ended || busy.value !== null) return;
        const reply = await engine.ask({ kind: 'advance', to_ms: at.now_ms + by_ms });
        await show(reply.view, false);
      });
    },
  });
  return session;
}

function sameMessages(a: readonly Message[] | undefined, b: readonly Message[]): boolean {
  return b.length === 0 || JSON.stringify(a) === JSON.stringify(b);
}
