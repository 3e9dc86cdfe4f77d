/** What lies under the glass: pipes, the air line, floats, diffusers, the water of a chamber; each with what is known of it. */
import type { ChamberId, ChamberScene, FloatScene, FlowScene, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { manifoldY } from './aeration.ts';
import { inkShare } from './ink.ts';
import { partName } from './labels.ts';
import type { Layout } from './layout.ts';
import { BORE_m, pipeDepth_m } from './pipeDepth.ts';
import { floatName, length, pressure } from './plateMessages.ts';
import { skySaid } from './skySaid.ts';

type Point = readonly [x: number, y: number];

/** A pipe one sees into: unknown, or with so much of its bore under water. */
export interface PipeSight {
  readonly kind: 'pipe';
  readonly full: number | null;
  readonly flows: boolean;
  /** The chamber whose water runs in it. */
  readonly water: ChamberId;
}
export interface AirSight {
  readonly kind: 'air';
  readonly flow_Lmin: number | null;
}
export interface FloatSight {
  readonly kind: 'float';
  readonly float: FloatScene;
  readonly side: 1 | -1;
}
export interface WaterSight {
  readonly kind: 'water';
  readonly chamber: ChamberScene | null;
}
export type Cut = PipeSight | AirSight | FloatSight | WaterSight | { readonly kind: 'none' };

export interface Sight {
  readonly cut: Cut;
  readonly says: Message;
}

/** Less than this one does not see run in a pipe, L/s. */
const TRICKLE_Ls = 0.003;

interface Thing {
  /** Where it runs, and how near one has to hold the glass. */
  readonly along: readonly Point[];
  readonly reach: number;
  readonly sight: () => Sight;
}

const say = (id: GlassWord, values?: Message['values']): Message => (values === undefined ? { id } : { id, values });

type GlassWord =
  | 'glass.nothing'
  | 'glass.unseen'
  | 'glass.pipe.open'
  | 'glass.pipe.still'
  | 'glass.pipe.full'
  | 'glass.pipe.rest'
  | 'glass.air.flows'
  | 'glass.air.still'
  | 'glass.float'
  | 'glass.float.made'
  | 'glass.float.open'
  | 'glass.float.unknown'
  | 'glass.water.measured'
  | 'glass.water.seen'
  | 'glass.water.layers'
  | 'glass.name.sewer'
  | 'glass.name.trashOut'
  | 'glass.name.clarifierOut'
  | 'glass.name.riserOut'
  | 'glass.name.discharge'
  | 'glass.name.field'
  | 'glass.name.air'
  | `glass.lie.${NonNullable<FloatScene['position']>}`
  | 'glass.lie.unknown';

/** What one sees who holds the glass there, units of the plate. */
export function sightAt(layout: Layout, scene: Scene, at: Point): Sight {
  const near = things(layout, scene)
    .map((thing) => ({ thing, far: distance(thing.along, at) }))
    .filter(({ thing, far }) => far <= thing.reach)
    .sort((a, b) => a.far - b.far)[0];
  if (near !== undefined) return near.thing.sight();
  const chamber = chamberAt(layout, at);
  if (chamber === null)
    return { cut: { kind: 'none' }, says: at[1] < HILLTOPS ? skySaid(scene.sky) : say('glass.nothing') };
  return waterSight(scene, scene.chambers[chamber]);
}

/** Where there is something to look into, in the order the water takes. */
export function stopsOf(layout: Layout, scene: Scene): readonly Point[] {
  const middle = ({ along }: Thing): Point => {
    const i = Math.floor((along.length - 1) / 2);
    const [a, b] = [along[i] ?? [0, 0], along[i + 1] ?? along[i] ?? [0, 0]];
    return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  };
  const waters = (Object.keys(scene.chambers) as ChamberId[]).map((id): Point => {
    const b = layout.parts[id];
    return id === 'clarifier'
      ? [b.x + b.width * 0.5, b.y + b.height * 0.6]
      : [b.x + b.width * 0.6, b.y + b.height * 0.88];
  });
  return [...things(layout, scene).map(middle), ...waters].sort(([a], [b]) => a - b);
}

/** Over this there is but sky, units of the plate. */
const HILLTOPS = -84;

function things(layout: Layout, scene: Scene): readonly Thing[] {
  const { trash, aeration, riser, pump, discFilter: d } = layout;
  const right = (b: { readonly x: number; readonly width: number }) => b.x + b.width;
  const slope = (trash.inside.x - 60) * 0.045;
  const drain = (of: keyof FlowScene, name: GlassWord, water: ChamberId, along: readonly Point[]): Thing => ({
    along,
    reach: 13,
    sight: () => drainSight(scene, of, name, water),
  });
  const pressed: Point[] = [
    [layout.pumpX, pump.inside.y + pump.inside.height - 78],
    [layout.pumpX, layout.dischargeY],
    [d.x, layout.dischargeY],
  ];
  return [
    drain('sewer_Ls', 'glass.name.sewer', 'trash-tank', [
      [60, trash.inletY - slope],
      [trash.inside.x, trash.inletY],
    ]),
    drain('trashOut_Ls', 'glass.name.trashOut', 'trash-tank', [
      [right(trash.inside), trash.outletY],
      [aeration.inside.x, trash.outletY],
    ]),
    airLine(layout, scene),
    drain('clarifierOut_Ls', 'glass.name.clarifierOut', 'clarifier', [
      [right(aeration.inside), aeration.outletY],
      [riser.shell.x, aeration.outletY],
    ]),
    drain('riserOut_Ls', 'glass.name.riserOut', 'disinfection', [
      [right(riser.shell), pump.inletY],
      [pump.inside.x, pump.inletY],
    ]),
    ...scene.floats.map((float, i): Thing => {
      const side = i % 2 === 0 ? -1 : 1;
      const y = layout.y(float.tether_m);
      return {
        along: [
          [layout.treeX, y],
          [layout.treeX + side * 22, y],
        ],
        reach: 15,
        sight: () => floatSight(float, side),
      };
    }),
    { along: pressed, reach: 12, sight: () => pressedSight(scene, 'glass.name.discharge') },
    {
      along: [
        [right(d), 22],
        [layout.heads[layout.heads.length - 1] ?? right(d) + 80, 22],
      ],
      reach: 10,
      sight: () => pressedSight(scene, 'glass.name.field'),
    },
  ];
}

function drainSight({ flows }: Scene, of: keyof FlowScene, id: GlassWord, water: ChamberId): Sight {
  const name = say(id);
  const flow = flows[of];
  if (flow === null)
    return { cut: { kind: 'pipe', full: null, flows: false, water }, says: say('glass.unseen', { name }) };
  const flowing = flow > TRICKLE_Ls;
  const depth_m = flowing ? pipeDepth_m(flow) : 0;
  const says = flowing
    ? say('glass.pipe.open', {
        name,
        flow: { measure: 'waterFlow_Ls', value: flow, resolution: 0.01 },
        depth: { measure: 'length_m', value: depth_m, resolution: 0.001 },
        bore: { measure: 'length_m', value: BORE_m, resolution: 0.001 },
      })
    : say('glass.pipe.still', { name });
  return { cut: { kind: 'pipe', full: depth_m / BORE_m, flows: flowing, water }, says };
}

function pressedSight({ flows, field }: Scene, id: GlassWord): Sight {
  const name = say(id);
  const flow = flows.discharge_Ls;
  const known = field.ink.kind === 'pencil' ? null : field.headPressure_kPa;
  const water = 'pump-tank';
  if (flow === null && known === null)
    return { cut: { kind: 'pipe', full: null, flows: false, water }, says: say('glass.unseen', { name }) };
  const flowing = (flow ?? 0) > 0.0005 || (known ?? 0) > 1;
  const says =
    flowing && known !== null
      ? say('glass.pipe.full', { name, pressure: pressure(known) })
      : say('glass.pipe.rest', { name });
  return { cut: { kind: 'pipe', full: 1, flows: flowing, water }, says };
}

/** Air is known from its bubbles: no further than the chamber was looked into. */
function airLine(layout: Layout, { compressor: air, chambers }: Scene): Thing {
  const c = layout.compressor;
  const x = layout.dropLines[1] ?? c.x;
  const along: Point[] = [
    [c.x + c.width, c.y + 34],
    [x, c.y + 34],
    [x, manifoldY(layout)],
  ];
  const name = say('glass.name.air');
  const flow = inkShare(chambers.aeration.ink) > 0 ? air.flow_Lmin : null;
  const cut: AirSight = { kind: 'air', flow_Lmin: flow };
  const flows = say('glass.air.flows', {
    name,
    flow: { measure: 'airFlow_Lmin', value: flow ?? 0, resolution: 1 },
  });
  const known = flow === null ? say('glass.unseen', { name }) : flow > 0.5 ? flows : say('glass.air.still', { name });
  return { along, reach: 10, sight: () => ({ cut, says: known }) };
}

function floatSight(float: FloatScene, side: 1 | -1): Sight {
  const seen = inkShare(float.ink) > 0;
  const made = seen ? float.made : null;
  const contact = made === null ? 'glass.float.unknown' : made ? 'glass.float.made' : 'glass.float.open';
  const lie = say(`glass.lie.${(seen ? float.position : null) ?? 'unknown'}`);
  return {
    cut: { kind: 'float', float: seen ? float : { ...float, position: null, made: null }, side },
    says: say('glass.float', { name: floatName(float.id), lie, contact: say(contact) }),
  };
}

/** Of a call's water only what was seen is told: the figures behind its colour are an ordinary unit's, not this one's. */
function waterSight({ kind }: Scene, chamber: ChamberScene): Sight {
  const name = partName(chamber.id);
  const { water, sludge_m, scum_m } = chamber;
  if (inkShare(chamber.ink) === 0 || water === null)
    return { cut: { kind: 'water', chamber: null }, says: say('glass.unseen', { name }) };
  const cut: WaterSight = { kind: 'water', chamber };
  const quality =
    kind === 'known'
      ? say('glass.water.seen', { name })
      : say('glass.water.measured', {
          name,
          solids: { measure: 'concentration_mgL', value: water.solids_mgL, resolution: 1 },
          oxygen: { measure: 'concentration_mgL', value: water.oxygen_mgL, resolution: 0.1 },
        });
  const layered = (sludge_m ?? 0) + (scum_m ?? 0) > 0.005;
  if (!layered) return { cut, says: quality };
  return {
    cut,
    says: say('glass.water.layers', { water: quality, scum: length(scum_m ?? 0), sludge: length(sludge_m ?? 0) }),
  };
}

function chamberAt(layout: Layout, [x, y]: Point): ChamberId | null {
  const { trash, aeration, clarifier: c, riser, pump } = layout;
  const inside = (b: { x: number; y: number; width: number; height: number }) =>
    x >= b.x && x <= b.x + b.width && y >= b.y && y <= b.y + b.height;
  if (inside(trash.inside)) return 'trash-tank';
  if (inside(aeration.inside)) return x >= c.left && y <= c.tip ? 'clarifier' : 'aeration';
  if (inside(riser.shell)) return 'disinfection';
  return inside(pump.inside) ? 'pump-tank' : null;
}

/** How far a point is from a line. */
function distance(along: readonly Point[], [x, y]: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < along.length; i++) {
    const [ax, ay] = along[i - 1] as Point;
    const [bx, by] = along[i] as Point;
    const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
    const k = length2 === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2));
    least = Math.min(least, Math.hypot(ax + (bx - ax) * k - x, ay + (by - ay) * k - y));
  }
  return least;
}
