/** The expert's worker. It is fetched and started only where somebody wants its word, and never holds up the engine's. */
import { Expert } from './expert-answer.ts';
import type { ExpertReply, ExpertRequest } from './expert-protocol.ts';

const expert = new Expert((reply: ExpertReply) => self.postMessage(reply));

self.addEventListener('message', (event: MessageEvent<ExpertRequest>) => void expert.answer(event.data));
