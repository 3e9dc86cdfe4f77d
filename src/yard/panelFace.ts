/** What one reads and works on the open panel: levers, relay, selector, counters. Unknown stays pencil. */
import type { BreakerScene, PanelScene } from '../scene/types.ts';
import { ALARM, CARD, INK, inkShare, PAPER, PENCIL } from './ink.ts';
import { paintGauge, paintTimer } from './panelDials.ts';
import { type Look, padlock, tag } from './panelDoors.ts';
import { BREAKER_ORDER, COUNTERS, FRONT, RELAY, SELECTOR, slotOf } from './panelPlan.ts';
import { type Box, box, disc, draw, fade, type Pen, rect, shadowed, within, write } from './pen.ts';
import { label } from './plateMessages.ts';

const SOFT = '#5d5648';

export function paintFace(pen: Pen, look: Look, pumpRuns: boolean | null): void {
  const line = look.inked ? INK : PENCIL;
  shadowed(pen, () => rect(pen, FRONT, 4, { fill: look.inked ? '#f1ede2' : PAPER }));
  rect(pen, FRONT, 4, { stroke: line, width: 1.8 });
  for (const [x, y] of [
    [FRONT.x + 9, FRONT.y + 9],
    [FRONT.x + FRONT.width - 9, FRONT.y + 9],
    [FRONT.x + 9, FRONT.y + FRONT.height - 9],
    [FRONT.x + FRONT.width - 9, FRONT.y + FRONT.height - 9],
  ] as const) {
    disc(pen, x, y, 3.6, { fill: look.inked ? '#bfb8a6' : PAPER, stroke: line, width: 1.1 });
    draw(pen, `M${x - 2} ${y - 2}l4 4M${x + 2} ${y - 2}l-4 4`, { stroke: line, width: 0.8 });
  }
  const timed = look.panel.timer !== null;
  for (const [i, id] of BREAKER_ORDER.entries()) {
    const b = look.panel.breakers.find((one) => one.id === id);
    if (b !== undefined) breaker(pen, look, b, slotOf(i, timed));
  }
  paintTimer(pen, look);
  paintGauge(pen, look);
  relay(pen, look, pumpRuns);
  selector(pen, look);
  counters(pen, look);
}

function breaker(pen: Pen, look: Look, b: BreakerScene, s: Box): void {
  const { size, text } = look;
  const share = inkShare(b.ink);
  const known = b.lever !== null && share > 0;
  write(pen, text(label(`yard.panel.${b.id}`)), s.x + s.width / 2 + 8, s.y - 8, {
    size: size * 0.96,
    weight: 700,
    align: 'center',
    colour: look.inked ? INK : SOFT,
  });
  const line = known ? INK : PENCIL;
  const dark = pen.createLinearGradient(s.x, 0, s.x + s.width, 0);
  dark.addColorStop(0, '#504d45');
  dark.addColorStop(0.3, '#3f3c36');
  dark.addColorStop(1, '#2f2d28');
  rect(pen, s, 4, { fill: known ? dark : '#ebe3d0', stroke: line, width: 1.7, ...(known ? {} : { dash: [5, 4] }) });
  rect(pen, box(s.x + s.width / 2 - 3, s.y + 8, 6, s.height - 16), 3, {
    fill: known ? '#1f1d1a' : PAPER,
    stroke: line,
    width: 0.8,
  });
  const stands = [
    ['on', 'yard.panel.on', s.y + 21],
    ['tripped', 'yard.panel.trip', s.y + s.height / 2],
    ['off', 'yard.panel.off', s.y + s.height - 21],
  ] as const;
  for (const [lever, id, y] of stands) {
    const here = known && b.lever === lever;
    const colour = !here ? SOFT : lever === 'tripped' ? '#9a4d00' : INK;
    write(pen, text(label(id)), s.x + s.width + 6, y + size * 0.34, {
      size: size * 0.92,
      weight: here ? 700 : 400,
      colour,
    });
    if (here) draw(pen, `M${s.x - 6} ${y - 4}l6 4l-6 4z`, { fill: colour });
  }
  if (!known) {
    write(pen, '?', s.x + s.width / 2, s.y + s.height / 2 + size * 0.4, {
      size: size * 1.2,
      weight: 700,
      align: 'center',
      colour: PENCIL,
    });
    return;
  }
  const at = stands.find(([lever]) => lever === b.lever)?.[2] ?? s.y + 21;
  const knob = box(s.x + 4, at - 15, s.width - 8, 30);
  pen.save();
  pen.globalAlpha *= Math.max(0.55, share);
  rect(pen, knob, 3, {
    fill: fade(pen, knob.y, knob.y + knob.height, [
      [0, '#fffaf0'],
      [0.5, '#efe5cd'],
      [1, '#cbbf9f'],
    ]),
    stroke: INK,
    width: 1.5,
  });
  draw(pen, [8, 13, 18, 22].map((d) => `M${knob.x + 4} ${knob.y + d}h${knob.width - 8}`).join(''), {
    stroke: '#8e774f',
    width: 1.1,
  });
  pen.restore();
  if (b.locked) {
    tag(pen, s.x + s.width + 21, s.y + s.height - 8, 0.4, look);
    padlock(pen, s.x + s.width / 2, s.y + s.height + 6, 0.62, true, false);
  }
}

