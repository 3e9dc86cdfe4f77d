/** Makes the Scene: of a call (`known`) or with everything open (`xray`). */
export { known } from './known.ts';
export type * from './types.ts';
export { type Surroundings, xray } from './xray.ts';
