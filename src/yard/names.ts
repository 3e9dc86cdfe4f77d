/**
 * Where the numbers and names of the parts stand, always in the same size on the screen. Over the whole plate each has
 * its place; where only a piece of the plate is on the screen, each stands wholly in what is seen of its part.
 */
import type { PartId } from '../scene/types.ts';
import { IN_FLOW } from './flow.ts';
import { LAWN_FOOT, type Layout, PLATE_WIDTH, type Tank } from './layout.ts';
import { type Box, box, meet, overlap } from './pen.ts';

type Point = readonly [x: number, y: number];

export interface Name {
  readonly part: PartId;
  readonly number: number;
  /** Middle of the numbered disc. */
  readonly disc: Point;
  /** None where only the number has room. */
  readonly lines: readonly string[];
  /** Foot of the first line: its left end, or its middle below the disc. */
  readonly text: Point;
  readonly align: 'left' | 'center';
  /** What a leader points to; null where the name stands in its part. */
  readonly from: Point | null;
  readonly box: Box;
}

/** What names are set with: words, type size in units of the plate, and how wide a line gets. */
export interface Setting {
  readonly size: number;
  readonly name: (part: PartId) => string;
  readonly measure: (line: string) => number;
}

/** Half a disc with its line, and the step from line to line, in type sizes. */
const DISC = 0.92;
export const LINE = 1.2;
/** From the middle of the disc to the text beside it. */
const BESIDE = 1.25;

/** The names over the whole plate, each with its leader. */
export function namesOnPlate(layout: Layout, free: Box, { size, name, measure }: Setting): readonly Name[] {
  /** Where the last name in a row ends: the next one keeps clear of it, or stands lower where it then has no room. */
  let row = { y: Number.NaN, end: 0 };
  return places(layout, size).map(({ part, from, at: [x0, y0], below }, i) => {
    const line = name(part);
    const width = measure(line);
    if (below) {
      const half = Math.max(size * DISC, width / 2);
      const foot = y0 + size * (DISC + 1);
      row = { y: y0, end: x0 + half };
      return {
        ...{ part, number: i + 1, disc: [x0, y0], lines: [line], text: [x0, foot], align: 'center', from },
        box: box(x0 - half, y0 - size * DISC, 2 * half, foot + size * 0.25 - y0 + size * DISC),
      };
    }
    const clear = Math.abs(y0 - row.y) < size ? row.end + size * 1.4 : Number.NEGATIVE_INFINITY;
    const last = free.x + free.width - size * BESIDE - width;
    const x = Math.min(Math.max(x0, clear), last);
    const y = x < clear ? y0 + size * 2 : y0;
    row = { y, end: x + size * BESIDE + width };
    return {
      ...{ part, number: i + 1, disc: [x, y], lines: [line], align: 'left', from },
      text: [x + size * BESIDE, y + size * 0.35],
      box: box(x - size * DISC, y - size * DISC, size * (DISC + BESIDE) + width, size * DISC * 2),
    };
  });
}

interface NamePlace {
  readonly part: PartId;
  readonly from: Point | null;
  readonly at: Point;
  /** The name stands below its disc: between two walls there is no room beside it. */
  readonly below?: boolean;
}

function places(layout: Layout, size: number): readonly NamePlace[] {
  const { trash, aeration, pump, clarifier: c, riser, discFilter: d } = layout;
  const below = (t: Tank) => t.shell.y + t.shell.height + size * 1.5;
  const air = below(aeration);
  const field = fieldMarks(layout);
  const right = field[field.length - 1] ?? [d.x + 120, 16];
  const firstDrop = ((layout.dropLines[0] ?? 0) + (layout.dropLines[1] ?? 0)) / 2;
  const middle = (c.left + c.right) / 2;
  const trashAt = trash.inside.x + trash.inside.width * 0.4;
  const riserFoot = riser.shell.y + riser.shell.height;
  return [
    { part: 'trash-tank', from: [trashAt, below(trash) - 66], at: [trashAt - size * 2.6, below(trash)] },
    { part: 'aeration', from: [firstDrop, air - 84], at: [aeration.inside.x + size, air] },
    { part: 'clarifier', from: [middle, air - 84], at: [middle + size * 1.2, air] },
    {
      part: 'disinfection',
      from: [riser.shell.x + 17, riserFoot - 18],
      at: [(aeration.shell.x + aeration.shell.width + pump.shell.x) / 2, riserFoot + size * 2.6],
      below: true,
    },
    {
      // The deepest tank: its name stands beside it, so that it is neither cut off below nor over what is in it.
      part: 'pump-tank',
      from: [pump.inside.x + pump.inside.width * 0.93, pump.inside.y + pump.inside.height * 0.62],
      at: [pump.shell.x + pump.shell.width + size * 1.9, pump.inside.y + pump.inside.height * 0.74],
    },
    { part: 'disc-filter', from: [d.x + 28, d.y + 34], at: [d.x + 18, d.y + 86] },
    { part: 'spray-field', from: right, at: [right[0] - size * 5.6, d.y + 86] },
  ];
}

/** The names of what is seen of each part within `free`: as much of each as has room, none over another. */
export function namesWithin(layout: Layout, free: Box, setting: Setting): readonly Name[] {
  const set: Name[] = [];
  for (const [i, part] of IN_FLOW.entries()) {
    const clear = (one: Name) => !set.some((other) => overlap(one.box, other.box));
    const found = zones(layout, part)
      .flatMap((zone) => waysToStand(part, i + 1, zone, free, setting))
      .find(clear);
    if (found !== undefined) set.push(found);
  }
  return set;
}

