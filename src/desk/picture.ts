import type { Place } from '../service/person.ts';
import type { CloseUpName, Yard, YardOptions } from '../yard/index.ts';

/** The drawn cutaway, fetched when a screen first shows it, so that the cards never wait for it. */
export type OpenPicture = (host: HTMLElement, options: YardOptions) => Promise<Yard>;

/** The close-up that belongs to a place, where there is one: in that of the panel and of the floats things are worked by hand. */
export const CLOSE_UPS: Readonly<Partial<Record<Place, CloseUpName>>> = {
  panel: 'panel',
  'pump-tank': 'floats',
  compressor: 'compressor',
  aeration: 'jar',
  'trash-tank': 'core',
  clarifier: 'clarifier',
  'disc-filter': 'discs',
};

/** Loads the drawing code and opens it on `host`. */
export const openPicture: OpenPicture = async (host, options) => {
  const [{ openYard }] = await Promise.all([import('../yard/index.ts'), document.fonts.ready]);
  return openYard(host, options);
};
