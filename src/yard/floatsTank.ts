/** The pump tank in section for its close-up: water, tree, pump, check valve, discharge, inlet. */
import type { ChamberScene, FloatScene } from '../scene/types.ts';
import { paintNeckWater, paintScum, paintSludge, paintWater, ripple } from './basin.ts';
import type { FloatsPlan } from './floatsPlan.ts';
import { INK, PAPER, PENCIL } from './ink.ts';
import { box, disc, draw, fade, lined, type Pen, pencilHatch, pipe, rect, within } from './pen.ts';
import { paintVault, paintVaultLid } from './vault.ts';

export function paintFloatsTankPencil(pen: Pen, plan: FloatsPlan): void {
  paintVault(pen, plan, false);
  const b = plan.inside;
  const y = b.y + b.height * 0.46;
  pencilHatch(pen, box(b.x, y, b.width, b.y + b.height - y));
  draw(pen, ripple(b.x, b.x + b.width, y, 3), { stroke: PENCIL, width: 1.4, dash: [7, 5] });
  paintVaultLid(pen, plan, false);
  pipe(pen, `M-1200 ${plan.inletY - 12}H${b.x + 30}`, 34, { line: PENCIL, wall: PAPER });
}

export function paintFloatsTankInk(pen: Pen, plan: FloatsPlan, c: ChamberScene, levelY: number | null): void {
  paintVault(pen, plan, true);
  const b = plan.inside;
  within(pen, b, () => {
    if (levelY === null) {
      const y = b.y + b.height * 0.46;
      pencilHatch(pen, box(b.x, y, b.width, b.y + b.height - y));
      draw(pen, ripple(b.x, b.x + b.width, y, 3), { stroke: PENCIL, width: 1.4, dash: [7, 5] });
      return;
    }
    paintWater(pen, b, levelY, c.water);
    if (c.water !== null) shafts(pen, plan, levelY);
    if (c.sludge_m !== null) paintSludge(pen, b, c.sludge_m * plan.perMetre, 0.45);
    if (c.scum_m !== null) paintScum(pen, b, levelY, c.scum_m * plan.perMetre);
  });
  if (levelY !== null)
    paintNeckWater(pen, box(plan.neck.x - 5, plan.neck.y, plan.neck.width + 10, 1), b.y, levelY, c.water, 0);
  rect(pen, b, 0, { stroke: INK, width: 1.6 });
  paintVaultLid(pen, plan, c.lid === 'open');
  pipe(pen, `M-1200 ${plan.inletY - 12}H${b.x + 30}`, 34, { lining: '#cfc6b2' });
  draw(pen, `M${b.x + 30} ${plan.inletY - 29}v34`, { width: 3 });
}

/** Light that falls through the neck. */
function shafts(pen: Pen, plan: FloatsPlan, levelY: number): void {
  const b = plan.inside;
  const n = plan.neck;
  const foot = b.y + b.height;
  for (const [from, to, lean] of [
    [0.08, 0.26, -60],
    [0.42, 0.52, 6],
    [0.7, 0.9, 58],
  ] as const) {
    const x0 = n.x + n.width * from;
    const x1 = n.x + n.width * to;
    draw(pen, `M${x0} ${levelY}H${x1}L${x1 + lean} ${foot}H${x0 + lean * 1.2}Z`, { fill: '#ffffff', alpha: 0.1 });
  }
}

export function paintTree(pen: Pen, plan: FloatsPlan, ink: boolean): void {
  const { treeX: x, inside: b } = plan;
  const line = ink ? INK : PENCIL;
  const foot = b.y + b.height;
  draw(pen, `M${x} ${b.y - 8}V${foot - 12}`, { stroke: line, width: 10, cap: 'butt' });
  draw(pen, `M${x} ${b.y - 7}V${foot - 12}`, { stroke: ink ? '#d9d2bf' : PAPER, width: 7, cap: 'butt' });
  if (ink) draw(pen, `M${x - 1.6} ${b.y - 6}V${foot - 14}`, { stroke: '#fffdf5', width: 1.8, alpha: 0.9 });
  draw(pen, `M${x - 20} ${foot}l9 -14h22l9 14z`, { fill: ink ? '#b3ac9b' : PAPER, stroke: line, width: 1.6 });
  const arm = `M${x + 4} ${b.y - 2}H${plan.neck.x + plan.neck.width - 6}`;
  draw(pen, arm, { stroke: line, width: 7, cap: 'butt' });
  draw(pen, arm, { stroke: ink ? '#d9d2bf' : PAPER, width: 4.4, cap: 'butt' });
  rect(pen, box(plan.neck.x + plan.neck.width - 8, b.y - 10, 9, 17), 2, {
    fill: ink ? '#bfb8a6' : PAPER,
    stroke: line,
    width: 1.3,
  });
}

