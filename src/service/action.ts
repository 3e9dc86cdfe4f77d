/** What can be done on a call, as definitions. One list per place (`actions/`); `catalogue.ts` joins them. */
import type { BreakerName } from '../control/index.ts';
import type { Readout, Unit, UnitSpec } from '../unit/index.ts';
import type { LiveFacts } from './facts.ts';
import type { Instrument } from './instruments.ts';
import type { LocalText, Message } from './message.ts';
import type { LidId, LoadId, Note, Person, Place } from './person.ts';

/** What the household answers to questions that no simulation can answer; from the call file. */
export interface Answers {
  readonly history: LocalText;
  readonly use: LocalText;
}

/** What the label inside the panel's door tells by date: day numbers as `dayNumber` counts them. */
export interface Label {
  readonly signed_day: number;
  /** Day of engine time 0. */
  readonly first_day: number;
}

/** How a routine visit begins: what rides along, which lid the lawn hides, what the label tells. */
export interface Door {
  readonly load: readonly LoadId[];
  readonly buried?: LidId;
  readonly label: Label;
}

export type Fill = Readonly<Record<string, string | readonly string[]>>;

/** A life-safety step that was skipped. `words` tells what happened and what the rule is under `breach.<id>`. */
export type BreachId =
  | 'danger-not-asked'
  | 'householder-opens-panel'
  | 'householder-opens-tank'
  | 'site-not-made-safe'
  | 'not-locked-out'
  | 'lid-left-open'
  | 'chlorine-mixed';

/** What an action is given to work with. */
export interface Doing {
  readonly unit: Unit;
  readonly person: Person;
  readonly answers: Answers;
  readonly label?: Label;
  readonly fill: Fill;
  /** Lets simulated time pass, in seconds; everything goes on meanwhile. */
  wait(seconds: number): void;
  /** The unit as it is now. */
  read(): Readout;
  /** An instrument's reading of a true value. */
  measure(instrument: Instrument, truth: number): number;
  learn(facts: LiveFacts): void;
  /** `asGoodAs`: the named check that reads the same thing. */
  note(what: Message, reading: Message, remark?: Note['remark'], asGoodAs?: string): void;
}

export interface FieldDef {
  readonly id: string;
  readonly kind: 'one' | 'many';
  readonly options: readonly { readonly id: string; readonly label: Message }[];
  /** Most options that may be ticked. */
  readonly most?: number;
}

export interface ActionDef {
  readonly id: string;
  readonly place: Place;
  readonly group: 'look' | 'measure' | 'operate' | 'mend' | 'say';
  readonly label: Message;
  readonly minutes: number;
  readonly cost_usd?: number;
  /** Part of the truck's load it uses up; without it somebody has to fetch it. */
  readonly load?: LoadId;
  /** A lid that must be off, a circuit that must be locked out, a breaker... */
  readonly needs?: {
    readonly lid?: LidId;
    readonly compressorRuns?: boolean;
    readonly unlocked?: BreakerName;
  };
  /** Circuit that must be locked out before a hand goes in, every one of the panel, or what its answers ask for: life safety. */
  readonly lockOut?: BreakerName | 'all' | ((fill: Fill) => readonly BreakerName[]);
  /** May be done before the site was made safe (looking round, talking, switches meant for anyone's hand). */
  readonly handsOff?: boolean;
  /** Asking for it is itself a breach, whatever the unit is like or as it finds the unit. */
  readonly breach?: BreachId | ((unit: Unit) => BreachId | undefined);
  /** On the phone: touches something, so danger must have been asked about first. */
  readonly touches?: boolean;
  /** What stands beside the cautions of its place, where it can be done. */
  readonly caution?: Message;
  readonly control?: string;
  readonly form?: readonly FieldDef[];
  /** Its questions where they depend on the unit: `actionOn` makes its form of them. */
  readonly formOn?: (spec: UnitSpec) => readonly FieldDef[];
  /** Whether a unit has what it works on; on every unit when left out. */
  readonly fits?: (spec: UnitSpec) => boolean;
  /** Why it cannot be done now; undefined when it can. */
  readonly hindered?: (person: Person, unit: Unit, fill?: Fill) => Message | undefined;
  /** Seconds of its minutes that `perform` itself lets pass by `wait`; the others pass before it. */
  readonly inner_s?: number;
  /** Does it: works the unit, takes readings, notes them. */
  readonly perform: (doing: Doing) => void;
}
