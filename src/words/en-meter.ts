import { meter } from './en/meter.ts';
import { panelFace } from './en/panel-face.ts';

/** What only the drawn panel with a meter says, in English. */
export const ofMeter = { ...meter, ...panelFace };
