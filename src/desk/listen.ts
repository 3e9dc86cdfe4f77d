import type { Desk } from './desk.ts';
import { CHANNEL, LINE_VERSION } from './instructor/channel.ts';

/** Says over the channel of the windows that a page is here; what answers a trainer there is fetched once one calls. */
export function listenForTrainer(desk: Desk): void {
  if (!('BroadcastChannel' in globalThis)) return;
  const channel = new BroadcastChannel(CHANNEL);
  let answering: Promise<(data: unknown) => void> | undefined;
  channel.onmessage = ({ data }) => {
    if (data?.kind === 'roll') {
      answering ??= import('./instructor/answering.ts').then(({ answerOn }) => answerOn(desk, channel));
    }
    answering?.then(
      (hear) => hear(data),
      () => {
        answering = undefined;
      },
    );
  };
  channel.postMessage({ version: LINE_VERSION, kind: 'hello', from: '' });
}
