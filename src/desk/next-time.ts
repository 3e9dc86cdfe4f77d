import type { CallCard } from './protocol.ts';
import type { Line } from './stored.ts';

/** Most lines that are shown at once: the last ones kept. */
const MOST = 3;

/**
 * What one wrote for next time, as it is shown when a call begins: after calls whose trouble showed itself alike, by an
 * alarm or by a complaint. By the family of the fault it would give the cause away. A line without a family goes with its call.
 */
export function linesFor(lines: readonly Line[], cards: readonly CallCard[], callId: string): readonly string[] {
  const kindOf = (id: string) => cards.find((card) => card.id === id)?.kind;
  const kind = kindOf(callId);
  const fitting = lines.filter((line) =>
    line.family === undefined ? line.callId === callId : kind !== undefined && kindOf(line.callId) === kind,
  );
  const texts = fitting.sort((a, b) => (b.savedAt ?? 0) - (a.savedAt ?? 0)).map((line) => line.nextTime);
  return [...new Set(texts)].filter((text) => text !== '').slice(0, MOST);
}
