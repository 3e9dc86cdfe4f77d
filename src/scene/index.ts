/** Makes the Scene: of a call (`known`) or with everything open (`xray`). */
export { known } from './known.ts';
export type { Surroundings } from './light.ts';
export type * from './types.ts';
export { xray } from './xray.ts';
