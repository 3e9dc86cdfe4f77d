/**
 * Where everything stands on the plate. Heights are true, one scale for all, from the property's elevations; the
 * horizontal order is drawn for reading. Units: 1 is a CSS pixel at full width; grade is y = 0, y grows downwards.
 */
import type { BasinScene, PartId, Scene } from '../scene/types.ts';
import { type Drip, layDrip } from './dripLayout.ts';
import { type Box, box } from './pen.ts';

/** Width of the plate. */
export const PLATE_WIDTH = 1440;
const WALL_THICKNESS = 9;
/** Lower edge of the lawn: light and dark of the open air end there. */
export const LAWN_FOOT = 9;
/** Highest and lowest thing drawn beside sky and soil: the panel's lamp and the callouts. */
export const PLATE_TOP = -196;

export interface Tank {
  /** Outer face of the wall, and the inside. */
  readonly shell: Box;
  readonly inside: Box;
  readonly neck: Box;
  readonly lid: Box;
  readonly inletY: number;
  readonly outletY: number;
}

export interface Layout {
  readonly perMetre: number;
  readonly bottom: number;
  readonly house: Box;
  readonly cleanOuts: readonly [number, number];
  readonly cleanOutLidY: number;
  readonly trash: Tank;
  readonly aeration: Tank;
  /** Depth in metres of the diffusers, already as a height on the plate. */
  readonly diffuserY: number;
  readonly dropLines: readonly number[];
  readonly clarifier: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly straight: number;
    readonly tip: number;
    readonly slot: readonly [number, number];
  };
  readonly riser: Tank;
  readonly pump: Tank;
  readonly treeX: number;
  readonly pumpX: number;
  readonly dischargeY: number;
  readonly discFilter: Box;
  /** Where the spray heads stand; none over a drip field. */
  readonly heads: readonly number[];
  readonly drip: Drip | null;
  readonly panel: Box;
  readonly compressor: Box;
  readonly outlet: Box;
  /** The ultraviolet lamp's sleeve in the disinfection riser, where there is one. */
  readonly sleeve: Box | null;
  /** The box to zoom to and to frame for each part. */
  readonly parts: Readonly<Record<PartId, Box>>;
  y(elevation_m: number): number;
}

function tank(
  basin: BasinScene,
  left: number,
  width: number,
  y: (m: number) => number,
  lidTop: number,
  neckAt: number,
): Tank {
  const inside = box(left, y(basin.ceiling_m), width, y(basin.floor_m) - y(basin.ceiling_m));
  const t = WALL_THICKNESS;
  const shell = box(inside.x - t, inside.y - t, width + 2 * t, inside.height + 2 * t);
  const neckWidth = Math.min(66, width * 0.36);
  const neckX = left + width * neckAt - neckWidth / 2;
  return {
    shell,
    inside,
    neck: box(neckX, lidTop + 8, neckWidth, shell.y - lidTop - 8),
    lid: box(neckX - 6, lidTop, neckWidth + 12, 9),
    inletY: y(basin.inlet_m),
    outletY: y(basin.outlet_m),
  };
}

/** What the layout follows from, beside the units per metre. */
export type Drawn = Pick<Scene, 'geometry' | 'field' | 'ultraviolet'>;

