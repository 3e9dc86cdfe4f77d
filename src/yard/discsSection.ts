/** The disc filter in section for its close-up: box, lid, body, stack, the ways of the water and the dirt in them. */
import {
  BODY_X,
  BORE,
  CUP,
  CUP_WALL,
  DISC_HIGH,
  discTops,
  GRADE,
  gapsAt,
  HEAD,
  PIPE_WIDE,
  PIPE_Y,
  RIM,
  STACK,
  VALVE_BOX,
} from './discsPlan.ts';
import { noise } from './hash.ts';
import { INK, LID, mix, PAPER, PENCIL, SHELL } from './ink.ts';
import { newPath } from './path.ts';
import { box, disc, draw, fade, hatch, type Pen, pencilHatch, pipe, rect, type Style, within } from './pen.ts';

const WALL = 12;
const INNER = CUP.width / 2 - CUP_WALL;
const PASSAGE = PIPE_WIDE / 2 - 3;

const INLET = `M-1400 ${PIPE_Y}H${HEAD.x + 4}`;
const OUTLET = `M${HEAD.x + HEAD.width - 4} ${PIPE_Y}H2200`;

/** The cup's outline, so far from its middle. */
function dome(half: number, top: number): string {
  const foot = CUP.y + CUP.height;
  const bend = half * 0.62;
  return `M${BODY_X - half} ${foot}V${top + bend}Q${BODY_X - half} ${top} ${BODY_X - half + bend} ${top}H${BODY_X + half - bend}Q${BODY_X + half} ${top} ${BODY_X + half} ${top + bend}V${foot}Z`;
}

/** Where water stands that comes in, and where it goes out. */
const WAYS = [
  dome(INNER, CUP.y + CUP_WALL),
  `M${HEAD.x - 2} ${PIPE_Y - PASSAGE}H${BODY_X - INNER}V${CUP.y + CUP.height - 2}H${BODY_X - RIM + 2}V${PIPE_Y + PASSAGE}H${HEAD.x - 2}Z`,
  `M${BODY_X - BORE} ${STACK.foot}V${PIPE_Y + PASSAGE}H${HEAD.x + HEAD.width + 2}V${PIPE_Y - PASSAGE}H${BODY_X + BORE}V${STACK.foot}Z`,
] as const;

export function paintBox(pen: Pen, ink: boolean, open: boolean): void {
  const b = VALVE_BOX;
  const outer = box(b.x - WALL, b.y, b.width + 2 * WALL, b.height + 4);
  rect(pen, outer, 4, { fill: ink ? '#8f9c8c' : PAPER, stroke: ink ? INK : PENCIL, width: 2 });
  rect(pen, b, 2, {
    fill: ink
      ? fade(pen, b.y, b.y + b.height, [
          [0, '#e6dcc3'],
          [1, SHELL],
        ])
      : PAPER,
    stroke: ink ? INK : PENCIL,
    width: 1.4,
  });
  if (ink)
    within(pen, b, () => hatch(pen, box(b.x, b.y, b.width, 18), 7, 14, { stroke: '#8e774f', width: 0.8, alpha: 0.5 }));
  gravel(pen, ink);
  lid(pen, ink, open);
}

/** The box has no floor: it stands on gravel, which lets water seep away. */
function gravel(pen: Pen, ink: boolean): void {
  const b = VALVE_BOX;
  within(pen, b, () => {
    const r = noise(313);
    for (let row = 0; row < 2; row++) {
      for (let x = b.x - 6; x < b.x + b.width + 8; x += 15) {
        const p = newPath();
        p.ellipse(
          x + r() * 9,
          b.y + b.height - 4 - row * 9 + r() * 4,
          6 + r() * 4,
          4.4 + r() * 2.4,
          r() - 0.5,
          0,
          6.2832,
        );
        draw(pen, p, {
          fill: ink ? mix('#b5ab98', '#8f8674', r()) : PAPER,
          stroke: ink ? '#5d5648' : PENCIL,
          width: 1.1,
        });
      }
    }
  });
}

function lid(pen: Pen, ink: boolean, open: boolean): void {
  const style: Style = { fill: ink ? LID : PAPER, stroke: ink ? INK : PENCIL, width: 1.9 };
  const wide = VALVE_BOX.width + 2 * WALL + 16;
  const b = open ? box(666, GRADE - 18, 330, 18) : box(VALVE_BOX.x - WALL - 8, GRADE - 10, wide, 18);
  rect(pen, b, 6, style);
  if (!ink) return;
  if (!open) {
    draw(pen, `M${b.x + 14} ${b.y + 5}h${b.width - 28}`, { stroke: '#b8cdb0', width: 1.6 });
    for (const x of [b.x + 22, b.x + b.width - 22])
      disc(pen, x, b.y + 10, 3, { fill: '#4a634b', stroke: INK, width: 1 });
    return;
  }
  hatch(pen, box(b.x + 8, b.y + 4, b.width - 16, 10), 12, -10, { stroke: '#4a634b', width: 1, alpha: 0.6 });
}

