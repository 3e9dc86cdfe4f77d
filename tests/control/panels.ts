/** The panels under test: those of the shipped units, and the one whose clock is of the other kind. */
import { shippedLibrary } from '../../src/calls/index.ts';
import { type ControlTable, controlTable, type Panel, type PanelKind } from '../../src/control/index.ts';
import { kindOf, type UnitSpec } from '../../src/unit/index.ts';

export type PanelName = 'u1' | 'u2' | 'u3' | 'mechanical';

function shipped(unit: string): UnitSpec {
  const spec = shippedLibrary().units.get(unit);
  if (!spec) throw new Error(`no unit ${unit}`);
  return spec;
}

function withMechanicalClock({ panel, ...spec }: UnitSpec): UnitSpec {
  if (panel.dosing.kind !== 'night') throw new Error('no night clock');
  return { ...spec, panel: { ...panel, dosing: { ...panel.dosing, clock: 'mechanical' } } };
}

/** The whole units that the panels belong to. */
export const SPECS: Readonly<Record<PanelName, UnitSpec>> = {
  u1: shipped('u1'),
  u2: shipped('u2'),
  u3: shipped('u3'),
  mechanical: withMechanicalClock(shipped('u1')),
};

export const KINDS: Readonly<Record<PanelName, PanelKind>> = {
  u1: kindOf(SPECS.u1.panel),
  u2: kindOf(SPECS.u2.panel),
  u3: kindOf(SPECS.u3.panel),
  mechanical: kindOf(SPECS.mechanical.panel),
};

export function tableOf(name: PanelName): ControlTable {
  return controlTable(KINDS[name]);
}

export const PANELS: readonly (readonly [PanelName, Panel])[] = (Object.keys(KINDS) as PanelName[]).map((name) => [
  name,
  tableOf(name).panel,
]);
