import { valueAt } from '../../build/draft.ts';
import type { OfferedFault } from './protocol.ts';
import type { BuildState } from './state.ts';

/** The catalogue's entry of the fault at a place of the draft. */
export function offeredAt({ draft, looked }: BuildState, place: number): OfferedFault | undefined {
  const [fault, part] = [valueAt(draft, `faults[${place}].fault`), valueAt(draft, `faults[${place}].part`)];
  const all = (looked?.offered.faults ?? []).filter((one) => one.fault === fault);
  return all.find((one) => one.part === part) ?? (all.length === 1 && part === undefined ? all[0] : undefined);
}

export type Presence = 'always' | 'spells' | { readonly for_h: number };

/** How the fault at a place comes: to stay, in spells, or once for so long. The catalogue's way where the draft says none. */
export function presenceAt(build: BuildState, place: number): Presence {
  const present = valueAt(build.draft, `faults[${place}].present`) ?? offeredAt(build, place)?.spells;
  if (typeof present !== 'object' || present === null) return 'always';
  return 'for_h' in present ? { for_h: Number(present.for_h) } : 'spells';
}
