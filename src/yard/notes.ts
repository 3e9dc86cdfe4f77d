/** Notes on paper chips, pinned to the part they speak of; pencil notes for what was only said. */
import type { NoteScene, PartId } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { INK, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { type Box, box, chip, chipHeight, draw, meet, overlap, type Pen, textWidth, wrap } from './pen.ts';

/** Middle of the top edge of the first chip of a part, and how wide its chips may be. */
function place(layout: Layout, part: PartId): readonly [number, number, number] {
  const b = layout.parts[part];
  const middle = b.x + b.width / 2;
  switch (part) {
    case 'trash-tank':
      return inTank(
        layout.trash.inside.x,
        layout.trash.inside.width,
        layout.trash.inside.y + layout.trash.inside.height * 0.36,
      );
    case 'aeration': {
      const x = layout.aeration.inside.x;
      return inTank(x, layout.clarifier.left - x, layout.aeration.inside.y + 62);
    }
    case 'clarifier':
      return [middle - 6, layout.clarifier.straight + 6, 92];
    case 'pump-tank': {
      const { x, width, y, height } = layout.pump.inside;
      return [x + width * 0.66, y + height * 0.05, 112];
    }
    case 'disinfection':
      return [middle, b.y + b.height + 14, 150];
    case 'panel':
      return [b.x + b.width + 84, b.y + 30, 150];
    case 'compressor':
      return [b.x - 96, b.y - 78, 150];
    case 'spray-field':
      return [b.x + b.width * 0.45, b.y - 34, 190];
    case 'disc-filter':
      return [middle, b.y + b.height + 26, 130];
    case 'clean-out':
      return [b.x + 60, b.y - 44, 150];
    default:
      return [b.x + 96, b.y + 32, 160];
  }
}

function inTank(x: number, width: number, y: number): readonly [number, number, number] {
  return [x + width / 2, y, width - 14];
}

/**
 * Gives what the chips cover. Where only a piece of the plate is seen, `free`, the chips of what is in sight stand
 * wholly in it, clear of what is `taken`; those that have no room are left to the cards.
 */
export function paintNotes(
  pen: Pen,
  layout: Layout,
  notes: readonly NoteScene[],
  size: number,
  text: (m: Message) => string,
  free: Box | null,
  taken: readonly Box[],
): readonly Box[] {
  const used = new Map<PartId, number>();
  const covered: Box[] = [];
  for (const note of notes) {
    const [x, y, width] = place(layout, note.part);
    const pencil = note.ink.kind === 'pencil';
    const style = { size, italic: pencil, colour: pencil ? '#5d5648' : '#2b2a26', pencil };
    const lines = wrap(pen, text(note.text), Math.max(width, size * 7), style);
    const widest = Math.max(...lines.map((l) => textWidth(pen, l, style))) + size * 1.2;
    const height = chipHeight(lines.length, size);
    const at = box(x - widest / 2, used.get(note.part) ?? y, widest, height);
    const other = [...taken, ...covered];
    const b = free === null ? below(at, other) : kept(at, layout.parts[note.part], free, other);
    if (b === null) continue;
    tie(pen, b, layout.parts[note.part], size, pencil);
    chip(pen, lines, b.x, b.y, style);
    used.set(note.part, b.y + height + size * 0.35);
    covered.push(b);
  }
  return covered;
}

/** A thread from a chip that hangs clear of its part. */
function tie(pen: Pen, chip: Box, part: Box, size: number, pencil: boolean): void {
  if (overlap(chip, part)) return;
  // Well into the part: its box also holds what belongs to it.
  const near = (at: number, from: number, span: number) =>
    Math.min(Math.max(at, from + 0.35 * span), from + 0.65 * span);
  const [x, y] = [chip.x + chip.width / 2, chip.y + chip.height / 2];
  draw(pen, `M${x} ${y}L${near(x, part.x, part.width)} ${near(y, part.y, part.height)}`, {
    stroke: pencil ? PENCIL : INK,
    width: size / 12,
  });
}

/** A chip moved down clear of what it would cover. */
function below(chip: Box, taken: readonly Box[]): Box {
  return [...taken]
    .sort((p, q) => p.y - q.y)
    .reduce((b, other) => (overlap(b, other) ? box(b.x, other.y + other.height + 3, b.width, b.height) : b), chip);
}

/** A chip moved into `free` and below what it would cover; null where its part is out of sight or it has no room. */
function kept(chip: Box, part: Box, free: Box, taken: readonly Box[]): Box | null {
  const seen = meet(part, free);
  if (seen === null || seen.width < part.width / 2 || chip.width > free.width) return null;
  const x = Math.max(free.x, Math.min(chip.x, free.x + free.width - chip.width));
  const b = below(box(x, Math.max(chip.y, free.y), chip.width, chip.height), taken);
  return b.y + b.height > free.y + free.height ? null : b;
}
