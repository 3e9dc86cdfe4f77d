/** What the time of the year and the weather do to trees, hills, lawn and soil. In full leaf nothing of it is fetched. */
import type { SkyScene } from '../scene/types.ts';
import type { Pen } from './pen.ts';

export interface Season {
  /** Tells one look from another. */
  readonly key: string;
  readonly farHill: string;
  readonly nearHill: string;
  readonly hillStroke: string;
  readonly leaf: string;
  readonly leafLine: string;
  /** Share of its leaves that a tree bears. */
  readonly leaves: number;
  readonly lawn: string;
  readonly blades: readonly [back: string, front: string, under: string];
  /** What lies over the soil below the lawn and over the lawn: damp, puddles, frost. */
  readonly over?: (pen: Pen, left: number, right: number, perMetre: number) => void;
}

export const GREEN: Season = {
  key: 'green',
  farHill: '#cfd8bb',
  nearHill: '#b7c795',
  hillStroke: '#8d9d72',
  leaf: '#98ad72',
  leafLine: '#5f6f45',
  leaves: 1,
  lawn: '#7f9a4b',
  blades: ['#5d7a35', '#4f6a2e', '#a3bd68'],
};

/** From the trees' full leaf to the dry of late summer, days of the year (a temperate valley, convention). */
export const IN_LEAF = [128, 208] as const;

/** A fair day in full leaf: the plain sky and lawn say all of it. */
export function isPlain({ daylight, cloud, wet, frost, yearDay }: SkyScene): boolean {
  return daylight > 0.98 && cloud <= 0.5 && wet === 0 && frost === 0 && yearDay >= IN_LEAF[0] && yearDay <= IN_LEAF[1];
}
