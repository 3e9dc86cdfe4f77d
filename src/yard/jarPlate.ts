/** Close-up of the settled-sludge jar: a litre of mixed liquor after half an hour of standing still. */
import type { JarScene, Scene } from '../scene/types.ts';
import { paintWater } from './basin.ts';
import { noise } from './hash.ts';
import { CARD, glaze, INK, mix, PAPER, PENCIL, waterColour } from './ink.ts';
import { paintJarCard } from './jarCard.ts';
import { JarFlecks } from './jarFlecks.ts';
import { BOARD_Y, clearBox, FULL, GLASS, LAWN_Y, markY, sludgeBox } from './jarPlan.ts';
import { newPath } from './path.ts';
import { type Box, box, disc, draw, fade, type Pen, pencilHatch, rect, within, write } from './pen.ts';
import type { Plate, PlateWords } from './plate.ts';
import { type CloseupLabel, label, milliLitres, type Reading, verdictName } from './plateMessages.ts';
import { pointTo } from './plateWords.ts';
import type { Sparks } from './sparks.ts';
import { paintOutdoors } from './vault.ts';

const MARKS = Array.from({ length: 21 }, (_, i) => 50 * i);

export function makePlate(sparks: Sparks): Plate {
  return {
    focus: [356, 250],
    ink: ({ jar }) => jar.ink,
    seen: ({ jar: { ink: _ink, ...seen } }) => seen,
    ground: paintBench,
    pencil(pen) {
      glassBack(pen, false);
      pencilHatch(pen, FULL);
      draw(pen, `M${FULL.x} ${FULL.y}h${FULL.width}`, { stroke: PENCIL, width: 1.4, dash: [7, 5] });
      draw(pen, `M${FULL.x} ${markY(350)}q35 -5 70 0t70 0`, { stroke: PENCIL, width: 1.4, dash: [7, 5] });
      glassFront(pen, false);
    },
    paint(pen, { jar }) {
      glassBack(pen, true);
      within(pen, bore(), () => content(pen, jar));
      glassFront(pen, true);
    },
    words,
    told,
    movers: [new JarFlecks(sparks)],
  };
}

function paintBench(pen: Pen, area: Box): void {
  paintOutdoors(pen, { grade: LAWN_Y, perMetre: 190 }, area, [60, 128, 46, 104]);
  for (const leg of [120, 1024]) {
    rect(pen, box(leg, BOARD_Y + 16, 34, LAWN_Y - BOARD_Y - 13), 2, { fill: '#9a7347', stroke: INK, width: 1.8 });
  }
  const board = box(60, BOARD_Y, 1060, 22);
  rect(pen, board, 3, { fill: '#c79a62', stroke: INK, width: 2 });
  within(pen, board, () => {
    const r = noise(61);
    const grain = newPath();
    for (let i = 0; i < 60; i++) {
      const left = board.x + r() * board.width;
      const y = board.y + 4 + r() * 15;
      grain.moveTo(left, y);
      grain.quadraticCurveTo(left + 30, y - 3 + 6 * r(), left + 50 + 60 * r(), y);
    }
    draw(pen, grain, { stroke: '#8f673a', width: 1, alpha: 0.7 });
  });
  const shade = newPath();
  shade.ellipse(FULL.x + FULL.width / 2, BOARD_Y + 4, 148, 5, 0, 0, 6.2832);
  draw(pen, shade, { fill: '#3b2d1a', alpha: 0.28 });
  gloves(pen);
}

/** A pair of gloves laid by: sewage is not handled without. */
function gloves(pen: Pen): void {
  for (const [x, colour] of [
    [106, '#4f7d6a'],
    [138, '#6b9a82'],
  ] as const) {
    const y = BOARD_Y - 2;
    const glove = `M${x} ${y}c-4 -12 4 -22 18 -22h38c8 -9 20 -10 21 -3c1 4 -6 7 -10 8h22c10 0 10 9 1 9h6c9 1 8 8 -1 8z`;
    draw(pen, glove, { fill: colour, stroke: INK, width: 1.7 });
    draw(pen, `M${x + 15} ${y - 20}q-5 9 -3 19M${x + 58} ${y - 8}h20M${x + 20} ${y - 20}q-5 9 -3 19`, { width: 1.1 });
  }
}

function bore(): Path2D {
  const p = newPath();
  p.roundRect(GLASS.x, GLASS.y - 6, GLASS.width, GLASS.height + 6, [0, 0, 12, 12]);
  return p;
}

