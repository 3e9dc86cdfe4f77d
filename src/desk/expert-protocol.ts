/**
 * What the page and the expert's worker say to each other. A worker is asked one thing at a time and tells as it goes; who
 * has heard enough ends the worker.
 */
import type { Advice } from '../calls/coach.ts';
import type { StepReviewView } from '../calls/lesson.ts';
import type { TogetherView } from '../calls/together.ts';
import type { Message } from '../service/message.ts';
import type { SavedCall } from './protocol.ts';

export type ExpertRequest =
  /** Every step of a finished call, one after the other, then `reviewed`. */
  | { readonly kind: 'review'; readonly saved: SavedCall }
  /** What a coach would say now. The same worker, asked again later in the call, only does what was done since. */
  | { readonly kind: 'advise'; readonly saved: SavedCall };

export type ExpertReply =
  /** So many of the causes have been lived through up to the report. */
  | { readonly kind: 'lived'; readonly done: number; readonly of: number }
  | { readonly kind: 'step'; readonly review: StepReviewView; readonly of: number }
  | { readonly kind: 'reviewed'; readonly together: TogetherView }
  | { readonly kind: 'advice'; readonly advice: Advice }
  | { readonly kind: 'error'; readonly message: Message };
