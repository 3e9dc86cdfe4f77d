/**
 * Where a mark is that was put into the water: what a tracer study of a works measures, read off the state itself. Not part
 * of the folder's public face: only who follows a drop needs it.
 */
import { CELL_ROWS, SPENT } from './contact.ts';
import { at } from './entry.ts';
import { CONTACT, HAULED, PROCESS } from './layout.ts';
import { COMPARTMENT, COMPARTMENTS, type COMPONENT } from './liquor.ts';
import { GONE, massOf } from './process.ts';

/** Where it can be, in flow order; `astray` is over the clean-out, into the ground, or hauled away. */
export const MARK_PLACES = ['trash', 'aeration', 'clarifier', 'riser', 'pump', 'field', 'astray'] as const;
export type MarkPlace = (typeof MARK_PLACES)[number];

/** Nothing settles it, nothing eats it and nothing makes it: what goes in is somewhere. */
export type Mark = (typeof COMPONENT)['salt'];

/** Grams of the mark by place, in a state whose processes have caught up. */
export function whereIs(y: Float64Array, mark: Mark): Record<MarkPlace, number> {
  const inProcess = (k: number) => at(y, PROCESS + massOf(k, mark));
  const rows = CELL_ROWS.map((row) => at(y, CONTACT + row + mark));
  let clarifier = 0;
  for (let k = COMPARTMENT.clarifier; k < COMPARTMENTS; k++) clarifier += inProcess(k);
  const pump = rows.at(-1) ?? 0;
  return {
    trash: inProcess(COMPARTMENT.trash),
    aeration: inProcess(COMPARTMENT.aeration),
    clarifier,
    riser: rows.reduce((sum, held) => sum + held, 0) - pump,
    pump,
    field: at(y, CONTACT + SPENT.sprayed + mark),
    astray: at(y, PROCESS + GONE.relieved + mark) + at(y, HAULED + mark),
  };
}