/** The glass behind what it holds, and its foot. */
function glassBack(pen: Pen, ink: boolean): void {
  const line = ink ? INK : PENCIL;
  const { x, width, y, height } = GLASS;
  const foot = y + height;
  const base = `M${x - 44} ${BOARD_Y}q0 -14 14 -17q34 -4 44 -14h${width - 28}q10 10 44 14q14 3 14 17z`;
  draw(pen, base, { fill: ink ? '#dbe8e6' : PAPER, stroke: line, width: 2 });
  if (ink) draw(pen, `M${x - 24} ${BOARD_Y - 9}q34 -4 50 -10`, { stroke: '#ffffff', width: 2.4, alpha: 0.9 });
  const mouth = `M${x - 13} ${y - 7}q46 -9 ${width / 2 + 13} -8t${width / 2} 15`;
  draw(pen, `${mouth}V${foot - 12}q0 12 -12 12h${24 - width}q-12 0 -12 -12V${y + 5}q-4 -10 -13 -12z`, {
    fill: ink ? 'rgba(233,243,241,0.86)' : PAPER,
  });
  rect(pen, box(x + 6, foot + 2, width - 12, 6), 3, { fill: ink ? '#bcd2cf' : PAPER });
}

/** Walls, lip, marks and the light along them. */
function glassFront(pen: Pen, ink: boolean): void {
  const line = ink ? INK : PENCIL;
  const { x, y, width, height } = GLASS;
  const foot = y + height;
  draw(pen, `M${x - 13} ${y - 7}q9 2 13 12V${foot - 12}q0 12 12 12h${width - 24}q12 0 12 -12V${y}`, {
    stroke: line,
    width: 2.6,
  });
  draw(pen, `M${x - 13} ${y - 7}q40 7 ${width / 2 + 13} 7t${width / 2} 0`, { stroke: line, width: 1.6 });
  draw(pen, `M${x - 13} ${y - 7}q46 -9 ${width / 2 + 13} -8t${width / 2} 15`, { stroke: line, width: 1.6 });
  const ticks = newPath();
  for (const mLL of MARKS) {
    if (mLL === 0) continue;
    const long = mLL % 100 === 0;
    ticks.moveTo(x + width, markY(mLL));
    ticks.lineTo(x + width - (mLL % 500 === 0 ? 44 : long ? 30 : 15), markY(mLL));
  }
  if (ink) draw(pen, ticks, { stroke: 'rgba(255,250,240,0.8)', width: 3.4, cap: 'butt' });
  draw(pen, ticks, { stroke: line, width: 1.3, cap: 'butt' });
  if (!ink) return;
  draw(pen, `M${x + 13} ${y + 26}V${foot - 60}`, { stroke: '#ffffff', width: 5, alpha: 0.55 });
  draw(pen, `M${x + 22} ${y + 40}V${foot - 190}`, { stroke: '#ffffff', width: 2, alpha: 0.5 });
}

function content(pen: Pen, jar: JarScene): void {
  const [clear, sludge] = [clearBox(jar), sludgeBox(jar)];
  if (clear === null || sludge === null) return;
  if (clear.height > 1) paintWater(pen, clear, clear.y, jar.above);
  if (sludge.height > 1) paintFlocs(pen, sludge, jar);
  meniscus(pen, jar);
}

/** Water climbs a little up the glass. */
function meniscus(pen: Pen, { above }: JarScene): void {
  const line = mix(above === null ? PAPER : waterColour(above).colour, '#2b2a26', 0.45);
  const { x, y, width } = FULL;
  draw(pen, `M${x} ${y - 7}q5 8 22 8h${width - 44}q17 0 22 -8`, { stroke: line, width: 1.6 });
  draw(pen, `M${x + 4} ${y - 3}q5 7 20 7h${width - 48}q15 0 20 -7`, { stroke: '#ffffff', width: 1.1, alpha: 0.7 });
}