/** The ways a name may stand in a zone, fullest first. */
function waysToStand(part: PartId, number: number, zone: Zone, free: Box, setting: Setting): readonly Name[] {
  const room = meet(zone.room, free);
  if (room === null) return [];
  const { size } = setting;
  return shapes(setting, setting.name(part), room).map(({ lines, stacked, width, height }) => {
    const x = room.x + (room.width - width) / 2;
    const middle = room.y + height / 2;
    const disc: Point = stacked ? [x + width / 2, room.y + size * DISC] : [x + size * DISC, middle];
    const first = stacked ? disc[1] + size * (DISC + 1) : middle + size * (0.35 - (lines.length - 1) * LINE * 0.5);
    const from = zone.from(disc);
    return {
      part,
      number,
      disc,
      lines,
      text: [stacked ? disc[0] : disc[0] + size * BESIDE, first],
      align: stacked ? 'center' : 'left',
      from: from !== null && within(free, from) ? from : null,
      box: box(x, room.y, width, height),
    };
  });
}

interface Zone {
  readonly room: Box;
  /** What a leader from the disc points to. */
  readonly from: (disc: Point) => Point | null;
}

/** Where a name may stand, best first. */
function zones(layout: Layout, part: PartId): readonly Zone[] {
  const { trash, aeration, pump, clarifier: c, riser, discFilter: d } = layout;
  const inTank = (x: number, width: number, t: Tank): Zone => ({
    room: box(x + 2, t.inside.y + 4, width - 4, t.inside.height - 8),
    from: () => null,
  });
  const lawn = LAWN_FOOT + 14;
  switch (part) {
    case 'trash-tank':
      return [inTank(trash.inside.x, trash.inside.width, trash)];
    case 'aeration':
      return [inTank(aeration.inside.x, c.left - aeration.inside.x, aeration)];
    case 'clarifier':
      return [inTank(c.left, c.right - c.left, aeration)];
    case 'pump-tank':
      return [inTank(pump.inside.x, pump.inside.width, pump)];
    case 'disinfection': {
      const left = aeration.shell.x + aeration.shell.width;
      const foot = riser.shell.y + riser.shell.height;
      return [
        { room: box(left, foot + 12, pump.shell.x - left, 90), from: () => [riser.shell.x + 17, foot - 18] },
        { room: box(riser.shell.x, 44, riser.shell.width, foot - 44), from: () => null },
      ];
    }
    case 'disc-filter': {
      const left = pump.shell.x + pump.shell.width + 4;
      return [
        { room: box(left, d.y + d.height + 14, d.x + 96 - left, 90), from: () => [d.x + 28, d.y + d.height - 4] },
      ];
    }
    case 'spray-field': {
      const left = d.x + 104;
      const nearest = ([x]: Point): Point | null =>
        [...fieldMarks(layout)].sort(([a], [b]) => Math.abs(a - x) - Math.abs(b - x))[0] ?? null;
      const top = layout.drip === null ? lawn + 20 : layout.drip.headerY + 12;
      return [{ room: box(left, top, PLATE_WIDTH - 8 - left, 70), from: nearest }];
    }
    default:
      return [];
  }
}

/** What of the field a leader may point to: its spray heads, or the emitters of its drip lines. */
function fieldMarks({ heads, drip }: Layout): readonly Point[] {
  if (drip === null) return heads.map((x): Point => [x, LAWN_FOOT + 6]);
  return drip.zones.flatMap((z) => z.emitters.map((x): Point => [x, drip.lineY]));
}

interface Shape {
  readonly lines: readonly string[];
  /** The disc over the text instead of beside it. */
  readonly stacked: boolean;
  readonly width: number;
  readonly height: number;
}

/** The ways to set a name that have room, fullest first: in one line, in more, below its disc, the disc alone. */
function shapes({ size, measure }: Setting, name: string, room: Box): readonly Shape[] {
  const disc = size * DISC * 2;
  const lead = size * (DISC + BESIDE);
  const widest = (lines: readonly string[]) => Math.max(0, ...lines.map(measure));
  const beside = (lines: readonly string[]): Shape => ({
    lines,
    stacked: false,
    width: lead + widest(lines),
    height: Math.max(disc, lines.length * size * LINE),
  });
  const below = (lines: readonly string[]): Shape => ({
    lines,
    stacked: true,
    width: Math.max(disc, widest(lines)),
    height: disc + size * (0.25 + lines.length * LINE),
  });
  const tries = [
    beside([name]),
    beside(broken(name, room.width - lead, measure)),
    below(broken(name, room.width, measure)),
    { lines: [], stacked: true, width: disc, height: disc },
  ];
  return tries.filter((one) => one.width <= room.width && one.height <= room.height);
}

/** A name in lines as wide as there is room for; a single word may be wider. */
function broken(name: string, width: number, measure: (line: string) => number): readonly string[] {
  const lines: string[] = [];
  for (const word of name.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && measure(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function within(b: Box, [x, y]: Point): boolean {
  return x >= b.x && x <= b.x + b.width && y >= b.y && y <= b.y + b.height;
}

/** Where words may stand on the screen. Over a piece of the plate the page's buttons lie along the foot. */
export function roomForWords({ x, y, width, height }: Box, size: number, narrow: boolean, whole: boolean): Box {
  const edge = size * 0.4;
  // On a narrow screen the alarm and a button come over the top.
  const top = narrow ? size * 7 : edge;
  return box(x + edge, y + top, width - 2 * edge, height - top - (whole ? edge : size * 4));
}
