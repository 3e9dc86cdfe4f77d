/** What is written on a sheet to keep, in the language of who keeps it. */

/** What the legend explains by a patch of colour. */
export const KEYS = ['pencil', 'ink', 'raw', 'mixed', 'settled', 'treated', 'scum', 'sludge', 'air'] as const;
export type Keyed = (typeof KEYS)[number];

export interface PosterWords {
  readonly title: string;
  readonly when: string;
  readonly legend: Readonly<Record<Keyed, string>>;
  /** That it is a simulation, of no real property. */
  readonly simulated: string;
  /** What of it is a picture within the drawing. */
  readonly drawing: string;
}

export interface PosterWish extends PosterWords {
  readonly kind: 'png' | 'svg';
  /** Share of the work that is done. */
  readonly progress: (share: number) => void;
}