/** Sludge with its uneven edge of flocs: above where it lies, below where gas holds it up. */
function paintFlocs(pen: Pen, b: Box, { sludge, floats }: JarScene): void {
  if (sludge === null) return;
  const { colour } = waterColour(sludge);
  const r = noise(411);
  const full = b.height > FULL.height - 2;
  const [edge, other] = floats ? [b.y + b.height, b.y] : [b.y, b.y + b.height];
  const p = newPath(`M${b.x} ${other}V${edge}`);
  for (let x = b.x; x < b.x + b.width; x += 10) {
    p.quadraticCurveTo(x + 5, edge + (full ? 0 : (r() - 0.5) * 9), x + 10, edge + (full ? 0 : (r() - 0.5) * 3));
  }
  p.lineTo(b.x + b.width + 10, other);
  p.closePath();
  const [top, foot] = [mix(colour, '#d2b483', 0.22), mix(colour, '#2b2418', 0.35)];
  draw(pen, p, {
    fill: fade(pen, b.y, b.y + b.height, [
      [0, full ? colour : top],
      [0.25, colour],
      [1, full ? colour : foot],
    ]),
    stroke: mix(colour, '#2b2418', 0.5),
    width: 1.2,
  });
  within(pen, p, () => {
    const flocs = [newPath(), newPath()];
    for (let i = 0; i < (b.width * b.height) / 42; i++) {
      const x = b.x + r() * b.width;
      const y = b.y + r() * b.height;
      const size = 0.8 + 1.7 * r();
      const one = flocs[i % 2];
      one?.moveTo(x + size, y);
      one?.arc(x, y, size, 0, 6.2832);
    }
    for (const [i, one] of flocs.entries()) {
      draw(pen, one, { fill: i === 0 ? mix(colour, '#2b2418', 0.5) : mix(colour, '#e8cfa0', 0.4), alpha: 0.5 });
    }
    if (floats) gas(pen, b, r);
  });
}

/** Bubbles of nitrogen caught among the flocs. */
function gas(pen: Pen, b: Box, r: () => number): void {
  for (let i = 0; i < b.height / 6; i++) {
    const [x, y, size] = [b.x + 8 + r() * (b.width - 16), b.y + r() * b.height, 2 + 2.6 * r()];
    disc(pen, x, y, size, { fill: 'rgba(255,250,240,0.55)', stroke: glaze(CARD, 0.95), width: 1.2 });
  }
}

function words(pen: Pen, w: PlateWords): void {
  const { jar } = w.scene;
  const left = GLASS.x - 34;
  const name = (id: CloseupLabel, fx: number, fy: number, y: number) =>
    pointTo(pen, w, { from: [fx, fy], at: [left, y], text: w.text(label(id)), align: 'right' });
  const lies = w.seen && !jar.floats ? sludgeBox(jar)?.y : undefined;
  for (const mLL of MARKS) {
    if (mLL % 100 !== 0 || mLL === 0) continue;
    // Through it goes the line to the sludge's own figure.
    if (lies !== undefined && Math.abs(markY(mLL) - lies) < w.size * 0.75) continue;
    write(pen, String(mLL), GLASS.x + GLASS.width + 9, markY(mLL) + w.size * 0.34, {
      size: w.size * (mLL % 500 === 0 ? 1 : 0.9),
      weight: mLL % 500 === 0 ? 700 : 400,
      halo: 'rgba(246,240,225,0.85)',
    });
  }
  write(pen, 'mL', GLASS.x + GLASS.width + 9, markY(1000) - w.size * 1.2, {
    size: w.size * 0.94,
    halo: 'rgba(246,240,225,0.85)',
  });
  paintJarCard(pen, w);
  if (!w.seen) {
    name('plate.jar.unseen', GLASS.x + 30, FULL.y + 60, FULL.y + 50);
    return;
  }
  const [clear, sludge] = [clearBox(jar), sludgeBox(jar)];
  if (clear === null || sludge === null) return;
  name('plate.jar.meniscus', FULL.x + 20, FULL.y, FULL.y - 18);
  if (clear.height > 40) name('plate.jar.above', FULL.x + 34, middle(clear), middle(clear));
  if (jar.specks && clear.height > 110) name('plate.jar.specks', FULL.x + 52, clear.y + 30, clear.y + 26);
  if (sludge.height > 24) {
    const y = middle(sludge) + 14;
    name(jar.floats ? 'plate.jar.lifted' : 'plate.jar.sludge', FULL.x + 34, y, y + 4);
  }
  if (!jar.floats && jar.settled_mLL !== null && clear.height > 1) line(pen, w, sludge.y, jar.settled_mLL);
}

const middle = (b: Box) => b.y + b.height / 2;

/** The line is read on the other side, past the figures of the marks. */
function line(pen: Pen, w: PlateWords, y: number, settled_mLL: number): void {
  const text = w.text(label('plate.jar.line'));
  pointTo(pen, w, {
    from: [FULL.x + FULL.width - 6, y],
    at: [GLASS.x + GLASS.width + 58, y + w.size * 0.1],
    text,
    more: w.text(milliLitres(settled_mLL)),
  });
}

function told({ jar: { settled_mLL, floats, verdict } }: Scene): readonly Reading[] {
  if (settled_mLL === null) return [];
  return [
    ['plate.jar.line', floats ? label('plate.jar.lifted') : milliLitres(settled_mLL)],
    ['plate.jar.card', verdict === null ? null : verdictName(verdict)],
  ];
}
