/** The household's worker: one request and then it is done with; who wants it to stop ends it. */
import { answerHome } from './answer.ts';
import type { HomeReply, HomeRequest } from './protocol.ts';

const post = (reply: HomeReply) => self.postMessage(reply);

self.addEventListener('message', async ({ data }: MessageEvent<HomeRequest>) => {
  try {
    post(await answerHome(data, (share) => post({ kind: 'progress', share })));
  } catch (error) {
    console.error(error);
    post({ kind: 'failed' });
  }
});
