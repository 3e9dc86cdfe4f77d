/** Close-up of the compressor with its housing cut away: how two diaphragms pump air, and how hard they now work. */
import type { CompressorScene, Scene } from '../scene/types.ts';
import { Armature } from './compressorArmature.ts';
import {
  CHEST,
  COIL_X,
  FILTER,
  HOSE,
  HOUSING,
  PAD_Y,
  rubber,
  SHAFT_Y,
  SIDES,
  type Side,
  shell,
  TEE,
} from './compressorPlan.ts';
import { noise } from './hash.ts';
import { INK, mix, PAPER, PENCIL } from './ink.ts';
import { newPath } from './path.ts';
import { box, disc, draw, fade, hatch, type Pen, pencilHatch, pipe, rect, stipple, within } from './pen.ts';
import type { Plate, PlateWords } from './plate.ts';
import { airFlow, label, percent, pressure, type Reading } from './plateMessages.ts';
import { CARD_TOP, namer, readings } from './plateWords.ts';
import type { Sparks } from './sparks.ts';
import { paintOutdoors } from './vault.ts';

export function makePlate(sparks: Sparks): Plate {
  return {
    focus: [470, 270],
    ink: ({ compressor }) => compressor.ink,
    seen: ({ compressor: { ink: _ink, outlet: _outlet, ...seen } }) => seen,
    ground(pen, area) {
      paintOutdoors(pen, { grade: PAD_Y + 22, perMetre: 190 }, area, [40, 96, 30, 74]);
      rect(pen, box(190, PAD_Y, 700, 44), 4, { fill: '#d6d2c6', stroke: INK, width: 1.8 });
      within(pen, box(190, PAD_Y, 700, 44), () => stipple(pen, box(190, PAD_Y, 700, 44), 77, 40));
    },
    pencil(pen) {
      airLine(pen, false);
      draw(pen, shell(), { fill: PAPER, stroke: PENCIL, width: 2 });
      unseenInside(pen);
    },
    paint(pen, { compressor }) {
      airLine(pen, true);
      draw(pen, shell(), { fill: '#ddd8ca' });
      within(pen, newPath(shell()), () => stipple(pen, HOUSING, 31, 90));
      if (compressor.housing === 'open') inside(pen, compressor);
      else unseenInside(pen);
      draw(pen, shell(), { width: 2.6 });
      cover(pen, compressor.housing === 'open');
      leak(pen, compressor);
    },
    words,
    told,
    movers: [new Armature(sparks)],
  };
}

function airLine(pen: Pen, ink: boolean): void {
  const line = ink ? {} : { line: PENCIL, wall: PAPER };
  pipe(pen, HOSE, 26, ink ? { wall: '#e9dfc6' } : line);
  pipe(pen, `M${TEE} 388V-900`, 12, ink ? { wall: '#cfe0de' } : line);
  const style = ink ? { fill: '#c99a55', stroke: INK } : { fill: PAPER, stroke: PENCIL };
  rect(pen, box(TEE - 17, 376, 34, 36), 4, { ...style, width: 1.8 });
  for (const x of [HOUSING.x + HOUSING.width + 6, TEE + 26]) {
    rect(pen, box(x, 379, 9, 30), 2, { fill: ink ? '#b9b3a2' : PAPER, stroke: ink ? INK : PENCIL, width: 1.3 });
  }
}

function unseenInside(pen: Pen): void {
  const b = box(HOUSING.x + 14, HOUSING.y + 14, HOUSING.width - 28, HOUSING.height - 22);
  rect(pen, b, 10, { fill: PAPER, stroke: PENCIL, width: 1.2, dash: [7, 5] });
  pencilHatch(pen, b);
  for (const side of SIDES) {
    draw(pen, rubber(side, 0), { stroke: PENCIL, width: 2, dash: [6, 4] });
    rect(pen, CHEST[side], 4, { stroke: PENCIL, width: 1.3, dash: [6, 4] });
  }
  rect(pen, FILTER, 5, { stroke: PENCIL, width: 1.3, dash: [6, 4] });
}

