/** What is shown as a sheet to keep: title, plate, legend; painted 3840 pixels wide or written as SVG. */
import type { Scene } from '../scene/types.ts';
import { openCloseUp } from './closeUps.ts';
import { type Copyist, stepsOf } from './copy.ts';
import { ACTION, CARD, INK, PAPER, PENCIL, SCUM, SLUDGE, waterColour } from './ink.ts';
import { withPaths } from './path.ts';
import { type Box, box, draw, hatch, type Pen, rect, textWidth, within, wrap, write } from './pen.ts';
import { KEYS, type Keyed, type PosterWish, type PosterWords } from './posterWords.ts';
import type { Print, Sheet } from './sheet.ts';
import { makeSparks } from './sparks.ts';
import { SvgPen } from './svgPen.ts';
import type { Speech, ViewName } from './types.ts';
import { Works } from './works.ts';
import { WrittenPath } from './writtenPath.ts';

/** Width of a kept picture, pixels. */
const PIXELS = 3840;
const WIDE = 1440;
const EDGE = 32;
const HEAD = 92;
const PLATE_TALL = 600;

export async function makePoster(scene: Scene, view: ViewName, speech: Speech, wish: PosterWish): Promise<Blob> {
  const sheet = await sheetOf(view, scene);
  try {
    const { limits } = sheet.fit(scene, WIDE, PLATE_TALL);
    const print: Print = {
      scene,
      ...{ area: limits, view: limits, unit: 1, scale: 1, selected: null, still: true },
      text: speech.text,
      staff: speech.staff,
    };
    sheet.print(print);
    const ruler = penOf(1, 1);
    const legend = layLegend(ruler, wish, view === 'yard' ? KEYS : INKS);
    const plate = box(EDGE, HEAD, WIDE - 2 * EDGE, ((WIDE - 2 * EDGE) * limits.height) / limits.width);
    const height = plate.y + plate.height + 26 + legend.height;
    const around = { limits, plate, legend, height, wish };
    return wish.kind === 'svg' ? await written(sheet, ruler, around) : await painted(sheet, around);
  } finally {
    sheet.dispose();
  }
}

async function sheetOf(view: ViewName, scene: Scene): Promise<Sheet> {
  if (view !== 'yard') return openCloseUp(view, makeSparks());
  const works = new Works(makeSparks());
  await works.prepare(scene);
  return works;
}

interface Around {
  readonly limits: Box;
  readonly plate: Box;
  readonly legend: Legend;
  readonly height: number;
  readonly wish: PosterWish;
}

async function painted(sheet: Sheet, around: Around): Promise<Blob> {
  const k = PIXELS / WIDE;
  const pen = penOf(PIXELS, Math.ceil(around.height * k));
  pen.scale(k, k);
  await compose(sheet, canvasCopyist(pen), around, (paint) => paint());
  return new Promise((done, fail) => {
    pen.canvas.toBlob((blob) => (blob === null ? fail(new Error('no picture came')) : done(blob)), 'image/png');
  });
}

async function written(sheet: Sheet, ruler: Pen, around: Around): Promise<Blob> {
  const svg = new SvgPen(ruler);
  const copyist: Copyist = {
    pen: svg.pen,
    group: (alpha, tint, inside) => svg.group(alpha, tint, () => inside(svg.pen)),
    image: (canvas, x, y, width, height, alpha) => svg.image(canvas, x, y, width, height, alpha),
  };
  await compose(sheet, copyist, around, (paint) => withPaths((d) => new WrittenPath(d), paint));
  const { wish, height } = around;
  const about = `${wish.when}. ${wish.simulated} ${wish.drawing}`;
  return new Blob([svg.written(WIDE, height, PIXELS, wish.title, about)], { type: 'image/svg+xml' });
}

/** Longer than this one does not keep the page waiting in one go, ms. */
const BREATH_ms = 40;

async function compose(
  sheet: Sheet,
  copyist: Copyist,
  { limits, plate, legend, height, wish }: Around,
  doing: (paint: () => void) => void,
): Promise<void> {
  const { pen } = copyist;
  doing(() => {
    rect(pen, box(0, 0, WIDE, height), 0, { fill: PAPER });
    write(pen, wish.title, EDGE, 50, { size: 32, weight: 700 });
    write(pen, wish.when, EDGE, 76, { size: 17, colour: '#5d5648' });
  });
  const k = plate.width / limits.width;
  const steps = stepsOf(sheet.root, copyist);
  let since = performance.now();
  for (const [i, step] of steps.entries()) {
    doing(() =>
      within(pen, plate, () => {
        pen.translate(plate.x, plate.y);
        pen.scale(k, k);
        pen.translate(-limits.x, -limits.y);
        step();
      }),
    );
    if (performance.now() - since < BREATH_ms) continue;
    wish.progress(i / steps.length);
    await new Promise((on) => setTimeout(on));
    since = performance.now();
  }
  doing(() => {
    rect(pen, plate, 0, { stroke: INK, width: 2.5 });
    paintLegend(pen, legend, plate.y + plate.height + 30);
  });
}

