import { access } from './es/access.ts';

/** What only the picture in words and the statement on access say, in Spanish. */
export const ofAccess = access;
