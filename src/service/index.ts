/** What a person can do on a call and what they then learn. */
export {
  arrive,
  breachOf,
  circuitsToLock,
  hindrance,
  isRoutine,
  letPass,
  type Outcome,
  perform,
  type Service,
  standAtDoor,
} from './act.ts';
export type { ActionDef, Answers, BreachId, Door, FieldDef, Fill } from './action.ts';
export { optionsOf } from './actions/shared.ts';
export { isOfVisits } from './actions/visits.ts';
export { RECORD_LINES } from './actions/yard.ts';
export { ACTION_BY_ID, ACTIONS, actionOn, asOn, fits } from './catalogue.ts';
export { costIn_min } from './cost.ts';
export { dateWords } from './dates.ts';
export * from './facts.ts';
export { type Fullness, fullnessOf, JAR_min, PUMP_SLUDGE_m, sharesOf, trashLimit_m } from './fullness.ts';
export * from './message.ts';
export { standsFull } from './noticed.ts';
export { outletSeen, perceive } from './perceive.ts';
export * from './person.ts';
export { SYMPTOM_IDS, SYMPTOMS, type SymptomId } from './symptoms.ts';
