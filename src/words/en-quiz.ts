import { quiz } from './en/quiz.ts';
import { ofDrills } from './en-drills.ts';

/** What the quiz says, in English, with the drills' words: it asks their questions. */
export const ofQuiz = { ...ofDrills, ...quiz };
