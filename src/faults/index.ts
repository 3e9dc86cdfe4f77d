/** The catalogue of faults: one file per family, all data. */
import { type ControlEventName, controlTable, type FloatName } from '../control/index.ts';
import { type FaultEffect, kindOf, type UnitSpec } from '../unit/index.ts';
import { AIR_FAULTS } from './air.ts';
import { DISINFECTION_FAULTS } from './disinfection.ts';
import { type FaultEntry, faultKey } from './entry.ts';
import { FIELD_FAULTS } from './field.ts';
import { FLOAT_FAULTS } from './floats.ts';
import { GROUND_FAULTS } from './ground.ts';
import { HOUSE_FAULTS } from './house.ts';
import { KIT_FAULTS } from './kit.ts';
import { PANEL_FAULTS } from './panel.ts';
import { POWER_FAULTS } from './power.ts';
import { PUMP_FAULTS } from './pump.ts';
import { SOLIDS_FAULTS } from './solids.ts';
import { USE_FAULTS } from './use.ts';

export type { FaultEntry, FaultFamily, ProofId } from './entry.ts';

export const FAULTS: readonly FaultEntry[] = [
  ...AIR_FAULTS,
  ...POWER_FAULTS,
  ...PANEL_FAULTS,
  ...FLOAT_FAULTS,
  ...PUMP_FAULTS,
  ...FIELD_FAULTS,
  ...SOLIDS_FAULTS,
  ...DISINFECTION_FAULTS,
  ...HOUSE_FAULTS,
  ...GROUND_FAULTS,
  ...USE_FAULTS,
  ...KIT_FAULTS,
];

/** A catalogue entry put on one part: every `{part}` in its ids is filled in. */
export interface PlacedFault extends Omit<FaultEntry, 'parts' | 'effect' | 'rightedBy'> {
  readonly key: string;
  readonly rightedBy: readonly ControlEventName[];
  readonly part?: string;
  readonly effect: FaultEffect;
}

function place(entry: FaultEntry, part?: string): PlacedFault {
  const fill = (id: string) => (part === undefined ? id : id.replace('{part}', part));
  const { parts: _, effect, rightedBy = [], ...rest } = entry;
  const { control, floats, ...patch } = effect;
  const others = floats
    ? { ...patch, floats: Object.fromEntries(Object.entries(floats).map(([f, shift]) => [fill(f), shift])) }
    : patch;
  return {
    ...rest,
    key: faultKey(entry.id, part),
    ...(part === undefined ? {} : { part }),
    rightedBy: rightedBy.map((e) => fill(e) as ControlEventName),
    shownBy: entry.shownBy.map(fill),
    mendedBy: entry.mendedBy.map(fill),
    hiddenBy: entry.hiddenBy.map(fill),
    ...(entry.clearedWhen
      ? { clearedWhen: entry.clearedWhen.map(({ region, state }) => ({ region: fill(region), state })) }
      : {}),
    effect: control
      ? {
          ...others,
          control: {
            starts: control.starts.map((e) => fill(e) as ControlEventName),
            ends: control.ends.map((e) => fill(e) as ControlEventName),
          },
        }
      : others,
  };
}

/** Every fault on every part it can sit on, by key. */
export const PLACED_FAULTS: ReadonlyMap<string, PlacedFault> = new Map(
  FAULTS.flatMap((entry) => (entry.parts ? entry.parts.map((p) => place(entry, p)) : [place(entry)])).map((f) => [
    f.key,
    f,
  ]),
);

/** The fault with a key. Throws when there is none: keys from files are checked before. */
export function placedFault(key: string): PlacedFault {
  const fault = PLACED_FAULTS.get(key);
  if (!fault) throw new Error(`no fault "${key}"`);
  return fault;
}

/** Whether a unit can have a fault: it has what that needs, and its panel answers the events and has the floats shifted. */
export function faultFits(fault: PlacedFault, spec: UnitSpec): boolean {
  const { disinfection, discharge } = fault.needs ?? {};
  if (disinfection !== undefined && disinfection !== spec.plant.disinfection.kind) return false;
  if (discharge !== undefined && discharge !== spec.plant.discharge.kind) return false;
  const { control, floats, tethers } = fault.effect;
  const { events } = controlTable(kindOf(spec.panel)).panel;
  const answered = (control?.starts ?? []).every((event) => events.has(event));
  if (fault.effect.strips !== undefined && spec.plant.disinfection.kind === 'ultraviolet') return false;
  if (fault.effect.clock_h !== undefined && spec.panel.dosing.kind !== 'night') return false;
  const shifted = Object.keys({ ...floats, ...tethers }) as FloatName[];
  return answered && shifted.every((f) => spec.panel.floats[f] !== undefined);
}

const fitting = new WeakMap<UnitSpec, readonly PlacedFault[]>();

/** The faults that a unit can have. Every view of a call asks for them: the answer for a unit is kept. */
export function faultsOf(spec: UnitSpec): readonly PlacedFault[] {
  const faults = fitting.get(spec) ?? [...PLACED_FAULTS.values()].filter((f) => faultFits(f, spec));
  fitting.set(spec, faults);
  return faults;
}

/** A fault by its id and its part, on a unit. The part may be left out where the unit has only one such. */
export function faultOn(spec: UnitSpec, id: string, part?: string): PlacedFault | undefined {
  const named = faultsOf(spec).filter((f) => f.id === id && (part === undefined || f.part === part));
  return named.length === 1 ? named[0] : undefined;
}
