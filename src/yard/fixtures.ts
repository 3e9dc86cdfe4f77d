/** Pipes, pump, disc filter, spray heads, compressor, panel and clean-outs: what changes by hand, not by the minute. */
import { Container } from 'pixi.js';
import type { LampId } from '../scene/types.ts';
import { Cel } from './cel.ts';
import { paintCleanOut } from './cleanOut.ts';
import { paintAirInk, paintAirPencil } from './compressor.ts';
import { paintDiscFilterInk, paintDiscFilterPencil } from './discFilter.ts';
import { paintSewer } from './house.ts';
import { Inked } from './inked.ts';
import type { Layout } from './layout.ts';
import { outletArea, paintOutletInk, paintOutletPencil } from './outlet.ts';
import { lampPoint, paintLamp, paintPanelInk, paintPanelPencil } from './panelPost.ts';
import { type Box, box } from './pen.ts';
import { paintPipes } from './pipes.ts';
import { paintPump } from './pumpTank.ts';
import { keyOf, type Print } from './sheet.ts';
import { paintFieldInk, paintFieldPencil } from './sprayField.ts';

export class Fixtures {
  /** Under the tanks, in the pump tank, over the tanks, and the lamp, which shines over the dusk. */
  readonly below = new Container();
  readonly pump: Container;
  readonly above = new Container();
  readonly lamp = new Container();
  /** Drip field and ultraviolet lamp, once they are there. */
  rare: typeof import('./rareParts.ts') | null = null;
  readonly #pipes = new Cel();
  readonly #pump = new Inked();
  readonly #disc = new Inked();
  readonly #field = new Inked();
  readonly #air = new Inked();
  readonly #panel = new Inked();
  readonly #outlet = new Inked();
  readonly #sleeve = new Inked();
  readonly #lamps: ReadonlyMap<LampId, Inked> = new Map(
    (['lamp', 'air', 'water'] as const).map((id) => [id, new Inked()]),
  );
  readonly #cleanOut = new Cel();

  constructor() {
    this.pump = this.#pump.root;
    this.below.addChild(this.#pipes.sprite);
    const { root: sleeve } = this.#sleeve;
    this.above.addChild(sleeve, this.#field.root, this.#disc.root, this.#cleanOut.sprite);
    this.above.addChild(this.#outlet.root, this.#air.root, this.#panel.root);
    for (const one of this.#lamps.values()) this.lamp.addChild(one.root);
  }

  /** `up` is how far the spray heads stand out of their sleeves, 0 to 1. */
  print(layout: Layout, p: Print, up: number): void {
    const { scene, scale } = p;
    const key = `${layout.perMetre}|${scene.field.kind}|${this.rare === null}`;
    const { trash, pump: tank, riser, discFilter: d, panel, compressor } = layout;
    const wet = scene.house.ink.kind !== 'pencil' && (scene.house.draw_Ls ?? 0) > 0.001;
    const lining = wet || (scene.flows.sewer_Ls ?? 0) > 0.001 ? '#8f8157' : '#cfc6b2';
    const pipes = box(-40, 4, tank.inside.x + 60, Math.max(trash.outletY, tank.inletY, riser.outletY) + 14);
    this.#pipes.show(pipes, scale, key + lining, (pen) => {
      paintSewer(pen, layout, lining);
      paintPipes(pen, layout);
    });
    const lifted = (scene.flows.relief_Ls ?? 0) > 0;
    this.#cleanOut.show(box(layout.cleanOuts[0] - 16, -44, 60, trash.inletY + 40), scale, `${key}${lifted}`, (pen) =>
      paintCleanOut(pen, layout, lifted),
    );
    this.#pump.show(
      box(layout.pumpX - 60, 4, d.x + 12 - layout.pumpX + 60, tank.shell.y + tank.shell.height),
      scale,
      scene.pump.ink,
      { key, paint: (pen) => paintPump(pen, layout, scene.pump, false) },
      { key: key + scene.pump.intake_m, paint: (pen) => paintPump(pen, layout, scene.pump, true) },
    );
    this.#disc.show(
      box(d.x - 6, d.y - 48, d.width + 50, d.height + 60),
      scale,
      scene.discFilter.ink,
      { key, paint: (pen) => paintDiscFilterPencil(pen, layout) },
      {
        key: key + keyOf([scene.discFilter.open, scene.discFilter.flowShare]),
        paint: (pen) => paintDiscFilterInk(pen, layout, scene.discFilter),
      },
    );
    const rise = Math.round(up * 20) / 20;
    const damp = Math.round((scene.field.wet ?? 0) * 20) / 20;
    const { drip } = layout;
    const { rare } = this;
    this.#field.root.visible = drip === null || rare !== null;
    this.#field.show(
      clip(box(d.x + d.width - 6, -40, 900, drip === null ? 76 : drip.headerY + 48), p.area),
      scale,
      scene.field.ink,
      { key, paint: (pen) => (drip === null ? paintFieldPencil(pen, layout) : rare?.paintDripPencil(pen, drip)) },
      {
        key: `${key}${rise}|${damp}`,
        paint: (pen) => (drip === null ? paintFieldInk(pen, layout, rise, damp) : rare?.paintDripInk(pen, drip, damp)),
      },
    );
    this.#showOutlet(layout, p, key);
    this.#showSleeve(layout, p, key);
    const { housing, rattle, intakeDirt } = scene.compressor;
    this.#air.show(
      box(
        compressor.x - 60,
        compressor.y - 30,
        panel.x + panel.width - compressor.x + 64,
        layout.aeration.inside.y - compressor.y + 60,
      ),
      scale,
      scene.compressor.ink,
      { key, paint: (pen) => paintAirPencil(pen, layout) },
      { key: key + keyOf([housing, rattle, intakeDirt]), paint: (pen) => paintAirInk(pen, layout, scene.compressor) },
    );
    const face = scene.panel.breakers.map((b) => (b.ink.kind === 'pencil' ? null : [b.lever, b.locked]));
    this.#panel.show(
      box(panel.x - 14, panel.y - 16, panel.width + 28, panel.height + 66),
      scale,
      scene.panel.ink,
      { key, paint: (pen) => paintPanelPencil(pen, layout) },
      { key: key + keyOf([scene.panel.door, face]), paint: (pen) => paintPanelInk(pen, layout, scene.panel) },
    );
    this.#showLamps(layout, p, key);
  }

  #showLamps(layout: Layout, p: Print, key: string): void {
    for (const [id, inked] of this.#lamps) {
      const lamp = p.scene.panel.lamps.find((one) => one.id === id);
      inked.root.visible = lamp !== undefined;
      if (lamp === undefined) continue;
      const [x, y] = lampPoint(layout, id);
      inked.show(
        box(x - 30, y - 29, 60, 50),
        p.scale,
        lamp.ink,
        { key, paint: (pen) => paintLamp(pen, layout, id, null) },
        { key: `${key}${lamp.state}`, paint: (pen) => paintLamp(pen, layout, id, lamp.state) },
      );
    }
  }

  #showOutlet(layout: Layout, p: Print, key: string): void {
    const { outlet } = p.scene.compressor;
    const { gfci, plugged, tripped } = outlet;
    this.#outlet.show(
      outletArea(layout),
      p.scale,
      outlet.ink,
      { key: `${key}${gfci}`, paint: (pen) => paintOutletPencil(pen, layout, gfci) },
      { key: `${key}${gfci}${plugged}${tripped}`, paint: (pen) => paintOutletInk(pen, layout, outlet) },
    );
  }

  #showSleeve({ sleeve }: Layout, p: Print, key: string): void {
    const { ink, lit } = p.scene.ultraviolet;
    const { rare } = this;
    this.#sleeve.root.visible = sleeve !== null && rare !== null;
    if (sleeve === null || rare === null) return;
    this.#sleeve.show(
      rare.sleeveArea(sleeve),
      p.scale,
      ink,
      { key, paint: (pen) => rare.paintSleevePencil(pen, sleeve) },
      { key: `${key}${lit}`, paint: (pen) => rare.paintSleeveInk(pen, sleeve, lit === true) },
    );
  }

  stale(): void {
    for (const c of [this.#pipes, this.#cleanOut]) c.stale();
    const parts = [this.#pump, this.#disc, this.#field, this.#outlet, this.#sleeve, this.#air, this.#panel];
    for (const i of [...parts, ...this.#lamps.values()]) i.stale();
  }
}

function clip(b: Box, to: Box): Box {
  const x = Math.max(b.x, Math.min(to.x, b.x + b.width - 1));
  return box(x, b.y, Math.max(1, Math.min(b.x + b.width, to.x + to.width) - x), b.height);
}
