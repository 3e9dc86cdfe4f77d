/** The lamps on the panel's roof in close-up, with the words that say what each stands for. */

import type { LampId, LampScene } from '../scene/types.ts';
import { ALARM, INK, inkShare, PAPER, PENCIL } from './ink.ts';
import type { Look } from './panelDoors.ts';
import { LAMPS } from './panelPlan.ts';
import { glassOf } from './panelPost.ts';
import { newPath } from './path.ts';
import { type Box, box, draw, type Pen, rect, write } from './pen.ts';
import { type CloseupLabel, label } from './plateMessages.ts';

/** What a lamp's cel has to hold. */
export function lampArea(id: LampId): Box {
  return box(LAMPS[id].x - 56, LAMPS[id].y - 44, 112, 66);
}

/** Which word stands beside a lamp. The air lamp also lights for the ultraviolet lamp, where there is one. */
function nameOf(id: LampId, ultraviolet: boolean): CloseupLabel {
  switch (id) {
    case 'lamp':
      return 'yard.panel.alarm';
    case 'air':
      return ultraviolet ? 'yard.panel.airUv' : 'yard.panel.air';
    case 'water':
      return 'yard.panel.water';
  }
}

/** Names beside the lamps: of two, each on its own side. */
export function paintLampNames(pen: Pen, look: Look, ultraviolet: boolean): void {
  for (const lamp of look.panel.lamps) {
    const left = lamp.id === 'air';
    const { x, y } = LAMPS[lamp.id];
    write(pen, look.text(label(nameOf(lamp.id, ultraviolet))), x + (left ? -46 : 46), y + look.size * 0.5, {
      size: look.size * 1.08,
      weight: 700,
      align: left ? 'right' : 'left',
      colour: inkShare(lamp.ink) > 0 ? INK : '#5d5648',
      halo: 'rgba(246,240,225,0.9)',
    });
  }
}

export function paintBigLamp(pen: Pen, { id, state }: LampScene): void {
  const { x, y } = LAMPS[id];
  const dome = `M${x - 19} ${y + 10}V${y - 4}q0 -20 19 -20t19 20V${y + 10}z`;
  const line = state === null ? PENCIL : INK;
  const glass = glassOf(id);
  let fill: string | CanvasGradient = state === null ? PAPER : glass.dark;
  if (state === 'lit') {
    const g = pen.createRadialGradient(x - 3, y - 4, 2, x, y - 4, 26);
    for (const [i, colour] of glass.lit.entries()) g.addColorStop([0, 0.3, 0.7, 1][i] ?? 1, colour);
    fill = g;
  }
  draw(pen, dome, { fill, stroke: line, width: 2 });
  if (state !== null) {
    draw(pen, `M${x - 11} ${y + 5}v-9q1 -9 8 -10`, {
      stroke: '#ffffff',
      width: 2.6,
      alpha: state === 'lit' ? 0.85 : 0.35,
    });
    draw(pen, `M${x + 6} ${y + 8}v-24M${x + 12} ${y + 8}v-20M${x} ${y + 8}v-26`, {
      stroke: '#5d1f12',
      width: 0.9,
      alpha: 0.5,
    });
  }
  rect(pen, box(x - 27, y + 8, 54, 11), 3, { fill: state === null ? PAPER : '#d8d2c2', stroke: line, width: 1.7 });
  if (state !== 'lit') return;
  const rays = newPath();
  for (let i = 0; i < 11; i++) {
    const a = -Math.PI * (0.04 + (i / 10) * 0.92);
    const far = i % 2 === 0 ? 38 : 33;
    rays.moveTo(x + Math.cos(a) * 27, y - 4 + Math.sin(a) * 27);
    rays.lineTo(x + Math.cos(a) * far, y - 4 + Math.sin(a) * far);
  }
  draw(pen, rays, { stroke: id === 'air' ? '#9a5a00' : ALARM, width: 2.4 });
}
