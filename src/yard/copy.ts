/** Draws what stands on a stage once more, with another pen: cels by their painters, sparks as pictures, lines as lines. */
import { type Container, Graphics, Sprite } from 'pixi.js';
import { celOf } from './cel.ts';
import { newPath } from './path.ts';
import { draw, type Pen, within } from './pen.ts';

/** What takes the copy. */
export interface Copyist {
  /** Cels as they stand on the screen, not painted again. */
  readonly flat?: boolean;
  readonly pen: Pen;
  /** What is drawn inside is as faint and as dim as one whole. */
  group(alpha: number, tint: number, inside: (pen: Pen) => void): void;
  image(
    canvas: HTMLCanvasElement,
    x: number,
    y: number,
    width: number,
    height: number,
    alpha: number,
    tint: number,
  ): void;
}

const WHITE = 0xffffff;

/** The drawing in steps, one thing after another from behind to before, so that who waits can be told how far it is. */
export function stepsOf(root: Container, to: Copyist): readonly (() => void)[] {
  const steps: (() => void)[] = [];
  gather(root, 1, [], steps, to);
  return steps;
}

type Placed = readonly Container[];

function gather(node: Container, alpha: number, above: Placed, steps: (() => void)[], to: Copyist): void {
  const shown = alpha * node.alpha;
  if (!node.visible || shown <= 0) return;
  if (node instanceof Sprite) steps.push(() => at(above, to.pen, () => copySprite(node, shown, to)));
  else if (node instanceof Graphics)
    steps.push(() => at([...above, node], to.pen, () => copyLines(node, shown, to.pen)));
  for (const child of node.children) gather(child, shown, [...above, node], steps, to);
}

/** With the pen where a thing stands. */
function at(above: Placed, pen: Pen, inside: () => void): void {
  pen.save();
  for (const one of above) {
    one.updateLocalTransform();
    const { a, b, c, d, tx, ty } = one.localTransform;
    pen.transform(a, b, c, d, tx, ty);
  }
  inside();
  pen.restore();
}

function copySprite(sprite: Sprite, alpha: number, to: Copyist): void {
  const cel = celOf.get(sprite);
  const tint = sprite.tint as number;
  if (cel !== undefined && to.flat !== true) {
    const { paint, area } = cel;
    if (paint === null || area === null) return;
    const painted = (pen: Pen) => within(pen, area, () => paint(pen));
    if (alpha > 0.995 && tint === WHITE) painted(to.pen);
    else to.group(alpha, tint, painted);
    return;
  }
  const { texture, anchor } = sprite;
  const canvas: unknown = texture.source.resource;
  if (!(canvas instanceof HTMLCanvasElement)) return;
  at([sprite], to.pen, () => {
    const { width, height } = texture;
    to.image(canvas, -anchor.x * width, -anchor.y * height, width, height, alpha, tint);
  });
}

interface Instruction {
  readonly action: string;
  readonly data: {
    readonly style: { readonly color: number; readonly alpha: number; readonly width?: number };
    readonly path: { readonly instructions: readonly { readonly action: string; readonly data: readonly number[] }[] };
  };
}

/** The lines and boxes that Pixi itself draws: their instructions are the canvas's own. */
function copyLines(lines: Graphics, alpha: number, pen: Pen): void {
  for (const { action, data } of lines.context.instructions as unknown as readonly Instruction[]) {
    const path = newPath();
    for (const { action: to, data: d } of data.path.instructions) {
      const [a = 0, b = 0, c = 0, e = 0, f = 0] = d;
      if (to === 'moveTo') path.moveTo(a, b);
      else if (to === 'lineTo') path.lineTo(a, b);
      else if (to === 'quadraticCurveTo') path.quadraticCurveTo(a, b, c, e);
      else if (to === 'arc') {
        // An arc of Pixi's is a line of its own; a canvas's hangs on what was drawn before.
        path.moveTo(a + Math.cos(e) * c, b + Math.sin(e) * c);
        path.arc(a, b, c, e, f);
      } else if (to === 'rect') path.rect(a, b, c, e);
      else if (to === 'closePath') path.closePath();
    }
    const { color, alpha: own, width = 1 } = data.style;
    const colour = `#${color.toString(16).padStart(6, '0')}`;
    const faint = alpha * own;
    draw(
      pen,
      path,
      action === 'fill' ? { fill: colour, alpha: faint } : { stroke: colour, width, alpha: faint, cap: 'butt' },
    );
  }
}
