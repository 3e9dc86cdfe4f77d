import { drills } from './en/drills.ts';
import { panelFace } from './en/panel-face.ts';
import { quizNumbers } from './en/quiz-numbers.ts';
import { quizQuestions } from './en/quiz-questions.ts';

/** What only the drills say, in English. */
export const ofDrills = { ...drills, ...panelFace, ...quizNumbers, ...quizQuestions };
