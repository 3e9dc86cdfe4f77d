/** The open doors of the panel in close-up: reset card, padlock and tag, wiring plan. */

import type { PanelScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { CARD, CAUTION, INK, PAPER, PENCIL } from './ink.ts';
import { CABINET, LEFT_DOOR, RIGHT_DOOR } from './panelPlan.ts';
import { newPath } from './path.ts';
import { type Box, box, disc, draw, fade, hatch, type Pen, rect, shadowed, write } from './pen.ts';
import { type CloseupLabel, label } from './plateMessages.ts';

export interface Look {
  readonly panel: PanelScene;
  /** False while nobody has seen the panel: everything is a pencil sketch. */
  readonly inked: boolean;
  readonly size: number;
  readonly text: (m: Message) => string;
}

export function paintDoors(pen: Pen, look: Look): void {
  door(pen, LEFT_DOOR, look.inked);
  door(pen, RIGHT_DOOR, look.inked);
  doorCard(pen, look);
  if (look.inked) plan(pen);
  hook(pen, look);
}

function door(pen: Pen, b: Box, inked: boolean): void {
  const line = inked ? INK : PENCIL;
  const metal = inked
    ? fade(pen, b.y, b.y + b.height, [
        [0, '#efebe0'],
        [1, '#d8d2c2'],
      ])
    : PAPER;
  shadowed(pen, () => rect(pen, b, 6, { fill: metal }));
  rect(pen, b, 6, { stroke: line, width: 2 });
  rect(pen, box(b.x + 8, b.y + 8, b.width - 16, b.height - 16), 3, { stroke: line, width: 1.4, alpha: 0.6 });
  if (inked) {
    hatch(pen, box(b.x + b.width - 30, b.y + 10, 22, b.height - 20), 6, -20, {
      stroke: '#8d8672',
      width: 0.7,
      alpha: 0.4,
    });
    draw(pen, `M${b.x + 5} ${b.y + b.height - 5}V${b.y + 5}H${b.x + b.width - 5}`, {
      stroke: '#fffdf5',
      width: 1.4,
      alpha: 0.9,
    });
  }
  const hinge = b.x < CABINET.x ? b.x + b.width - 2 : b.x - 8;
  for (const y of [b.y + 40, b.y + b.height / 2 - 20, b.y + b.height - 80]) {
    rect(pen, box(hinge, y, 10, 38), 4, { fill: inked ? '#bfb8a6' : PAPER, stroke: line, width: 1.3 });
    draw(pen, `M${hinge} ${y + 10}h10M${hinge} ${y + 19}h10M${hinge} ${y + 28}h10`, { stroke: line, width: 0.9 });
  }
}

const RESET: readonly CloseupLabel[] = [
  'yard.panel.reset1',
  'yard.panel.reset2',
  'yard.panel.reset3',
  'yard.panel.reset4',
];
const FOLLOW: readonly CloseupLabel[] = [
  'yard.panel.follow1',
  'yard.panel.follow2',
  'yard.panel.follow3',
  'yard.panel.follow4',
];

/** The maker's card: how to reset an alarm that latches, what to do with one that goes by itself. */
function doorCard(pen: Pen, look: Look): void {
  const latching = look.panel.alarm === 'latching';
  const b = box(LEFT_DOOR.x + 20, LEFT_DOOR.y + 20, LEFT_DOOR.width - 40, 164);
  shadowed(pen, () => rect(pen, b, 2, { fill: CARD }));
  rect(pen, b, 2, { stroke: look.inked ? INK : PENCIL, width: 1.3 });
  for (const [x, y] of [
    [b.x + 8, b.y + 8],
    [b.x + b.width - 8, b.y + 8],
    [b.x + 8, b.y + b.height - 8],
    [b.x + b.width - 8, b.y + b.height - 8],
  ] as const)
    disc(pen, x, y, 2.6, { fill: '#b9954f', stroke: INK, width: 0.9 });
  const colour = look.inked ? INK : '#5d5648';
  write(pen, look.text(label(latching ? 'yard.panel.reset' : 'yard.panel.alarm')), b.x + 22, b.y + 30, {
    size: look.size * 1.15,
    weight: 700,
    colour,
  });
  draw(pen, `M${b.x + 22} ${b.y + 40}h${b.width - 44}`, { stroke: colour, width: 1.2 });
  for (const [i, id] of (latching ? RESET : FOLLOW).entries()) {
    const y = b.y + 66 + i * 27;
    write(pen, String(i + 1), b.x + 22, y, { size: look.size, weight: 700, colour: '#2f5d73' });
    write(pen, look.text(label(id)), b.x + 40, y, { size: look.size, colour });
  }
}

/** Padlock and blank tag on their hook, when they are not on a lever. */
function hook(pen: Pen, look: Look): void {
  const x = LEFT_DOOR.x + LEFT_DOOR.width / 2;
  const y = LEFT_DOOR.y + 206;
  const line = look.inked ? INK : PENCIL;
  rect(pen, box(x - 14, y, 28, 9), 2, { fill: look.inked ? '#bfb8a6' : PAPER, stroke: line, width: 1.3 });
  draw(pen, `M${x} ${y + 9}v7q0 6 -6 6`, { stroke: line, width: 2 });
  if (look.panel.breakers.some((b) => b.locked)) return;
  padlock(pen, x - 40, y + 68, 1, look.inked, true);
  draw(pen, `M${x - 4} ${y + 20}q30 6 38 32`, { stroke: look.inked ? '#8a5a2c' : PENCIL, width: 1.3 });
  tag(pen, x + 34, y + 50, 1, look);
}

/** A padlock whose shackle foot is at the origin. */
export function padlock(pen: Pen, x: number, y: number, k: number, inked: boolean, open: boolean): void {
  const line = inked ? INK : PENCIL;
  pen.save();
  pen.translate(x, y);
  pen.scale(k, k);
  const shackle = open ? 'M-14 0V-22q0-16 15-16t15 16v4' : 'M-13 0V-14q0-15 13-15t13 15V0';
  draw(pen, shackle, { stroke: line, width: 9 });
  draw(pen, shackle, { stroke: inked ? '#d5cfbf' : PAPER, width: 5.6 });
  rect(pen, box(-23, -2, 46, 44), 5, { fill: inked ? CAUTION : PAPER, stroke: line, width: 1.8 });
  if (inked) hatch(pen, box(8, 0, 12, 40), 4, -10, { stroke: '#9a6415', width: 0.8, alpha: 0.7 });
  disc(pen, 0, 16, 5.5, { fill: line });
  draw(pen, 'M-3 17h6l2 13h-10z', { fill: line });
  pen.restore();
}

/** The tag: a red band with its words, lines for a name. */
export function tag(pen: Pen, x: number, y: number, k: number, look: Look): void {
  pen.save();
  pen.translate(x, y);
  pen.rotate(0.08);
  pen.scale(k, k);
  const line = look.inked ? INK : PENCIL;
  const shape = 'M-26 14L-14 0H14L26 14V98H-26Z';
  shadowed(pen, () => draw(pen, shape, { fill: CARD }));
  draw(pen, shape, { stroke: line, width: 1.5 });
  disc(pen, 0, 9, 4, { fill: '#cfc8b6', stroke: line, width: 1 });
  draw(pen, 'M-26 22H26V44H-26Z', { fill: look.inked ? '#c9402a' : PAPER, stroke: line, width: 1 });
  draw(pen, 'M-16 33H16', { stroke: look.inked ? CARD : PENCIL, width: 4 });
  draw(pen, 'M-18 56h36M-18 68h36M-18 80h24', { stroke: line, width: 1, alpha: 0.7 });
  pen.restore();
}

/** Ladder diagram on the right-hand door: rails, contacts, coil, lamp. */
function plan(pen: Pen): void {
  const b = box(RIGHT_DOOR.x + 20, RIGHT_DOOR.y + 20, RIGHT_DOOR.width - 40, 220);
  shadowed(pen, () => rect(pen, b, 2, { fill: '#eef3f0' }));
  rect(pen, b, 2, { width: 1.3 });
  const grid = newPath();
  for (let x = b.x + 12; x < b.x + b.width; x += 12) {
    grid.moveTo(x, b.y);
    grid.lineTo(x, b.y + b.height);
  }
  for (let y = b.y + 12; y < b.y + b.height; y += 12) {
    grid.moveTo(b.x, y);
    grid.lineTo(b.x + b.width, y);
  }
  draw(pen, grid, { stroke: '#9db8bd', width: 0.5, alpha: 0.45 });
  const l = b.x + 18;
  const r = b.x + b.width - 18;
  const s = { stroke: '#2f5d73', width: 1.5 };
  draw(pen, `M${l} ${b.y + 16}V${b.y + 204}M${r} ${b.y + 16}V${b.y + 204}`, { ...s, width: 2.4 });
  for (const [i, contacts] of [2, 1, 3, 2].entries()) {
    const y = b.y + 38 + i * 46;
    const end = r - 36;
    draw(pen, `M${l} ${y}H${end}M${r - 18} ${y}H${r}`, s);
    disc(pen, r - 27, y, 9, { fill: '#eef3f0', ...s });
    if (i === 0) draw(pen, `M${r - 33} ${y - 6}l12 12M${r - 21} ${y - 6}l-12 12`, s);
    for (let c = 0; c < contacts; c++) {
      const x = l + 22 + c * 36;
      rect(pen, box(x, y - 4, 10, 8), 0, { fill: '#eef3f0' });
      draw(pen, `M${x} ${y - 8}v16M${x + 10} ${y - 8}v16`, s);
      if ((c + i) % 3 === 2) draw(pen, `M${x - 2} ${y + 9}l14 -18`, s);
    }
    if (i === 2) {
      draw(pen, `M${l + 12} ${y}v20H${l + 48}v-20M${l + 26} ${y + 12}v16M${l + 36} ${y + 12}v16`, s);
      rect(pen, box(l + 27, y + 16, 8, 8), 0, { fill: '#eef3f0' });
    }
  }
  const pouch = box(RIGHT_DOOR.x + 34, RIGHT_DOOR.y + 262, RIGHT_DOOR.width - 68, 84);
  rect(pen, box(pouch.x + 14, pouch.y - 16, 96, 60), 2, { fill: CARD, stroke: INK, width: 1.1 });
  draw(pen, `M${pouch.x + 24} ${pouch.y - 7}h60`, { stroke: '#8e774f', width: 1.2 });
  rect(pen, pouch, 4, { fill: '#d9cdb0', stroke: INK, width: 1.4 });
  hatch(pen, box(pouch.x + 2, pouch.y + 2, pouch.width - 4, pouch.height - 4), 9, -30, {
    stroke: '#8e774f',
    width: 0.7,
    alpha: 0.35,
  });
  draw(pen, `M${pouch.x + 6} ${pouch.y + 8}h${pouch.width - 12}`, { stroke: '#8e774f', width: 1, dash: [5, 4] });
}
