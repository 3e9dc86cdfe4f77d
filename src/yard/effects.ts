/** What is seen or heard right now above ground: lamp glow, buzzer rings, hum, hiss and foam at a leak, a gush. */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { LampId, Scene } from '../scene/types.ts';
import { leakPoint } from './compressor.ts';
import { inkShare } from './ink.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';
import { buzzerPoint, lampPoint } from './panelPost.ts';
import type { Sparks } from './sparks.ts';

/** Beats a second of everything that pulses: well below the two that are safe for everybody. */
const PULSE_HZ = 0.9;

interface Shown {
  readonly lamps: ReadonlySet<LampId>;
  readonly buzzer: boolean;
  /** How hard the compressor works, 0 open line to 1 against a shut one; null where nobody hears it. */
  readonly hum: number | null;
  readonly rattle: boolean;
  readonly hiss: number;
  readonly foam: boolean;
  readonly relief: number;
  /** 1 by night: a lamp shines further then. */
  readonly dark: number;
}

export class Effects implements Mover {
  readonly root = new Container();
  readonly #glows: readonly { readonly id: LampId; readonly sprite: Sprite }[];
  readonly #rings: readonly Sprite[];
  readonly #lines = new Graphics();
  readonly #bubbles: readonly Sprite[];
  readonly #gush: readonly Sprite[];
  #layout: Layout | null = null;
  #shown: Shown | null = null;
  #leak: readonly [number, number] = [0, 0];

  constructor(sparks: Sparks) {
    const make = (texture: Sprite['texture']) => {
      const s = new Sprite(texture);
      s.anchor.set(0.5);
      s.visible = false;
      this.root.addChild(s);
      return s;
    };
    this.#glows = (['lamp', 'air', 'water'] as const).map((id) => ({ id, sprite: make(sparks.glow) }));
    this.root.addChild(this.#lines);
    this.#rings = [0, 1, 2].map(() => make(sparks.ring));
    this.#bubbles = Array.from({ length: 11 }, () => make(sparks.bubble));
    this.#gush = Array.from({ length: 26 }, () => make(sparks.bead));
  }

  set(layout: Layout, scene: Scene): void {
    const air = scene.compressor;
    const panel = scene.panel;
    const live = (share: number) => share > 0;
    this.#layout = layout;
    this.#shown = {
      lamps: new Set(panel.lamps.flatMap((l) => (l.state === 'lit' && live(inkShare(l.ink)) ? l.id : []))),
      buzzer: panel.buzzer === true,
      hum: air.running === true && air.ink.kind === 'live' ? (air.load ?? 0.5) : null,
      rattle: air.rattle,
      hiss: air.leak === null || air.ink.kind === 'pencil' ? 0 : air.leak.hole_m,
      foam: air.foam && air.ink.kind !== 'pencil',
      relief: scene.flows.relief_Ls ?? 0,
      dark: 1 - scene.sky.daylight,
    };
    this.#leak = leakPoint(layout, air.leak?.where ?? 'line');
    this.step(0.3, 0);
  }

  step(t: number, _dt: number): boolean {
    const s = this.#shown;
    const layout = this.#layout;
    if (s === null || layout === null) return false;
    const beat = 0.5 + 0.5 * Math.sin(t * 6.2832 * PULSE_HZ);
    for (const { id, sprite } of this.#glows) {
      const [x, y] = lampPoint(layout, id);
      sprite.visible = s.lamps.has(id);
      sprite.position.set(x, y);
      // By night its light reaches over the yard.
      sprite.scale.set((0.52 + 0.1 * beat) * (1 + 0.55 * s.dark));
      sprite.alpha = ((0.6 + 0.4 * beat) * (0.45 + 0.55 * s.dark)) / Math.sqrt(s.lamps.size || 1);
    }
    const [bx, by] = buzzerPoint(layout);
    for (const [i, ring] of this.#rings.entries()) {
      const k = (t * PULSE_HZ + i / 3) % 1;
      ring.visible = s.buzzer;
      ring.position.set(bx, by);
      ring.scale.set(0.08 + 0.24 * k);
      ring.alpha = 0.8 * (1 - k);
    }
    this.#hum(layout, s, t);
    this.#foam(s, t);
    this.#relief(layout, s, t);
    return s.lamps.size > 0 || s.buzzer || s.hum !== null || s.hiss > 0 || s.relief > 0;
  }

