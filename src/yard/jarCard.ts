/** The card beside the jar: how the line came down, what its height asks for, and the caution that goes with it. */
import type { JarScene } from '../scene/types.ts';
import { ACTION, CARD, CAUTION, INK, mix } from './ink.ts';
import { CARD_AT, SLIP_Y } from './jarPlan.ts';
import { newPath } from './path.ts';
import { box, disc, draw, hatch, type Pen, rect, shadowed, within, wrap, write } from './pen.ts';
import type { PlateWords } from './plate.ts';
import { label, milliLitres, minutes, verdictName } from './plateMessages.ts';
import { isCut } from './plateWords.ts';

const SOFT = '#5d5648';
const PLOT = box(CARD_AT.x + 62, CARD_AT.y + 60, 254, 150);
/** Minutes between the figures of the lower edge. */
const EVERY_min = 10;
/** Darker and closer hatched the more sludge there is. */
const TINTS = ['#fbf5e4', '#f4ead0', '#e3ecd3', '#f0dfbf', '#e6c9a3'];

export function paintJarCard(pen: Pen, w: PlateWords): void {
  const { jar } = w.scene;
  const { size, text, view } = w;
  caution(pen, w);
  if (isCut(CARD_AT, view)) return;
  shadowed(pen, () => rect(pen, CARD_AT, 6, { fill: CARD }));
  rect(pen, CARD_AT, 6, { width: 1.3 });
  write(pen, text(label('plate.jar.card')), CARD_AT.x + 16, CARD_AT.y + 26, { size: size * 1.1, weight: 700 });
  const y = (mLL: number) => PLOT.y + PLOT.height * (1 - mLL / 1000);
  const x = (min: number) => PLOT.x + (PLOT.width * min) / jar.minutes;
  bands(pen, w, y);
  for (let min = 0; min <= jar.minutes; min += EVERY_min) {
    draw(pen, `M${x(min)} ${PLOT.y + PLOT.height}v5`, { width: 1.2 });
    const said = min === 0 ? '0' : text(minutes(min));
    write(pen, said, x(min), PLOT.y + PLOT.height + size * 1.25, { size: size * 0.9, align: 'center', colour: SOFT });
  }
  if (w.seen) {
    line(pen, jar, x, y);
    says(pen, w);
  } else {
    const foot = CARD_AT.y + CARD_AT.height - size * 0.9;
    write(pen, text(label('plate.jar.unread')), CARD_AT.x + 16, foot, { size, colour: SOFT });
  }
}

/** What each height asks for, by name; the one that was reached stands out. */
function bands(pen: Pen, w: PlateWords, y: (mLL: number) => number): void {
  const { jar } = w.scene;
  const { size, text } = w;
  let from = 0;
  for (const [i, { verdict, to_mLL }] of jar.bands.entries()) {
    const band = box(PLOT.x, y(to_mLL), PLOT.width, y(from) - y(to_mLL));
    const reached = w.seen && jar.verdict === verdict;
    within(pen, band, () => {
      rect(pen, band, 0, { fill: TINTS[i] ?? CARD });
      if (i > 2) hatch(pen, band, 17 - 3 * i, -band.height * 0.6, { stroke: '#8e6a3c', width: 0.8, alpha: 0.4 });
    });
    draw(pen, `M${band.x - 5} ${band.y}h${band.width + 11}`, { width: 1, alpha: 0.6 });
    const figure = { size: size * 0.9, align: 'right', colour: SOFT } as const;
    write(pen, String(to_mLL), PLOT.x - 9, band.y + size * 0.32, figure);
    const at = band.y + band.height / 2 + size * 0.34;
    const name = PLOT.x + PLOT.width + 26;
    write(pen, text(verdictName(verdict)), name, at, {
      size,
      weight: reached ? 700 : 400,
      colour: reached ? INK : SOFT,
    });
    if (reached) draw(pen, `M${name - 8} ${at - size * 0.34}l-11 -6v12z`, { fill: ACTION, width: 1.2 });
    from = to_mLL;
  }
  rect(pen, PLOT, 0, { width: 1.5 });
  write(pen, 'mL/L', PLOT.x - 9, PLOT.y - size * 0.8, { size: size * 0.9, align: 'right', colour: SOFT });
}

/** The line as it was followed, or the one height that was read. */
function line(pen: Pen, jar: JarScene, x: (min: number) => number, y: (mLL: number) => number): void {
  if (jar.floats || jar.settled_mLL === null) return;
  const [end, height] = [x(jar.minutes), y(jar.settled_mLL)];
  if (jar.curve.length > 0) {
    const curve = newPath();
    for (const [i, at] of jar.curve.entries()) {
      if (i === 0) curve.moveTo(x(at.minutes), y(at.settled_mLL));
      else curve.lineTo(x(at.minutes), y(at.settled_mLL));
    }
    draw(pen, curve, { stroke: CARD, width: 6, alpha: 0.8 });
    draw(pen, curve, { stroke: mix(ACTION, INK, 0.2), width: 2.8 });
    for (const at of jar.curve)
      disc(pen, x(at.minutes), y(at.settled_mLL), 3, { fill: CARD, stroke: ACTION, width: 1.6 });
  } else {
    draw(pen, `M${PLOT.x} ${height}H${end}`, { stroke: ACTION, width: 1.8, dash: [6, 5] });
  }
  disc(pen, end, height, 6.5, { fill: ACTION, stroke: CARD, width: 2 });
}

function says(pen: Pen, w: PlateWords): void {
  const { jar } = w.scene;
  const { size, text } = w;
  const foot = CARD_AT.y + CARD_AT.height - size * 0.9;
  const remark = text({ id: `remark.jar-${jar.floats ? 'floats' : (jar.verdict ?? 'remove')}` });
  if (jar.settled_mLL === null) return;
  const stood = text(minutes(jar.minutes));
  const read = jar.floats ? stood : `${text(milliLitres(jar.settled_mLL))} · ${stood}`;
  write(pen, read, CARD_AT.x + 16, foot - size * 1.35, {
    size: size * 1.06,
    weight: 700,
  });
  write(pen, remark, CARD_AT.x + 16, foot, { size });
}

/** What sewage asks for, on a slip of its own under the card. */
function caution(pen: Pen, { size, text, view }: PlateWords): void {
  const lines = wrap(pen, text({ id: 'caution.sewage' }), CARD_AT.width - 66, { size: size * 0.94 });
  const b = box(CARD_AT.x, SLIP_Y, CARD_AT.width, lines.length * size * 1.25 + size * 0.9);
  if (isCut(b, view)) return;
  shadowed(pen, () => rect(pen, b, 6, { fill: '#fbe6cf' }));
  rect(pen, b, 6, { stroke: '#c9731e', width: 1.5 });
  const [middle, half] = [b.x + 29, b.y + b.height / 2];
  draw(pen, `M${middle} ${half - 15}l18 31h-36z`, { fill: CAUTION, width: 2 });
  draw(pen, `M${middle} ${half - 4}v9M${middle} ${half + 10.5}v0.5`, { width: 3 });
  for (const [i, one] of lines.entries()) {
    write(pen, one, b.x + 54, b.y + size * (1.3 + 1.25 * i), { size: size * 0.94 });
  }
}
