export type { CloseUpName, Hotspot, Speech, ViewName, Yard, YardOptions } from './types.ts';
export { openYard } from './yard.ts';
