/** The close-up's surroundings: house wall, cabinet, roof, doors with the reset card and the wiring plan, conduits. */
import type { PanelScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { noise } from './hash.ts';
import { CARD, CAUTION, INK, LID, PAPER, PENCIL } from './ink.ts';
import { type CloseupLabel, label } from './labels.ts';
import { BUZZER, CABINET, LEFT_DOOR, RECESS, RIGHT_DOOR, SILENCE, TEST } from './panelPlan.ts';
import {
  type Box,
  box,
  disc,
  draw,
  fade,
  grass,
  hatch,
  type Pen,
  rect,
  shadowed,
  stipple,
  within,
  write,
} from './pen.ts';

export interface Look {
  readonly panel: PanelScene;
  /** False while nobody has seen the panel: everything is a pencil sketch. */
  readonly inked: boolean;
  readonly size: number;
  readonly text: (m: Message) => string;
}

export function paintSurroundings(pen: Pen, view: Box, look: Look): void {
  wall(pen, view);
  if (look.panel.door !== 'closed') {
    door(pen, LEFT_DOOR, look.inked);
    door(pen, RIGHT_DOOR, look.inked);
    resetCard(pen, look);
    if (look.inked) plan(pen);
    hook(pen, look);
  }
  conduits(pen, look.inked);
  cabinet(pen, look.inked);
  if (look.panel.door === 'closed') closedDoors(pen);
  strip(pen, look);
  ground(pen, view);
}

/** Lap siding with a little grain. */
function wall(pen: Pen, view: Box): void {
  const board = 34;
  const from = Math.floor(view.y / board) * board;
  for (let y = from; y < view.y + view.height; y += board) {
    pen.fillStyle = fade(pen, y, y + board, [
      [0, '#fbf5e6'],
      [0.85, '#f3e9d2'],
      [1, '#e2d4b6'],
    ]);
    pen.fillRect(view.x, y, view.width, board);
    const r = noise(Math.round(y / board) + 400);
    const grain = new Path2D();
    for (let x = -200; x < 1500; x += 50 + r() * 130) {
      const gy = y + 6 + r() * 22;
      const w = 30 + r() * 80;
      grain.moveTo(x, gy);
      grain.quadraticCurveTo(x + w * 0.5, gy + (r() - 0.5) * 4, x + w, gy + (r() - 0.5) * 2);
    }
    draw(pen, grain, { stroke: '#b79f74', width: 0.8, alpha: 0.5 });
    draw(pen, `M${view.x} ${y}H${view.x + view.width}`, { stroke: '#6b5a3c', width: 1.1, alpha: 0.75 });
    const joint = -100 + r() * 1300;
    draw(pen, `M${joint} ${y}v${board}`, { stroke: '#6b5a3c', width: 1, alpha: 0.6 });
    disc(pen, joint + 6, y + board * 0.5, 1.4, { fill: '#6b5a3c', alpha: 0.6 });
  }
}

function ground(pen: Pen, view: Box): void {
  const y = 502;
  if (view.y + view.height < y) return;
  const b = box(view.x, y, view.width, view.y + view.height - y);
  rect(pen, b, 0, { fill: '#d6d2c6' });
  stipple(pen, b, 808, 40);
  draw(pen, `M${view.x} ${y}h${view.width}`, { width: 1.6 });
  draw(pen, grass(view.x, view.x + view.width, Math.min(view.y + view.height, 524), 88, 22, 3.6), {
    stroke: '#5d7a35',
    width: 1.5,
  });
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

function resetCard(pen: Pen, look: Look): void {
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
  write(pen, look.text(label('yard.panel.reset')), b.x + 22, b.y + 30, { size: look.size * 1.15, weight: 700, colour });
  draw(pen, `M${b.x + 22} ${b.y + 40}h${b.width - 44}`, { stroke: colour, width: 1.2 });
  const lines: readonly CloseupLabel[] = [
    'yard.panel.reset1',
    'yard.panel.reset2',
    'yard.panel.reset3',
    'yard.panel.reset4',
  ];
  for (const [i, id] of lines.entries()) {
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
  const grid = new Path2D();
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

function conduits(pen: Pen, inked: boolean): void {
  for (const x of [404, 492, 590, 688, 776]) {
    draw(pen, `M${x} 460V510`, { stroke: inked ? INK : PENCIL, width: 15, cap: 'butt' });
    draw(pen, `M${x} 460V510`, { stroke: inked ? '#d9d4c6' : PAPER, width: 12, cap: 'butt' });
    if (inked) draw(pen, `M${x - 3} 464V508`, { stroke: '#fffdf5', width: 2, alpha: 0.8, cap: 'butt' });
    rect(pen, box(x - 11, 484, 22, 7), 2, {
      fill: inked ? '#bfb8a6' : PAPER,
      stroke: inked ? INK : PENCIL,
      width: 1.2,
    });
  }
}

function cabinet(pen: Pen, inked: boolean): void {
  const line = inked ? INK : PENCIL;
  const b = CABINET;
  const metal = inked
    ? fade(pen, b.y, b.y + b.height, [
        [0, '#f1eee4'],
        [1, '#d5cfbf'],
      ])
    : PAPER;
  shadowed(pen, () => rect(pen, b, 8, { fill: metal }));
  rect(pen, b, 8, { stroke: line, width: 2.3 });
  rect(pen, RECESS, 3, {
    fill: inked
      ? fade(pen, RECESS.y, RECESS.y + RECESS.height, [
          [0, '#b3a98f'],
          [0.1, '#cfc7b3'],
          [1, '#d9d2c0'],
        ])
      : '#f1e9d6',
    stroke: line,
    width: 1.8,
  });
  if (inked) {
    within(pen, RECESS, () =>
      hatch(pen, box(RECESS.x, RECESS.y, RECESS.width, 9), 5, -8, { stroke: '#6f6753', width: 0.8, alpha: 0.6 }),
    );
    within(pen, RECESS, () =>
      hatch(pen, box(RECESS.x, RECESS.y, 9, RECESS.height), 6, -14, { stroke: '#6f6753', width: 0.7, alpha: 0.5 }),
    );
  } else within(pen, RECESS, () => hatch(pen, RECESS, 11, -180, { stroke: PENCIL, width: 0.7, alpha: 0.25 }));
  const roof = `M${b.x - 24} ${b.y + 12}L${b.x + 20} ${b.y - 32}H${b.x + b.width - 20}L${b.x + b.width + 24} ${b.y + 12}Z`;
  draw(pen, roof, {
    fill: inked
      ? fade(pen, b.y - 32, b.y + 12, [
          [0, '#8aa484'],
          [1, LID],
        ])
      : PAPER,
    stroke: line,
    width: 2,
  });
  const ribs = new Path2D();
  for (let i = 0; i <= 10; i++) {
    ribs.moveTo(b.x + 24 + ((b.width - 48) * i) / 10, b.y - 31);
    ribs.lineTo(b.x - 18 + ((b.width + 36) * i) / 10, b.y + 10);
  }
  draw(pen, ribs, { stroke: inked ? '#4a634b' : PENCIL, width: 1.2, alpha: 0.7 });
  if (inked) draw(pen, `M${b.x - 16} ${b.y + 8}H${b.x + b.width + 16}`, { stroke: '#b8cdb0', width: 1.6, alpha: 0.8 });
}

function closedDoors(pen: Pen): void {
  const half = RECESS.width / 2;
  for (const side of [0, 1]) {
    const b = box(RECESS.x + side * half, RECESS.y, half, RECESS.height);
    rect(pen, b, 2, {
      fill: fade(pen, b.y, b.y + b.height, [
        [0, '#efebe0'],
        [1, '#dad4c5'],
      ]),
      stroke: INK,
      width: 1.8,
    });
    rect(pen, box(b.x + 14, b.y + 14, b.width - 28, b.height - 28), 4, { stroke: '#8d8672', width: 1.3 });
    for (let i = 0; i < 5; i++) {
      const y = b.y + 34 + i * 11;
      draw(pen, `M${b.x + 60} ${y}h${b.width - 120}`, { width: 3.6 });
      draw(pen, `M${b.x + 60} ${y + 1.5}h${b.width - 120}`, { stroke: '#fffdf5', width: 1 });
    }
    hatch(pen, box(b.x + b.width - 34, b.y + 16, 18, b.height - 32), 6, -16, {
      stroke: '#8d8672',
      width: 0.7,
      alpha: 0.4,
    });
  }
  const x = RECESS.x + half;
  rect(pen, box(x + 10, RECESS.y + 140, 14, 48), 5, { fill: '#bfb8a6', stroke: INK, width: 1.5 });
  disc(pen, x + 17, RECESS.y + 152, 3.4, { fill: '#8d8672', stroke: INK, width: 1 });
}

/** The strip below the doors: what a household may work. */
function strip(pen: Pen, look: Look): void {
  const { inked, size, text } = look;
  const line = inked ? INK : PENCIL;
  draw(pen, `M${CABINET.x + 8} 398H${CABINET.x + CABINET.width - 8}`, { stroke: line, width: 1.3 });
  for (const [c, id, fill] of [
    [SILENCE, 'yard.panel.silence', '#2f5d73'],
    [TEST, 'yard.panel.test', CAUTION],
  ] as const) {
    disc(pen, c.x, c.y, c.r + 4, { fill: inked ? '#cfc8b6' : PAPER, stroke: line, width: 1.5 });
    const down = id === 'yard.panel.test' && look.panel.testHeld ? 0.86 : 1;
    disc(pen, c.x, c.y, c.r * down, { fill: inked ? fill : PAPER, stroke: line, width: 1.5 });
    if (inked)
      draw(pen, `M${c.x - c.r * 0.6} ${c.y - c.r * 0.2}q${c.r * 0.2} ${-c.r * 0.55} ${c.r * 0.7} ${-c.r * 0.5}`, {
        stroke: '#ffffff',
        width: 2,
        alpha: 0.5,
      });
    const mark = inked ? (id === 'yard.panel.silence' ? CARD : INK) : PENCIL;
    if (id === 'yard.panel.silence')
      draw(
        pen,
        `M${c.x - 6} ${c.y + 4}h12l-2-3v-4q0-5-4-5t-4 5v4zM${c.x - 1.5} ${c.y + 6}h3M${c.x - 8} ${c.y + 7}L${c.x + 8} ${c.y - 8}`,
        { stroke: mark, width: 1.7 },
      );
    else {
      disc(pen, c.x, c.y, 4, { stroke: mark, width: 1.7 });
      const rays = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => {
        const a = (i * Math.PI) / 4;
        return `M${c.x + Math.cos(a) * 6.5} ${c.y + Math.sin(a) * 6.5}L${c.x + Math.cos(a) * 9.5} ${c.y + Math.sin(a) * 9.5}`;
      });
      draw(pen, rays.join(''), { stroke: mark, width: 1.6 });
    }
    write(pen, text(label(id)), c.x + c.r + 14, c.y + size * 0.35, {
      size: size * 1.08,
      weight: 700,
      colour: inked ? INK : '#5d5648',
    });
  }
  write(pen, text(label('yard.panel.buzzer')), BUZZER.x - BUZZER.r - 14, BUZZER.y + size * 0.35, {
    size: size * 1.08,
    weight: 700,
    align: 'right',
    colour: inked ? INK : '#5d5648',
  });
  disc(pen, BUZZER.x, BUZZER.y, BUZZER.r, { fill: inked ? '#3f3c36' : PAPER, stroke: line, width: 1.8 });
  for (const r of [6, 11, 16]) {
    const arcs = new Path2D();
    for (let a = 0; a < 4; a++) {
      const from = a * 1.571 + r * 0.12;
      arcs.moveTo(BUZZER.x + Math.cos(from) * r, BUZZER.y + Math.sin(from) * r);
      arcs.arc(BUZZER.x, BUZZER.y, r, from, from + 1.1);
    }
    draw(pen, arcs, { stroke: inked ? '#c9c2b0' : PENCIL, width: 2 });
  }
}
