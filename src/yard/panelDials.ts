/** The dials of the open panel: the timer's day and the air switch's gauge. */

import type { TimerScene } from '../scene/types.ts';
import { ALARM, CARD, GOOD, INK, PAPER, PENCIL } from './ink.ts';
import type { Look } from './panelDoors.ts';
import { DIAL, GAUGE, TIMER } from './panelPlan.ts';
import { newPath } from './path.ts';
import { box, disc, draw, lined, type Pen, rect, write } from './pen.ts';
import { clock, label, minutes, pressure, runs } from './plateMessages.ts';

const SOFT = '#5d5648';

/** The timer a panel has: a night's clock or a period; nothing where it has none. */
export function paintTimer(pen: Pen, look: Look): void {
  const { timer } = look.panel;
  if (timer === null) return;
  const known = timer.dial !== null;
  casing(pen, look, known);
  if (timer.kind === 'night') nightDial(pen, look, timer.dial);
  else periodDial(pen, look, timer.dial);
}

/** The timer's box with its name, the blank dial and its ticks all round. */
function casing(pen: Pen, { size, text }: Look, known: boolean): void {
  const { x, y, r } = DIAL;
  const line = known ? INK : PENCIL;
  rect(pen, TIMER, 4, {
    fill: known ? '#faf5e8' : PAPER,
    stroke: line,
    width: 1.4,
    ...(known ? {} : { dash: [6, 4] }),
  });
  write(pen, text(label('yard.panel.timer')), x, y - r - 9, {
    size: size * 0.96,
    weight: 700,
    align: 'center',
    colour: known ? INK : SOFT,
  });
  disc(pen, x, y, r, { fill: known ? '#f6f0e1' : PAPER, stroke: line, width: 1.8 });
}

/** A day's dial: midnight on top, the night dark, each start a pin and an arc as long as its run. */
function nightDial(pen: Pen, { size, text }: Look, t: (TimerScene & { kind: 'night' })['dial']): void {
  const { x, y, r } = DIAL;
  const known = t !== null;
  const line = known ? INK : PENCIL;
  const turn = (s: number) => (s / 86400) * Math.PI * 2 - Math.PI / 2;
  if (t !== null) {
    const night = newPath();
    night.moveTo(x, y);
    night.arc(x, y, r - 10, turn(19 * 3600), turn(30 * 3600));
    night.closePath();
    draw(pen, night, { fill: '#3d5266', alpha: 0.85 });
    for (const s of t.starts_s) {
      const p = newPath();
      const from = turn(s);
      const to = turn(s + Math.max(t.run_min * 60, 900));
      p.arc(x, y, r - 1.5, from, to);
      p.arc(x, y, r - 9.5, to, from, true);
      p.closePath();
      draw(pen, p, { fill: '#2f5d73', stroke: '#1f3f50', width: 1 });
    }
  }
  const ticks = newPath();
  for (let h = 0; h < 24; h++) {
    const a = turn(h * 3600);
    const long = h % 6 === 0 ? 10 : 5.5;
    ticks.moveTo(x + Math.cos(a) * (r - 10), y + Math.sin(a) * (r - 10));
    ticks.lineTo(x + Math.cos(a) * (r - 10 - long * 0.6), y + Math.sin(a) * (r - 10 - long * 0.6));
  }
  draw(pen, ticks, { stroke: known ? '#8f8b80' : PENCIL, width: 1.1 });
  for (const h of [0, 6, 12, 18]) {
    const a = turn(h * 3600);
    const dark = known && h === 0;
    write(pen, String(h), x + Math.cos(a) * (r - 24), y + Math.sin(a) * (r - 24) + size * 0.3, {
      size: size * 0.8,
      align: 'center',
      weight: 700,
      colour: known ? (dark ? CARD : INK) : SOFT,
    });
  }
  rect(pen, box(x + r + 12, y - 46, 66, 26), 3, { fill: known ? '#c7d3bd' : PAPER, stroke: line, width: 1.3 });
  if (t === null) {
    write(pen, '– –', x + r + 45, y - 28, { size, weight: 700, align: 'center', colour: PENCIL });
    return;
  }
  const a = turn(t.clock_s);
  const hand = `M${x - Math.cos(a) * 7} ${y - Math.sin(a) * 7}L${x + Math.cos(a) * (r - 12)} ${y + Math.sin(a) * (r - 12)}`;
  lined(pen, hand, { stroke: CARD, width: 4.4 }, { stroke: ALARM, width: 2.4 });
  disc(pen, x, y, 4.5, { fill: '#cfc8b6', stroke: INK, width: 1.2 });
  write(pen, text(clock(t.clock_s)), x + r + 45, y - 28, { size, weight: 700, align: 'center' });
  const first = t.starts_s[0];
  const last = t.starts_s[t.starts_s.length - 1];
  if (first !== undefined && last !== undefined) {
    write(pen, text(runs(t.starts_s.length, t.run_min)), x + r + 45, y + 6, {
      size: size * 0.9,
      weight: 700,
      align: 'center',
    });
    write(pen, text(clock(first)), x + r + 45, y + 27, { size: size * 0.86, align: 'center', colour: SOFT });
    write(pen, text(clock(last)), x + r + 45, y + 45, { size: size * 0.86, align: 'center', colour: SOFT });
  }
}