function relay(pen: Pen, look: Look, pumpRuns: boolean | null): void {
  const b = RELAY;
  const line = look.inked ? INK : PENCIL;
  write(pen, look.text(label('yard.panel.relay')), b.x + b.width / 2, b.y - 11, {
    size: look.size * 0.96,
    weight: 700,
    align: 'center',
    colour: look.inked ? INK : SOFT,
  });
  rect(pen, b, 4, { fill: look.inked ? '#eef2ee' : PAPER, stroke: line, width: 1.5 });
  rect(pen, box(b.x - 2, b.y + b.height - 18, b.width + 4, 20), 3, {
    fill: look.inked ? '#3f3c36' : PAPER,
    stroke: line,
    width: 1.4,
  });
  for (let i = 0; i < 4; i++)
    disc(pen, b.x + 13 + i * 22, b.y + b.height - 8, 4.5, {
      fill: look.inked ? '#b9954f' : PAPER,
      stroke: line,
      width: 1,
    });
  const coil = box(b.x + 12, b.y + 14, 32, 34);
  const copper = pen.createLinearGradient(coil.x, 0, coil.x + coil.width, 0);
  copper.addColorStop(0, '#a85f2c');
  copper.addColorStop(0.4, '#e09a5c');
  copper.addColorStop(1, '#8a4a20');
  rect(pen, coil, 1, { fill: look.inked ? copper : PAPER, stroke: line, width: 1.2 });
  within(pen, coil, () =>
    draw(pen, Array.from({ length: 11 }, (_, i) => `M${coil.x} ${coil.y + i * 3.2}h${coil.width}`).join(''), {
      stroke: look.inked ? '#6b3a1a' : PENCIL,
      width: 0.7,
    }),
  );
  rect(pen, box(coil.x - 3, coil.y - 5, coil.width + 6, 5), 1, {
    fill: look.inked ? '#e7e2d4' : PAPER,
    stroke: line,
    width: 1,
  });
  rect(pen, box(coil.x - 3, coil.y + coil.height, coil.width + 6, 5), 1, {
    fill: look.inked ? '#e7e2d4' : PAPER,
    stroke: line,
    width: 1,
  });
  // The blades touch while the pump runs; seen through the clear cover, known only when somebody looked.
  const made = pumpRuns === true;
  const x = b.x + 66;
  const known = look.inked && pumpRuns !== null;
  draw(pen, `M${x} ${b.y + 54}V${b.y + 12}M${x + (made ? 5 : 13)} ${b.y + 12}L${x + 13} ${b.y + 54}`, {
    stroke: known ? '#b06a34' : PENCIL,
    width: 3,
    ...(known ? {} : { dash: [4, 4] }),
  });
  if (known) {
    disc(pen, x + 1, b.y + 16, 3, { fill: '#d9d2bf', stroke: INK, width: 0.9 });
    disc(pen, x + (made ? 5 : 12), b.y + 16, 3, { fill: '#d9d2bf', stroke: INK, width: 0.9 });
  }
}

