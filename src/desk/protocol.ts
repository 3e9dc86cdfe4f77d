/**
 * What the page and the engine's worker say to each other. Time is asked for (`advance`), never ticked, so a
 * background tab loses nothing. Every request gets exactly one reply with the same `id`.
 */
import type { Guidance } from '../calls/guide.ts';
import type { Droppable, HoodView } from '../calls/hood.ts';
import type { Led } from '../calls/rungs.ts';
import type { CallFile } from '../calls/schema.ts';
import type { Action, Assistance, CalendarClock, CallMode, CallView, DebriefView, StageId } from '../calls/view.ts';
import type { Learnt } from '../records/learnt/learnt.ts';
import type { Wall } from '../records/learnt/of-call.ts';
import type { Scene } from '../scene/types.ts';
import type { Why } from '../scene/why.ts';
import type { LocalText, Message } from '../service/message.ts';
import type { Refusal } from '../share/read.ts';
import type { TraineeSheet, TrainerSheet } from '../share/sheets.ts';
import type { Language } from '../words/words.ts';

/** A call as the list shows it. */
export interface CallCard {
  readonly id: string;
  readonly title: LocalText;
  readonly summary: LocalText;
  /** How the trouble shows itself: by an alarm, or by what the household complains of. */
  readonly kind: CallFile['kind'];
  readonly unit: string;
  readonly lot: LocalText;
  /** Minutes the reference solution takes. */
  readonly minutes: number;
  readonly starts: { readonly secondOfDay: number; readonly month: number };
  /** Its file, where it did not ship. */
  readonly brought?: string;
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
  /** The file of the call itself, where it did not ship: what was done stays with the call it was done on. */
  readonly brought?: string;
}

/** What a link or a file brought. */
export interface BroughtCalls {
  /** Each with its file as it is kept. */
  readonly calls: readonly { readonly card: CallCard; readonly text: string }[];
  /** Ids of those that ship anyway. */
  readonly own: readonly string[];
  /** Title of the set they came in. */
  readonly set?: LocalText;
}

/** One visit as a lot's book tells it. */
export interface BookView {
  readonly at: CalendarClock;
  readonly why: LocalText;
  readonly lines: readonly Message[];
}

export interface LotView {
  readonly lot: string;
  readonly unit: string;
  /** Its phone rings now; time has still to pass there; or it is quiet for now, and does not say for how long. */
  readonly state: 'rings' | 'living' | 'quiet';
  readonly callId?: string;
  readonly why?: LocalText;
  readonly at?: CalendarClock;
  readonly book: readonly BookView[];
  readonly row: Message;
}

/** The round as its screen shows it. */
export interface RoundView {
  readonly title: LocalText;
  readonly source: LocalText;
  readonly weeks: readonly { readonly from: CalendarClock; readonly doors: number; readonly now: boolean }[];
  readonly lots: readonly LotView[];
  /** Lots on which time has still to pass before it is known who rings next. */
  readonly living: number;
  readonly next?: string;
  readonly over: boolean;
  readonly all: Message;
}

/** A call in progress with everything open. */
export interface OpenCall extends HoodView, Truth {}

/** The works at an instant with everything open, and why their numbers are what they are. */
export interface Truth {
  readonly scene: Scene;
  readonly whys: readonly Why[];
}

/** What a trainer asks of the call in progress. */
export type HoodAsk =
  | { readonly what: 'call' }
  /** The truth at a past instant. */
  | { readonly what: 'scene'; readonly at_ms: number }
  | { readonly what: 'droppable' }
  /** The call as it stood at a moment, by the moment's place in the log. */
  | { readonly what: 'moment'; readonly place: number };

export type HoodTold =
  | { readonly what: 'call'; readonly call: OpenCall }
  | ({ readonly what: 'scene' } & Truth)
  | { readonly what: 'droppable'; readonly faults: readonly Droppable[] }
  | {
      readonly what: 'moment';
      readonly stage: StageId;
      readonly clock: CalendarClock;
      readonly saved: SavedCall;
    };

/** Whose sheet of a call. */
export type SheetOf = 'trainer' | 'trainee';

