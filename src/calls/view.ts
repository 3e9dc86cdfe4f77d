/**
 * What a screen gets of a call in progress: one value, made anew after every advance and every action. It holds only
 * what the person on the call may know; the desk shows it and sends `Action`s back, nothing else.
 */
import type { PartId, Scene } from '../scene/types.ts';
import type { LocalText, Message } from '../service/message.ts';
import type { Led } from './rungs.ts';
import type { Account } from './schema.ts';

/** One thing a person does. `fill` carries the answers of its form, by field id. Plain JSON: it goes into the record. */
export interface Action {
  readonly id: string;
  readonly fill?: Readonly<Record<string, string | readonly string[]>>;
}

export type ActionGroup = 'look' | 'measure' | 'operate' | 'mend' | 'say';

export interface FormField {
  readonly id: string;
  readonly label: Message;
  readonly kind: 'one' | 'many';
  readonly options: readonly { readonly id: string; readonly label: Message }[];
  /** Most options that may be ticked. */
  readonly most?: number;
}

/** Something on the panel, the float tree or the housing that a hand can work in the close-up. */
export type ControlId =
  | 'breaker-alarm'
  | 'breaker-compressor'
  | 'breaker-pump'
  | 'selector'
  | 'silence'
  | 'test'
  | 'timer'
  | 'float-stop'
  | 'float-dose'
  | 'float-redundant-off'
  | 'float-start-stop'
  | 'float-override'
  | 'float-high-water';

export interface ActionView {
  readonly action: Action;
  readonly part: PartId | 'phone';
  readonly group: ActionGroup;
  readonly label: Message;
  readonly minutes: number;
  readonly cost_usd: number;
  readonly available: boolean;
  /** Why not, and what would make it possible. */
  readonly why?: Message;
  readonly form?: readonly FormField[];
  readonly control?: ControlId;
}

export interface PartView {
  readonly id: PartId | 'phone';
  readonly name: Message;
  readonly about: Message;
  readonly here: boolean;
  readonly cautions: readonly Message[];
  readonly actions: readonly ActionView[];
  /** What is known of the part now, in words: the parallel of the picture. */
  readonly known: readonly Message[];
}

export type StageId =
  | 'danger'
  | 'ask'
  | 'silence'
  | 'breakers'
  | 'reset'
  | 'watch'
  | 'decide'
  | 'drive'
  | 'safe'
  | 'find'
  | 'cause'
  | 'mend'
  | 'prove'
  | 'record'
  | 'household'
  | 'closed';

export interface StageView {
  readonly id: StageId;
  readonly state: 'done' | 'now' | 'todo' | 'skipped';
  readonly note?: Message;
}

export interface NotebookEntry {
  readonly id: string;
  readonly at_s: number;
  readonly part: PartId | 'phone';
  /** The part's name. */
  readonly where: Message;
  readonly what: Message;
  readonly reading: Message;
  /** What a person would write beside it: the label's range, "ordinary", "as said by phone". */
  readonly remark?: { readonly tone: 'plain' | 'good' | 'off'; readonly text: Message };
}

export interface SuspectView {
  readonly fault: string;
  readonly label: Message;
  readonly ticked: boolean;
}

/** A sound that is audible where the person stands. */
export interface SoundCue {
  readonly id: 'buzzer' | 'hum' | 'rattle' | 'hiss' | 'pump' | 'spray' | 'bubbles' | 'click' | 'ring';
  readonly caption: Message;
  /** 0 to 1. */
  readonly loudness: number;
  /** Playback rate of the hum: 1 at the design point, lower under load. */
  readonly pitch: number;
}

export type CallMode = 'coached' | 'practice' | 'graded';

/**
 * Help that was taken in a coached call: the plainest hint, 0 for none to 4, whether the likely causes were shown, and how far
 * a guide led.
 */
export interface Assistance {
  readonly hints: 0 | 1 | 2 | 3 | 4;
  readonly likely: boolean;
  readonly led?: Led;
}

export interface CallView {
  readonly callId: string;
  readonly title: LocalText;
  readonly mode: CallMode;
  readonly now_ms: number;
  readonly clock: CalendarClock;
  readonly stage: StageId;
  readonly stages: readonly StageView[];
  readonly said: readonly LocalText[];
  readonly scene: Scene;
  readonly parts: readonly PartView[];
  readonly notebook: readonly NotebookEntry[];
  readonly suspects: readonly SuspectView[];
  readonly sounds: readonly SoundCue[];
  readonly lamp: 'lit' | 'dark' | null;
  readonly buzzer: boolean | null;
  /** What just changed, newest last: for the live region. */
  readonly changes: readonly Message[];
  readonly minutesSpent: number;
  readonly moneySpent_usd: number;
  /** Set when a life-safety step was skipped, the last one: what happened and what the rule is. */
  readonly breach?: Message;
  /** How often one was; a coached call goes on after it. */
  readonly breaches: number;
  readonly ended: boolean;
  /** A trainer has stopped the clock: it does not run, and nothing can be done. */
  readonly frozen?: true;
  /** A trainer has gone back to this instant, and nothing was done since. */
  readonly backTo_ms?: number;
  /** The checklist of a routine visit. */
  readonly rows?: readonly RowView[];
}

