/** What a promise wants to be seen in each of its states, and what can happen there. */
import type { AnyMachineSnapshot } from 'xstate';
import { type ControlEventName, DELAYS, type DelayId } from '../../../src/control/index.ts';
import { Remembered, written } from './remembered.ts';
import type { Promised, Says, Sight } from './vocabulary.ts';

export interface Wanted {
  readonly key: string;
  readonly sees: ReadonlyMap<Sight, { readonly want: boolean; readonly says: string }>;
  /** Delays that must run. */
  readonly runs: ReadonlySet<DelayId>;
}

const known = new WeakMap<Promised, Remembered<Wanted>>();

/** A promise as a machine to be walked. */
export function logicOf(promised: Promised): Remembered<Wanted> {
  const { machine, does, anytime } = promised;
  const ends = new Map(Object.entries(does).map(([event, [first]]) => [event, delaysEndedBy(first)]));
  /** A delay ends only while it runs, hands do what they like, the rest happens where it is written. */
  const allows = (state: AnyMachineSnapshot, event: string, { runs }: Wanted): boolean => {
    const delays = ends.get(event) ?? [];
    if (delays.length > 0) return delays.some((id) => runs.has(id));
    return anytime.includes(event) || written(state, event);
  };
  const logic =
    known.get(promised) ??
    new Remembered(machine, (key, meta) => wantedIn(promised, key, meta as readonly Says[]), allows);
  known.set(promised, logic);
  return logic;
}

function delaysEndedBy(event: ControlEventName | undefined): readonly DelayId[] {
  return (Object.entries(DELAYS) as [DelayId, ControlEventName][]).flatMap(([id, due]) => (due === event ? [id] : []));
}

/** Joins what the active states say. Throws where two of one rank disagree, or where a sight is left open. */
function wantedIn(promised: Promised, key: string, sayings: readonly Says[]): Wanted {
  const sees = new Map<Sight, { want: boolean; says: string; over: number }>();
  for (const { says, sees: claims, over = 0 } of sayings) {
    for (const [sight, want] of Object.entries(claims ?? {}) as [Sight, boolean][]) {
      const other = sees.get(sight);
      if (other && other.over === over && other.want !== want) {
        throw new Error(`${promised.name}: "${says}" and "${other.says}" disagree on ${sight} in ${key}`);
      }
      if (!other || over > other.over) sees.set(sight, { want, says, over });
    }
  }
  const open = promised.sights.filter((s) => !sees.has(s));
  if (open.length > 0) throw new Error(`${promised.name}: nothing is said of ${open} in ${key}`);
  return { key, sees, runs: new Set(sayings.flatMap((s) => s.runs ?? [])) };
}
