/** How long a link may be. A file of its own: the page that shows a link needs no more of this folder. */

/**
 * Longest fragment that is given out. Whoever handles addresses should bear 8,000 bytes at least (RFC 9110, section 4.1);
 * two hundred are left for the page's own.
 */
export const LONGEST_LINK = 7800;

/** Some programs cut or refuse longer addresses (`common practice, no source`). Most calls come to a little more. */
export const SURE_LINK = 2000;
