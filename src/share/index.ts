/** Calls handed from one person to another: as a link, as a file, as a set of them, on paper. */
export { LONGEST_LINK, SURE_LINK } from './limits.ts';
export { linkOf, openLink } from './link.ts';
export { readShared } from './read.ts';
export { callsIn, type SharedFile, setSchema } from './set.ts';
export { fileText, sameCall } from './text.ts';
