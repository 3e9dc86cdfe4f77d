/** Close-up of the disc filter cut open in its box: how water passes between grooved discs, and what dirt leaves of it. */
import type { Scene } from '../scene/types.ts';
import { DiscsDrops } from './discsDrops.ts';
import { paintLensInk, paintLensPencil } from './discsLens.ts';
import { BODY_X, BORE, CUP, discTops, GRADE, groovesAt, HEAD, LENS, PIPE_Y, RIM, VALVE_BOX } from './discsPlan.ts';
import { paintBodyInk, paintBodyPencil, paintBox } from './discsSection.ts';
import { inkShare, waterColour } from './ink.ts';
import type { Pen } from './pen.ts';
import type { Plate, PlateWords } from './plate.ts';
import { percent, pressure, type Reading, waterFlow } from './plateMessages.ts';
import { namer, readings } from './plateWords.ts';
import type { Sparks } from './sparks.ts';
import { paintSoil } from './vault.ts';

export function makePlate(sparks: Sparks): Plate {
  return {
    focus: [BODY_X, 270],
    ink: ({ discFilter }) => discFilter.ink,
    seen: (scene) => [scene.discFilter.open, scene.discFilter.flowShare, waterOf(scene), atField(scene), flowOf(scene)],
    ground: (pen, area) => paintSoil(pen, { grade: GRADE, perMetre: 230 }, area),
    pencil(pen) {
      paintBox(pen, false, false);
      paintBodyPencil(pen);
      paintLensPencil(pen);
    },
    paint(pen, scene) {
      const { open, flowShare } = scene.discFilter;
      const water = waterOf(scene);
      paintBox(pen, true, open);
      paintBodyInk(pen, water, flowShare);
      paintLensInk(pen, water, flowShare);
    },
    words,
    told,
    movers: [new DiscsDrops(sparks)],
  };
}

/** The pump drives through the filter what stands in its tank: the colour is that of the water there, once it was seen. */
function waterOf({ chambers }: Scene): string | null {
  const { ink, water } = chambers['pump-tank'];
  return inkShare(ink) > 0 && water !== null ? waterColour(water).colour : null;
}

/** Pressure at the field and flow, as fine as they are told. */
function atField({ field: { ink, headPressure_kPa: kPa } }: Scene): number | null {
  return inkShare(ink) > 0 && kPa !== null ? Math.round(kPa * 2) / 2 : null;
}

function flowOf({ flows: { discharge_Ls: Ls } }: Scene): number | null {
  return Ls === null ? null : Math.round(Ls * 100) / 100;
}

function words(pen: Pen, w: PlateWords): void {
  const { scene } = w;
  const { open, flowShare } = scene.discFilter;
  const name = namer(pen, w);
  const left = CUP.x - 16;
  const right = CUP.x + CUP.width + 16;
  if (w.seen && open) name('plate.discs.lid', [700, GRADE - 10], [716, GRADE - 30]);
  else name('plate.discs.lid', [110, GRADE - 4], [126, GRADE - 26]);
  name('plate.discs.nut', [BODY_X - 14, 146], [left, 126], 'right');
  name('plate.discs.body', [CUP.x + 4, 240], [left, 214], 'right');
  name('plate.discs.clamp', [CUP.x - 4, CUP.y + CUP.height + 4], [left, 346], 'right');
  name('plate.discs.stack', [BODY_X + RIM - 10, (discTops[8] ?? 0) + 3], [right + 4, 249]);
  name('plate.discs.core', [BODY_X + BORE - 8, 326], [right, 352]);
  name('plate.discs.inlet', [VALVE_BOX.x + 8, PIPE_Y - 10], [VALVE_BOX.x + 13, PIPE_Y - 34]);
  name('plate.discs.outlet', [HEAD.x + HEAD.width + 32, PIPE_Y - 10], [HEAD.x + HEAD.width + 44, PIPE_Y - 30]);
  name('plate.discs.one', [LENS.x + LENS.rim * 0.72, LENS.y - LENS.rim * 0.6], [LENS.x + LENS.radius + 22, 218]);
  if (!w.seen || flowShare === null) return;
  const grooves = groovesAt(flowShare);
  const nearest = (yes: boolean, y: number) =>
    grooves
      .filter((one) => one.open === yes && one.middle[0] > LENS.x)
      .reduce<readonly [number, number] | null>(
        (best, { middle }) => (best === null || Math.abs(middle[1] - y) < Math.abs(best[1] - y) ? middle : best),
        null,
      );
  const groove = nearest(true, 230);
  const dirt = nearest(false, 336);
  if (groove !== null) name('plate.discs.groove', groove, [LENS.x + LENS.radius + 22, 266]);
  if (dirt !== null) name('plate.discs.dirt', dirt, [LENS.x + LENS.radius + 22, 332]);
  readings(pen, w, [920, 92], told(scene));
}

function told(scene: Scene): readonly Reading[] {
  const { flowShare } = scene.discFilter;
  const at = atField(scene);
  const flow_Ls = flowOf(scene);
  return [
    ['plate.discs.share', flowShare === null ? null : percent(flowShare)],
    ['plate.discs.pressure', at === null ? null : pressure(at)],
    ['plate.discs.flow', flow_Ls === null ? null : waterFlow(flow_Ls)],
  ];
}
