/** What a person can do on a call and what they then learn. */
export { breachOf, FETCH_MIN, hindrance, letPass, type Outcome, perform, type Service } from './act.ts';
export type { ActionDef, Answers, BreachId, FieldDef, Fill } from './action.ts';
export { RECORD_LINES, TOLD } from './actions/yard.ts';
export { ACTION_BY_ID, ACTIONS } from './catalogue.ts';
export * from './facts.ts';
export * from './message.ts';
export { perceive } from './perceive.ts';
export * from './person.ts';