/** Air ways, valve chests, coils and filter; what swings is drawn over it. */
function inside(pen: Pen, s: CompressorScene): void {
  const b = box(HOUSING.x + 12, HOUSING.y + 12, HOUSING.width - 24, HOUSING.height - 18);
  rect(pen, b, 12, {
    fill: fade(pen, b.y, b.y + b.height, [
      [0, '#6a675d'],
      [1, '#4b4942'],
    ]),
    stroke: INK,
    width: 1.4,
  });
  const left = CHEST[-1].x + CHEST[-1].width / 2;
  const right = CHEST[1].x + CHEST[1].width / 2;
  // Air comes in above, from the filter to both chests, and leaves below.
  pipe(pen, `M${left} ${CHEST[-1].y + 6}V168q0 -16 16 -16H${right - 16}q16 0 16 16V${CHEST[1].y + 6}`, 26, {
    wall: '#bcd0d2',
  });
  pipe(pen, `M${left} ${CHEST[-1].y + CHEST[-1].height - 6}V378q0 16 16 16H${HOUSING.x + HOUSING.width - 6}`, 28, {
    wall: '#d8e4d8',
  });
  // It ends where it opens into the way out.
  pipe(pen, `M${right} ${CHEST[1].y + CHEST[1].height - 6}V383`, 28, { wall: '#d8e4d8' });
  filter(pen, s.intakeDirt);
  for (const side of SIDES) chest(pen, side, s.rattle && side === 1);
  coils(pen);
}

function filter(pen: Pen, dirt: number | null): void {
  const clean = dirt === null ? PAPER : mix('#dfe6c8', '#5b4a33', dirt);
  rect(pen, FILTER, 5, { fill: clean, stroke: dirt === null ? PENCIL : INK, width: 1.8 });
  if (dirt === null) {
    pencilHatch(pen, FILTER);
    return;
  }
  within(pen, FILTER, () => {
    hatch(pen, FILTER, 9, 16, { stroke: mix('#8d9d72', '#33281a', dirt), width: 1.1 });
    hatch(pen, FILTER, 9, -16, { stroke: mix('#8d9d72', '#33281a', dirt), width: 1.1 });
    // Dust lies on the side the air comes from.
    const r = noise(23);
    const lint = newPath();
    for (let i = 0; i < dirt * 160; i++) {
      const x = FILTER.x + r() * FILTER.width;
      const y = FILTER.y + r() * FILTER.height * (0.2 + 0.7 * dirt);
      const size = 1.2 + 1.6 * r();
      lint.moveTo(x + size, y);
      lint.arc(x, y, size, 0, 6.2832);
    }
    draw(pen, lint, { fill: '#3a2d1c', alpha: 0.8 });
  });
}

function chest(pen: Pen, side: Side, torn: boolean): void {
  const c = CHEST[side];
  rect(pen, c, 5, { fill: torn ? '#b98a72' : '#b6b1a3', stroke: INK, width: 2 });
  rect(pen, box(c.x + 9, c.y + 9, c.width - 18, c.height - 18), 3, { fill: '#e6efe9', stroke: INK, width: 1.3 });
  // Seats of the two flaps, and the bores through them.
  for (const y of [c.y + 44, c.y + c.height - 44]) {
    rect(pen, box(c.x + 9, y - 4, c.width - 18, 8), 0, { fill: '#8f897b', stroke: INK, width: 1.2 });
    rect(pen, box(c.x + c.width / 2 - 9, y - 4, 18, 8), 0, { fill: '#e6efe9' });
  }
  // Ring that clamps the rubber.
  const x = side < 0 ? c.x + c.width : c.x - 16;
  for (const y of [c.y + 12, c.y + c.height - 30]) {
    rect(pen, box(x, y, 16, 18), 3, { fill: '#8f897b', stroke: INK, width: 1.5 });
  }
}

function coils(pen: Pen): void {
  for (const [y, down] of [
    [186, true],
    [296, false],
  ] as const) {
    const core = box(COIL_X - 78, y, 156, 56);
    rect(pen, core, 4, { fill: '#8b8f93', stroke: INK, width: 1.8 });
    for (let i = 1; i < 9; i++) {
      draw(pen, `M${core.x + 3} ${core.y + i * 6.2}h${core.width - 6}`, { stroke: '#6f7478', width: 0.9 });
    }
    const wound = box(COIL_X - 38, down ? y + 12 : y + 2, 76, 42);
    rect(pen, wound, 6, { fill: '#b8722f', stroke: INK, width: 1.6 });
    for (let x = wound.x + 6; x < wound.x + wound.width - 2; x += 6) {
      draw(pen, `M${x} ${wound.y + 2}v${wound.height - 4}`, { stroke: '#6f3f14', width: 1.7, cap: 'butt' });
    }
    draw(pen, `M${wound.x + 5} ${wound.y + 5}h${wound.width - 10}`, { stroke: '#f0c48a', width: 1.6, alpha: 0.7 });
  }
}

