/** What Build and its two workers say to each other: one looks at every change of a draft, the other proves and solves. */
import type { Draft } from '../../build/draft.ts';
import type { Preview } from '../../build/preview.ts';
import type { Problem } from '../../calls/problems.ts';
import type { CallProof, Stage } from '../../calls/prove/prove.ts';
import type { SolutionStep } from '../../calls/schema.ts';
import type { PartId, Scene } from '../../scene/types.ts';
import type { LocalText, Message } from '../../service/message.ts';
import type { SymptomId } from '../../service/symptoms.ts';
import type { Link } from '../../share/link.ts';

/** A fault as the list offers it. */
export interface OfferedFault {
  readonly key: string;
  readonly fault: string;
  readonly part?: string;
  readonly family: string;
  readonly place: PartId;
  readonly name: Message;
  readonly severity: number;
  readonly ramp_h: number;
  readonly spells?: { readonly on_h: number; readonly off_h: number };
  /** Checks that show it, what mends it, and what only hides it. */
  readonly shownBy: readonly Message[];
  readonly mendedBy: readonly Message[];
  readonly hiddenBy: readonly Message[];
}

export interface OfferedAction {
  readonly id: string;
  readonly label: Message;
  readonly part: Message;
}

/** What can be chosen from on the unit of a draft. */
export interface Offered {
  readonly unit: string;
  readonly units: readonly { readonly id: string; readonly name: LocalText }[];
  readonly households: readonly { readonly id: string; readonly name: LocalText }[];
  readonly faults: readonly OfferedFault[];
  /** What can be withheld. */
  readonly checks: readonly OfferedAction[];
  /** What a household can have noticed. */
  readonly symptoms: readonly SymptomId[];
  /** Numbers of the unit, as its file has them. */
  readonly numbers: Readonly<Record<string, number>>;
}

/** What a draft comes to. */
export interface Looked {
  readonly problems: readonly Problem[];
  /** None while something of the property is impossible. */
  readonly preview: Preview | undefined;
  readonly offered: Offered;
  /** The solution's steps as they are called. */
  readonly steps: readonly Message[];
}

export type LookRequest =
  | { readonly kind: 'look'; readonly draft: Draft }
  /** The works at an instant (s) of the days looked at last. */
  | { readonly kind: 'open'; readonly at_s: number }
  | { readonly kind: 'text'; readonly draft: Draft }
  | { readonly kind: 'read'; readonly text: string }
  | { readonly kind: 'link'; readonly draft: Draft }
  /** Whole calls as one file. */
  | { readonly kind: 'set'; readonly title: LocalText; readonly drafts: readonly Draft[] };

export type LookReply =
  | { readonly kind: 'look'; readonly looked: Looked }
  | { readonly kind: 'open'; readonly scene: Scene | undefined }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'read'; readonly read: { readonly draft: Draft } | { readonly problem: Problem } }
  | { readonly kind: 'link'; readonly link: Link | undefined }
  | { readonly kind: 'set'; readonly set: { readonly text: string } | { readonly problems: readonly Problem[] } }
  | { readonly kind: 'failed' };

export type ProveRequest = { readonly kind: 'prove' | 'solve'; readonly draft: Draft };

export type ProveReply =
  /** How far a stage has come, where it can be told. */
  | { readonly kind: 'stage'; readonly stage: Stage; readonly done?: number; readonly of?: number }
  | {
      readonly kind: 'proved';
      readonly proof: CallProof;
      readonly harder: Standing | undefined;
      readonly alikes: readonly AlikeView[];
    }
  | {
      readonly kind: 'solved';
      readonly steps: readonly SolutionStep[];
      readonly passed: boolean;
      readonly score: number;
    }
  | { readonly kind: 'unsound'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed' };

/** How many of the shipped calls are easier, of how many. */
export interface Standing {
  readonly easier: number;
  readonly of: number;
}

/** A cause that cannot be told from the true one, and what both show. */
export interface AlikeView {
  readonly cause: Message;
  readonly shared: readonly { readonly label: Message; readonly lines: readonly Message[] }[];
}
