/** The worker beside Build: answers in the order in which it was asked. */
import { fetchLibrary } from '../brought.ts';
import { Looker } from './looker.ts';
import type { LookReply, LookRequest } from './protocol.ts';

const looker = new Looker(fetchLibrary);
let line: Promise<void> = Promise.resolve();

self.addEventListener('message', ({ data }: MessageEvent<LookRequest>) => {
  line = line.then(async () => {
    const reply = await looker.answer(data).catch((error: unknown): LookReply => {
      console.error(error);
      return { kind: 'failed' };
    });
    self.postMessage(reply);
  });
});
