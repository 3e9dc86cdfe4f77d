/**
 * What a routine visit looks at and reads, in the order of public inspection forms (site and records, odour, ground, lids,
 * air, chambers, disinfection, pump tank, counters, floats and pump, filters and field). Source: CIDWT's forms 1.2, 6-2, 7-2.
 */
import { FLOATS } from '../../control/index.ts';
import { actionIn } from '../allowed.ts';
import type { CallSession, Done } from '../session.ts';
import type { Prepared } from '../setup.ts';

/** A line of the checklist. Each of `wants` is met by any of its actions. */
interface RowDef {
  readonly id: string;
  readonly wants: readonly (readonly string[])[];
}

/** The line that only the end of a visit can tick. */
export const SIGNED = 'signed';

const ROWS: readonly RowDef[] = [
  { id: 'records', wants: [['read-label'], ['ask-again']] },
  { id: 'odour', wants: [['smell-about']] },
  { id: 'ground', wants: [['walk-field']] },
  { id: 'lids', wants: [['look-at-lids']] },
  { id: 'air', wants: [['tee-pressure'], ['look-at-intake-filter'], ['clean-intake-filter']] },
  { id: 'trash-tank', wants: [['probe-trash'], ['look-at-tees']] },
  { id: 'aeration', wants: [['look-into-aeration'], ['measure-oxygen'], ['settle-jar']] },
  { id: 'clarifier', wants: [['look-into-clarifier'], ['core-clarifier']] },
  {
    id: 'disinfection',
    wants: [['look-at-disinfectant', 'look-at-ultraviolet'], ['look-at-sleeve'], ['dip-strip']],
  },
  { id: 'pump-tank', wants: [['look-into-pump-tank'], ['core-sludge']] },
  { id: 'panel', wants: [['read-panel'], ['press-test']] },
  { id: 'alarms', wants: [['make-air-alarm'], ['lift-float:highWaterFloat']] },
  { id: 'counters', wants: [['read-counters']] },
  {
    id: 'floats',
    wants: FLOATS.filter((f) => f !== 'highWaterFloat').map((f) => [`lift-float:${f}`]),
  },
  {
    id: 'pump',
    wants: [
      ['amps-in-hand', 'pump-amps'],
      ['supply-volts', 'pump-volts'],
    ],
  },
  { id: 'filter', wants: [['open-disc-filter'], ['clean-disc-filter']] },
  { id: 'field', wants: [['look-at-field', 'zone-pressure']] },
  { id: SIGNED, wants: [['sign-label']] },
];

/** A line as it stands: what it wants here, and what was done of it. */
export interface Row {
  readonly id: string;
  readonly wants: readonly (readonly string[])[];
  readonly met: number;
  readonly done: readonly Done[];
}

/** The checklist of a property: what its unit lacks, and what the call withholds, stands not on it. */
export function rowsWanted(prepared: Prepared): readonly RowDef[] {
  const has = (id: string) => actionIn(prepared, id) !== undefined;
  return ROWS.map(({ id, wants }) => ({
    id,
    wants: wants.map((ids) => ids.filter(has)).filter((ids) => ids.length > 0),
  })).filter(({ wants }) => wants.length > 0);
}

/** What stands between the alarms that are made, and shows that the lamp stays out. */
const BETWEEN: readonly string[] = ['reset-panel', 'watch-panel'];

/** Whether an action stands on the checklist of a routine visit, or between its lines. */
export function isListed(prepared: Prepared, id: string): boolean {
  if (prepared.call.kind !== 'visit') return false;
  return BETWEEN.includes(id) || ROWS.some(({ wants }) => wants.some((ids) => ids.includes(id)));
}

export function rowsOf({ prepared, done }: CallSession): readonly Row[] {
  return rowsWanted(prepared).map(({ id, wants }) => {
    const asked = wants.flat();
    const of = done.filter((d) => asked.includes(d.def.id));
    return { id, wants, met: wants.filter((ids) => of.some((d) => ids.includes(d.def.id))).length, done: of };
  });
}

/** Whether every line but the signature is done. */
export function allTaken(session: CallSession): boolean {
  return rowsOf(session).every(({ id, met, wants }) => id === SIGNED || met === wants.length);
}