/** The slots of the cover, or the cover laid on the lawn. */
function cover(pen: Pen, off: boolean): void {
  if (off) {
    pen.save();
    pen.translate(6, PAD_Y + 24);
    pen.scale(0.72, 0.72);
    draw(pen, 'M0 0v-20q0 -16 16 -16h214q16 0 16 16v20z', { fill: '#c9c5b8', width: 2.2 });
    draw(pen, 'M30 -24h180M30 -14h180', { stroke: '#8f8b80', width: 2.4, dash: [18, 9], cap: 'butt' });
    pen.restore();
    return;
  }
  const { x, y, width } = HOUSING;
  for (const d of [22, 36, 50]) {
    draw(pen, `M${x + 70} ${y + d}h${width - 140}`, { width: 3, dash: [30, 12], cap: 'butt' });
  }
}

/** A hole that was found, with what hisses out of it. */
function leak(pen: Pen, s: CompressorScene): void {
  if (s.leak === null) return;
  const [x, y] = s.leak.where === 'joint' ? [TEE, 376] : [1010, 380];
  const far = 16 + Math.min(30, s.leak.hole_m * 9000);
  disc(pen, x, y, 4, { fill: INK });
  for (const lean of [-0.6, -0.2, 0.2, 0.6]) {
    draw(pen, `M${x + lean * 9} ${y - 8}q${lean * 8} ${-far / 2} ${lean * far} ${-far}`, {
      stroke: '#2f5d73',
      width: 2.4,
    });
  }
}

function words(pen: Pen, w: PlateWords): void {
  const s = w.scene.compressor;
  const name = namer(pen, w);
  const open = w.seen && s.housing === 'open';
  name('plate.compressor.outlet', [1086, 486], [1058, 490], 'right');
  name('plate.compressor.tee', [TEE, 306], [TEE + 26, 310]);
  if (!open) {
    name('plate.compressor.closed', [HOUSING.x + 60, HOUSING.y + 60], [HOUSING.x - 18, HOUSING.y + 40], 'right');
  } else {
    name('plate.compressor.filter', [FILTER.x + 60, FILTER.y + 10], [FILTER.x - 30, 74], 'right');
    name('plate.compressor.coil', [COIL_X - 30, 206], [262, 108], 'right');
    name('plate.compressor.valves', [CHEST[-1].x + 14, CHEST[-1].y + 44], [HOUSING.x - 18, 214], 'right');
    name(
      'plate.compressor.diaphragm',
      [CHEST[-1].x + CHEST[-1].width + 8, SHAFT_Y + 26],
      [HOUSING.x - 18, 322],
      'right',
    );
    name('plate.compressor.armature', [COIL_X - 70, SHAFT_Y], [HOUSING.x - 18, 268], 'right');
    if (s.rattle) {
      name('plate.compressor.torn', [CHEST[1].x - 6, SHAFT_Y - 30], [CHEST[1].x + CHEST[1].width + 30, 210]);
    }
  }
  if (!w.seen) return;
  readings(pen, w, [TEE + 40, CARD_TOP], told(w.scene));
}

function told({ compressor: s }: Scene): readonly Reading[] {
  return [
    ['plate.compressor.state', s.running === null ? null : label(`plate.compressor.${s.running ? 'runs' : 'rests'}`)],
    ['plate.compressor.pressure', s.pressure_kPa === null ? null : pressure(s.pressure_kPa)],
    ['plate.compressor.air', s.flow_Lmin === null ? null : airFlow(s.flow_Lmin)],
    ['plate.compressor.stroke', s.stroke === null || s.running !== true ? null : percent(s.stroke)],
    ['plate.compressor.dirt', s.intakeDirt === null ? null : percent(s.intakeDirt)],
  ];
}
