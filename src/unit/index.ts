/** One property: geometry, plant and control under the hybrid engine. */
export * from './calendar.ts';
export * from './digest.ts';
export { EndlessSwitching, type Happening, Unit, type UnitSetup } from './engine.ts';
export type { FaultEffect, UnitFault } from './fault.ts';
export * from './readout.ts';
export * from './snapshot.ts';
export * from './spec.ts';
