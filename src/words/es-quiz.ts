import type { ofQuiz as en } from './en-quiz.ts';
import { quiz } from './es/quiz.ts';
import { ofDrills } from './es-drills.ts';

/** What the quiz says, in Spanish, with the drills' words. */
export const ofQuiz: Record<keyof typeof en, string> = { ...ofDrills, ...quiz };
