/** A panel wired wrongly on purpose: made from the data of the right one, never from its source. */
import { ControlTable, type OutputId, type Panel, panelOf } from '../../../src/control/index.ts';
import type { Logic } from '../../../src/control/logic.ts';
import { assembled } from '../../../src/control/machine.ts';
import type { Part } from '../../../src/control/parts.ts';
import type { Wiring } from '../../../src/control/wiring.ts';
import { KINDS, type PanelName } from '../panels.ts';

export interface Spoiling {
  readonly parts?: Readonly<Record<string, Part>>;
  readonly wiring?: Readonly<Partial<Record<OutputId, Logic>>>;
}

export function spoiled(unit: PanelName, spoil: (right: Panel) => Spoiling): ControlTable {
  const right = panelOf(KINDS[unit]);
  const { parts = {}, wiring = {} } = spoil(right);
  return new ControlTable(
    assembled(right.kind, { ...right.parts, ...parts }, { ...right.wiring, ...wiring } as Wiring),
  );
}

/** An expression with every occurrence of a part of it replaced. */
export function replaced(logic: Logic, what: Logic, by: Logic): Logic {
  if (JSON.stringify(logic) === JSON.stringify(what)) return by;
  if (logic.kind === 'is') return logic;
  if (logic.kind === 'not') return { kind: 'not', of: replaced(logic.of, what, by) };
  return { kind: logic.kind, of: logic.of.map((l) => replaced(l, what, by)) };
}

/** All outputs of a panel with an expression replaced wherever it occurs. */
export function rewired(right: Panel, what: Logic, by: Logic): Spoiling['wiring'] {
  return Object.fromEntries(
    Object.entries(right.wiring).map(([id, logic]) => [id, replaced(logic, what, by)]),
  ) as Spoiling['wiring'];
}

/** A part of a panel with some of its states changed. */
export function withStates(right: Panel, part: string, states: Part['states']): Record<string, Part> {
  const old = right.parts[part];
  if (!old) throw new Error(`no part ${part}`);
  return { [part]: { ...old, states: { ...old.states, ...states } } };
}
