/** The panels under test: those of the shipped units, and the one whose clock is of the other kind. */
import { shippedLibrary } from '../../src/calls/index.ts';
import { type ControlTable, controlTable, type Panel, type PanelKind } from '../../src/control/index.ts';
import { kindOf } from '../../src/unit/index.ts';

export type PanelName = 'u1' | 'u2' | 'u3' | 'mechanical';

function kind(unit: string): PanelKind {
  const spec = shippedLibrary().units.get(unit);
  if (!spec) throw new Error(`no unit ${unit}`);
  return kindOf(spec.panel);
}

export const KINDS: Readonly<Record<PanelName, PanelKind>> = {
  u1: kind('u1'),
  u2: kind('u2'),
  u3: kind('u3'),
  mechanical: { ...kind('u1'), clock: 'mechanical' },
};

export function tableOf(name: PanelName): ControlTable {
  return controlTable(KINDS[name]);
}

export const PANELS: readonly (readonly [PanelName, Panel])[] = (Object.keys(KINDS) as PanelName[]).map((name) => [
  name,
  tableOf(name).panel,
]);