export function paintBodyPencil(pen: Pen): void {
  const line: Style = { fill: PAPER, stroke: PENCIL, width: 1.8 };
  pipe(pen, INLET, PIPE_WIDE, { line: PENCIL, wall: PAPER });
  pipe(pen, OUTLET, PIPE_WIDE, { line: PENCIL, wall: PAPER });
  rect(pen, HEAD, 8, line);
  draw(pen, dome(CUP.width / 2, CUP.y), line);
  pencilHatch(pen, box(BODY_X - INNER, CUP.y + 60, 2 * INNER, CUP.height - 60));
  clampBand(pen, false);
  const stack = box(BODY_X - RIM, STACK.top, 2 * RIM, STACK.foot - STACK.top);
  rect(pen, stack, 3, { fill: PAPER, stroke: PENCIL, width: 1.4, dash: [6, 4] });
  draw(pen, discTops.map((top) => `M${stack.x} ${top + DISC_HIGH}h${stack.width}`).join(''), {
    stroke: PENCIL,
    width: 0.9,
    dash: [5, 4],
  });
  draw(pen, `M${BODY_X - BORE} ${STACK.top}V${STACK.foot}M${BODY_X + BORE} ${STACK.top}V${STACK.foot}`, {
    stroke: PENCIL,
    width: 1.2,
    dash: [6, 4],
  });
  draw(pen, NUT, { stroke: PENCIL, width: 1.3, dash: [4, 3] });
}

/** `water` is the colour of what passes, where anybody knows it; `share` what dirt has left of the passage. */
export function paintBodyInk(pen: Pen, water: string | null, share: number | null): void {
  const wall = '#e6e2d4';
  for (const d of [INLET, OUTLET]) {
    pipe(pen, d, PIPE_WIDE, { wall });
    if (water !== null) draw(pen, d, { stroke: water, width: 2 * PASSAGE - 2, cap: 'butt' });
  }
  collars(pen);
  rect(pen, HEAD, 8, {
    fill: fade(pen, HEAD.y, HEAD.y + HEAD.height, [
      [0, '#5f7a86'],
      [1, '#3d5561'],
    ]),
    stroke: INK,
    width: 2.2,
  });
  within(pen, HEAD, () => hatch(pen, HEAD, 8, -HEAD.height, { stroke: '#2c424e', width: 1, alpha: 0.5 }));
  draw(pen, dome(CUP.width / 2, CUP.y), { fill: '#54707d', stroke: INK, width: 2.4 });
  within(pen, newPath(dome(CUP.width / 2, CUP.y)), () =>
    hatch(pen, CUP, 8, -CUP.height, { stroke: '#2c424e', width: 1, alpha: 0.5 }),
  );
  rect(pen, box(CUP.x, CUP.y + CUP.height - 4, CUP.width, 16), 0, { fill: '#466270', stroke: INK, width: 1.6 });
  const fill =
    water === null
      ? PAPER
      : fade(pen, CUP.y, HEAD.y + HEAD.height, [
          [0, mix(water, '#ffffff', 0.2)],
          [1, water],
        ]);
  for (const way of WAYS) draw(pen, way, { fill });
  if (water === null) pencilHatch(pen, box(BODY_X - INNER, CUP.y + 40, 2 * INNER, CUP.height - 42));
  outlines(pen);
  clampBand(pen, true);
  stack(pen, water, share);
  fittings(pen);
  arrows(pen);
}

/** Edges of the ways, open where they meet. */
function outlines(pen: Pen): void {
  const foot = CUP.y + CUP.height;
  const [l, r] = [BODY_X - INNER, BODY_X + INNER];
  const top = CUP.y + CUP_WALL;
  const bend = INNER * 0.62;
  const cup = `M${l} ${PIPE_Y - PASSAGE}V${top + bend}Q${l} ${top} ${l + bend} ${top}H${r - bend}Q${r} ${top} ${r} ${top + bend}V${foot}H${BODY_X + BORE}`;
  const below = `M${BODY_X - RIM + 2} ${foot - 4}V${PIPE_Y + PASSAGE}H${HEAD.x}M${l} ${PIPE_Y - PASSAGE}H${HEAD.x}`;
  const out = `M${BODY_X - BORE} ${STACK.foot}V${PIPE_Y + PASSAGE}H${HEAD.x + HEAD.width}M${BODY_X + BORE} ${STACK.foot}V${PIPE_Y - PASSAGE}H${HEAD.x + HEAD.width}`;
  draw(pen, cup + below + out, { width: 1.6 });
}