function selector(pen: Pen, look: Look): void {
  const { x, y, r } = SELECTOR;
  const s: PanelScene['selector'] = look.panel.selector;
  const line = s === null ? PENCIL : INK;
  const stands = [
    ['hand', 'yard.panel.hand', -Math.PI * 0.78, 'right'],
    ['off', 'yard.panel.selectorOff', -Math.PI / 2, 'center'],
    ['auto', 'yard.panel.auto', -Math.PI * 0.22, 'left'],
  ] as const;
  for (const [id, text, a, align] of stands) {
    const here = s === id;
    write(pen, look.text(label(text)), x + Math.cos(a) * (r + 8), y + Math.sin(a) * (r + 8) + (id === 'off' ? -1 : 2), {
      size: look.size * 0.94,
      weight: here ? 700 : 400,
      align,
      colour: here ? INK : SOFT,
    });
    draw(pen, `M${x + Math.cos(a) * (r + 2)} ${y + Math.sin(a) * (r + 2)}l${Math.cos(a) * 4} ${Math.sin(a) * 4}`, {
      stroke: line,
      width: 1.6,
    });
  }
  disc(pen, x, y, r, { fill: s === null ? PAPER : '#cfc8b6', stroke: line, width: 1.7 });
  disc(pen, x, y, r - 7, { fill: s === null ? PAPER : '#3f3c36', stroke: line, width: 1.4 });
  write(pen, look.text(label('yard.panel.selector')), x, y + r + look.size * 1.05, {
    size: look.size * 0.9,
    weight: 700,
    align: 'center',
    colour: look.inked ? INK : SOFT,
  });
  if (s === null) {
    write(pen, '?', x, y + look.size * 0.4, { size: look.size * 1.2, weight: 700, align: 'center', colour: PENCIL });
    return;
  }
  const a = stands.find(([id]) => id === s)?.[2] ?? 0;
  draw(
    pen,
    `M${x - Math.cos(a) * (r - 11)} ${y - Math.sin(a) * (r - 11)}L${x + Math.cos(a) * (r - 4)} ${y + Math.sin(a) * (r - 4)}`,
    { width: 11 },
  );
  draw(
    pen,
    `M${x - Math.cos(a) * (r - 11)} ${y - Math.sin(a) * (r - 11)}L${x + Math.cos(a) * (r - 5)} ${y + Math.sin(a) * (r - 5)}`,
    { stroke: '#6f6a5e', width: 8 },
  );
  draw(pen, `M${x} ${y}L${x + Math.cos(a) * (r - 5)} ${y + Math.sin(a) * (r - 5)}`, { stroke: CARD, width: 2.4 });
}

function counters(pen: Pen, look: Look): void {
  const b = COUNTERS;
  const c = look.panel.counters;
  const line = c === null ? PENCIL : INK;
  for (const [i, id] of (['yard.panel.hours', 'yard.panel.cycles'] as const).entries()) {
    const y = b.y + i * 46;
    write(pen, look.text(label(id)), b.x + 2, y + look.size * 0.1, {
      size: look.size * 0.9,
      colour: look.inked ? INK : SOFT,
    });
    const w = box(b.x, y + 6, b.width, 24);
    rect(pen, w, 3, {
      fill: c === null ? PAPER : '#35332e',
      stroke: line,
      width: 1.4,
      ...(c === null ? { dash: [5, 4] } : {}),
    });
    const digits =
      c === null
        ? ''
        : i === 0
          ? (Math.floor(c.pumpHours * 10) / 10).toFixed(1).padStart(7, '0')
          : String(Math.floor(c.pumpCycles)).padStart(6, '0');
    const step = b.width / 7;
    for (const [k, d] of [...digits].entries()) {
      const last = i === 0 && k === digits.length - 1;
      const x = b.x + step * (k + 0.5) + (i === 0 ? 0 : step * 0.5);
      if (d !== '.') rect(pen, box(x - 5.6, y + 9, 11.2, 18), 1.5, { fill: last ? '#f0d9cf' : '#f6f0e1' });
      write(pen, d, x, y + 23, {
        size: 14,
        weight: 700,
        align: 'center',
        colour: d === '.' ? CARD : last ? ALARM : INK,
      });
    }
  }
}
