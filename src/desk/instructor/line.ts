/**
 * What a trainer's window and a trainee's window say to each other, over a channel that all windows of the browser hear.
 * Plain JSON, checked by whoever hears it (`shapes.ts`).
 */
import type { Droppable } from '../../calls/hood.ts';
import type { Rung } from '../../calls/rungs.ts';
import type { Action, CalendarClock } from '../../calls/view.ts';
import type { LocalText, Message } from '../../service/message.ts';
import type { Rate } from '../clockwork.ts';
import type { OpenCall, SavedCall, Truth } from '../protocol.ts';
import type { Progress } from '../stored.ts';

/** A window in which a trainee works or could, as a trainer chooses it. */
export interface TraineeWindow {
  readonly call: {
    readonly callId: string;
    readonly title: LocalText;
    readonly stage: string;
    readonly clock: CalendarClock;
  } | null;
  /** In view: one that is hidden lets no time pass. */
  readonly shown: boolean;
}

/** How the call of a window stands. */
export interface Told {
  /** None where no call is open there. */
  readonly call: OpenCall | null;
  readonly rate: Rate;
  readonly shown: boolean;
}

/** What a trainer asks of a window. Whatever concerns a call names it, so that it does not happen to the next one. */
export type Ask =
  | { readonly kind: 'teach'; readonly callId: string; readonly action: Action }
  | { readonly kind: 'next-change'; readonly callId: string }
  | { readonly kind: 'scene'; readonly callId: string; readonly at_ms: number }
  | { readonly kind: 'droppable'; readonly callId: string }
  | { readonly kind: 'moment'; readonly callId: string; readonly place: number }
  /** The call as it was last kept, for an expert to reckon with. */
  | { readonly kind: 'saved'; readonly callId: string }
  | { readonly kind: 'begin'; readonly callId: string; readonly rung: Rung }
  /** Takes a call up from a moment that was kept. */
  | { readonly kind: 'take-up'; readonly from: Progress };

export type Answer =
  | { readonly kind: 'done' }
  | { readonly kind: 'refused'; readonly why: Message }
  | ({ readonly kind: 'scene' } & Truth)
  | { readonly kind: 'droppable'; readonly faults: readonly Droppable[] }
  | { readonly kind: 'moment'; readonly kept: Progress }
  | { readonly kind: 'saved'; readonly saved: SavedCall };

/** From a trainer's window; `to` names the trainee's. */
export type InstructorSays =
  | { readonly kind: 'roll' }
  | { readonly kind: 'watch'; readonly to: string }
  | { readonly kind: 'unwatch'; readonly to: string }
  | { readonly kind: 'ask'; readonly to: string; readonly n: number; readonly ask: Ask };

/** From a trainee's window; `to` names the trainer's. */
export type TraineeSays =
  /** A page was opened. */
  | { readonly kind: 'hello' }
  | { readonly kind: 'here'; readonly window: TraineeWindow }
  | { readonly kind: 'gone' }
  | { readonly kind: 'told'; readonly told: Told }
  | { readonly kind: 'answer'; readonly to: string; readonly n: number; readonly answer: Answer };

export type Said<T> = T & { readonly version: number; readonly from: string };

/** Where messages go. */
export type Post = Pick<BroadcastChannel, 'postMessage'>;

/** A name for a window that no other has. */
export function newName(): string {
  return Math.random().toString(36).slice(2, 12);
}
