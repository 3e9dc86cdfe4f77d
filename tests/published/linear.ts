/** Linear equations, for the checks that need Newton's method or an implicit integrator. */

/** Solves A x = b by Gaussian elimination with row exchange; `rows` is [A | b], n rows of n + 1, and is overwritten. */
export function solveLinear(rows: Float64Array[]): number[] {
  const n = rows.length;
  const cell = (i: number, j: number) => (rows[i] as Float64Array)[j] as number;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(cell(i, k)) > Math.abs(cell(best, k))) best = i;
    [rows[k], rows[best]] = [rows[best] as Float64Array, rows[k] as Float64Array];
    for (let i = k + 1; i < n; i++) {
      const factor = cell(i, k) / cell(k, k);
      if (factor === 0) continue;
      const row = rows[i] as Float64Array;
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - factor * cell(k, j);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = cell(i, n);
    for (let j = i + 1; j < n; j++) sum -= cell(i, j) * (x[j] as number);
    x[i] = sum / cell(i, i);
  }
  return x;
}
