import { share } from './en/share.ts';

/** What only calls from elsewhere and sheets of calls say, in English. */
export const ofShare = share;
