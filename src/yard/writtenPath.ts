/** A path that also writes itself down as SVG path data: of what is drawn here only the shapes that are drawn with. */

const fine = (n: number): string => String(Math.round(n * 100) / 100);

export class WrittenPath extends Path2D {
  #d = '';
  /** Where the pen is, to know whether an arc begins with a line or a move. */
  #begun = false;

  constructor(from?: string | Path2D) {
    super(from);
    if (typeof from === 'string') this.#write(from);
    else if (from instanceof WrittenPath) this.#write(from.data);
  }

  get data(): string {
    return this.#d;
  }

  override moveTo(x: number, y: number): void {
    super.moveTo(x, y);
    this.#write(`M${fine(x)} ${fine(y)}`);
  }

  override lineTo(x: number, y: number): void {
    super.lineTo(x, y);
    this.#write(`${this.#begun ? 'L' : 'M'}${fine(x)} ${fine(y)}`);
  }

  override quadraticCurveTo(cx: number, cy: number, x: number, y: number): void {
    super.quadraticCurveTo(cx, cy, x, y);
    this.#write(`Q${[cx, cy, x, y].map(fine).join(' ')}`);
  }

  override bezierCurveTo(ax: number, ay: number, bx: number, by: number, x: number, y: number): void {
    super.bezierCurveTo(ax, ay, bx, by, x, y);
    this.#write(`C${[ax, ay, bx, by, x, y].map(fine).join(' ')}`);
  }

  override closePath(): void {
    super.closePath();
    this.#write('Z');
  }

  override rect(x: number, y: number, width: number, height: number): void {
    super.rect(x, y, width, height);
    this.#write(`M${fine(x)} ${fine(y)}h${fine(width)}v${fine(height)}h${fine(-width)}Z`);
  }

  override roundRect(x: number, y: number, width: number, height: number, radii: number): void {
    super.roundRect(x, y, width, height, radii);
    const r = Math.min(radii, width / 2, height / 2);
    const turn = (dx: number, dy: number) => `a${fine(r)} ${fine(r)} 0 0 1 ${fine(dx)} ${fine(dy)}`;
    const [w, h] = [fine(width - 2 * r), fine(height - 2 * r)];
    this.#write(
      `M${fine(x + r)} ${fine(y)}h${w}${turn(r, r)}v${h}${turn(-r, r)}h-${w}${turn(-r, -r)}v-${h}${turn(r, -r)}Z`,
    );
  }

  override arc(x: number, y: number, radius: number, from: number, to: number, back = false): void {
    super.arc(x, y, radius, from, to, back);
    this.#arc(x, y, radius, radius, 0, from, to, back);
  }

  override ellipse(
    x: number,
    y: number,
    rx: number,
    ry: number,
    turn: number,
    from: number,
    to: number,
    back = false,
  ): void {
    super.ellipse(x, y, rx, ry, turn, from, to, back);
    this.#arc(x, y, rx, ry, turn, from, to, back);
  }

  override addPath(path: Path2D): void {
    super.addPath(path);
    if (path instanceof WrittenPath) this.#write(path.data);
  }

  /** In two halves, since an arc of SVG cannot come back to where it began. */
  #arc(x: number, y: number, rx: number, ry: number, turn: number, from: number, to: number, back: boolean): void {
    const span = Math.min(2 * Math.PI, Math.abs(to - from)) * (back ? -1 : 1);
    const at = (a: number) => {
      const [u, v] = [Math.cos(a) * rx, Math.sin(a) * ry];
      return `${fine(x + u * Math.cos(turn) - v * Math.sin(turn))} ${fine(y + u * Math.sin(turn) + v * Math.cos(turn))}`;
    };
    const half = (a: number) => `A${fine(rx)} ${fine(ry)} ${fine((turn * 180) / Math.PI)} 0 ${back ? 0 : 1} ${at(a)}`;
    this.#write(`${this.#begun ? 'L' : 'M'}${at(from)}${half(from + span / 2)}${half(from + span)}`);
  }

  #write(d: string): void {
    this.#d += d;
    this.#begun = true;
  }
}
