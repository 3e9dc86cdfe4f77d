/** Raised whenever a change of the engine or of the actions can change the bits of a replay. */
export const ENGINE_VERSION = '9';
