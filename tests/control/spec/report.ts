/** The table a run prints: what was walked, how much of it, and how long it took. */
import type { Row } from './walk.ts';

export function tableOfRows(rows: readonly Row[]): string {
  const head = ['promise', 'unit', 'fault', 'states', 'transitions', 'paths', 'steps', 'covered', 'pairs', 'ms'];
  const lines = rows.map((r) => [
    r.promise,
    r.unit,
    r.fault,
    String(r.states),
    String(r.transitions),
    String(r.paths),
    String(r.steps),
    `${Math.floor(100 * Math.min(r.statesDone, r.transitionsDone))} %`,
    String(r.pairs),
    r.ms.toFixed(0),
  ]);
  const sum = (of: (row: Row) => number): string => String(rows.reduce((s, r) => s + of(r), 0));
  lines.push([
    'all',
    '',
    `${rows.length} walks`,
    sum((r) => r.states),
    sum((r) => r.transitions),
    sum((r) => r.paths),
    sum((r) => r.steps),
    '',
    sum((r) => r.pairs),
    rows.reduce((s, r) => s + r.ms, 0).toFixed(0),
  ]);
  const wide = head.map((h, i) => Math.max(h.length, ...lines.map((l) => (l[i] ?? '').length)));
  const row = (cells: readonly string[]): string =>
    cells.map((c, i) => (i < 3 ? c.padEnd(wide[i] ?? 0) : c.padStart(wide[i] ?? 0))).join('  ');
  return [row(head), ...lines.map(row)].join('\n');
}
