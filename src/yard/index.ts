export type { Hotspot, ViewName, Yard, YardOptions } from './types.ts';
export { openYard } from './yard.ts';
