/** What a trainer has in hand of one window: how its call stands, and the way to ask something of it. */
import { type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../desk.ts';
import type { Answer, Ask, Told } from './line.ts';
import { answerAsk, follow } from './trainee.ts';

export interface Link {
  /** Null until it was first told. */
  readonly told: ReadonlySignal<Told | null>;
  /** Whether the window is gone. */
  readonly gone: ReadonlySignal<boolean>;
  ask(ask: Ask): Promise<Answer>;
  close(): void;
}

/** The call in this very window. */
export function linkHere(desk: Desk): Link {
  const told = signal<Told | null>(null);
  const following = follow(desk, (next) => {
    told.value = next;
  });
  return { told, gone: signal(false), ask: (ask) => answerAsk(desk, ask), close: following.stop };
}
