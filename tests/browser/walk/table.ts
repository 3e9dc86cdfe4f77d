/** The table of a run on the page: how much of each specification was met there. */

interface Share {
  readonly met: number;
  readonly all: number;
}

export interface PageRow {
  readonly promise: string;
  readonly call: string;
  readonly where: string;
  /** How often the call was taken. */
  readonly calls: number;
  readonly paths: number;
  readonly steps: number;
  /** States and transitions of the specification with everything in it, also what no hand does. */
  readonly states?: Share;
  readonly transitions?: Share;
  /** What hands can do there: their transitions; or the arrows of all drawings of the procedure. */
  readonly arrows: Share;
  readonly ms: number;
}

export function tableOfPage(rows: readonly PageRow[]): string {
  const head = ['promise', 'call', 'where', 'calls', 'paths', 'steps', 'states', 'transitions', 'arrows', 'ms'];
  const share = (of: Share | undefined): string => (of ? `${of.met} of ${of.all}` : '');
  const lines = rows.map((r) => [
    r.promise,
    r.call,
    r.where,
    ...[r.calls, r.paths, r.steps].map(String),
    share(r.states),
    share(r.transitions),
    share(r.arrows),
    r.ms.toFixed(0),
  ]);
  const wide = head.map((h, i) => Math.max(h.length, ...lines.map((l) => (l[i] ?? '').length)));
  const row = (cells: readonly string[]): string =>
    cells.map((c, i) => (i < 3 ? c.padEnd(wide[i] ?? 0) : c.padStart(wide[i] ?? 0))).join('  ');
  return [row(head), ...lines.map(row)].join('\n');
}
