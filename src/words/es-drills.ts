import type { ofDrills as en } from './en-drills.ts';
import { drills } from './es/drills.ts';
import { panelFace } from './es/panel-face.ts';
import { quizNumbers } from './es/quiz-numbers.ts';
import { quizQuestions } from './es/quiz-questions.ts';

/** What only the drills say, in Spanish. */
export const ofDrills: Record<keyof typeof en, string> = { ...drills, ...panelFace, ...quizNumbers, ...quizQuestions };
