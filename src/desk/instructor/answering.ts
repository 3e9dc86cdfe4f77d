/** A trainee's window on the channel: says who it is, tells whoever watches it how the call stands, and answers them. */
import { effect } from '@preact/signals';
import type { Desk } from '../desk.ts';
import { LINE_VERSION } from './channel.ts';
import { newName, type Post, type TraineeSays, type TraineeWindow } from './line.ts';
import { type Lives, openLives } from './lives.ts';
import { heardOfInstructor } from './shapes.ts';
import { answerAsk, follow } from './trainee.ts';

/** Begins to answer. Gives the ear for what comes over the channel. */
export async function answerOn(
  desk: Desk,
  channel: Post,
  lives: Lives = openLives(),
): Promise<(data: unknown) => void> {
  const name = newName();
  /** Trainers' windows that watch this one, each with the way not to wait for its end. */
  const watching = new Map<string, () => void>();
  let following: ReturnType<typeof follow> | undefined;
  await lives.hold(name);
  const say = (said: TraineeSays) => channel.postMessage({ version: LINE_VERSION, from: name, ...said });

  const here = () => {
    const window = windowOf(desk);
    say(window === undefined ? { kind: 'gone' } : { kind: 'here', window });
  };
  let last = '';
  const tellChanges = () => {
    const is = JSON.stringify(windowOf(desk));
    if (is !== last) here();
    last = is;
  };
  effect(tellChanges);
  document.addEventListener('visibilitychange', tellChanges);
  addEventListener('pagehide', () => say({ kind: 'gone' }));

  function watched(by: string, on: boolean) {
    watching.get(by)?.();
    watching.delete(by);
    if (on)
      watching.set(
        by,
        lives.whenOver(by, () => watched(by, false)),
      );
    desk.trainers.value = watching.size;
    if (watching.size === 0) {
      following?.stop();
      following = undefined;
    } else if (following === undefined) following = follow(desk, (told) => say({ kind: 'told', told }));
    else following.now();
  }

  return (data) => {
    const heard = heardOfInstructor(data);
    // A trainer's page of another version makes out that much of the answer that it is of another version.
    if (heard === 'other' && (data as { readonly kind?: unknown }).kind === 'roll') here();
    if (heard === undefined || heard === 'other') return;
    if (heard.kind === 'roll') here();
    else if (heard.to !== name) return;
    else if (heard.kind === 'ask') {
      const { from: to, n } = heard;
      void answerAsk(desk, heard.ask).then((answer) => say({ kind: 'answer', to, n, answer }));
    } else watched(heard.from, heard.kind === 'watch');
  };
}

/** This window as a trainer chooses it; none while a trainer's own desk is on screen. The clock goes by minutes. */
function windowOf({ route, session }: Desk): TraineeWindow | undefined {
  const shown = !document.hidden;
  if (route.value.screen === 'instructor') return undefined;
  const view = session.view.value;
  if (view === null) return { call: null, shown };
  const { callId, title, stage, clock } = view;
  const minute = 60 * Math.floor(clock.secondOfDay / 60);
  return { call: { callId, title, stage, clock: { ...clock, secondOfDay: minute } }, shown };
}