export type Request =
  /** The cards of what ships, their texts in one language. */
  | { readonly kind: 'list'; readonly language: Language }
  /** The call of a day, of those that were listed; the day by its number since 1 January 1970. */
  | { readonly kind: 'ofDay'; readonly day: number }
  /** `led`: how far a guide leads, where one does. `brought`: the call's file, where it did not ship. */
  | {
      readonly kind: 'open';
      readonly callId: string;
      readonly mode: CallMode;
      readonly led?: Led;
      readonly brought?: string;
    }
  | { readonly kind: 'resume'; readonly saved: SavedCall }
  | { readonly kind: 'advance'; readonly to_ms: number }
  | { readonly kind: 'nextChange'; readonly limit_ms: number }
  /** `sure`: the coach's caution was heard. */
  | { readonly kind: 'act'; readonly action: Action; readonly at_ms: number; readonly sure?: boolean }
  | { readonly kind: 'tick'; readonly fault: string; readonly on: boolean; readonly at_ms: number }
  | { readonly kind: 'save' }
  | { readonly kind: 'record'; readonly assistance?: Assistance }
  /** The call that has ended as a record of learning. */
  | { readonly kind: 'learnt'; readonly wall: Wall }
  /** A kept call as a text of at most so many characters, for a course platform. */
  | { readonly kind: 'pack'; readonly saved: SavedCall; readonly most: number }
  /** A call that a course platform kept as such a text, beside what this browser has of it. */
  | {
      readonly kind: 'unpack';
      readonly callId: string;
      readonly text: string;
      readonly here?: SavedCall;
      readonly brought?: string;
    }
  | { readonly kind: 'debrief' }
  /** The truth at an instant of the call that was just closed, for the debrief's replay. */
  | { readonly kind: 'xray'; readonly at_ms: number }
  | { readonly kind: 'hood'; readonly ask: HoodAsk }
  /** Opens the round as the browser kept it; nothing kept begins the year. */
  | { readonly kind: 'round'; readonly kept: unknown }
  /** Lets one lot live on to its next door. */
  | { readonly kind: 'roundLive' }
  /** Folds the call that is over into its lot. */
  | { readonly kind: 'roundClose' }
  /** Reads what somebody handed on, a link or the text of a file. */
  | { readonly kind: 'bring'; readonly from: 'link' | 'file'; readonly text: string }
  | { readonly kind: 'sheet'; readonly callId: string; readonly brought?: string; readonly who: SheetOf };

export type Reply =
  | { readonly kind: 'list'; readonly calls: readonly CallCard[] }
  | { readonly kind: 'ofDay'; readonly callId: string }
  /**
   * `caution`: the action was not done yet, for a coach says something before it. `guide`: where a guide leads next, after
   * what opens a call or is done in it.
   */
  | {
      readonly kind: 'view';
      readonly view: CallView;
      readonly refused?: Message;
      readonly caution?: Message;
      readonly guide?: Guidance;
    }
  | { readonly kind: 'saved'; readonly saved: SavedCall }
  | { readonly kind: 'record'; readonly record: unknown; readonly fileName: string }
  | { readonly kind: 'learnt'; readonly learnt: Learnt }
  /** `holds`: how many of the actions. */
  | { readonly kind: 'packed'; readonly text: string; readonly holds: number; readonly of: number }
  /** What to go on with, or why the platform's is not taken up. */
  | { readonly kind: 'unpacked'; readonly saved?: SavedCall; readonly why?: Message }
  | { readonly kind: 'debrief'; readonly debrief: DebriefView }
  | ({ readonly kind: 'xray' } & Truth)
  | { readonly kind: 'hood'; readonly told: HoodTold }
  | { readonly kind: 'round'; readonly view: RoundView; readonly kept: unknown; readonly anew: boolean }
  | { readonly kind: 'brought'; readonly brought: BroughtCalls | Refusal }
  | { readonly kind: 'sheet'; readonly sheet: TraineeSheet | TrainerSheet }
  | { readonly kind: 'error'; readonly message: Message };

export type Numbered<T> = { readonly id: number; readonly body: T };
