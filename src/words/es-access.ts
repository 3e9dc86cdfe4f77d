import { access } from './es/access.ts';
import { sky } from './es/sky.ts';

/** What only the picture in words and the statement on access say, in Spanish. */
export const ofAccess = { ...access, ...sky };
