import { drills } from './en/drills.ts';
import { quiz } from './en/quiz.ts';

/** What the quiz says, in English, with the drills' words: it asks their questions. */
export const ofQuiz = { ...drills, ...quiz };
