/** The engine's worker: one request in, one reply out. */
import { config } from 'zod/mini';
import { say } from '../service/message.ts';
import { Answerer } from './answer.ts';
import type { Numbered, Reply, Request } from './protocol.ts';

// The page's policy forbids building code from text, which the validator would otherwise try.
config({ jitless: true });

const answerer = new Answerer();

self.addEventListener('message', (event: MessageEvent<Numbered<Request>>) => {
  const { id, body } = event.data;
  self.postMessage({ id, body: reply(body) } satisfies Numbered<Reply>);
});

function reply(request: Request): Reply {
  try {
    return answerer.answer(request);
  } catch (error) {
    console.error(error);
    return { kind: 'error', message: say('trouble.engine') };
  }
}
