/** What only a routine visit has: the label inside the panel's door, and a lid that the lawn has grown over. */
import type { ActionDef, Doing } from '../action.ts';
import { dateWords } from '../dates.ts';
import { quantity, say } from '../message.ts';
import { actionsAt, plain } from './shared.ts';

const panel = actionsAt('panel');

/** Day of the calendar at the unit's present instant. */
function today(d: Doing): number {
  return (d.label?.first_day ?? 0) + Math.floor(d.unit.t / 86_400);
}

function readLabel(d: Doing): void {
  const { pressureLow_kPa, pressureHigh_kPa } = d.unit.spec.panel.label;
  const step = 0.1;
  d.note(
    say('note.label'),
    say('reading.label', { signed: dateWords(d.label?.signed_day ?? 0) }),
    plain('remark.label', {
      low: quantity('pressure_kPa', pressureLow_kPa, step),
      high: quantity('pressure_kPa', pressureHigh_kPa, step),
    }),
  );
}

/** Probing, cutting the sod and clearing it back (common practice, no source). */
const DIG_min = 20;

function digUpLid(d: Doing): void {
  const lids = [...d.person.buried];
  d.person.buried.clear();
  for (const lid of lids) d.note(say('note.lid', { lid: say(`lid.${lid}`) }), say('reading.lid-dug-up'));
}

export const VISIT_ACTIONS: readonly ActionDef[] = [
  panel('read-label', 'look', 1, readLabel, { handsOff: true }),
  panel(
    'sign-label',
    'say',
    1,
    (d) => d.note(say('note.label'), say('reading.label-signed', { today: dateWords(today(d)) })),
    { handsOff: true },
  ),
  actionsAt('house')('dig-up-lid', 'operate', DIG_min, digUpLid, {
    caution: say('caution.dig'),
    hindered: (person) => (person.buried.size > 0 ? undefined : say('why.no-lid-buried')),
  }),
];

const IDS: ReadonlySet<string> = new Set(VISIT_ACTIONS.map(({ id }) => id));

/** Whether an action belongs to routine visits alone. */
export function isOfVisits(id: string): boolean {
  return IDS.has(id);
}
