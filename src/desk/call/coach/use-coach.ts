import { effect, useSignal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Advice } from '../../../calls/coach.ts';
import type { Message } from '../../../service/message.ts';
import type { Desk } from '../../desk.ts';
import { coach, type Headway, startExpert } from '../../expert.ts';
import { afterAct, climb, FOOT, mayAsk, WAIT_MS } from './ladder.ts';

/** A hint as it was given, with the call's clock then. */
export interface Given {
  readonly key: number;
  readonly secondOfDay: number;
  readonly hint: Message;
}

export interface CoachState {
  readonly advice: Advice | null;
  /** Something was done that the advice does not know of yet. */
  readonly thinking: boolean;
  readonly headway: Headway | null;
  readonly failed: Message | null;
  /** The hints of this ladder, the last one first. */
  readonly given: readonly Given[];
  readonly may: 'now' | 'wait' | 'act-first';
  ask(): void;
  retry(): void;
}

/** A coach in a worker of its own, told of the call whenever something was done in it; started once it is wanted. */
export function useCoach(desk: Desk, wanted: boolean): CoachState {
  const { session, wallClock } = desk;
  const [attempt, setAttempt] = useState(0);
  const [advice, setAdvice] = useState<Advice | null>(null);
  const [headway, setHeadway] = useState<Headway | null>(null);
  const [failed, setFailed] = useState<Message | null>(null);
  const [ladder, setLadder] = useState(FOOT);
  const [given, setGiven] = useState<readonly Given[]>([]);
  const thinking = useSignal(true);
  const acts = useRef(0);
  const [, look] = useState(0);

  useEffect(() => {
    if (!wanted) return;
    setFailed(null);
    const line = coach(startExpert(), {
      headway: setHeadway,
      advice(next, fresh) {
        setAdvice(next);
        setHeadway(null);
        thinking.value = !fresh;
        session.coachWord.value = next.unasked ?? null;
      },
      failed: setFailed,
    });
    let told = -1;
    const stop = effect(() => {
      const saved = session.kept.value;
      const done = actionsOf(saved?.record);
      if (saved === null || done === told) return;
      told = done;
      thinking.value = true;
      line.tell(saved);
    });
    return () => {
      stop();
      line.close();
    };
  }, [session, thinking, attempt, wanted]);

  useEffect(
    () =>
      effect(() => {
        const done = session.handled.value;
        if (done === null) return;
        acts.current += 1;
        setLadder((before) => {
          const after = afterAct(before, done.id);
          if (after !== before) setGiven([]);
          return after;
        });
      }),
    [session],
  );

  const may = mayAsk(ladder, wallClock(), acts.current);
  // The pause between two hints ends by itself.
  useEffect(() => {
    if (may !== 'wait') return;
    const timer = setTimeout(() => look((n) => n + 1), WAIT_MS);
    return () => clearTimeout(timer);
  }, [may]);

  return {
    advice,
    thinking: thinking.value,
    headway,
    failed,
    given,
    may,
    ask() {
      const view = session.view.value;
      if (advice === null || view === null || thinking.value || may !== 'now') return;
      const next = climb(ladder, wallClock(), acts.current, advice.check);
      const hint = advice.hints[next.level - 1] ?? advice.hints.at(-1);
      if (hint === undefined) return;
      setLadder(next);
      setGiven([{ key: given.length, secondOfDay: view.clock.secondOfDay, hint }, ...given]);
      if (next.level > session.assistance.value.hints) void session.help({ hints: next.level });
    },
    retry: () => setAttempt(attempt + 1),
  };
}

/** How many actions a kept call holds. */
function actionsOf(record: unknown): number {
  const { actions } = (record ?? {}) as { readonly actions?: readonly unknown[] };
  return actions?.length ?? 0;
}
