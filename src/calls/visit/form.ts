/** The service record: what a visit decides, as the form that is signed at its end. */
import type { PlacedFault } from '../../faults/index.ts';
import { type ActionDef, type FieldDef, optionsOf, say } from '../../service/index.ts';
import type { UnitSpec } from '../../unit/index.ts';

export const WRITE_RECORD = 'write-record';

/** Items that a public maintenance report lists as operational or inoperative. Source: 30 TAC 285.90(3), Figure 3. */
export const ITEMS = ['air', 'filters', 'pump', 'disinfection', 'circuits', 'field', 'tanks', 'house'] as const;
export type ItemId = (typeof ITEMS)[number];

export const DUE = ['no', 'before-next', 'now'] as const;
export type Due = (typeof DUE)[number];
/** Tanks that the record decides about, each by a field of its own. */
export const DUE_TANKS = ['trash', 'aeration', 'pump'] as const;
export type DueTank = (typeof DUE_TANKS)[number];

export const ADVICE = ['raise-lid', 'check-chlorine', 'spare-drains', 'open-and-look'] as const;
export type AdviceId = (typeof ADVICE)[number];
/** One copy is kept, one goes to the authority, one to the owner. Source: 30 TAC 285.90(3), Figure 3. */
export const COPIES = ['owner', 'authority', 'own-file'] as const;
export const NEXT = ['month', 'four-months', 'six-months', 'year'] as const;

const ITEM_OF_FAMILY: Readonly<Partial<Record<PlacedFault['family'], readonly ItemId[]>>> = {
  air: ['air'],
  disinfection: ['disinfection'],
  field: ['field'],
  floats: ['circuits'],
  ground: ['tanks'],
  house: ['house'],
  power: ['circuits'],
  pump: ['pump'],
  solids: ['tanks'],
};
const ITEM_OF_FAULT: Readonly<Record<string, readonly ItemId[]>> = {
  'intake-clogged': ['air', 'filters'],
  'disc-filter-clogged': ['filters', 'pump'],
  'sewer-blocked': ['house', 'tanks'],
};

/** The items under which a fault may rightly stand; none for what is no fault of a part. */
export function itemsOf({ id, family }: PlacedFault): readonly ItemId[] {
  return ITEM_OF_FAULT[id] ?? ITEM_OF_FAMILY[family] ?? [];
}

function one(id: string, prefix: string, options: readonly string[]): FieldDef {
  return { id, kind: 'one', options: optionsOf(prefix, options) };
}

function many(id: string, prefix: string, options: readonly string[]): FieldDef {
  return { id, kind: 'many', options: optionsOf(prefix, options) };
}

/** Chlorine is filled up or is enough; an ultraviolet lamp has nothing to fill. */
export function hasStore({ plant }: UnitSpec): boolean {
  return plant.disinfection.kind !== 'ultraviolet';
}

function recordForm(spec: UnitSpec): readonly FieldDef[] {
  return [
    many('inoperative', 'item', ITEMS),
    ...DUE_TANKS.map((tank) => one(`due-${tank}`, 'due', DUE)),
    ...(hasStore(spec) ? [one('refill', 'refill', ['filled', 'enough'])] : []),
    one('result', 'result', ['acceptable', 'unacceptable']),
    many('advice', 'advice', ADVICE),
    many('copies', 'copy', COPIES),
    one('next', 'next', NEXT),
  ];
}

export function serviceRecord(spec: UnitSpec): ActionDef {
  return {
    id: WRITE_RECORD,
    place: 'house',
    group: 'say',
    label: say('act.service-record'),
    minutes: 8,
    handsOff: true,
    form: recordForm(spec),
    perform: (d) => d.note(say('note.record'), say('reading.record')),
  };
}
