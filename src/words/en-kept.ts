import { kept } from './en/kept.ts';
import { replays } from './en/replays.ts';

/** What is hardly ever said of what the browser keeps, in English. */
export const ofKept = { ...kept, ...replays };