/** One line of a routine visit's checklist. */
export interface RowView {
  readonly id: string;
  readonly label: Message;
  /** How many of its readings were taken, and how many it wants. */
  readonly taken: number;
  readonly wanted: number;
  /** What was read, in the order in which it was. */
  readonly readings: readonly {
    readonly what: Message;
    readonly reading: Message;
    readonly tone?: 'plain' | 'good' | 'off';
  }[];
  /** What is still to be read. */
  readonly open: readonly Message[];
}

/** Local standard time as read off a calendar. Month 1 to 12, weekday 0 = Monday. */
export interface CalendarClock {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly weekday: number;
  readonly secondOfDay: number;
}

/** One block on a debrief's time line. */
export interface TimelineBlock {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly label: Message;
  readonly kind: 'phone' | 'drive' | 'look' | 'measure' | 'operate' | 'mend' | 'say' | 'wait';
  readonly flag?: string;
}

export interface Series {
  readonly id: 'airPressure_kPa' | 'oxygen_mgL' | 'pumpTank_m';
  readonly label: Message;
  /** Pairs of time (ms) and value, thinned for drawing. */
  readonly points: readonly (readonly [number, number])[];
  /** Levels worth a dashed line: switch points. */
  readonly marks: readonly { readonly value: number; readonly label: Message }[];
}

export interface ScoreLine {
  readonly id:
    | 'safety'
    | 'readings'
    | 'decisions'
    | 'cause'
    | 'mend'
    | 'proof'
    | 'decision'
    | 'followUp'
    | 'record'
    | 'cost'
    | 'conduct';
  readonly points: number;
  readonly of: number;
  readonly reason: Message;
}

export interface FlagView {
  readonly id: string;
  readonly at_ms: number;
  readonly text: Message;
}

export interface CostLine {
  readonly label: Message;
  readonly done: Message;
  readonly reference: Message;
}

/** One decision of a service record, judged. */
export interface DecisionView {
  readonly id: string;
  readonly label: Message;
  readonly right: boolean;
  readonly reason: Message;
}

/** A routine visit that is over: its service record as it is printed, and its decisions judged. */
export interface VisitView {
  readonly lot: LocalText;
  readonly unit: LocalText;
  readonly visited: CalendarClock;
  readonly day: Message;
  /** What the label said of the visit before. */
  readonly last: Message;
  readonly rows: readonly RowView[];
  /** What was put right or filled up, in its order. */
  readonly mends: readonly Message[];
  /** The record's answers; none where it was not written. */
  readonly written: readonly { readonly id: string; readonly label: Message; readonly answers: readonly Message[] }[];
  readonly signed: boolean;
  readonly decisions: readonly DecisionView[];
}

/** What a call's author tells of one fault. */
export interface AccountView {
  readonly fault: Message;
  readonly account: Account;
}

export interface DebriefView {
  readonly callId: string;
  readonly title: LocalText;
  /** Family of the fault that was there, or families joined: for what was learnt, now that it is no secret. */
  readonly family: string;
  readonly passed: boolean;
  readonly score: number;
  readonly verdict: Message;
  readonly truth: readonly Message[];
  readonly story: LocalText;
  /** What the call's author tells of its faults. */
  readonly accounts: readonly AccountView[];
  readonly lines: readonly ScoreLine[];
  readonly flags: readonly FlagView[];
  readonly costs: readonly CostLine[];
  readonly series: readonly Series[];
  readonly events: readonly {
    readonly at_ms: number;
    readonly label: Message;
    readonly tone: 'plain' | 'bad' | 'good';
  }[];
  /** What a trainer did while it was taken, in the order in which it was. */
  readonly taught: readonly { readonly at_ms: number; readonly label: Message }[];
  readonly done: readonly TimelineBlock[];
  readonly reference: readonly TimelineBlock[];
  readonly from_ms: number;
  readonly to_ms: number;
  readonly startOfDay_ms: number;
  /** Of a routine visit. */
  readonly visit?: VisitView;
}
