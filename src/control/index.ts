/** What the wires do: the public face of `control`. */
export * from './events.ts';
export { holds, type Logic, mentions, type RegionStates } from './logic.ts';
export { controlMachine, PARTS } from './machine.ts';
export { type ControlState, ControlTable, type Edge, eventNumber, outputsOf } from './table.ts';
export { type OutputId, type Outputs, WIRING } from './wiring.ts';
