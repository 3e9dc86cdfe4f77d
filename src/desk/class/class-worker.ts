/** One of the workers that replay a class's records. They are started for it and ended after it. */
import { Marker } from './marker.ts';
import type { MarkReply, MarkRequest } from './protocol.ts';

const marker = new Marker((reply: MarkReply) => self.postMessage(reply));

self.addEventListener('message', (event: MessageEvent<MarkRequest>) => void marker.hear(event.data));
