/** Pairs of faults that are met together and mislead: one hides the other, or both together do what neither does alone. */
import type { UnitSpec } from '../unit/index.ts';
import { faultsOf, type PlacedFault } from './index.ts';

export interface FaultPair {
  /** Keys of the catalogue; of a mask, the first hides the second. */
  readonly faults: readonly [string, string];
  readonly how: 'masks' | 'adds';
}

/** Common practice, no source: the pairs a trade warns of. */
export const PAIRS: readonly FaultPair[] = [
  { faults: ['lamp-dead:lamp', 'stuck-down:stopFloat'], how: 'masks' },
  { faults: ['lamp-dead:lamp', 'line-split'], how: 'masks' },
  { faults: ['lamp-dead:waterLamp', 'stuck-down:stopFloat'], how: 'masks' },
  { faults: ['lamp-dead:airLamp', 'diaphragm-torn'], how: 'masks' },
  { faults: ['breaker-tripped:alarmBreaker', 'compressor-stopped'], how: 'masks' },
  { faults: ['breaker-tripped:alarmBreaker', 'pump-seized'], how: 'masks' },
  { faults: ['air-switch-stuck:sticksOpen', 'line-split'], how: 'masks' },
  { faults: ['insects-in-contacts', 'compressor-stopped'], how: 'masks' },
  { faults: ['splice-corroded:highWaterFloat', 'winding-open'], how: 'masks' },
  { faults: ['float-flooded:highWaterFloat', 'stuck-down:startStopFloat'], how: 'masks' },
  { faults: ['stuck-up:stopFloat', 'relay-welded'], how: 'masks' },
  { faults: ['timer-dead', 'stuck-down:overrideFloat'], how: 'adds' },
  { faults: ['joint-leak', 'diaphragm-worn'], how: 'adds' },
  { faults: ['intake-clogged', 'joint-leak'], how: 'adds' },
  { faults: ['disc-filter-clogged', 'stuck-down:overrideFloat'], how: 'adds' },
];

/** The pairs that a unit can have, placed. */
export function pairsOf(
  spec: UnitSpec,
): readonly { readonly pair: FaultPair; readonly placed: readonly PlacedFault[] }[] {
  const faults = faultsOf(spec);
  return PAIRS.flatMap((pair) => {
    const placed = pair.faults.flatMap((key) => faults.find((f) => f.key === key) ?? []);
    return placed.length === pair.faults.length ? [{ pair, placed }] : [];
  });
}
