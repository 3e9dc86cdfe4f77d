/** What the page and its service worker say to each other. */

/** Why a version is not kept here: no answer, no room, files that are not those of the build, or no right to keep any. */
export type WhyNot = 'network' | 'full' | 'changed' | 'denied';

export type Asked =
  /** How things stand; makes good what has gone from the copy since. */
  | { readonly kind: 'how' }
  /** The person wants this version. */
  | { readonly kind: 'take-up' };

/** The answer to `how`. */
export interface Standing {
  /** Size of a version's files. */
  readonly bytes: number;
  /** Whether all of them are kept. */
  readonly whole: boolean;
  /** Whether this version waits for the person, and an older one is shown. */
  readonly waits: boolean;
  /** What was left half way and could not be gone on with in this version: ids of calls, and `round`. */
  readonly ends: readonly string[];
}

/** Told to every window, unasked. */
export type Told =
  | { readonly kind: 'kept'; readonly done: number; readonly of: number }
  | { readonly kind: 'broke-off'; readonly why: WhyNot };
