/** Parts that only some units have: fetched with the first of them. */
export { paintDripInk, paintDripPencil } from './dripField.ts';
export { paintSleeveInk, paintSleevePencil, sleeveArea } from './sleeve.ts';
