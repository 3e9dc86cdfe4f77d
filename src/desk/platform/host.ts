/** What a course platform is to the page, whichever standard it speaks. */
import type { Learnt } from '../../records/learnt/learnt.ts';

export interface Host {
  /** What it keeps of this call left half way; empty where it begins. */
  readonly left: string;
  /** Its result stands, or it is only to be looked at: nothing is recorded. */
  readonly settled: boolean;
  /** What the learner asked the platform for. */
  readonly wishes: { readonly language?: 'en' | 'es'; readonly sound?: boolean };
  /** Where the learner goes afterwards, where the platform says so. */
  readonly returnTo?: string;
  /** Keeps what was done so far. Throws `NotTaken`. */
  keep(text: string): Promise<void>;
  /** The call has ended. Throws `NotTaken`. */
  end(learnt: Learnt): Promise<void>;
  /** The session ends, at once: the page may be going. Nothing more is said after it. */
  leave(duration_s: number, halfWay: boolean): void;
}

/** The platform refused what it was given, or could not be reached. */
export class NotTaken extends Error {}
