/** The year as trees and lawn show it, day by day, and what rain and frost lay over it: part of the open air. */
import type { SkyScene } from '../scene/types.ts';
import { noise } from './hash.ts';
import { mix } from './ink.ts';
import { newPath } from './path.ts';
import { draw, fade, grass, type Pen } from './pen.ts';
import { GREEN, IN_LEAF, type Season } from './season.ts';

interface Day {
  readonly leaves: number;
  readonly leaf: string;
  readonly lawn: string;
}

const [LEAFY, DRY] = IN_LEAF;

/** Looks by the day of the year, mixed between two of them (a temperate valley north of the equator, convention). */
const YEAR: readonly (readonly [yearDay: number, Day])[] = [
  [-35, { leaves: 0, leaf: '#a5582f', lawn: '#9a9166' }],
  [72, { leaves: 0, leaf: '#b9cf74', lawn: '#94935c' }],
  [98, { leaves: 0.55, leaf: '#b9cf74', lawn: '#8ba850' }],
  [LEAFY, { leaves: 1, leaf: GREEN.leaf, lawn: GREEN.lawn }],
  [DRY, { leaves: 1, leaf: GREEN.leaf, lawn: GREEN.lawn }],
  [238, { leaves: 1, leaf: '#a3a766', lawn: '#b0a35c' }],
  [268, { leaves: 1, leaf: '#c4a650', lawn: '#9ba055' }],
  [292, { leaves: 0.9, leaf: '#cf7f3c', lawn: '#8f9a50' }],
  [312, { leaves: 0.45, leaf: '#a5582f', lawn: '#94955b' }],
  [330, { leaves: 0, leaf: '#a5582f', lawn: '#9a9166' }],
  [438, { leaves: 0, leaf: '#b9cf74', lawn: '#94935c' }],
];

function dayOf(yearDay: number): Day {
  const after = YEAR.findIndex(([at]) => at > yearDay);
  const [from, a] = YEAR[after - 1] ?? [0, YEAR[0]?.[1] as Day];
  const [to, b] = YEAR[after] ?? [from + 1, a];
  const k = (yearDay - from) / (to - from);
  return { leaves: a.leaves + (b.leaves - a.leaves) * k, leaf: mix(a.leaf, b.leaf, k), lawn: mix(a.lawn, b.lawn, k) };
}

/** In steps that the eye does not tell apart, so that a day's run repaints the hills a few times only. */
export function seasonOf(sky: SkyScene): Season {
  const yearDay = Math.round(sky.yearDay / 3) * 3;
  const frost = Math.round(sky.frost * 6) / 6;
  const wet = Math.round(sky.wet * 6) / 6;
  const { leaves, leaf, lawn } = dayOf(yearDay);
  const green = yearDay >= LEAFY && yearDay <= DRY;
  if (green && frost === 0 && wet === 0) return GREEN;
  const white = (colour: string, share: number) => mix(colour, '#eef3f1', frost * share);
  return {
    key: `${yearDay}|${frost}|${wet}`,
    farHill: white(green ? GREEN.farHill : mix(lawn, '#f1efdf', 0.62), 0.7),
    nearHill: white(green ? GREEN.nearHill : mix(lawn, '#f3ecd6', 0.42), 0.65),
    hillStroke: mix(lawn, '#6b6247', 0.4),
    leaf,
    leafLine: mix(leaf, '#3b3a24', 0.5),
    leaves,
    lawn: white(mix(lawn, '#3f5a34', 0.25 * wet), 0.55),
    blades: [
      white(mix(lawn, '#3a4f24', 0.45), 0.4),
      white(mix(lawn, '#2f421d', 0.6), 0.3),
      white(mix(lawn, '#f0f3c8', 0.4), 0.8),
    ],
    over: (pen, left, right, perMetre) => {
      if (wet > 0) damp(pen, left, right, perMetre, wet);
      if (frost > 0) rime(pen, left, right, frost);
      if (leaves < 0.95 && leaves > 0 && yearDay > DRY) fallen(pen, left, right, leaf, 1 - leaves);
    },
  };
}

/** Rain darkens the soil from above, the deeper the more of it fell, and stands in the hollows of the lawn. */
function damp(pen: Pen, left: number, right: number, perMetre: number, wet: number): void {
  const foot = 0.75 * perMetre * wet;
  const front = newPath(`M${left} 9`);
  const r = noise(91);
  for (let x = Math.floor(left / 60) * 60; x < right + 60; x += 60) {
    front.quadraticCurveTo(x - 30, foot * (0.85 + 0.3 * r()), x, foot * (0.75 + 0.2 * r()));
  }
  front.lineTo(right + 60, 9);
  draw(pen, front, {
    fill: fade(pen, 9, foot, [
      [0, 'rgba(43,33,22,0.5)'],
      [0.7, 'rgba(43,33,22,0.34)'],
      [1, 'rgba(43,33,22,0.22)'],
    ]),
  });
  const veins = newPath();
  for (let x = Math.floor(left / 34) * 34; x < right; x += 34) {
    const c = noise(Math.round(x) + 40_000);
    if (c() > wet) continue;
    const at = x + c() * 30;
    const from = 14 + c() * foot * 0.3;
    veins.moveTo(at, from);
    veins.quadraticCurveTo(
      at + (c() - 0.5) * 9,
      from + foot * 0.2,
      at + (c() - 0.5) * 6,
      from + foot * (0.25 + 0.3 * c()),
    );
  }
  draw(pen, veins, { stroke: '#9fc6cc', width: 1, alpha: 0.5 });
  if (wet < 0.4) return;
  const water = newPath();
  const shine = newPath();
  for (let x = Math.floor(left / 150) * 150; x < right; x += 150) {
    const c = noise(Math.round(x) + 700);
    const half = (16 + c() * 40) * (wet - 0.3) * 1.4;
    const at = x + c() * 110;
    water.moveTo(at + half, 3);
    water.ellipse(at, 3, half, 1.6 + half * 0.06, 0, 0, 6.2832);
    shine.moveTo(at - half * 0.5, 2.4);
    shine.lineTo(at + half * 0.2, 2.4);
  }
  draw(pen, water, { fill: '#a9c9cd', stroke: '#4d6b78', width: 1 });
  draw(pen, shine, { stroke: '#ffffff', width: 1, alpha: 0.8 });
}

/** White on the tips of the blades. */
function rime(pen: Pen, left: number, right: number, frost: number): void {
  const tips = newPath();
  for (let x = Math.floor(left / 40) * 40; x < right; x += 40) {
    tips.addPath(grass(x, x + 40, 3, Math.round(x / 40) + 3000, 13, 4.2));
  }
  draw(pen, tips, { stroke: '#ffffff', width: 0.9, alpha: 0.25 + 0.55 * frost });
}

/** What the trees have let go lies on the lawn. */
function fallen(pen: Pen, left: number, right: number, colour: string, share: number): void {
  const leaves = newPath();
  for (let x = Math.floor(left / 24) * 24; x < right; x += 24) {
    const c = noise(Math.round(x) + 9000);
    if (c() > share) continue;
    const at = x + c() * 20;
    const y = -1 + c() * 8;
    leaves.moveTo(at - 3, y);
    leaves.quadraticCurveTo(at, y - 3, at + 3, y);
    leaves.quadraticCurveTo(at, y + 2, at - 3, y);
  }
  draw(pen, leaves, { fill: colour, stroke: mix(colour, '#3b3a24', 0.5), width: 0.7 });
}
