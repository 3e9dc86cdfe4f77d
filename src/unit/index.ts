/** One property: geometry, plant and control under the hybrid engine. */
export * from './calendar.ts';
export { numberAt, withNumbers } from './changed.ts';
export { type Circuit, circuitOf, MAINS_V, WINDING_ohm } from './circuit.ts';
export * from './digest.ts';
export { EndlessSwitching, Unit, type UnitSetup } from './engine.ts';
export { type FaultEffect, isOver, severityAt, type UnitFault } from './fault.ts';
export type { Happening } from './happening.ts';
export { ampsIn, isLive, ohmsBetween, voltsBetween } from './probes.ts';
export * from './readout.ts';
export type { Sensed } from './sensed.ts';
export * from './series.ts';
export * from './snapshot.ts';
export * from './spec.ts';
export * from './terminals.ts';
