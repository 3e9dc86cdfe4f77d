/** Close-up of the panel, to be read and worked by hand. */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { ControlId } from '../calls/view.ts';
import type { PanelScene, Scene } from '../scene/types.ts';
import { type Frame, NARROW } from './camera.ts';
import { Cel } from './cel.ts';
import { ALARM, INK, inkShare, PAPER, PENCIL } from './ink.ts';
import { controlName, label } from './labels.ts';
import { paintSurroundings } from './panelCabinet.ts';
import type { Look } from './panelDoors.ts';
import { paintFace } from './panelFace.ts';
import { BUZZER, controlBox, LAMP, PANEL_SHEET } from './panelPlan.ts';
import { type Box, box, draw, type Pen, rect } from './pen.ts';
import { keyOf, type Print, type Sheet, type Spot } from './sheet.ts';
import type { Sparks } from './sparks.ts';

const BELOW_DOORS: readonly ControlId[] = ['silence', 'test'];
const BEHIND_DOORS: readonly ControlId[] = ['breaker-alarm', 'breaker-compressor', 'breaker-pump', 'timer', 'selector'];
const PULSE_HZ = 0.9;

export class PanelCloseup implements Sheet {
  readonly root = new Container();
  readonly #plate = new Cel();
  readonly #lamp = new Cel();
  readonly #dusk = new Graphics();
  readonly #glow: Sprite;
  readonly #rings: readonly Sprite[];
  #panel: PanelScene | null = null;

  constructor(sparks: Sparks) {
    this.#glow = new Sprite(sparks.glow);
    this.#glow.anchor.set(0.5);
    this.#rings = [0, 1, 2].map(() => {
      const s = new Sprite(sparks.ring);
      s.anchor.set(0.5);
      return s;
    });
    this.root.addChild(this.#plate.sprite, this.#dusk, this.#glow, this.#lamp.sprite, ...this.#rings);
  }

  fit(_scene: Scene, width: number, height: number): { limits: Box; home: Frame } {
    const narrow = width < NARROW;
    const s = PANEL_SHEET;
    const scale = narrow
      ? Math.max(0.7, Math.min(width / 540, height / 470))
      : Math.min(width / 1060, height / s.height);
    // Spare height goes to the wall above rather than to the concrete below.
    const extra = narrow ? 0 : Math.max(0, height / scale - s.height);
    const limits = box(s.x, -extra * 0.72, s.width, s.height + extra);
    return { limits, home: { scale, x: s.width / 2, y: narrow ? 240 : limits.y + limits.height / 2 } };
  }

  print(p: Print): void {
    const { pump } = p.scene;
    const panel = seenOnly(p.scene.panel);
    this.#panel = panel;
    const size = Math.min(16.5, Math.max(13, 14 / p.unit));
    const inked = inkShare(panel.ink) > 0;
    const look: Look = { panel, inked, size, text: p.text };
    const known = pump.ink.kind === 'pencil' ? null : pump.running;
    const { ink: _ink, lampInk: _lamp, buzzer: _buzzer, ...face } = panel;
    const said = p.text(label('yard.panel.reset1'));
    this.#plate.show(p.area, p.scale, keyOf([face, inked, known, size, said]), (pen) => {
      paintSurroundings(pen, p.area, look);
      if (panel.door !== 'closed') paintFace(pen, look, known);
    });
    // By night one reads it by a hand lamp: darker, but every letter stands.
    const night = 1 - p.scene.sky.daylight;
    this.#dusk.clear();
    if (night > 0.02) {
      const { x, y, width, height } = p.area;
      this.#dusk.rect(x, y, width, height).fill({ color: 0x141b2b, alpha: 0.2 * night });
    }
    this.#lamp.show(box(LAMP.x - 60, LAMP.y - 44, 120, 66), p.scale, `${panel.lamp}`, (pen) =>
      paintBigLamp(pen, panel.lamp),
    );
    this.step(0.3, 0);
  }

  step(t: number, _dt: number): boolean {
    const panel = this.#panel;
    const lit = panel?.lamp === 'lit';
    const loud = panel?.buzzer === true;
    const beat = 0.5 + 0.5 * Math.sin(t * 6.2832 * PULSE_HZ);
    this.#glow.visible = lit;
    this.#glow.position.set(LAMP.x, LAMP.y);
    this.#glow.scale.set(1.05 + 0.1 * beat);
    this.#glow.alpha = 0.5 + 0.35 * beat;
    for (const [i, ring] of this.#rings.entries()) {
      const k = (t * PULSE_HZ + i / 3) % 1;
      ring.visible = loud;
      ring.position.set(BUZZER.x, BUZZER.y);
      ring.scale.set(0.36 + 0.34 * k);
      ring.alpha = 0.85 * (1 - k);
    }
    return lit || loud;
  }

  spots(): readonly Spot[] {
    const closed = this.#panel?.door === 'closed';
    const ids = closed ? BELOW_DOORS : [...BEHIND_DOORS, ...BELOW_DOORS];
    return ids.flatMap((id) => {
      const b = controlBox(id);
      return b === null ? [] : [{ id, box: b, label: controlName(id) }];
    });
  }

  labels(): readonly Box[] {
    return [];
  }

  stale(): void {
    this.#plate.stale();
    this.#lamp.stale();
  }

  dispose(): void {
    this.root.destroy({ children: true });
  }
}

