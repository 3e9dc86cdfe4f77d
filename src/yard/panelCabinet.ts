/** The close-up's surroundings: house wall, cabinet, roof, closed doors, the household's strip, conduits. */

import { noise } from './hash.ts';
import { CARD, CAUTION, INK, LID, PAPER, PENCIL } from './ink.ts';
import { type Look, paintDoors } from './panelDoors.ts';
import { BUZZER, CABINET, RECESS, SILENCE, TEST } from './panelPlan.ts';
import { newPath } from './path.ts';
import {
  type Box,
  box,
  disc,
  draw,
  fade,
  grass,
  hatch,
  lined,
  type Pen,
  rect,
  shadowed,
  stipple,
  within,
  write,
} from './pen.ts';
import { label } from './plateMessages.ts';

export function paintSurroundings(pen: Pen, view: Box, look: Look): void {
  wall(pen, view);
  if (look.panel.door !== 'closed') {
    paintDoors(pen, look);
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
    const grain = newPath();
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

function conduits(pen: Pen, inked: boolean): void {
  for (const x of [404, 492, 590, 688, 776]) {
    lined(
      pen,
      `M${x} 460V510`,
      { stroke: inked ? INK : PENCIL, width: 15, cap: 'butt' },
      { stroke: inked ? '#d9d4c6' : PAPER, width: 12, cap: 'butt' },
    );
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
  const ribs = newPath();
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
    const arcs = newPath();
    for (let a = 0; a < 4; a++) {
      const from = a * 1.571 + r * 0.12;
      arcs.moveTo(BUZZER.x + Math.cos(from) * r, BUZZER.y + Math.sin(from) * r);
      arcs.arc(BUZZER.x, BUZZER.y, r, from, from + 1.1);
    }
    draw(pen, arcs, { stroke: inked ? '#c9c2b0' : PENCIL, width: 2 });
  }
}