/** Lays a property out for a number of units per metre. */
export function layOut({ geometry: g, field, ultraviolet }: Drawn, perMetre: number): Layout {
  const { heads } = field;
  const y = (m: number) => -m * perMetre;
  const lidTop = y(g.lid_m) - 4;
  // A drip field has nothing above the lawn to be known by: it gets more room on the plate.
  const squeeze = field.kind === 'drip' ? 0.86 : 1;
  const wide = (b: BasinScene, k: number) => squeeze * Math.min(250, Math.max(130, Math.sqrt(b.area_m2) * k));
  const trash = tank(g.trash, 288, wide(g.trash, 136), y, lidTop, 0.3);
  const aerationLeft = trash.shell.x + trash.shell.width + 52;
  const aeration = tank(g.aeration, aerationLeft, wide(g.aeration, 195), y, lidTop, 0.74);
  const right = aeration.inside.x + aeration.inside.width;
  const riserLeft = right + WALL_THICKNESS + 42;
  const riserInside = box(riserLeft, y(g.riser.ceiling_m), 34, y(g.riser.floor_m) - y(g.riser.ceiling_m));
  const riser: Tank = {
    shell: box(riserLeft, lidTop + 8, 34, y(g.riser.floor_m) - lidTop - 8),
    inside: riserInside,
    neck: box(riserLeft, lidTop + 8, 34, riserInside.y - lidTop - 8),
    lid: box(riserLeft - 6, lidTop, 46, 9),
    inletY: y(g.riser.inlet_m),
    outletY: y(g.riser.outlet_m),
  };
  const pumpLeft = riserLeft + 34 + 44;
  const pump = tank(g.pump, pumpLeft, wide(g.pump, 139), y, lidTop, 0.5);
  const pumpRight = pump.inside.x + pump.inside.width + WALL_THICKNESS;
  const discFilter = box(pumpRight + 22, 6, 56, 32);
  const firstHead = discFilter.x + 56 + 62;
  const gap = heads > 1 ? (PLATE_WIDTH - 46 - firstHead) / (heads - 1) : 0;
  const clarifierWidth = Math.min(112, aeration.inside.width * 0.44);
  const cRight = right - 6;
  const cLeft = cRight - clarifierWidth;
  const cWater = y(g.aeration.outlet_m);
  const straight = cWater + g.aeration.clarifier.straight_m * perMetre;
  const tip = straight + g.aeration.clarifier.hopper_m * perMetre;
  const mid = (cLeft + cRight) / 2;
  const panel = box(612, -128, 62, 82);
  const dropSpan = cLeft - aeration.inside.x;
  const dropLines = [0.26, 0.53, 0.8].map((k) => Math.round(aeration.inside.x + dropSpan * k));
  // The line leaves the housing just above the middle drop, so that it runs straight down into the chamber.
  const compressor = box((dropLines[1] ?? 0) - 96, -48, 74, 48);
  const outlet = box(compressor.x - 42, -46, 17, 25);
  return {
    perMetre,
    bottom: y(g.pump.floor_m) + WALL_THICKNESS + 26,
    house: box(-10, -168, 212, 168),
    cleanOuts: [226, 246],
    cleanOutLidY: y(g.cleanOut_m),
    trash,
    aeration,
    diffuserY: y(g.aeration.diffuser_m),
    dropLines,
    clarifier: {
      left: cLeft,
      right: cRight,
      top: y(g.aeration.ceiling_m) + 7,
      straight,
      tip,
      slot: [mid - 13, mid + 13],
    },
    riser,
    pump,
    treeX: pump.inside.x + pump.inside.width * 0.34,
    pumpX: pump.inside.x + pump.inside.width * 0.77,
    dischargeY: 21,
    discFilter,
    heads: Array.from({ length: heads }, (_, i) => Math.round(firstHead + gap * i)),
    drip: field.kind === 'drip' ? layDrip(discFilter.x + discFilter.width, PLATE_WIDTH) : null,
    panel,
    compressor,
    outlet,
    sleeve: ultraviolet.present ? box(riser.shell.x + 11, 4, 12, riser.shell.y + riser.shell.height - 14) : null,
    parts: {
      house: box(0, -176, 206, 200),
      'clean-out': box(212, -34, 50, 62),
      'trash-tank': outline(trash),
      aeration: box(aeration.shell.x, lidTop, cLeft - aeration.shell.x, bottomOf(aeration) - lidTop),
      clarifier: box(cLeft, lidTop, aeration.shell.x + aeration.shell.width - cLeft, bottomOf(aeration) - lidTop),
      disinfection: outline(riser),
      'pump-tank': outline(pump),
      'disc-filter': box(discFilter.x - 6, discFilter.y - 6, 68, 46),
      'spray-field':
        field.kind === 'drip'
          ? box(firstHead - 50, -30, PLATE_WIDTH - firstHead + 46, 130)
          : box(firstHead - 44, -70, PLATE_WIDTH - firstHead + 40, 104),
      panel: box(panel.x - 8, panel.y - 34, panel.width + 16, panel.height + 40),
      compressor: box(outlet.x - 8, compressor.y - 10, compressor.x + 96 - outlet.x + 8, compressor.height + 18),
    },
    y,
  };
}

function bottomOf(t: Tank): number {
  return t.shell.y + t.shell.height;
}

function outline(t: Tank): Box {
  const left = Math.min(t.shell.x, t.lid.x);
  const right = Math.max(t.shell.x + t.shell.width, t.lid.x + t.lid.width);
  return box(left, t.lid.y, right - left, bottomOf(t) - t.lid.y);
}
