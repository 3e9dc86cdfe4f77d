/** Strokes and textures that every drawing of the plate is made of, on a plain 2D canvas. */
import { noise } from './hash.ts';
import { CARD, INK, PAPER, PENCIL } from './ink.ts';
import { newPath } from './path.ts';

export type Pen = CanvasRenderingContext2D;

/** A rectangle in the units of the drawing, y down. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const FONT = "'Atkinson Hyperlegible Next Variable','Atkinson Hyperlegible Next',system-ui,sans-serif";

type Paint = string | CanvasGradient | CanvasPattern;

export interface Style {
  readonly fill?: Paint;
  readonly stroke?: Paint;
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly alpha?: number;
  readonly cap?: CanvasLineCap;
}

export function box(x: number, y: number, width: number, height: number): Box {
  return { x, y, width, height };
}

export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** What two boxes share. */
export function meet(a: Box, b: Box): Box | null {
  const x = Math.max(a.x, b.x);
  const y = Math.max(a.y, b.y);
  const width = Math.min(a.x + a.width, b.x + b.width) - x;
  const height = Math.min(a.y + a.height, b.y + b.height) - y;
  return width > 0 && height > 0 ? box(x, y, width, height) : null;
}

/** Fills and strokes a path; strokes are ink unless told otherwise, and only where a width or a stroke is given. */
export function draw(pen: Pen, path: string | Path2D, style: Style): void {
  const p = typeof path === 'string' ? newPath(path) : path;
  pen.save();
  if (style.alpha !== undefined) pen.globalAlpha *= style.alpha;
  if (style.fill !== undefined) {
    pen.fillStyle = style.fill;
    pen.fill(p);
  }
  if (style.stroke !== undefined || style.width !== undefined) {
    pen.strokeStyle = style.stroke ?? INK;
    pen.lineWidth = style.width ?? 1.5;
    pen.lineJoin = 'round';
    pen.lineCap = style.cap ?? 'round';
    if (style.dash !== undefined) pen.setLineDash([...style.dash]);
    pen.stroke(p);
  }
  pen.restore();
}

export function rect(pen: Pen, b: Box, radius: number, style: Style): void {
  const p = newPath();
  p.roundRect(b.x, b.y, b.width, b.height, radius);
  draw(pen, p, style);
}

export function disc(pen: Pen, x: number, y: number, radius: number, style: Style): void {
  const p = newPath();
  p.arc(x, y, radius, 0, Math.PI * 2);
  draw(pen, p, style);
}

/** One path in two strokes: the wider one shows as the outline of the narrower. */
export function lined(pen: Pen, path: string, outer: Style, inner: Style): void {
  draw(pen, path, outer);
  draw(pen, path, inner);
}

/** Draws inside a path only. */
export function within(pen: Pen, path: Path2D | Box, inside: () => void): void {
  pen.save();
  if (!('width' in path)) pen.clip(path);
  else {
    pen.beginPath();
    pen.rect(path.x, path.y, path.width, path.height);
    pen.clip();
  }
  inside();
  pen.restore();
}

/** A round pipe in section: outline, wall, and what lies in its lower half (a darker lining when dry or unknown). */
export function pipe(
  pen: Pen,
  path: string,
  width: number,
  colours: { line?: string; wall?: string; lining?: string } = {},
): void {
  const stroke = (w: number, colour: string) => draw(pen, path, { stroke: colour, width: w, cap: 'butt' });
  stroke(width, colours.line ?? INK);
  stroke(width - 3, colours.wall ?? '#efe9da');
  if (colours.lining !== undefined) {
    pen.save();
    pen.translate(0, width * 0.15);
    stroke(width * 0.36, colours.lining);
    pen.restore();
  }
}

/** Vertical gradient between two heights. */
export function fade(
  pen: Pen,
  top: number,
  bottom: number,
  stops: readonly (readonly [number, string])[],
): CanvasGradient {
  const g = pen.createLinearGradient(0, top, 0, bottom);
  for (const [at, colour] of stops) g.addColorStop(at, colour);
  return g;
}

/** Parallel lines over a box; the caller clips. `slope` is the run of a line across the box's height. */
export function hatch(pen: Pen, b: Box, gap: number, slope: number, style: Style): void {
  const p = newPath();
  const run = Math.abs(slope);
  for (let x = b.x - run; x < b.x + b.width + run; x += gap) {
    p.moveTo(x, b.y);
    p.lineTo(x + slope, b.y + b.height);
  }
  draw(pen, p, style);
}

