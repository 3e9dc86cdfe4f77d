/** Entries of the arrays that the equations work on; every index is one of the layout's, so none is missing. */

export function at(x: Float64Array, i: number): number {
  return x[i] as number;
}

/** Adds to an entry. */
export function add(x: Float64Array, i: number, amount: number): void {
  x[i] = (x[i] as number) + amount;
}
