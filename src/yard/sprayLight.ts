/** What light falls on the spray: the day's, and by night the moon's, the lit lamp's and the window's. */
import type { Scene } from '../scene/types.ts';
import { WINDOW } from './houseLight.ts';
import { mix } from './ink.ts';
import type { Layout } from './layout.ts';
import { moonlight } from './moonlight.ts';
import { lampPoint } from './panelPost.ts';

/** By day, in a night without any light, under the moon, and beside what is lit. */
const DAY = '#f4fbfb';
const DARK = '#8ea7bf';
const MOONLIT = '#dbe7f6';
const LAMPLIT = '#ffc79c';
const WINDOW_LIT = '#ffdc9c';
/** A lamp lights up half as much so far away, units of the plate. */
const HALF = 480;
/** The strongest moonlight there is. */
const FULL_MOON = 0.35;

export interface Lit {
  readonly colour: number;
  /** 0 in the dark to 1 by day. */
  readonly bright: number;
}

/** The light at a place of the lawn, in steps that the eye does not tell apart. */
export function lightAt(layout: Layout, { sky, panel }: Scene, x: number): Lit {
  const night = 1 - sky.daylight;
  const moon = Math.min(1, moonlight(sky) / FULL_MOON);
  const alarm = panel.lamps.find(({ state, ink }) => state === 'lit' && ink.kind !== 'pencil');
  const near = (from: number) => 1 / (1 + ((x - from) / HALF) ** 2);
  const lamp = alarm === undefined ? 0 : near(lampPoint(layout, alarm.id)[0]);
  const window = near(WINDOW[0]);
  let colour = mix(DARK, MOONLIT, 0.35 + 0.65 * moon);
  colour = mix(colour, WINDOW_LIT, window);
  colour = mix(colour, LAMPLIT, 1.4 * lamp);
  const bright = Math.min(1, 0.68 + 0.2 * moon + 0.4 * (lamp + window));
  const steps = (share: number) => Math.round(share * 20) / 20;
  const lit = mix(DAY, colour, steps(night));
  return { colour: Number.parseInt(lit.slice(1), 16), bright: steps(sky.daylight + night * bright) };
}
