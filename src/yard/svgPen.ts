/** A pen that writes SVG instead of drawing: for as much of a canvas as the plate is painted with. Text stays text. */
import { FONT, type Pen } from './pen.ts';
import { WrittenPath } from './writtenPath.ts';

type Matrix = readonly [number, number, number, number, number, number];

interface State {
  at: Matrix;
  clipId: string | null;
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: string;
  dash: readonly number[];
  globalAlpha: number;
  font: string;
  textAlign: string;
  shadowBlur: number;
}

const fine = (n: number): string => String(Math.round(n * 1000) / 1000);

/** What a text or an attribute may not hold is written as what stands for it: nothing that is said becomes markup. */
export function escaped(text: string): string {
  const stands: Readonly<Record<string, string>> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
    "'": '&#39;',
  };
  return text.replace(/[&<>"']/g, (c) => stands[c] ?? '');
}

/** `rgba(r,g,b,a)` as a colour and an opacity, which every reader of SVG knows. */
function opaque(colour: string): readonly [string, string] {
  const parts = /^rgba\((\d+),\s*(\d+),\s*(\d+),\s*([\d.]+)\)$/.exec(colour);
  return parts === null ? [colour, ''] : [`rgb(${parts[1]},${parts[2]},${parts[3]})`, parts[4] ?? ''];
}

function within([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix {
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

class Gradient {
  readonly kind: 'linear' | 'radial';
  readonly place: string;
  stops = '';

  constructor(kind: 'linear' | 'radial', place: string) {
    this.kind = kind;
    this.place = place;
  }

  addColorStop(at: number, colour: string): void {
    const [plain, alpha] = opaque(colour);
    const faint = alpha === '' ? '' : ` stop-opacity="${alpha}"`;
    this.stops += `<stop offset="${fine(at)}" stop-color="${escaped(plain)}"${faint}/>`;
  }
}

export class SvgPen implements State {
  at: Matrix = [1, 0, 0, 1, 0, 0];
  clipId: string | null = null;
  fillStyle: unknown = '#000';
  strokeStyle: unknown = '#000';
  lineWidth = 1;
  lineCap = 'butt';
  lineJoin = 'round';
  dash: readonly number[] = [];
  globalAlpha = 1;
  font = '';
  textAlign = 'left';
  textBaseline = 'alphabetic';
  shadowBlur = 0;
  shadowColor = '';
  shadowOffsetY = 0;
  #body = '';
  #defs = '';
  #ids = 0;
  #open: string | null = null;
  #path: WrittenPath = new WrittenPath();
  readonly #saved: State[] = [];
  readonly #known = new Map<unknown, string>();
  readonly #ruler: Pen;

  /** `ruler` measures letters. */
  constructor(ruler: Pen) {
    this.#ruler = ruler;
  }

  /** As the pen that the painters take. */
  get pen(): Pen {
    return this as unknown as Pen;
  }

  /** The finished drawing. */
  written(width: number, height: number, pixels: number, title: string, about: string): string {
    this.#close();
    const tall = Math.round((pixels * height) / width);
    return [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${pixels}" height="${tall}" viewBox="0 0 ${fine(width)} ${fine(height)}" role="img">`,
      `<title>${escaped(title)}</title><desc>${escaped(about)}</desc>`,
      '<defs><filter id="shadow" x="-20%" y="-20%" width="140%" height="150%"><feDropShadow dx="0" dy="2" stdDeviation="2.5" flood-color="#3b2d1a" flood-opacity="0.26"/></filter>',
      `${this.#defs}</defs>\n${this.#body}</svg>\n`,
    ].join('');
  }

  /** What is drawn inside becomes one group: as faint, and as dim, as a whole. */
  group(alpha: number, tint: number, inside: () => void): void {
    this.#close();
    const filter = tint === 0xffffff ? '' : ` filter="url(#${this.#dim(tint)})"`;
    this.#body += `<g opacity="${fine(alpha)}"${filter}>`;
    inside();
    this.#close();
    this.#body += '</g>\n';
  }

  /** A picture of so many units, kept once however often it is shown. */
  image(canvas: HTMLCanvasElement, x: number, y: number, width: number, height: number, alpha: number): void {
    let id = this.#known.get(canvas);
    if (id === undefined) {
      id = this.#id('i');
      this.#known.set(canvas, id);
      this.#defs += `<image id="${id}" width="1" height="1" preserveAspectRatio="none" href="${canvas.toDataURL()}"/>`;
    }
    const at = within(this.at, [width, 0, 0, height, x, y]);
    this.#add(`<use href="#${id}" transform="matrix(${at.map(fine).join(' ')})" opacity="${fine(alpha)}"/>`);
  }

  save(): void {
    const { at, clipId, fillStyle, strokeStyle, lineWidth, lineCap, dash, globalAlpha, font, textAlign, shadowBlur } =
      this;
    this.#saved.push({
      at,
      clipId,
      fillStyle,
      strokeStyle,
      lineWidth,
      lineCap,
      dash,
      globalAlpha,
      font,
      textAlign,
      shadowBlur,
    });
  }

  restore(): void {
    Object.assign(this, this.#saved.pop());
  }

  translate(x: number, y: number): void {
    this.transform(1, 0, 0, 1, x, y);
  }

  scale(x: number, y: number): void {
    this.transform(x, 0, 0, y, 0, 0);
  }

  rotate(angle: number): void {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    this.transform(c, s, -s, c, 0, 0);
  }

  transform(...by: [number, number, number, number, number, number]): void {
    this.at = within(this.at, by);
  }

  getTransform(): { readonly a: number } {
    return { a: 1 };
  }

  beginPath(): void {
    this.#path = new WrittenPath();
  }

  rect(x: number, y: number, width: number, height: number): void {
    this.#path.rect(x, y, width, height);
  }

  clip(path?: Path2D): void {
    const { data } = path instanceof WrittenPath ? path : this.#path;
    const id = this.#id('c');
    const outer = this.clipId === null ? '' : ` clip-path="url(#${this.clipId})"`;
    this.#defs += `<clipPath id="${id}"${outer}><path d="${escaped(data)}"${this.#transform()}/></clipPath>`;
    this.clipId = id;
  }

  fill(path: Path2D): void {
    this.#shape(path, `fill="${this.#paint(this.fillStyle)}"`);
  }

  stroke(path: Path2D): void {
    this.#shape(path, `fill="none" ${this.#line()}`);
  }

  fillRect(x: number, y: number, width: number, height: number): void {
    const path = new WrittenPath();
    path.rect(x, y, width, height);
    this.fill(path);
  }

  setLineDash(dash: readonly number[]): void {
    this.dash = dash;
  }

  createLinearGradient(x1: number, y1: number, x2: number, y2: number): Gradient {
    return new Gradient('linear', `x1="${fine(x1)}" y1="${fine(y1)}" x2="${fine(x2)}" y2="${fine(y2)}"`);
  }

  createRadialGradient(_x: number, _y: number, inner: number, x: number, y: number, radius: number): Gradient {
    return new Gradient('radial', `cx="${fine(x)}" cy="${fine(y)}" fr="${fine(inner)}" r="${fine(radius)}"`);
  }

  measureText(text: string): TextMetrics {
    this.#ruler.font = this.font;
    return this.#ruler.measureText(text);
  }

  fillText(text: string, x: number, y: number): void {
    this.#letters(text, x, y, `fill="${this.#paint(this.fillStyle)}"`);
  }

  strokeText(text: string, x: number, y: number): void {
    this.#letters(text, x, y, `fill="none" ${this.#line()}`);
  }

  #letters(text: string, x: number, y: number, style: string): void {
    const [, italic, weight, size] = /^(italic )?(\d+) ([\d.]+)px/.exec(this.font) ?? [];
    const anchor = this.textAlign === 'center' ? 'middle' : this.textAlign === 'right' ? 'end' : 'start';
    const face = `font-family="${escaped(FONT)}" font-size="${size ?? 14}" font-weight="${weight ?? 400}"`;
    const lean = italic === undefined ? '' : ' font-style="italic"';
    // Whatever typeface the reader has: as wide as it was set.
    const width = `textLength="${fine(this.measureText(text).width)}" lengthAdjust="spacingAndGlyphs"`;
    const rest = `${width} text-anchor="${anchor}"${this.#transform()}${this.#faint()}`;
    this.#add(`<text x="${fine(x)}" y="${fine(y)}" ${face}${lean} ${style} ${rest}>${escaped(text)}</text>`);
  }

  #shape(path: Path2D, style: string): void {
    if (!(path instanceof WrittenPath) || path.data === '') return;
    const shadow = this.shadowBlur > 0 ? ' filter="url(#shadow)"' : '';
    this.#add(`<path d="${escaped(path.data)}" ${style}${this.#transform()}${this.#faint()}${shadow}/>`);
  }

  #line(): string {
    const dash = this.dash.length === 0 ? '' : ` stroke-dasharray="${this.dash.map(fine).join(' ')}"`;
    const paint = this.#paint(this.strokeStyle);
    return `stroke="${paint}" stroke-width="${fine(this.lineWidth)}" stroke-linejoin="round" stroke-linecap="${this.lineCap}"${dash}`;
  }

  #paint(style: unknown): string {
    if (!(style instanceof Gradient)) return escaped(String(style));
    const id = this.#known.get(style) ?? this.#id('g');
    if (!this.#known.has(style)) {
      const name = `${style.kind}Gradient`;
      this.#defs += `<${name} id="${id}" gradientUnits="userSpaceOnUse" ${style.place}>${style.stops}</${name}>`;
      this.#known.set(style, id);
    }
    return `url(#${id})`;
  }

  #transform(): string {
    const plain = this.at.every((n, i) => n === (i === 0 || i === 3 ? 1 : 0));
    return plain ? '' : ` transform="matrix(${this.at.map(fine).join(' ')})"`;
  }

  #faint(): string {
    return this.globalAlpha === 1 ? '' : ` opacity="${fine(this.globalAlpha)}"`;
  }

  #dim(tint: number): string {
    const id = this.#id('t');
    const [r, g, b] = [tint >> 16, (tint >> 8) & 255, tint & 255].map((n) => fine(n / 255));
    this.#defs += `<filter id="${id}"><feColorMatrix values="${r} 0 0 0 0 0 ${g} 0 0 0 0 0 ${b} 0 0 0 0 0 1 0"/></filter>`;
    return id;
  }

  #id(kind: string): string {
    this.#ids += 1;
    return `${kind}${this.#ids}`;
  }

  #add(element: string): void {
    if (this.#open !== this.clipId) {
      this.#close();
      if (this.clipId !== null) this.#body += `<g clip-path="url(#${this.clipId})">`;
      this.#open = this.clipId;
    }
    this.#body += `${element}\n`;
  }

  #close(): void {
    if (this.#open !== null) this.#body += '</g>\n';
    this.#open = null;
  }
}
