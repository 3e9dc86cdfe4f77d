/**
 * What the page and the engine's worker say to each other. Time is asked for (`advance`), never ticked, so a
 * background tab loses nothing. Every request gets exactly one reply with the same `id`.
 */
import type { Action, Assistance, CallMode, CallView, DebriefView } from '../calls/view.ts';
import type { Scene } from '../scene/types.ts';
import type { LocalText, Message } from '../service/message.ts';

/** A call as the list shows it. */
export interface CallCard {
  readonly id: string;
  readonly title: LocalText;
  readonly summary: LocalText;
  /** How the trouble shows itself: by an alarm, or by what the household complains of. */
  readonly kind: 'alarm' | 'complaint';
  readonly unit: string;
  readonly lot: LocalText;
  /** Minutes the reference solution takes. */
  readonly minutes: number;
  readonly starts: { readonly secondOfDay: number; readonly month: number };
}

/** A saved call in progress: enough to rebuild it bit for bit. Stored as JSON. */
export interface SavedCall {
  readonly version: 1;
  readonly callId: string;
  readonly mode: CallMode;
  readonly record: unknown;
  readonly now_ms: number;
  readonly title: LocalText;
  /** Help that was taken: the page counts it, the engine knows nothing of it. */
  readonly assistance?: Assistance;
}

export type Request =
  | { readonly kind: 'list' }
  | { readonly kind: 'open'; readonly callId: string; readonly mode: CallMode }
  | { readonly kind: 'resume'; readonly saved: SavedCall }
  | { readonly kind: 'advance'; readonly to_ms: number }
  | { readonly kind: 'nextChange'; readonly limit_ms: number }
  /** `sure`: the coach's caution was heard. */
  | { readonly kind: 'act'; readonly action: Action; readonly at_ms: number; readonly sure?: boolean }
  | { readonly kind: 'tick'; readonly fault: string; readonly on: boolean; readonly at_ms: number }
  | { readonly kind: 'save' }
  | { readonly kind: 'record'; readonly assistance?: Assistance }
  | { readonly kind: 'debrief' }
  /** The truth at an instant of the call that was just closed, for the debrief's replay. */
  | { readonly kind: 'xray'; readonly at_ms: number };

export type Reply =
  | { readonly kind: 'list'; readonly calls: readonly CallCard[] }
  /** `caution`: the action was not done yet, for a coach says something before it. */
  | { readonly kind: 'view'; readonly view: CallView; readonly refused?: Message; readonly caution?: Message }
  | { readonly kind: 'saved'; readonly saved: SavedCall }
  | { readonly kind: 'record'; readonly record: unknown; readonly fileName: string }
  | { readonly kind: 'debrief'; readonly debrief: DebriefView }
  | { readonly kind: 'xray'; readonly scene: Scene }
  | { readonly kind: 'error'; readonly message: Message };

export type Numbered<T> = { readonly id: number; readonly body: T };
