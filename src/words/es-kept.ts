import type { ofKept as en } from './en-kept.ts';
import { kept } from './es/kept.ts';
import { replays } from './es/replays.ts';

/** What is hardly ever said of what the browser keeps, in Spanish. */
export const ofKept: Record<keyof typeof en, string> = { ...kept, ...replays };
