/**
 * Statistics over persons by items, right or wrong: difficulty, how well an item tells persons apart, how reliable the whole
 * is. Variances are those of a population throughout: p(1-p) is one, so the variance of the totals must be one too.
 */

/**
 * Persons by items: each row a person, all of the same form. What was left unanswered is wrong, as it is in the exam itself.
 */
export type Matrix = readonly (readonly boolean[])[];

export function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}

/** Of a population. */
export function variance(values: readonly number[]): number {
  const middle = mean(values);
  return mean(values.map((one) => (one - middle) * (one - middle)));
}

/** Right answers of each person. */
export function totals(matrix: Matrix): number[] {
  return matrix.map((row) => row.filter(Boolean).length);
}

/** One item over all persons, as numbers. */
export function column(matrix: Matrix, item: number): number[] {
  return matrix.map((row) => (row[item] ? 1 : 0));
}

/** Share that got it right. */
export function difficulty(matrix: Matrix, item: number): number {
  return mean(column(matrix, item));
}

/** Pearson's correlation; undefined where either does not vary. */
export function correlation(a: readonly number[], b: readonly number[]): number | undefined {
  const spread = variance(a) * variance(b);
  if (spread === 0) return undefined;
  const [middleA, middleB] = [mean(a), mean(b)];
  return mean(a.map((one, i) => (one - middleA) * ((b[i] ?? middleB) - middleB))) / Math.sqrt(spread);
}

/** Item with total, the item itself among it. */
export function pointBiserial(matrix: Matrix, item: number): number | undefined {
  return correlation(column(matrix, item), totals(matrix));
}

/** Item with the total of all others: an item always agrees with itself. */
export function correctedPointBiserial(matrix: Matrix, item: number): number | undefined {
  return correlation(column(matrix, item), totals(without(matrix, item)));
}

/** Kuder and Richardson's formula 20, coefficient alpha of right and wrong; undefined of one item or of equal totals. */
export function kr20(matrix: Matrix): number | undefined {
  const items = matrix[0]?.length ?? 0;
  const spread = variance(totals(matrix));
  if (items < 2 || spread === 0) return undefined;
  const within = Array.from({ length: items }, (_, item) => {
    const p = difficulty(matrix, item);
    return p * (1 - p);
  }).reduce((sum, one) => sum + one, 0);
  return (items / (items - 1)) * (1 - within / spread);
}

/** Formula 21, as if all items were alike: at most formula 20. */
export function kr21(matrix: Matrix): number | undefined {
  const items = matrix[0]?.length ?? 0;
  const sums = totals(matrix);
  const spread = variance(sums);
  if (items < 2 || spread === 0) return undefined;
  const middle = mean(sums);
  return (items / (items - 1)) * (1 - (middle * (items - middle)) / (items * spread));
}

/** Formula 20 of all items but one: where it is higher, the item does harm. */
export function kr20Without(matrix: Matrix, item: number): number | undefined {
  return kr20(without(matrix, item));
}

/** Standard error of measurement, in right answers. */
export function sem(matrix: Matrix): number | undefined {
  const reliability = kr20(matrix);
  return reliability === undefined ? undefined : Math.sqrt(variance(totals(matrix)) * (1 - reliability));
}

function without(matrix: Matrix, item: number): Matrix {
  return matrix.map((row) => row.filter((_, i) => i !== item));
}
