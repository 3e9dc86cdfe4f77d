/** Close-up of the pump tank: float tree, pump, check valve, level and cores, to scale. */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { ControlId } from '../calls/view.ts';
import type { Scene } from '../scene/types.ts';
import { type Frame, NARROW } from './camera.ts';
import { Cel } from './cel.ts';
import { Eased } from './eased.ts';
import { paintFloat } from './floats.ts';
import { paintCards } from './floatsCards.ts';
import {
  FLOATS_SHEET,
  type FloatsPlan,
  floatBoxes,
  floatSize,
  lieOf,
  planFloats,
  sideOf,
  TETHER,
} from './floatsPlan.ts';
import { paintBigPump, paintFloatsTankInk, paintFloatsTankPencil, paintTree } from './floatsTank.ts';
import { inkShare } from './ink.ts';
import { Inked } from './inked.ts';
import { type Box, box } from './pen.ts';
import { controlName, label, length } from './plateMessages.ts';
import { keyOf, type Print, type Sheet, type Spot } from './sheet.ts';
import type { Sparks } from './sparks.ts';
import { paintSoil } from './vault.ts';

/** The most floats a tree carries. */
const MOST_FLOATS = 5;

export class FloatsCloseup implements Sheet {
  readonly root = new Container();
  readonly #ground = new Cel();
  readonly #dusk = new Graphics();
  readonly #tank = new Inked();
  readonly #tree = new Inked();
  readonly #pump = new Inked();
  readonly #floats = Array.from({ length: MOST_FLOATS }, () => new Inked());
  readonly #cards = new Cel();
  readonly #fall: readonly Sprite[];
  readonly #push: readonly Sprite[];
  readonly #eased = new Eased();
  #plan: FloatsPlan | null = null;
  #print: Print | null = null;

  constructor(sparks: Sparks) {
    const many = (n: number, texture: Sprite['texture']) =>
      Array.from({ length: n }, () => {
        const s = new Sprite(texture);
        s.anchor.set(0.5);
        s.visible = false;
        return s;
      });
    this.#fall = many(22, sparks.bead);
    this.#push = many(34, sparks.drop);
    this.root.addChild(
      this.#ground.sprite,
      this.#dusk,
      this.#tank.root,
      ...this.#fall,
      this.#pump.root,
      ...this.#push,
      this.#tree.root,
      ...this.#floats.map((f) => f.root),
      this.#cards.sprite,
    );
  }

  fit(scene: Scene, width: number, height: number): { limits: Box; home: Frame } {
    this.#plan = planFloats(scene.geometry);
    const s = FLOATS_SHEET;
    const narrow = width < NARROW;
    const scale = narrow
      ? Math.max(0.74, Math.min(width / 560, height / 480))
      : Math.min(width / 1060, height / s.height);
    const extra = narrow ? 0 : Math.max(0, height / scale - s.height);
    const limits = box(s.x, -extra * 0.5, s.width, s.height + extra);
    return {
      limits,
      home: { scale, x: narrow ? 640 : s.width / 2 - 30, y: narrow ? 280 : limits.y + limits.height / 2 },
    };
  }

