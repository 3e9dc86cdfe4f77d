/** What the wires do: the public face of `control`. */
export * from './events.ts';
export { mentions } from './logic.ts';
export { type Panel, panelOf } from './machine.ts';
export { type ControlState, ControlTable, controlTable, eventNumber, outputsOf } from './table.ts';
export type { OutputId, PanelKind } from './wiring.ts';
