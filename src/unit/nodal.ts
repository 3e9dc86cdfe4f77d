/** Nodal analysis: the potentials of a network of resistances, by Gaussian elimination. */

/** A resistance from one node to another, ohm (never 0). */
export interface Branch {
  readonly from: string;
  readonly to: string;
  readonly ohm: number;
}

/** Potential of every node, V. */
export type Potentials = ReadonlyMap<string, number>;

/**
 * Potentials of all nodes, V: some are held at a potential, and at some a current enters, A. Every node must be joined
 * to a held one by some way. The matrix is then symmetric and its diagonal outweighs its rows, so that no pivot
 * has to be looked for.
 */
export function potentials(
  branches: readonly Branch[],
  held: ReadonlyMap<string, number>,
  entering: ReadonlyMap<string, number> = new Map(),
): Potentials {
  const nodes = new Set([...held.keys(), ...branches.flatMap(({ from, to }) => [from, to])]);
  const free = [...nodes].filter((node) => !held.has(node));
  const place = new Map(free.map((node, i) => [node, i]));
  const n = free.length;
  // One row a node: conductances, and in the last column the current that the node is given.
  const rows = free.map((node) => {
    const row = new Float64Array(n + 1);
    row[n] = entering.get(node) ?? 0;
    return row;
  });
  const stamp = (here: string, there: string, siemens: number) => {
    const i = place.get(here);
    if (i === undefined) return;
    add(rows, i, i, siemens);
    const j = place.get(there);
    if (j === undefined) add(rows, i, n, siemens * (held.get(there) ?? 0));
    else add(rows, i, j, -siemens);
  };
  for (const { from, to, ohm } of branches) {
    stamp(from, to, 1 / ohm);
    stamp(to, from, 1 / ohm);
  }
  eliminate(rows);
  return new Map([...held, ...free.map((node, i) => [node, at(rows, i, n)] as const)]);
}

/** Current through a branch, from its first node to its second, A. */
export function currentIn({ from, to, ohm }: Branch, volts: Potentials): number {
  return ((volts.get(from) ?? 0) - (volts.get(to) ?? 0)) / ohm;
}

/** Turns the matrix into the unit matrix, and so the last column into the answer. */
function eliminate(rows: readonly Float64Array[]): void {
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    const pivot = rows[k] as Float64Array;
    const d = pivot[k] as number;
    for (let j = k; j <= n; j++) pivot[j] = (pivot[j] as number) / d;
    for (let i = 0; i < n; i++) {
      const row = rows[i] as Float64Array;
      const factor = row[k] as number;
      if (i === k || factor === 0) continue;
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - factor * (pivot[j] as number);
    }
  }
}

function at(rows: readonly Float64Array[], i: number, j: number): number {
  return (rows[i] as Float64Array)[j] as number;
}

function add(rows: readonly Float64Array[], i: number, j: number, value: number): void {
  (rows[i] as Float64Array)[j] = at(rows, i, j) + value;
}
