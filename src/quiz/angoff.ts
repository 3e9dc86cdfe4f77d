/**
 * A cut by Angoff's method: each judge says of each item how likely somebody who is just good enough gets it right; the sum
 * is that judge's cut, the mean of the judges the panel's. It is the panel's judgement and no licence's.
 */
import { mean, variance } from './statistics.ts';

export interface Cuts {
  /** Right answers that each judge asks for. */
  readonly judges: readonly number[];
  readonly panel: number;
  /** The panel's cut as a share of all items. */
  readonly share: number;
  /** Of the judges, who are a sample of those that could have been asked (n-1), and of their mean; undefined of one. */
  readonly sd: number | undefined;
  readonly se: number | undefined;
}

/** `ratings`: judges by items, each from 0 to 1. */
export function cuts(ratings: readonly (readonly number[])[]): Cuts {
  const judges = ratings.map((row) => row.reduce((sum, one) => sum + one, 0));
  const n = judges.length;
  const panel = mean(judges);
  const sd = n < 2 ? undefined : Math.sqrt((variance(judges) * n) / (n - 1));
  return {
    judges,
    panel,
    share: panel / (ratings[0]?.length ?? 0),
    sd,
    se: sd === undefined ? undefined : sd / Math.sqrt(n),
  };
}
