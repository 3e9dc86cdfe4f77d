import type { ofShare as en } from './en-share.ts';
import { share } from './es/share.ts';

/** What only calls from elsewhere and sheets of calls say, in Spanish. */
export const ofShare: Record<keyof typeof en, string> = share;
