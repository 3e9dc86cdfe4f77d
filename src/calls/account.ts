/** What an author's account of a fault answers, in the order in which it is told. */
export const ACCOUNT = ['cue', 'misleads', 'check', 'error', 'proof', 'root'] as const;
