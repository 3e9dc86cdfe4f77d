/** A concrete tank below the lawn as the close-ups show it in section: ground, walls, access riser, lid. */
import { paintGround } from './ground.ts';
import { INK, LID, PAPER, PENCIL, PENCIL_WALL, SHELL, WALL } from './ink.ts';
import { type Box, box, draw, fade, hatch, lined, type Pen, rect, stipple, within } from './pen.ts';
import { GREEN } from './season.ts';
import { paintDaySky } from './sky.ts';

/** Where it stands on its sheet. */
export interface Vault {
  readonly perMetre: number;
  /** The lawn's height on the sheet. */
  readonly grade: number;
  readonly inside: Box;
  /** The access riser above it. */
  readonly neck: Box;
}

const WALL_WIDE = 20;

/** Heights of the far hills from left to right, units over the lawn. */
export type Hills = readonly [number, number, number, number];

/** Sky, far hills, lawn and what lies under it. */
export function paintOutdoors(pen: Pen, plan: Pick<Vault, 'grade' | 'perMetre'>, view: Box, hills: Hills): void {
  pen.save();
  pen.translate(0, plan.grade);
  const shifted = box(view.x, view.y - plan.grade, view.width, view.height);
  paintDaySky(pen, shifted);
  const { x, width } = view;
  const [a, b, c, d] = hills;
  draw(pen, `M${x} ${-a}C${x + width * 0.3} ${-b} ${x + width * 0.6} ${-c} ${x + width} ${-d}V6H${x}Z`, {
    fill: '#b7c795',
  });
  paintGround(pen, shifted, plan.perMetre, GREEN);
  pen.restore();
}

/** The same round a tank, where the lawn lies high on the sheet. */
export function paintSoil(pen: Pen, { grade, perMetre }: Pick<Vault, 'grade' | 'perMetre'>, view: Box): void {
  paintOutdoors(pen, { grade, perMetre: perMetre * 0.92 }, view, [14, 34, 8, 26]);
}

/** Concrete in section with the access riser above it. */
export function paintVault(pen: Pen, plan: Pick<Vault, 'inside' | 'neck'>, ink: boolean): void {
  const b = plan.inside;
  const n = plan.neck;
  const outer = box(b.x - WALL_WIDE, b.y - WALL_WIDE, b.width + 2 * WALL_WIDE, b.height + 2 * WALL_WIDE);
  const line = ink ? INK : PENCIL;
  rect(pen, outer, 5, { fill: ink ? WALL : PENCIL_WALL });
  if (ink) within(pen, outer, () => stipple(pen, outer, 909, 44));
  rect(pen, outer, 5, { stroke: line, width: 2 });
  rect(pen, b, 0, { fill: ink ? SHELL : PAPER, stroke: line, width: 1.6 });
  rect(pen, box(n.x - 13, n.y, 13, b.y - n.y - WALL_WIDE + 1), 0, {
    fill: ink ? '#ddd3b8' : PAPER,
    stroke: line,
    width: 1.4,
  });
  rect(pen, box(n.x + n.width, n.y, 13, b.y - n.y - WALL_WIDE + 1), 0, {
    fill: ink ? '#ddd3b8' : PAPER,
    stroke: line,
    width: 1.4,
  });
  rect(pen, box(n.x, n.y, n.width, b.y - n.y + 2), 0, {
    fill: ink
      ? fade(pen, n.y, b.y, [
          [0, '#e2d6ba'],
          [1, SHELL],
        ])
      : PAPER,
  });
  draw(pen, `M${n.x} ${n.y}V${b.y}M${n.x + n.width} ${n.y}V${b.y}`, { stroke: line, width: 1.4 });
  if (!ink) return;
  for (const [x, w] of [
    [b.x, n.x - b.x],
    [n.x + n.width, b.x + b.width - n.x - n.width],
  ] as const) {
    within(pen, box(x, b.y, w, 40), () => {
      pen.fillStyle = fade(pen, b.y, b.y + 40, [
        [0, 'rgba(107,85,55,0.3)'],
        [1, 'rgba(107,85,55,0)'],
      ]);
      pen.fillRect(x, b.y, w, 40);
      hatch(pen, box(x - 20, b.y, w + 40, 12), 7, 12, { stroke: '#8e774f', width: 0.8, alpha: 0.5 });
    });
  }
}

/** On its neck, or laid aside on the lawn. */
export function paintVaultLid(pen: Pen, plan: Pick<Vault, 'neck' | 'grade'>, open: boolean): void {
  const n = plan.neck;
  if (!open) {
    const b = box(n.x - 22, n.y - 12, n.width + 44, 14);
    rect(pen, b, 4, { fill: LID, stroke: INK, width: 1.8 });
    draw(pen, `M${b.x + 10} ${b.y + 4}h${b.width - 20}`, { stroke: '#b8cdb0', width: 1.4 });
    return;
  }
  const b = box(40, plan.grade - 16, 236, 18);
  rect(pen, b, 7, { fill: LID, stroke: INK, width: 1.8 });
  hatch(pen, box(b.x + 8, b.y + 4, b.width - 16, 10), 12, -10, { stroke: '#4a634b', width: 1, alpha: 0.6 });
  lined(pen, `M${b.x + 92} ${b.y}v-7q0 -5 5 -5h42q5 0 5 5v7`, { width: 4.6 }, { stroke: '#b9b3a2', width: 2.4 });
}
