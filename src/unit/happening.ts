/** What the engine writes down as it goes. */
import type { ControlEventName } from '../control/index.ts';

/** Something that happened, for logs: a control event, a fault, a mark, the dialler's call. */
export interface Happening {
  readonly t: number;
  readonly what:
    | ControlEventName
    | `fault.${string}`
    | `mended.${string}`
    | `mark.${string}`
    | `${Shown}.${'on' | 'off'}`
    | 'dialled';
}

/** Outputs whose every change is logged: what a person may see or hear. */
export const SHOWN = ['lamp', 'buzzer', 'pumpRuns', 'compressorRuns'] as const;
export type Shown = (typeof SHOWN)[number];
