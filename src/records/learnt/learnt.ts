/**
 * What was learnt on one call or in one quiz, without a word of who: the one record that every course platform's own is
 * written from. Ids are the core's own, instants are given in.
 */
import type { CallMode } from '../../calls/view.ts';
import type { LocalText } from '../../service/message.ts';

/** What was answered or done, and how it came out. A number is points of `weighting`. */
interface Answered {
  readonly id: string;
  /** Left out where nothing judges it. */
  readonly result?: 'correct' | 'incorrect';
  readonly weighting: number;
  /** Wall time it took, s, where it was seen. */
  readonly latency_s?: number;
}

export interface Chosen extends Answered {
  readonly kind: 'choice';
  readonly response: readonly string[];
  /** Each of them is right, whole. */
  readonly correct: readonly (readonly string[])[];
}

export interface Numbered extends Answered {
  readonly kind: 'numeric';
  readonly response: number;
  readonly correct: { readonly low: number; readonly high: number };
}

/** Steps in their order. */
export interface Performed extends Answered {
  readonly kind: 'performance';
  readonly response: readonly string[];
  /** One right way; left out where none is the right one. */
  readonly correct?: readonly string[];
}

export type Interaction = Chosen | Numbered | Performed;

export interface Learnt {
  /** Id of the call or of the quiz. */
  readonly activity: string;
  readonly title: LocalText;
  readonly mode: CallMode;
  /** Wall instants, ms since 1970 in UTC. */
  readonly started_ms: number;
  readonly ended_ms: number;
  /** Wall time at work in this session, s. */
  readonly duration_s: number;
  readonly completed: boolean;
  /** Only where it is judged. */
  readonly passed?: boolean;
  /** 0 to 100, and what passes. */
  readonly score: number;
  readonly pass: number;
  readonly interactions: readonly Interaction[];
}

/** The score as a share, 0 to 1, to four digits after the point as the standards keep it. */
export function scaled({ score }: Pick<Learnt, 'score'>): number {
  return Math.round(score * 100) / 10_000;
}
