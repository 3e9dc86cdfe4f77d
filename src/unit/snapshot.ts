/** A unit's whole state as JSON: restore(snapshot) goes on bit for bit. */
import type { DelayId } from '../control/index.ts';
import { Unit, type UnitSetup } from './engine.ts';
import type { Registers } from './registers.ts';

export const SNAPSHOT_VERSION = 5;

export interface Snapshot {
  readonly version: typeof SNAPSHOT_VERSION;
  readonly t: number;
  readonly h: number;
  readonly y: readonly number[];
  readonly control: string;
  readonly due: readonly (readonly [DelayId, number])[];
  readonly above: readonly boolean[];
  readonly registers: Registers;
  readonly mended: readonly (number | null)[];
  /** Since when faults fade; left out where none does. */
  readonly fades?: readonly (number | null)[];
}

/** The state at the last event or step end. A held step is not part of it: it is found again, to the same bits. */
export function snapshot(unit: Unit): Snapshot {
  return {
    version: SNAPSHOT_VERSION,
    t: unit.t,
    h: unit.h,
    y: Array.from(unit.y),
    control: unit.control.key,
    due: [...unit.due].sort(([a], [b]) => (a < b ? -1 : 1)),
    above: [...unit.switches.above],
    registers: { ...unit.registers },
    mended: unit.faults.map((f) => (f.mended_s === Number.POSITIVE_INFINITY ? null : f.mended_s)),
    ...(unit.faults.some((f) => f.fades_s !== undefined) ? { fades: unit.faults.map((f) => f.fades_s ?? null) } : {}),
  };
}

/** The unit a snapshot was taken of, from the same setup. Throws when the snapshot does not fit it. */
export function restore(setup: UnitSetup, from: Snapshot): Unit {
  const unit = new Unit(setup);
  if (from.version !== SNAPSHOT_VERSION)
    throw new Error(`snapshot version ${from.version}, expected ${SNAPSHOT_VERSION}`);
  if (from.y.length !== unit.y.length || from.mended.length !== unit.faults.length) {
    throw new Error('snapshot of another unit');
  }
  unit.resume(from);
  return unit;
}
