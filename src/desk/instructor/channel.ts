/** Where the windows of one browser hear each other. */
export const CHANNEL = 'underlawn instructor';

/** Raised whenever what the windows say to each other changes: windows of two versions then do not work together. */
export const LINE_VERSION = 3;
