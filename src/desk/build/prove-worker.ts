/** One proof, or one solution, and then it is ended. */
import { fetchLibrary } from '../brought.ts';
import { EngineError } from '../engine.ts';
import type { ProveReply, ProveRequest } from './protocol.ts';
import { answerProve } from './prover.ts';

const tell = (reply: ProveReply) => self.postMessage(reply);

self.addEventListener('message', async ({ data }: MessageEvent<ProveRequest>) => {
  try {
    answerProve(data, await fetchLibrary(), tell);
  } catch (error) {
    if (!(error instanceof EngineError)) console.error(error);
    tell({ kind: 'failed' });
  }
});
