import { drills } from './en/drills.ts';
import { quizNumbers } from './en/quiz-numbers.ts';
import { quizQuestions } from './en/quiz-questions.ts';

/** What only the drills say, in English. */
export const ofDrills = { ...drills, ...quizNumbers, ...quizQuestions };