/** One period all round, the dose a wedge of it from the top; both lengths beside it as they are set. */
function periodDial(pen: Pen, { size, text }: Look, t: (TimerScene & { kind: 'timed' })['dial']): void {
  const { x, y, r } = DIAL;
  const line = t === null ? PENCIL : INK;
  const top = -Math.PI / 2;
  if (t !== null) {
    const dose = newPath();
    dose.moveTo(x, y);
    dose.arc(x, y, r - 9, top, top + (t.run_min / t.every_min) * Math.PI * 2);
    dose.closePath();
    draw(pen, dose, { fill: '#2f5d73', stroke: '#1f3f50', width: 1 });
  }
  const ticks = Array.from({ length: 12 }, (_, i) => {
    const a = (i * Math.PI) / 6;
    const from = r - (i % 3 === 0 ? 11 : 8);
    return `M${x + Math.cos(a) * from} ${y + Math.sin(a) * from}L${x + Math.cos(a) * (r - 3)} ${y + Math.sin(a) * (r - 3)}`;
  });
  draw(pen, ticks.join(''), { stroke: t === null ? PENCIL : '#8f8b80', width: 1.2 });
  disc(pen, x, y, 4.5, { fill: t === null ? PAPER : '#cfc8b6', stroke: line, width: 1.2 });
  const middle = x + r + 45;
  for (const [id, min, at] of [
    ['yard.panel.every', t?.every_min, y - 31],
    ['yard.panel.dose', t?.run_min, y + 23],
  ] as const) {
    write(pen, text(label(id)), middle, at - 4, { size: size * 0.9, align: 'center', colour: SOFT });
    rect(pen, box(middle - 36, at + 2, 72, 25), 3, {
      fill: min === undefined ? PAPER : '#c7d3bd',
      stroke: line,
      width: 1.3,
    });
    write(pen, min === undefined ? '– –' : text(minutes(min)), middle, at + 14.5 + size * 0.34, {
      size: size * 0.96,
      weight: 700,
      align: 'center',
      colour: min === undefined ? PENCIL : INK,
    });
  }
}

export function paintGauge(pen: Pen, look: Look): void {
  const { x, y, r } = GAUGE;
  const { kPa, low_kPa, high_kPa, falls_kPa } = look.panel.gauge;
  const known = kPa !== null;
  const line = known ? INK : PENCIL;
  write(pen, look.text(label('yard.panel.airSwitch')), x, y - r - 13, {
    size: look.size * 0.96,
    weight: 700,
    align: 'center',
    colour: look.inked ? INK : SOFT,
  });
  rect(pen, box(x - r - 4, y - r - 4, 2 * r + 8, 2 * r + 8), 6, {
    fill: known ? '#cfc8b6' : PAPER,
    stroke: line,
    width: 1.3,
  });
  disc(pen, x, y, r, { fill: known ? '#a8a294' : PAPER, stroke: line, width: 1.7 });
  disc(pen, x, y, r - 5, { fill: known ? '#fbf7ec' : PAPER, stroke: line, width: 1.2 });
  // 0 to 25 kPa over three quarters of a turn; the switch closes at the red mark.
  const turn = (p: number) => Math.PI * 0.75 + (Math.min(25, p) / 25) * Math.PI * 1.5;
  const ticks = newPath();
  for (let p = 0; p <= 25; p += 2.5) {
    const a = turn(p);
    const inner = p % 5 === 0 ? r - 13 : r - 10;
    ticks.moveTo(x + Math.cos(a) * inner, y + Math.sin(a) * inner);
    ticks.lineTo(x + Math.cos(a) * (r - 7), y + Math.sin(a) * (r - 7));
  }
  draw(pen, ticks, { stroke: line, width: 1.3 });
  if (kPa === null) {
    write(pen, '?', x, y + look.size * 0.4, { size: look.size * 1.2, weight: 700, align: 'center', colour: PENCIL });
    return;
  }
  const red = newPath();
  red.arc(x, y, r - 8.5, turn(0), turn(falls_kPa));
  draw(pen, red, { stroke: ALARM, width: 3, cap: 'butt' });
  const green = newPath();
  green.arc(x, y, r - 8.5, turn(low_kPa), turn(high_kPa));
  draw(pen, green, { stroke: GOOD, width: 3, cap: 'butt' });
  const a = turn(kPa);
  draw(
    pen,
    `M${x - Math.cos(a) * 7} ${y - Math.sin(a) * 7}L${x + Math.cos(a) * (r - 11)} ${y + Math.sin(a) * (r - 11)}`,
    { width: 2.4 },
  );
  disc(pen, x, y, 3.6, { fill: INK });
  write(pen, look.text(pressure(kPa)), x, y + 21, { size: look.size * 0.72, weight: 700, align: 'center' });
}
