import type { Yard, YardOptions } from '../yard/index.ts';

/** The drawn cutaway, fetched when a screen first shows it, so that the cards never wait for it. */
export type OpenPicture = (host: HTMLElement, options: YardOptions) => Promise<Yard>;

/** The whole yard, or one of the close-ups in which things are worked by hand. */
export type CloseUp = 'yard' | 'panel' | 'floats';

/** Loads the drawing code and opens it on `host`. */
export const openPicture: OpenPicture = async (host, options) => {
  const [{ openYard }] = await Promise.all([import('../yard/index.ts'), document.fonts.ready]);
  return openYard(host, options);
};
