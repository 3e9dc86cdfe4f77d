import type { ofMeter as en } from './en-meter.ts';
import { meter } from './es/meter.ts';
import { panelFace } from './es/panel-face.ts';

/** What only the drawn panel with a meter says, in Spanish. */
export const ofMeter: Record<keyof typeof en, string> = { ...meter, ...panelFace };
