/**
 * Colours of the plate, and the two mixes that carry meaning: how far a sight has faded towards pencil, and what
 * colour water has from its solids, chlorine, sewage and hours without oxygen.
 */
import type { Ink, WaterLook } from '../scene/types.ts';

export const INK = '#2b2a26';
export const PAPER = '#f6f0e1';
export const CARD = '#fffaf0';
export const PENCIL = '#857d6d';
export const PENCIL_WALL = '#ece4cf';
export const WALL = '#d6d2c6';
export const SHELL = '#efe7d2';
export const LID = '#6f8a6c';
export const PURPLE = '#7d55a0';
export const ACTION = '#2f5d73';
export const GOOD = '#3c7d5a';
export const CAUTION = '#e8a33d';
export const ALARM = '#c9402a';
export const SCUM = '#6b5637';
export const SLUDGE = '#4b3b28';

/** One colour per float, always with its name or place beside it. */
export const FLOAT_COLOURS = {
  'redundant-off': '#8a6fa8',
  stop: '#5f8f6f',
  'start-stop': '#5b8fb0',
  dose: '#5b8fb0',
  override: '#dba23c',
  'high-water': '#c9503a',
} as const;

type Rgb = readonly [number, number, number];

function rgb(hex: string): Rgb {
  const n = Number.parseInt(hex.slice(1), 16);
  return [n >> 16, (n >> 8) & 255, n & 255];
}

/** Linear mix of two `#rrggbb` colours: `share` 0 gives `a`, 1 gives `b`. */
export function mix(a: string, b: string, share: number): string {
  const k = Math.min(1, Math.max(0, share));
  const [ar, ag, ab] = rgb(a);
  const [br, bg, bb] = rgb(b);
  const part = (x: number, y: number) => Math.round(x + (y - x) * k);
  return `#${((part(ar, br) << 16) | (part(ag, bg) << 8) | part(ab, bb)).toString(16).padStart(6, '0')}`;
}

/** `#rrggbb` with an opacity, for a canvas. */
export function glaze(hex: string, alpha: number): string {
  const [r, g, b] = rgb(hex);
  return `rgba(${r},${g},${b},${alpha})`;
}

/** How much ink lies over the pencil: none, full when live, and a fading glaze for what was seen a while ago. */
export function inkShare(ink: Ink): number {
  if (ink.kind === 'pencil') return 0;
  if (ink.kind === 'live') return 1;
  // Twelve steps are finer than the eye and spare repaints while time runs fast.
  return 0.38 + 0.62 * (Math.round(Math.min(1, Math.max(0, ink.fresh)) * 12) / 12);
}

/** Colour of a body of water, and how opaque it is. */
export function waterColour(look: WaterLook): { readonly colour: string; readonly cover: number } {
  const clear = mix('#a9c3a6', '#8fbfc3', Math.min(1, look.residual_mgL / 0.5));
  const thick = look.solids_mgL / (look.solids_mgL + 500);
  let colour = mix(clear, '#96653c', thick * 1.1);
  colour = mix(colour, '#8a7f58', Math.min(1, look.raw));
  // Sewage in the first tank is always without oxygen: it turns only a little darker, mixed liquor turns black.
  const turns = 1 - 0.8 * Math.min(1, look.raw);
  const grey = Math.min(1, look.hoursWithoutOxygen / 12) * turns;
  const black = Math.min(1, Math.max(0, (look.hoursWithoutOxygen - 12) / 12)) * turns;
  colour = mix(mix(colour, '#77756d', 0.6 * grey), '#2f2d29', 0.75 * black);
  return { colour, cover: 0.86 + 0.14 * Math.min(1, thick + look.raw) };
}
