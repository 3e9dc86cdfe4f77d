import { useState } from 'preact/hooks';
import type { Action } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import type { Answer, Ask } from './line.ts';
import type { Link } from './link.ts';

/** A trainer's way to do something to the call that is shown. */
export interface Hands {
  /** Something is on its way. */
  readonly busy: boolean;
  /** Why the last of it was not done. */
  readonly refused: Message | null;
  ask(ask: Ask): Promise<Answer>;
  teach(callId: string, id: Action['id'], fill?: Readonly<Record<string, string>>): Promise<boolean>;
}

export function useHands(link: Link): Hands {
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<Message | null>(null);
  async function ask(one: Ask): Promise<Answer> {
    setBusy(true);
    setRefused(null);
    const answer = await link.ask(one);
    setBusy(false);
    if (answer.kind === 'refused') setRefused(answer.why);
    return answer;
  }
  return {
    busy,
    refused,
    ask,
    async teach(callId, id, fill = {}) {
      return (await ask({ kind: 'teach', callId, action: { id, fill } })).kind === 'done';
    },
  };
}