/** The light pencil hatching of what nobody has seen. */
export function pencilHatch(pen: Pen, b: Box): void {
  within(pen, b, () => hatch(pen, b, 7, -b.height * 0.78, { stroke: PENCIL, width: 0.7, alpha: 0.36 }));
}

/** Concrete: grey dots of uneven size, the same ones every time. */
export function stipple(pen: Pen, b: Box, seed: number, perDot = 26): void {
  const r = noise(seed);
  const n = Math.min(2600, (b.width * b.height) / perDot);
  const tones = ['#9d998d', '#aaa699', '#8f8b80'];
  const paths = tones.map(() => newPath());
  for (let i = 0; i < n; i++) {
    const x = b.x + r() * b.width;
    const y = b.y + r() * b.height;
    const size = 0.45 + r() * 0.65;
    const p = paths[i % tones.length];
    p?.moveTo(x + size, y);
    p?.arc(x, y, size, 0, Math.PI * 2);
  }
  for (const [i, p] of paths.entries()) draw(pen, p, { fill: tones[i] ?? '#9d998d' });
}

export interface TextStyle {
  readonly size: number;
  readonly weight?: number;
  readonly colour?: string;
  readonly halo?: string;
  readonly align?: CanvasTextAlign;
  readonly italic?: boolean;
}

function setFont(pen: Pen, style: TextStyle): void {
  pen.font = `${style.italic ? 'italic ' : ''}${style.weight ?? 400} ${style.size}px ${FONT}`;
}

export function write(pen: Pen, text: string, x: number, y: number, style: TextStyle): void {
  pen.save();
  setFont(pen, style);
  pen.textAlign = style.align ?? 'left';
  pen.textBaseline = 'alphabetic';
  pen.lineJoin = 'round';
  if (style.halo !== undefined) {
    pen.strokeStyle = style.halo;
    pen.lineWidth = style.size * 0.26;
    pen.strokeText(text, x, y);
  }
  pen.fillStyle = style.colour ?? INK;
  pen.fillText(text, x, y);
  pen.restore();
}

/** Breaks a text into lines no wider than `width`. */
export function wrap(pen: Pen, text: string, width: number, style: TextStyle): string[] {
  pen.save();
  setFont(pen, style);
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && pen.measureText(longer).width > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  pen.restore();
  return lines;
}

export function textWidth(pen: Pen, text: string, style: TextStyle): number {
  pen.save();
  setFont(pen, style);
  const w = pen.measureText(text).width;
  pen.restore();
  return w;
}

/** A soft shadow below a paper chip or a cabinet. */
export function shadowed(pen: Pen, inside: () => void): void {
  pen.save();
  const k = pen.getTransform().a;
  pen.shadowColor = 'rgba(59,45,26,0.26)';
  pen.shadowBlur = 5 * k;
  pen.shadowOffsetY = 2 * k;
  inside();
  pen.restore();
}

const CHIP_LINE = 1.32;

export function chipHeight(lines: number, size: number): number {
  return size * (lines * CHIP_LINE + 0.5);
}

/** A paper chip with lines of text; `x`, `y` is its upper left corner. Returns what it covers. */
export function chip(
  pen: Pen,
  lines: readonly string[],
  x: number,
  y: number,
  style: TextStyle & { readonly pencil?: boolean },
): Box {
  const height = style.size * CHIP_LINE;
  const width = Math.max(...lines.map((l) => textWidth(pen, l, style)));
  const b = box(x, y, width + style.size * 1.2, chipHeight(lines.length, style.size));
  const radius = lines.length === 1 ? b.height / 2 : style.size * 0.6;
  shadowed(pen, () => rect(pen, b, radius, { fill: style.pencil ? PAPER : CARD }));
  rect(pen, b, radius, {
    stroke: style.pencil ? PENCIL : INK,
    width: style.size / 13,
    ...(style.pencil ? { dash: [style.size * 0.3, style.size * 0.22] } : {}),
  });
  for (const [i, line] of lines.entries()) {
    write(pen, line, x + b.width / 2, y + style.size * 0.2 + height * (i + 0.82), { ...style, align: 'center' });
  }
  return b;
}

/** A blade path of grass tufts along a line. */
export function grass(x0: number, x1: number, y: number, seed: number, tall: number, gap: number): Path2D {
  const r = noise(seed);
  const p = newPath();
  for (let x = x0; x < x1; x += gap * (0.55 + r() * 0.9)) {
    const h = tall * (0.45 + r() * 0.75);
    p.moveTo(x, y);
    p.quadraticCurveTo(x + (r() - 0.5) * 5, y - h * 0.5, x + (r() - 0.5) * 7, y - h);
  }
  return p;
}
