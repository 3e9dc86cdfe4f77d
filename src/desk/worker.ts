/** The engine's worker: one request in, one reply out, in the order in which they came. */
import { Answerer } from './answer.ts';
import { toldOf } from './engine.ts';
import type { Numbered, Reply, Request } from './protocol.ts';

const answerer = new Answerer();
let line: Promise<void> = Promise.resolve();

self.addEventListener('message', (event: MessageEvent<Numbered<Request>>) => {
  const { id, body } = event.data;
  line = line.then(async () => self.postMessage({ id, body: await reply(body) } satisfies Numbered<Reply>));
});

async function reply(request: Request): Promise<Reply> {
  try {
    return await answerer.answer(request);
  } catch (error) {
    console.error(error);
    return { kind: 'error', message: toldOf(error) };
  }
}
