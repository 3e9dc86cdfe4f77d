/** What the readings of a call make together, in words: which of them left few causes, and what is left. */
import type { Sifting } from '../diagnosis/sifting.ts';
import { type Message, say } from '../service/index.ts';
import { seenAt } from './lesson.ts';
import type { CallSession } from './session.ts';
import { faultName } from './session-actions.ts';

export interface TogetherView {
  /** Faults there were to begin with. */
  readonly of: number;
  readonly readings: readonly { readonly seen: Message; readonly left: number }[];
  readonly end: Message;
}

export function togetherView(session: CallSession, sifting: Sifting): TogetherView {
  const { of, readings } = sifting;
  return {
    of,
    readings: readings.map(({ step, left }) => {
      const done = session.done[step];
      const [seen] = done ? seenAt(done, session.done[step - 1]) : [];
      return { seen: seen ?? done?.def.label ?? say('word.nothing'), left };
    }),
    end: endOf(sifting),
  };
}

function endOf({ sound, explanations }: Sifting): Message {
  if (sound) return say('together.sound');
  const [first, second] = explanations;
  if (!first) return say('together.none');
  if (first.length > 1) {
    const [one = '', other = ''] = first;
    const pair = { one: faultName(one), other: faultName(other) };
    return explanations.length === 1
      ? say('together.pair', pair)
      : say('together.pairs', { ...pair, n: explanations.length - 1 });
  }
  const [[one = ''], [other = ''] = []] = [first, second];
  if (!other) return say('together.only', { one: faultName(one) });
  return explanations.length === 2
    ? say('together.two', { one: faultName(one), other: faultName(other) })
    : say('together.many', { n: explanations.length });
}
