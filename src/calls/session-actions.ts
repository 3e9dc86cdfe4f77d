/** Actions that belong to the call rather than to the property: naming the cause, and ticking one's own suspects. */
import { faultsOf, PLACED_FAULTS } from '../faults/index.ts';
import type { ActionDef, FieldDef, Message, Note } from '../service/index.ts';
import { say } from '../service/index.ts';
import type { UnitSpec } from '../unit/index.ts';

export const STATE_CAUSE = 'state-cause';
export const TICK = 'tick-suspect';

/** A fault's name, with its part. */
export function faultName(key: string): Message {
  const fault = PLACED_FAULTS.get(key);
  return fault?.part === undefined
    ? say(`fault.${key}`)
    : say(`fault.${fault.id}`, { part: say(`part.${fault.part}`) });
}

/** The form: what it was, and which notes show it. */
export function causeForm(notebook: readonly Note[], spec: UnitSpec): readonly FieldDef[] {
  return [
    {
      id: 'cause',
      kind: 'many',
      options: faultsOf(spec)
        .filter((f) => f.family !== 'use')
        .map((f) => ({ id: f.key, label: faultName(f.key) })),
    },
    {
      id: 'evidence',
      kind: 'many',
      options: notebook.map((n) => ({ id: n.id, label: say('note.line', { what: n.what, reading: n.reading }) })),
    },
  ];
}

export function stateCause(notebook: readonly Note[], spec: UnitSpec): ActionDef {
  return {
    id: STATE_CAUSE,
    place: 'house',
    group: 'say',
    label: say(`act.${STATE_CAUSE}`),
    minutes: 1,
    handsOff: true,
    form: causeForm(notebook, spec),
    perform: (d) => d.note(say('note.cause'), say('reading.cause', { cause: causeWords(d.fill.cause) })),
  };
}

function causeWords(cause: string | readonly string[] | undefined): Message {
  const [first, ...more] = listOf(cause);
  if (first === undefined) return say('word.nothing');
  return more.length === 0 ? faultName(first) : say('word.and', { one: faultName(first), other: causeWords(more) });
}

/** A form's answer as a list. */
export function listOf(value: string | readonly string[] | undefined): readonly string[] {
  if (value === undefined) return [];
  return typeof value === 'string' ? [value] : value;
}
