/** A call: its file, its procedure, its taking, its judgement, its record. */
export { type Checked, loadCall } from './check.ts';

export { type CourseEntry, difficulty, mastery, nextCall, rungOf } from './course.ts';
export { debriefOf } from './debrief.ts';
export { isCleared } from './flags.ts';
export type { Judgement } from './judge.ts';
export { type StepReviewView, stepReviewView } from './lesson.ts';
export { loadRecord } from './loadRecord.ts';
export { PLAYERS, type PlayerId, play } from './players.ts';
export { LARGEST_FILE_bytes, type Problem, problemLine, tooLarge } from './problems.ts';
export { makeProgress } from './progress.ts';
export { type CallProof, proveCall } from './prove/prove.ts';
export * from './record.ts';
export { resumeCall } from './resume.ts';
export { reviewAll, reviewOf, type StepReview } from './review.ts';
export * from './round/index.ts';
export type { CallFile } from './schema.ts';
export { CallSession } from './session.ts';
export { faultName } from './session-actions.ts';
export { type Prepared, unitSetup } from './setup.ts';
export { allShipped, COURSE, prepareCall, shippedCalls, shippedLibrary, shippedVisits } from './shipped.ts';
export { playSolution, stepsDone } from './solution.ts';
export { togetherView } from './together.ts';
export { Trace } from './trace.ts';
export * from './view.ts';
export { clockAt, liveFacts, viewOf } from './viewOf.ts';