interface Legend {
  readonly entries: readonly { readonly key: Keyed; readonly text: string; readonly x: number; readonly row: number }[];
  readonly simulated: readonly string[];
  readonly rows: number;
  readonly height: number;
}

/** What a close-up's legend explains: its names tell the rest. */
const INKS: readonly Keyed[] = ['pencil', 'ink'];

const SIZE = 15;
const ROW = 26;

function layLegend(ruler: Pen, { legend, simulated }: PosterWords, keys: readonly Keyed[]): Legend {
  let x = EDGE;
  let row = 0;
  const entries = keys.map((key) => {
    const text = legend[key];
    const width = 40 + textWidth(ruler, text, { size: SIZE }) + 26;
    if (x + width > WIDE - EDGE) {
      x = EDGE;
      row++;
    }
    const at = { key, text, x, row };
    x += width;
    return at;
  });
  const lines = wrap(ruler, simulated, WIDE - 2 * EDGE, { size: SIZE });
  return { entries, simulated: lines, rows: row + 1, height: (row + 1) * ROW + lines.length * 22 + 18 };
}

function paintLegend(pen: Pen, { entries, simulated, rows }: Legend, top: number): void {
  for (const { key, text, x, row } of entries) {
    const y = top + row * ROW;
    patch(pen, key, box(x, y - 13, 30, 17));
    write(pen, text, x + 40, y, { size: SIZE });
  }
  for (const [i, line] of simulated.entries()) {
    write(pen, line, EDGE, top + rows * ROW + 4 + i * 22, { size: SIZE, colour: '#5d5648' });
  }
}

const LOOK = { solids_mgL: 12, oxygen_mgL: 4, hoursWithoutOxygen: 0, residual_mgL: 0, raw: 0 };
const PATCHES: Readonly<Record<Keyed, string>> = {
  pencil: PAPER,
  ink: CARD,
  raw: waterColour({ ...LOOK, raw: 1, solids_mgL: 300 }).colour,
  mixed: waterColour({ ...LOOK, solids_mgL: 3000 }).colour,
  settled: waterColour(LOOK).colour,
  treated: waterColour({ ...LOOK, residual_mgL: 1 }).colour,
  scum: SCUM,
  sludge: SLUDGE,
  air: '#96653c',
};

function patch(pen: Pen, key: Keyed, b: Box): void {
  rect(pen, b, 3, { fill: PATCHES[key] });
  const middle = b.y + b.height / 2;
  within(pen, b, () => {
    if (key === 'pencil') hatch(pen, b, 6, -13, { stroke: PENCIL, width: 0.8, alpha: 0.5 });
    if (key === 'ink') draw(pen, `M${b.x + 4} ${middle}q6 -6 11 0t11 0`, { stroke: ACTION, width: 2 });
    if (key === 'air') {
      for (const [dx, dy, r] of [
        [7, 3, 2],
        [14, -2, 2.6],
        [22, 2, 1.8],
      ] as const) {
        rect(pen, box(b.x + dx - r, middle + dy - r, 2 * r, 2 * r), r, { stroke: '#fffaf0', width: 1.3 });
      }
    }
  });
  const pencil = key === 'pencil';
  rect(pen, b, 3, { stroke: pencil ? PENCIL : INK, width: 1.3, ...(pencil ? { dash: [4, 3] } : {}) });
}

function penOf(width: number, height: number): Pen {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('no canvas to paint on');
  return pen;
}

/** Faint wholes are painted aside and laid over; a dim one is darkened there. */
function canvasCopyist(pen: Pen): Copyist {
  let aside: Pen | null = null;
  return {
    pen,
    group(alpha, tint, inside) {
      const { width, height } = pen.canvas;
      aside ??= penOf(width, height);
      aside.setTransform(1, 0, 0, 1, 0, 0);
      aside.clearRect(0, 0, width, height);
      aside.save();
      aside.setTransform(pen.getTransform());
      inside(aside);
      aside.restore();
      if (tint !== 0xffffff) {
        aside.globalCompositeOperation = 'source-atop';
        aside.fillStyle = `rgba(16,20,44,${1 - ((tint >> 8) & 255) / 255})`;
        aside.fillRect(0, 0, width, height);
        aside.globalCompositeOperation = 'source-over';
      }
      pen.save();
      pen.setTransform(1, 0, 0, 1, 0, 0);
      pen.globalAlpha *= alpha;
      pen.drawImage(aside.canvas, 0, 0);
      pen.restore();
    },
    image(canvas, x, y, width, height, alpha) {
      pen.save();
      pen.globalAlpha *= alpha;
      pen.drawImage(canvas, x, y, width, height);
      pen.restore();
    },
  };
}
