/** The catalogue of faults: one file per family, all data. */
import type { ControlEventName } from '../control/index.ts';
import type { FaultEffect } from '../unit/index.ts';
import { AIR_FAULTS } from './air.ts';
import { type FaultEntry, faultKey } from './entry.ts';
import { FLOAT_FAULTS } from './floats.ts';
import { POWER_FAULTS } from './power.ts';
import { PUMP_FAULTS } from './pump.ts';
import { USE_FAULTS } from './use.ts';

export { type FaultEntry, faultKey, type ProofId } from './entry.ts';

export const FAULTS: readonly FaultEntry[] = [
  ...AIR_FAULTS,
  ...POWER_FAULTS,
  ...FLOAT_FAULTS,
  ...PUMP_FAULTS,
  ...USE_FAULTS,
];

/** A catalogue entry put on one part: every `{part}` in its ids is filled in. */
export interface PlacedFault extends Omit<FaultEntry, 'parts' | 'effect'> {
  readonly key: string;
  readonly part?: string;
  readonly effect: FaultEffect;
}

function place(entry: FaultEntry, part?: string): PlacedFault {
  const fill = (id: string) => (part === undefined ? id : id.replace('{part}', part));
  const { parts: _, effect, ...rest } = entry;
  const { control, ...others } = effect;
  return {
    ...rest,
    key: faultKey(entry.id, part),
    ...(part === undefined ? {} : { part }),
    shownBy: entry.shownBy.map(fill),
    mendedBy: entry.mendedBy.map(fill),
    hiddenBy: entry.hiddenBy.map(fill),
    ...(entry.clearedWhen ? { clearedWhen: { ...entry.clearedWhen, region: fill(entry.clearedWhen.region) } } : {}),
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
