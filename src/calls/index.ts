/** A call: its file, its procedure, its taking, its judgement, its record. */
export { type Checked, loadCall } from './check.ts';
export { debriefOf } from './debrief.ts';
export { isCleared, trueFaults } from './flags.ts';
export type { Judgement } from './judge.ts';
export { PLAYERS, type PlayerId, play } from './players.ts';
export { LARGEST_FILE_bytes, type Problem, problemLine, tooLarge } from './problems.ts';
export { type CallProof, proveCall } from './prove.ts';
export * from './record.ts';
export { type Finding, reviewOf, type StepReview } from './review.ts';
export type { CallFile } from './schema.ts';
export { CallSession } from './session.ts';
export { type Prepared, unitSetup } from './setup.ts';
export { prepareCall, shippedCalls, shippedLibrary } from './shipped.ts';
export { playSolution, playSteps, solutionMinutes } from './solution.ts';
export { Trace } from './trace.ts';
export * from './view.ts';
export { clockAt, liveFacts, viewOf } from './viewOf.ts';
