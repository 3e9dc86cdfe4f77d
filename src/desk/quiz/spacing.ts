/**
 * When a skill is to be asked again: the free spaced repetition scheduler as ts-fsrs has it, with its own numbers and
 * without its play of chance. The only place that knows the package; what is kept is plain.
 */
import { type CardInput, createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import type { Skill } from '../../quiz/drill.ts';
import type { Standing } from '../../quiz/practice.ts';
import type { QuizCard } from '../stored.ts';

const scheduler = fsrs({ enable_fuzz: false });

/** A skill is due once it is less likely still known than this. */
export const DUE_recall = scheduler.parameters.request_retention;

function cardOf({ due, last, stability, difficulty, scheduled_d, steps, reps, lapses, state }: QuizCard): CardInput {
  // Days since the last answer are worked out anew; the package wants the field until its next version.
  const elapsed_days = 0;
  const about = { stability, difficulty, elapsed_days, scheduled_days: scheduled_d, learning_steps: steps };
  return { ...about, reps, lapses, state, due, last_review: last };
}

/** What is kept of a skill on a unit after an answer at `now`, ms. Right is as good as it gets: nobody says how easy it was. */
export function answered(
  of: { readonly skill: Skill; readonly unit: string },
  before: QuizCard | undefined,
  right: boolean,
  now: number,
): QuizCard {
  const card = before === undefined ? createEmptyCard(now) : cardOf(before);
  const next = scheduler.next(card, now, right ? Rating.Good : Rating.Again).card;
  return {
    version: 1,
    skill: of.skill,
    unit: of.unit,
    due: next.due.getTime(),
    last: now,
    stability: next.stability,
    difficulty: next.difficulty,
    scheduled_d: next.scheduled_days,
    steps: next.learning_steps,
    reps: next.reps,
    lapses: next.lapses,
    state: next.state,
  };
}

export function standingOf(skill: Skill, card: QuizCard | undefined, now: number): Standing {
  if (card === undefined) return { skill, seen: false, due: false, recall: 0 };
  const recall = scheduler.get_retrievability(cardOf(card), now, false);
  return { skill, seen: true, due: card.due <= now, recall };
}
