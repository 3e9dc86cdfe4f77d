/** What the wires do: the public face of `control`. */
export * from './events.ts';
export { mentions } from './logic.ts';
export { controlMachine, PARTS } from './machine.ts';
export { type ControlState, ControlTable, eventNumber, outputsOf } from './table.ts';
export { type OutputId, WIRING } from './wiring.ts';
