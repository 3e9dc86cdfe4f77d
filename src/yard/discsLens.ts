/** The lens on the disc filter's close-up: one disc of the stack, large, with its grooves. */
import { BODY_X, discTops, groovesAt, LENS, RIM } from './discsPlan.ts';
import { noise } from './hash.ts';
import { CARD, INK, mix, PAPER, PENCIL } from './ink.ts';
import { newPath } from './path.ts';
import { disc, draw, type Pen, type Style, shadowed } from './pen.ts';

/** The disc of the stack that is drawn large. */
const CHOSEN = (discTops[6] ?? 0) + 3;
const CLEAN = '#2f6f8f';

function frame(pen: Pen, ink: boolean, fill: string): void {
  const { x, y, radius } = LENS;
  const from = BODY_X + RIM;
  const lines: Style = { stroke: ink ? INK : PENCIL, width: 1.3, ...(ink ? {} : { dash: [6, 4] }) };
  draw(
    pen,
    `M${from} ${CHOSEN}L${x - radius * 0.5} ${y - radius * 0.87}M${from} ${CHOSEN}L${x - radius * 0.5} ${y + radius * 0.87}`,
    lines,
  );
  shadowed(pen, () => disc(pen, x, y, radius + 7, { fill: ink ? '#b07a2c' : PAPER }));
  disc(pen, x, y, radius + 7, { stroke: ink ? INK : PENCIL, width: 1.8 });
  disc(pen, x, y, radius, { fill, stroke: ink ? INK : PENCIL, width: 1.8 });
  if (!ink) return;
  disc(pen, x, y, radius + 4, { stroke: '#e9c27a', width: 1.8 });
}

export function paintLensPencil(pen: Pen): void {
  const { x, y, rim, bore } = LENS;
  frame(pen, false, PAPER);
  disc(pen, x, y, rim, { stroke: PENCIL, width: 1.6, dash: [7, 5] });
  disc(pen, x, y, bore, { stroke: PENCIL, width: 1.6, dash: [7, 5] });
  const p = newPath();
  for (const { outer, middle, inner } of groovesAt(1)) {
    p.moveTo(...outer);
    p.quadraticCurveTo(...middle, ...inner);
  }
  draw(pen, p, { stroke: PENCIL, width: 0.8, dash: [4, 4], alpha: 0.8 });
}

/** Open grooves are light, shut ones brown: as many as the share of the passage that is lost. */
export function paintLensInk(pen: Pen, water: string | null, share: number | null): void {
  if (share === null) {
    paintLensPencil(pen);
    return;
  }
  const { x, y, rim, bore } = LENS;
  const around = water ?? CARD;
  frame(pen, true, mix(around, '#ffffff', 0.3));
  shadowed(pen, () => disc(pen, x, y, rim, { fill: CLEAN }));
  disc(pen, x, y, rim, { stroke: INK, width: 2.2 });
  disc(pen, x, y, rim - 3.5, { stroke: '#8fc0d2', width: 1.6 });
  const grooves = groovesAt(share);
  const line = (open: boolean) => {
    const p = newPath();
    for (const { outer, middle, inner } of grooves.filter((one) => one.open === open)) {
      p.moveTo(...outer);
      p.quadraticCurveTo(...middle, ...inner);
    }
    return p;
  };
  draw(pen, line(true), { stroke: '#16394a', width: 3.4, cap: 'butt' });
  draw(pen, line(true), { stroke: '#d6ecf0', width: 1.7, cap: 'butt' });
  const shut = line(false);
  draw(pen, shut, { stroke: '#2d2114', width: 7.4, cap: 'butt' });
  draw(pen, shut, { stroke: '#5f472a', width: 5, cap: 'butt' });
  caught(
    pen,
    grooves.filter((one) => !one.open),
  );
  disc(pen, x, y, bore, { fill: mix(around, '#ffffff', 0.5), stroke: INK, width: 2 });
  for (const [dx, dy] of [
    [0, -1],
    [1, 0],
    [0, 1],
    [-1, 0],
  ] as const) {
    const at = (d: number) => `${x + dx * d} ${y + dy * d}`;
    const side = (d: number, k: number) => `${x + dx * d - dy * k} ${y + dy * d + dx * k}`;
    const d = `M${at(rim + 19)}L${at(rim + 4)}M${side(rim + 11, 6)}L${at(rim + 4)}L${side(rim + 11, -6)}`;
    draw(pen, d, { stroke: '#1f4557', width: 2.2 });
  }
  core(pen);
}

/** Ribs of the core that the stack sits on. */
function core(pen: Pen): void {
  const { x, y, bore } = LENS;
  for (let i = 0; i < 3; i++) {
    const turn = -Math.PI / 2 + (i * 2 * Math.PI) / 3;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    draw(pen, `M${x + 6 * c} ${y + 6 * s}L${x + (bore - 5) * c} ${y + (bore - 5) * s}`, { width: 7, cap: 'butt' });
    draw(pen, `M${x + 6 * c} ${y + 6 * s}L${x + (bore - 6) * c} ${y + (bore - 6) * s}`, {
      stroke: '#cfc8b6',
      width: 4,
      cap: 'butt',
    });
  }
  disc(pen, x, y, 9, { fill: '#cfc8b6', stroke: INK, width: 1.5 });
}

/** Lint and grit: most of it at the rim, where the water comes in. */
function caught(pen: Pen, shut: ReturnType<typeof groovesAt>): void {
  const r = noise(29);
  const dark = newPath();
  const light = newPath();
  for (const { outer, middle } of shut) {
    for (let i = 0; i < 9; i++) {
      const k = r() * r();
      const px = outer[0] + (middle[0] - outer[0]) * k + (r() - 0.5) * 9;
      const py = outer[1] + (middle[1] - outer[1]) * k + (r() - 0.5) * 9;
      const size = 0.9 + 1.5 * r();
      const p = r() < 0.6 ? dark : light;
      p.moveTo(px + size, py);
      p.arc(px, py, size, 0, 6.2832);
    }
  }
  draw(pen, dark, { fill: '#2d2114', alpha: 0.85 });
  draw(pen, light, { fill: '#8d6f47', alpha: 0.9 });
}