function collars(pen: Pen): void {
  for (const x of [HEAD.x - 15, HEAD.x + HEAD.width - 1]) {
    rect(pen, box(x, PIPE_Y - PIPE_WIDE / 2 - 6, 16, PIPE_WIDE + 12), 3, { fill: '#cfc8b6', stroke: INK, width: 1.6 });
    draw(pen, [4, 8, 12].map((d) => `M${x + d} ${PIPE_Y - PIPE_WIDE / 2 - 2}v${PIPE_WIDE + 4}`).join(''), {
      stroke: '#8d8672',
      width: 1.2,
    });
  }
}

/** Holds the cup on its head; it is opened to lift the cup off. */
function clampBand(pen: Pen, ink: boolean): void {
  const b = box(BODY_X - CUP.width / 2 - 12, CUP.y + CUP.height - 6, CUP.width + 24, 20);
  for (const x of [b.x, b.x + b.width - 24]) {
    rect(pen, box(x, b.y, 24, b.height), 4, { fill: ink ? '#c99a55' : PAPER, stroke: ink ? INK : PENCIL, width: 1.8 });
    if (ink) draw(pen, `M${x + 4} ${b.y + 5}h16`, { stroke: '#f3dcae', width: 2 });
  }
  rect(pen, box(b.x + b.width, b.y + 4, 20, 12), 3, {
    fill: ink ? '#cfc8b6' : PAPER,
    stroke: ink ? INK : PENCIL,
    width: 1.5,
  });
}

/** Both halves of every disc in section, the core between them, and in the gaps what was caught. */
function stack(pen: Pen, water: string | null, share: number | null): void {
  const high = STACK.foot - STACK.top;
  for (const x of [BODY_X - RIM, BODY_X + BORE]) {
    const half = box(x, STACK.top, RIM - BORE, high);
    rect(pen, half, 0, { fill: share === null ? PAPER : mix(water ?? PAPER, '#ffffff', 0.5) });
    for (const top of discTops) {
      rect(pen, box(x, top, half.width, DISC_HIGH), 1.6, {
        fill: share === null ? PAPER : '#2f6f8f',
        stroke: share === null ? PENCIL : INK,
        width: 1.1,
        ...(share === null ? { dash: [4, 3] } : {}),
      });
      if (share !== null) draw(pen, `M${x + 3} ${top + 2}h${half.width - 6}`, { stroke: '#8fc0d2', width: 1.1 });
    }
  }
  if (share === null) return;
  const r = noise(97);
  const high2 = discTops.length > 1 ? (discTops[1] ?? 0) - (discTops[0] ?? 0) - DISC_HIGH : 4;
  for (const { half, y } of gapsAt(share).shut) {
    const x0 = BODY_X + half * BORE;
    const rim = BODY_X + half * RIM;
    const from = Math.min(x0, rim);
    rect(pen, box(from, y - high2 / 2, RIM - BORE, high2), 0, { fill: '#4a3721' });
    // What does not fit in lies on the outer face.
    for (let i = 0; i < 5; i++) {
      disc(pen, rim + half * (1 + r() * 6), y + (r() - 0.5) * 9, 1.6 + r() * 2, {
        fill: mix('#5f472a', '#2d2114', r()),
      });
    }
  }
}

const NUT = `M${BODY_X - 9} 162v-9l-16 -11q-6 -8 2 -9l14 6q9 -5 18 0l14 -6q8 1 2 9l-16 11v9z`;

/** What holds the stack together: rod, plates, wing nut. */
function fittings(pen: Pen): void {
  const metal = { fill: '#d9d2bf', stroke: INK, width: 1.6 } as const;
  draw(pen, `M${BODY_X} 136V${STACK.foot}`, { width: 7, cap: 'butt' });
  draw(pen, `M${BODY_X} 137V${STACK.foot - 1}`, { stroke: '#cfc8b6', width: 4, cap: 'butt' });
  rect(pen, box(BODY_X - RIM - 2, STACK.top - 11, 2 * RIM + 4, 10), 3, metal);
  for (const x of [BODY_X - RIM - 2, BODY_X + BORE]) rect(pen, box(x, STACK.foot, RIM - BORE + 2, 9), 2, metal);
  draw(pen, NUT, {
    ...metal,
    fill: '#c99a55',
  });
  disc(pen, BODY_X, 150, 4, { fill: '#8f6a2f', stroke: INK, width: 1 });
}

/** Which way the water goes, whether it now does or not. */
function arrows(pen: Pen): void {
  const y = PIPE_Y;
  const side = BODY_X + INNER - 12;
  const from = BODY_X - INNER + 12;
  const d = [
    `M84 ${y}h54l-9 -6m9 6l-9 6`,
    `M500 ${y}h54l-9 -6m9 6l-9 6`,
    `M${from} 352v-54l-6 9m6 -9l6 9`,
    `M${side} 232v54l-6 -9m6 9l6 -9`,
    `M${BODY_X} 312v50l-6 -9m6 9l6 -9`,
  ].join('');
  draw(pen, d, { stroke: '#fffaf0', width: 5, alpha: 0.75 });
  draw(pen, d, { stroke: '#1f4557', width: 2.2 });
}
