/** The checks that a diagnosis weighs: an action, or a few in a row whose last tells. */
import { faultsOf } from '../faults/index.ts';
import { ACTION_BY_ID, ACTIONS, type ActionDef, actionOn, isOfVisits } from '../service/index.ts';
import type { UnitSpec } from '../unit/index.ts';

export interface Probe {
  readonly id: string;
  readonly acts: readonly ActionDef[];
}

/** Between the ids of a row, in the id of the check. */
const ROW = ' > ';

/** The act that tells: of a row the last. */
export function tellingAct(probeId: string): ActionDef | undefined {
  return ACTION_BY_ID.get(probeId.split(ROW).at(-1) ?? '');
}

/** A reset tells nothing by itself: the lamp goes dark whatever stands. Five minutes of watching tell. */
const IN_A_ROW: readonly (readonly string[])[] = [
  ['guide-reset', 'guide-watch'],
  ['reset-panel', 'watch-panel'],
];
const ONLY_IN_A_ROW = new Set(IN_A_ROW.flat());

/** Questions whose answers no simulation can give: they are asked, and not reckoned with. */
const TOLD = new Set(['ask-danger', 'ask-history', 'ask-use', 'ask-again']);

/** The last act of a row by itself, once those before it are done. */
export function lastOfRow(spec: UnitSpec, id: string): Probe | undefined {
  const def = IN_A_ROW.some((ids) => ids.at(-1) === id) ? actionOn(spec, id) : undefined;
  return def && { id, acts: [def] };
}

/** The checks on a unit: what looks or measures, and what is operated to show a fault. */
export function probesOf(spec: UnitSpec): readonly Probe[] {
  const shows = new Set(faultsOf(spec).flatMap((fault) => fault.shownBy));
  const single = ACTIONS.flatMap(({ id }) => actionOn(spec, id) ?? []).filter(
    (def) =>
      !def.form &&
      !isOfVisits(def.id) &&
      !TOLD.has(def.id) &&
      !ONLY_IN_A_ROW.has(def.id) &&
      (def.group === 'look' || def.group === 'measure' || (def.group === 'operate' && shows.has(def.id))),
  );
  const rows = IN_A_ROW.map((ids) => ids.flatMap((id) => actionOn(spec, id) ?? []));
  return [...single.map((def) => [def]), ...rows].map((acts) => ({ id: acts.map((a) => a.id).join(ROW), acts }));
}
