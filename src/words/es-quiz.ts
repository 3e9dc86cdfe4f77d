import type { ofQuiz as en } from './en-quiz.ts';
import { drills } from './es/drills.ts';
import { quiz } from './es/quiz.ts';

/** What the quiz says, in Spanish, with the drills' words. */
export const ofQuiz: Record<keyof typeof en, string> = { ...drills, ...quiz };
