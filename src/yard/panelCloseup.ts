/** Close-up of the panel, to be read and worked by hand. */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { ControlId } from '../calls/view.ts';
import type { LampId, PanelScene, Scene } from '../scene/types.ts';
import { type Frame, NARROW } from './camera.ts';
import { Cel } from './cel.ts';
import { inkShare } from './ink.ts';
import { paintSurroundings } from './panelCabinet.ts';
import type { Look } from './panelDoors.ts';
import { paintFace } from './panelFace.ts';
import { lampArea, paintBigLamp, paintLampNames } from './panelLamps.ts';
import { BUZZER, controlBox, LAMPS, PANEL_SHEET } from './panelPlan.ts';
import { type Box, box } from './pen.ts';
import { controlName, label } from './plateMessages.ts';
import { keyOf, type Print, type Sheet, type Spot } from './sheet.ts';
import type { Sparks } from './sparks.ts';

const BELOW_DOORS: readonly ControlId[] = ['silence', 'test'];
const BEHIND_DOORS: readonly ControlId[] = ['breaker-alarm', 'breaker-compressor', 'breaker-pump', 'timer', 'selector'];
const PULSE_HZ = 0.9;
/** On a narrow screen: wall over the lamps where the page's button lies, and the foot of what a household may work. */
const BUTTON = 130;
const STRIP_FOOT = 468;

export class PanelCloseup implements Sheet {
  readonly root = new Container();
  readonly #plate = new Cel();
  readonly #lamps: readonly { readonly id: LampId; readonly cel: Cel; readonly glow: Sprite }[];
  readonly #dusk = new Graphics();
  readonly #rings: readonly Sprite[];
  #panel: PanelScene | null = null;

  constructor(sparks: Sparks) {
    this.#lamps = (Object.keys(LAMPS) as LampId[]).map((id) => {
      const glow = new Sprite(sparks.glow);
      glow.anchor.set(0.5);
      glow.position.set(LAMPS[id].x, LAMPS[id].y);
      return { id, cel: new Cel(), glow };
    });
    this.#rings = [0, 1, 2].map(() => {
      const s = new Sprite(sparks.ring);
      s.anchor.set(0.5);
      return s;
    });
    const lamps = this.#lamps.flatMap(({ glow, cel }) => [glow, cel.sprite]);
    this.root.addChild(this.#plate.sprite, this.#dusk, ...lamps, ...this.#rings);
  }

  fit(_scene: Scene, width: number, height: number): { limits: Box; home: Frame } {
    const narrow = width < NARROW;
    const s = PANEL_SHEET;
    const scale = narrow
      ? Math.max(0.7, Math.min(width / 540, height / 470))
      : Math.min(width / 1060, height / s.height);
    const tall = height / scale;
    if (narrow) {
      const limits = box(s.x, s.y - BUTTON, s.width, s.height + BUTTON);
      return { limits, home: { scale, x: s.width / 2, y: Math.max(STRIP_FOOT - tall / 2, limits.y + tall / 2) } };
    }
    // Spare height goes to the wall above rather than to the concrete below.
    const extra = Math.max(0, tall - s.height);
    const limits = box(s.x, s.y - extra * 0.72, s.width, s.height + extra);
    return { limits, home: { scale, x: s.width / 2, y: limits.y + limits.height / 2 } };
  }

  print(p: Print): void {
    const { pump } = p.scene;
    const panel = seenOnly(p.scene.panel);
    this.#panel = panel;
    const size = Math.min(16.5, Math.max(13, 14 / p.unit));
    const inked = inkShare(panel.ink) > 0;
    const look: Look = { panel, inked, size, text: p.text };
    const known = pump.ink.kind === 'pencil' ? null : pump.running;
    const { ink: _ink, buzzer: _buzzer, ...face } = panel;
    const { present } = p.scene.ultraviolet;
    const said = p.text(label('yard.panel.reset1'));
    this.#plate.show(p.area, p.scale, keyOf([face, inked, known, present, size, said]), (pen) => {
      paintSurroundings(pen, p.area, look);
      paintLampNames(pen, look, present);
      if (panel.door !== 'closed') paintFace(pen, look, known);
    });
    // By night one reads it by a hand lamp: darker, but every letter stands.
    const night = 1 - p.scene.sky.daylight;
    this.#dusk.clear();
    if (night > 0.02) {
      const { x, y, width, height } = p.area;
      this.#dusk.rect(x, y, width, height).fill({ color: 0x141b2b, alpha: 0.2 * night });
    }
    for (const { id, cel } of this.#lamps) {
      const lamp = panel.lamps.find((one) => one.id === id);
      if (lamp === undefined) cel.hide();
      else cel.show(lampArea(id), p.scale, `${lamp.state}`, (pen) => paintBigLamp(pen, lamp));
    }
    this.step(0.3, 0);
  }

  step(t: number, _dt: number): boolean {
    const panel = this.#panel;
    const lit = new Set(panel?.lamps.flatMap((l) => (l.state === 'lit' ? l.id : [])));
    const loud = panel?.buzzer === true;
    const beat = 0.5 + 0.5 * Math.sin(t * 6.2832 * PULSE_HZ);
    for (const { id, glow } of this.#lamps) {
      glow.visible = lit.has(id);
      glow.scale.set(1.05 + 0.1 * beat);
      glow.alpha = 0.5 + 0.35 * beat;
    }
    for (const [i, ring] of this.#rings.entries()) {
      const k = (t * PULSE_HZ + i / 3) % 1;
      ring.visible = loud;
      ring.position.set(BUZZER.x, BUZZER.y);
      ring.scale.set(0.36 + 0.34 * k);
      ring.alpha = 0.85 * (1 - k);
    }
    return lit.size > 0 || loud;
  }

  spots(): readonly Spot[] {
    const closed = this.#panel?.door === 'closed';
    const timed = this.#panel?.timer != null;
    const ids = closed ? BELOW_DOORS : [...BEHIND_DOORS, ...BELOW_DOORS];
    return ids.flatMap((id) => {
      const b = controlBox(id, timed);
      return b === null ? [] : [{ id, box: b, label: controlName(id) }];
    });
  }

  labels(): readonly Box[] {
    return [];
  }

  stale(): void {
    this.#plate.stale();
    for (const { cel } of this.#lamps) cel.stale();
  }

  dispose(): void {
    this.root.destroy({ children: true });
  }
}

/** Levers carry their own ink; the rest of a panel nobody has seen is unknown, whatever the scene holds. */
function seenOnly(panel: PanelScene): PanelScene {
  const lamps = panel.lamps.map((l) => (inkShare(l.ink) > 0 ? l : { ...l, state: null }));
  if (inkShare(panel.ink) > 0) return { ...panel, lamps };
  const timer = panel.timer === null ? null : { ...panel.timer, dial: null };
  const gauge = { ...panel.gauge, kPa: null };
  return { ...panel, lamps, door: null, selector: null, timer, counters: null, gauge };
}
