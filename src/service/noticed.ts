/** What anybody in a house notices of its works without a tool. What is told by phone and what began a call agree by it. */
import type { Readout, UnitSpec } from '../unit/index.ts';

/** Water in the sewer over the trash tank's inlet by which drains are felt to be slow, m (convention). */
const SLOW_m = 0.1;
/** Weaker smells are not noticed (convention). */
const LEAST_SMELL = 0.05;
/** Sewage on the ground or on a floor that nobody overlooks, m3 (convention). */
const LIES_THERE_m3 = 0.001;

/** Whether water stands so high in the house sewer that the drains are slow; the level in m from grade. */
export function standsFull(sewer_m: number, spec: UnitSpec): boolean {
  return sewer_m > spec.plant.trash.inlet_m + SLOW_m;
}

/** Whether something is smelt outdoors that is not chlorine. */
export function isSmelt({ outdoors }: Readout['sensed']): boolean {
  return outdoors.kind !== 'chlorine' && outdoors.strength > LEAST_SMELL;
}

/** Whether sewage lies on the ground or indoors. */
export function sewageLies({ relieved_m3, indoors_m3 }: Readout): boolean {
  return relieved_m3 + indoors_m3 > LIES_THERE_m3;
}