  /** Marks beside the housing that throb while it runs; marks at the hole while air leaves there. */
  #hum(layout: Layout, s: Shown, t: number): void {
    const g = this.#lines.clear();
    const c = layout.compressor;
    if (s.hum !== null) {
      const beat = Math.sin(t * 6.2832 * 1.6) * (0.5 + 1.5 * s.hum);
      for (const [i, side] of [-1, 1].entries()) {
        const x = side < 0 ? c.x - 5 : c.x + c.width * 0.5;
        for (let k = 0; k < 2 + Math.round(s.hum); k++) {
          const r = 5 + k * 5 + beat;
          if (i === 0) g.arc(x + 4, c.y + 26, r, Math.PI * 0.78, Math.PI * 1.22);
          else g.arc(x, c.y + 2, r, -Math.PI * 0.72, -Math.PI * 0.28);
          g.stroke({ width: 1.4, color: s.rattle ? 0xc9402a : 0x2f5d73, alpha: 0.75 - k * 0.22 });
        }
      }
    }
    if (s.hiss <= 0) return;
    const [x, y] = this.#leak;
    const size = Math.min(1.5, 0.6 + s.hiss * 150);
    for (let i = 0; i < 4; i++) {
      const k = (t * 1.1 + i * 0.25) % 1;
      const a = -2.5 + i * 0.55;
      const near = (5 + 7 * k) * size;
      const far = near + 7 * size;
      const bend = i % 2 === 0 ? 0.22 : -0.22;
      g.moveTo(x + Math.cos(a) * near, y + Math.sin(a) * near);
      g.quadraticCurveTo(
        x + Math.cos(a + bend) * (near + far) * 0.5,
        y + Math.sin(a + bend) * (near + far) * 0.5,
        x + Math.cos(a) * far,
        y + Math.sin(a) * far,
      );
      g.stroke({ width: 1.8, color: 0xc9402a, alpha: 0.95 - 0.6 * k });
    }
    g.moveTo(x - 1, y - 4)
      .lineTo(x + 2, y - 1)
      .lineTo(x - 2, y + 1)
      .lineTo(x + 1, y + 4);
    g.stroke({ width: 2, color: 0xc9402a });
  }

  #foam(s: Shown, t: number): void {
    const [x, y] = this.#leak;
    for (const [i, b] of this.#bubbles.entries()) {
      b.visible = s.foam;
      const a = i * 2.4;
      const d = 2 + Math.sqrt(i) * 3.1;
      const swell = 1 + 0.1 * Math.sin(t * 2 + i);
      b.position.set(x + Math.cos(a) * d, y + 2 + Math.sin(a) * d * 0.7);
      b.scale.set((0.17 + 0.05 * (i % 3)) * swell);
    }
  }

  #relief(layout: Layout, s: Shown, t: number): void {
    const x0 = layout.cleanOuts[0];
    const y0 = layout.cleanOutLidY - 2;
    const share = Math.min(1, s.relief / 0.4);
    for (const [i, drop] of this.#gush.entries()) {
      drop.visible = s.relief > 0 && i < 8 + 18 * share;
      const k = (t * 1.3 + i / this.#gush.length) % 1;
      const side = i % 2 === 0 ? -1 : 1;
      const reach = side * (8 + ((i * 7) % 13)) * (0.6 + 0.8 * share);
      drop.position.set(x0 + side * 9 + reach * k, y0 - 26 * k * (1 - k) + k * k * -y0);
      drop.scale.set(0.16 + 0.1 * share);
      drop.tint = 0xa89a6c;
    }
  }
}