/** Pump, discharge, check valve. `running` turns the intake's marks on; null draws none. */
export function paintBigPump(
  pen: Pen,
  plan: FloatsPlan,
  intake_m: number,
  running: boolean | null,
  ink: boolean,
): void {
  const { pumpX: x, inside: b } = plan;
  const foot = b.y + b.height;
  const line = ink ? INK : PENCIL;
  pipe(pen, riser(plan), 22, { line, wall: ink ? '#e6e2d4' : PAPER });
  if (ink) draw(pen, riser(plan), { stroke: '#8fbfc3', width: 9, alpha: running === true ? 0.75 : 0.28, cap: 'butt' });
  const valve = b.y + b.height * 0.42;
  const body = `M${x - 9} ${valve - 26}h18v10q14 6 14 24t-14 22v10h-18v-10q-14 -4 -14 -22t14 -24z`;
  draw(pen, body, { fill: ink ? '#d9e4e2' : PAPER, stroke: line, width: 1.8 });
  if (ink) {
    // The ball lifts off its seat while the pump pushes, and lies on it otherwise.
    const lift = running === true ? -10 : 6;
    draw(pen, `M${x - 12} ${valve + 18}l6 -6M${x + 12} ${valve + 18}l-6 -6`, { width: 2.2 });
    disc(pen, x, valve + 4 + lift, 9, { fill: '#f0ece0', stroke: INK, width: 1.5 });
    disc(pen, x - 3, valve + 1 + lift, 2.4, { fill: '#ffffff' });
  }
  for (const y of [valve - 34, valve + 50, valve - 92]) {
    rect(pen, box(x - 15, y, 30, 11), 2, { fill: ink ? '#cfc8b6' : PAPER, stroke: line, width: 1.4 });
    if (ink)
      draw(pen, `M${x - 11} ${y + 3}v5M${x - 5} ${y + 3}v5M${x + 1} ${y + 3}v5M${x + 7} ${y + 3}v5`, {
        stroke: '#8d8672',
        width: 1.1,
      });
  }
  const metal = ink
    ? fade(pen, foot - 118, foot, [
        [0, '#6b93a5'],
        [0.5, '#466a7b'],
        [1, '#2f4a58'],
      ])
    : PAPER;
  rect(pen, box(x - 18, foot - 134, 36, 18), 4, { fill: ink ? '#2f4a58' : PAPER, stroke: line, width: 1.7 });
  draw(pen, `M${x - 42} ${foot - 12}V${foot - 96}q0 -22 24 -22h36q24 0 24 22V${foot - 12}z`, {
    fill: metal,
    stroke: line,
    width: 2,
  });
  for (const d of [-32, 0, 32])
    rect(pen, box(x + d - 7, foot - 12, 14, 11), 2, { fill: ink ? '#2f4a58' : PAPER, stroke: line, width: 1.4 });
  if (!ink) return;
  draw(pen, `M${x - 34} ${foot - 92}V${foot - 18}`, { stroke: '#c9dbdc', width: 3, alpha: 0.5 });
  draw(pen, `M${x - 42} ${foot - 90}h84M${x - 42} ${foot - 82}h84M${x - 42} ${foot - 20}h84`, {
    width: 1.1,
    alpha: 0.65,
  });
  const at = plan.y(intake_m);
  rect(pen, box(x - 38, at - 11, 76, 22), 2, { fill: '#2c424e', stroke: INK, width: 1.2 });
  draw(pen, Array.from({ length: 12 }, (_, i) => `M${x - 34 + i * 6.2} ${at - 9}v18`).join(''), {
    stroke: '#8fb0bd',
    width: 1.6,
    cap: 'butt',
  });
  if (running === true) {
    draw(pen, `M${x + 62} ${at - 10}q-12 2 -18 6M${x + 66} ${at + 2}q-12 0 -20 1M${x + 62} ${at + 13}q-12 -1 -18 -5`, {
      stroke: '#fffaf0',
      width: 2,
    });
    draw(pen, `M${x - 62} ${at - 10}q12 2 18 6M${x - 66} ${at + 2}q12 0 20 1M${x - 62} ${at + 13}q12 -1 18 -5`, {
      stroke: '#fffaf0',
      width: 2,
    });
  }
  const cable = `M${x + 16} ${foot - 126}C${x + 58} ${foot - 190} ${x + 18} ${b.y + 120} ${x + 40} ${b.y + 34}S${x + 84} ${b.y - 20} ${plan.neck.x + plan.neck.width - 4} ${b.y - 22}`;
  lined(pen, cable, { stroke: '#3a3730', width: 5 }, { stroke: '#5d584c', width: 1.6 });
}

/** From the pump up through the neck and away below the lawn. */
function riser(plan: FloatsPlan): string {
  const top = plan.inside.y + plan.inside.height - 132;
  return `M${plan.pumpX} ${top}V${plan.dischargeY + 22}q0 -22 22 -22H1900`;
}

/** Which way a made or open contact reads: a closed and an open blade. */
export function paintContactSign(pen: Pen, x: number, y: number, made: FloatScene['made']): void {
  const s = { stroke: made === null ? PENCIL : INK, width: 1.7 };
  disc(pen, x, y, 2.6, s);
  disc(pen, x + 22, y, 2.6, s);
  draw(pen, `M${x - 9} ${y}h6M${x + 25} ${y}h6`, s);
  if (made === null) return;
  draw(pen, made ? `M${x + 2.6} ${y}h16.8` : `M${x + 2.6} ${y - 1}l15 -8`, s);
}