  print(p: Print): void {
    const plan = this.#plan;
    if (plan === null) return;
    this.#print = p;
    const { scene, scale } = p;
    const chamber = scene.chambers['pump-tank'];
    this.#eased.aim('level', chamber.level_m, p.still);
    this.#ground.show(p.area, scale, `g${plan.perMetre}`, (pen) => paintSoil(pen, plan, p.area));
    const night = 1 - scene.sky.daylight;
    this.#dusk.clear();
    if (night > 0.02) {
      const { x, y, width, height } = p.area;
      this.#dusk.rect(x, y, width, height).fill({ color: 0x141b2b, alpha: 0.62 * night });
    }
    const b = plan.inside;
    const inner = box(b.x - 4, 0, b.width + 8, b.y + b.height + 4);
    this.#tree.show(
      inner,
      scale,
      chamber.ink,
      { key: 't', paint: (pen) => paintTree(pen, plan, false) },
      { key: 't', paint: (pen) => paintTree(pen, plan, true) },
    );
    const running = scene.pump.running;
    this.#pump.show(
      box(plan.pumpX - 80, 20, Math.max(200, p.area.x + p.area.width - plan.pumpX + 80), b.y + b.height - 16),
      scale,
      scene.pump.ink,
      { key: 'p', paint: (pen) => paintBigPump(pen, plan, scene.pump.intake_m, null, false) },
      {
        key: `p${running}${scene.pump.intake_m}`,
        paint: (pen) => paintBigPump(pen, plan, scene.pump.intake_m, running, true),
      },
    );
    const size = floatSize(scene.floats);
    for (const [i, inked] of this.#floats.entries()) {
      const f = scene.floats[i];
      inked.root.visible = f !== undefined;
      if (f === undefined) continue;
      const y = plan.y(f.tether_m);
      const side = sideOf(i);
      const area = box(plan.treeX - 120, y - 110, 240, 220);
      const angle = lieOf(plan, f, size);
      const rest = f.ink.kind === 'pencil' ? lieOf(plan, { ...f, position: null }, size) : angle;
      const known = f.position !== null;
      inked.show(
        area,
        scale,
        f.ink,
        {
          key: `${f.id}${i}${y}|${size}${rest}`,
          paint: (pen) => {
            pen.translate(plan.treeX, y);
            paintFloat(pen, f, rest, side, false, TETHER, size);
          },
        },
        {
          key: `${f.id}${i}${y}|${size}${f.position}${f.made}`,
          paint: (pen) => {
            pen.translate(plan.treeX, y);
            paintFloat(pen, f, angle, side, known, TETHER, size);
          },
        },
      );
    }
    this.#paintLevel(plan, p);
    this.step(0.4, 0);
  }

  step(t: number, dt: number): boolean {
    const p = this.#print;
    const plan = this.#plan;
    if (p === null || plan === null) return false;
    const easing = dt > 0 && this.#eased.step(dt, 0.0008);
    if (easing) this.#paintLevel(plan, p);
    const inflow = p.scene.flows.riserOut_Ls ?? 0;
    const out = p.scene.flows.discharge_Ls ?? 0;
    this.#pour(plan, t, inflow);
    this.#drive(plan, t, out);
    return easing || inflow > 0.0005 || out > 0.0005;
  }

  spots(): readonly Spot[] {
    const plan = this.#plan;
    const p = this.#print;
    if (plan === null || p === null) return [];
    const boxes = floatBoxes(plan, p.scene.floats);
    return p.scene.floats.flatMap((f, i): readonly Spot[] => {
      const id: ControlId = `float-${f.id}`;
      const at = boxes[i];
      return at === undefined ? [] : [{ id, box: at, label: controlName(id) }];
    });
  }

  labels(): readonly Box[] {
    return [];
  }

  stale(): void {
    for (const c of [this.#ground, this.#cards]) c.stale();
    for (const i of [this.#tank, this.#tree, this.#pump, ...this.#floats]) i.stale();
  }

  dispose(): void {
    this.root.destroy({ children: true });
  }

  /** What follows the level. */
  #paintLevel(plan: FloatsPlan, p: Print): void {
    const { scene, scale } = p;
    const chamber = scene.chambers['pump-tank'];
    const m = this.#eased.get('level');
    const y = m === null ? null : plan.y(m);
    const b = plan.inside;
    const { ink: _ink, level_m: _level, cores, ...look } = chamber;
    this.#tank.show(
      box(Math.min(0, p.area.x), -4, b.x + b.width + 30 - Math.min(0, p.area.x), b.y + b.height + 34),
      scale,
      chamber.ink,
      { key: 't', paint: (pen) => paintFloatsTankPencil(pen, plan) },
      { key: `${y?.toFixed(1)}|${keyOf(look)}`, paint: (pen) => paintFloatsTankInk(pen, plan, chamber, y) },
    );
    const size = Math.min(16, Math.max(13, 14 / p.unit));
    const cards = {
      floats: scene.floats,
      chamber,
      floor_m: scene.geometry.pump.floor_m,
      intake_m: scene.pump.intake_m,
      inlet_m: scene.geometry.pump.inlet_m,
      seen: inkShare(chamber.ink) > 0,
      size,
      view: p.view,
      text: p.text,
      staff: p.staff,
    };
    const states = scene.floats.map((f) => [f.id, f.made, f.makes_m, f.ink.kind === 'pencil']);
    const spoken = p.text(label('yard.floats.pump')) + p.text(length(1));
    this.#cards.show(
      p.area,
      scale,
      `${y?.toFixed(1)}|${keyOf([states, cores, spoken, p.staff, size, cards.seen, p.view.x])}`,
      (pen) => paintCards(pen, plan, cards, y),
    );
  }

  /** Water falling in from the pipe. */
  #pour(plan: FloatsPlan, t: number, flow: number): void {
    const m = this.#eased.get('level');
    const from = plan.inletY - 4;
    const to = m === null ? from + 120 : plan.y(m);
    const x = plan.inside.x + 32;
    const shown = flow > 0.0005 && to > from + 6;
    for (const [i, s] of this.#fall.entries()) {
      s.visible = shown && i < 10 + flow * 120;
      if (!s.visible) continue;
      const k = (t * 1.5 + i / this.#fall.length) % 1;
      s.position.set(x + 16 * Math.sqrt(k) + ((i * 5) % 7) - 3, from + (to - from) * k * k);
      s.scale.set(0.3 + 0.06 * ((i * 3) % 4));
    }
  }

  /** Water driven up the discharge. */
  #drive(plan: FloatsPlan, t: number, flow: number): void {
    const up = plan.inside.y + plan.inside.height - 140 - plan.dischargeY - 12;
    const run = 26;
    const along = (t * (30 + 110 * Math.sqrt(flow))) % run;
    for (const [i, s] of this.#push.entries()) {
      s.visible = flow > 0.0005;
      if (!s.visible) continue;
      const d = i * run + along;
      s.scale.set(0.3);
      if (d < up) {
        s.rotation = Math.PI / 2;
        s.position.set(plan.pumpX, plan.dischargeY + 12 + up - d);
      } else {
        s.rotation = 0;
        s.position.set(plan.pumpX + 14 + (d - up), plan.dischargeY);
      }
    }
  }
}
