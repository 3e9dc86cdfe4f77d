import { access } from './en/access.ts';
import { sky } from './en/sky.ts';

/** What only the picture in words and the statement on access say, in English. */
export const ofAccess = { ...access, ...sky };
