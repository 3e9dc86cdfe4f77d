/** Takes up a kept call. A file of its own, for only what was kept needs the validator: whoever kept it may have changed it. */
import { config } from 'zod/mini';

export { checkProgress, resumeCall } from '../calls/resume.ts';

// The page's policy forbids building code from text, which the validator would otherwise try.
config({ jitless: true });
