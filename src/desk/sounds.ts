import type { Sound, SoundOptions } from '../sound/index.ts';

/** How the desk gets its sounds. */
export type OpenSounds = (options: SoundOptions) => Sound;
