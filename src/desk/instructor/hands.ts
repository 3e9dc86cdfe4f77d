import { useState } from 'preact/hooks';
import type { Action } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import type { Answer, Ask } from './line.ts';
import type { Link } from './link.ts';

/** A trainer's way to do something to the call that is shown. */
export interface Hands {
  /** Something is on its way; what is asked meanwhile waits its turn there. */
  readonly busy: boolean;
  /** Why the last of it was not done. */
  readonly refused: Message | null;
  ask(ask: Ask): Promise<Answer>;
  teach(callId: string, id: Action['id'], fill?: Readonly<Record<string, string>>): Promise<boolean>;
}

export function useHands(link: Link): Hands {
  const [asked, setAsked] = useState(0);
  const [refused, setRefused] = useState<Message | null>(null);
  async function ask(one: Ask): Promise<Answer> {
    setAsked((n) => n + 1);
    setRefused(null);
    const answer = await link.ask(one);
    setAsked((n) => n - 1);
    if (answer.kind === 'refused') setRefused(answer.why);
    return answer;
  }
  return {
    busy: asked > 0,
    refused,
    ask,
    async teach(callId, id, fill = {}) {
      return (await ask({ kind: 'teach', callId, action: { id, fill } })).kind === 'done';
    },
  };
}