/** Levers carry their own ink; the rest of a panel nobody has seen is unknown, whatever the scene holds. */
function seenOnly(panel: PanelScene): PanelScene {
  const lamp = inkShare(panel.lampInk) > 0 ? panel.lamp : null;
  if (inkShare(panel.ink) > 0) return { ...panel, lamp };
  return { ...panel, lamp, door: null, selector: null, timer: null, counters: null, airGauge_kPa: null };
}

function paintBigLamp(pen: Pen, lamp: 'lit' | 'dark' | null): void {
  const { x, y } = LAMP;
  const dome = `M${x - 19} ${y + 10}V${y - 4}q0 -20 19 -20t19 20V${y + 10}z`;
  const line = lamp === null ? PENCIL : INK;
  let fill: string | CanvasGradient = lamp === null ? PAPER : '#7a2c20';
  if (lamp === 'lit') {
    const g = pen.createRadialGradient(x - 3, y - 4, 2, x, y - 4, 26);
    g.addColorStop(0, '#fff3d6');
    g.addColorStop(0.3, '#ffb27f');
    g.addColorStop(0.7, '#e2573a');
    g.addColorStop(1, '#a82c1b');
    fill = g;
  }
  draw(pen, dome, { fill, stroke: line, width: 2 });
  if (lamp !== null) {
    draw(pen, `M${x - 11} ${y + 5}v-9q1 -9 8 -10`, {
      stroke: '#ffffff',
      width: 2.6,
      alpha: lamp === 'lit' ? 0.85 : 0.35,
    });
    draw(pen, `M${x + 6} ${y + 8}v-24M${x + 12} ${y + 8}v-20M${x} ${y + 8}v-26`, {
      stroke: '#5d1f12',
      width: 0.9,
      alpha: 0.5,
    });
  }
  rect(pen, box(x - 27, y + 8, 54, 11), 3, { fill: lamp === null ? PAPER : '#d8d2c2', stroke: line, width: 1.7 });
  if (lamp !== 'lit') return;
  const rays = new Path2D();
  for (let i = 0; i < 11; i++) {
    const a = -Math.PI * (0.04 + (i / 10) * 0.92);
    const far = i % 2 === 0 ? 38 : 33;
    rays.moveTo(x + Math.cos(a) * 27, y - 4 + Math.sin(a) * 27);
    rays.lineTo(x + Math.cos(a) * far, y - 4 + Math.sin(a) * far);
  }
  draw(pen, rays, { stroke: ALARM, width: 2.4 });
}
