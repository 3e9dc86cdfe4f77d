import type { PartView } from '../../calls/view.ts';
import { IN_FLOW } from '../../yard/flow.ts';

/** The number a part carries, or null where it carries none. */
export function flowNumber(part: PartView['id']): number | null {
  const at = (IN_FLOW as readonly string[]).indexOf(part);
  return at < 0 ? null : at + 1;
}

/** The part that is shown, or the first one where the chosen one is not on this call. */
export function partShown(parts: readonly PartView[], chosen: PartView['id']): PartView | undefined {
  return parts.find((one) => one.id === chosen) ?? parts[0];
}
