import { draw } from '../plant/random.ts';

/** Choices of one drill, in their order, from its seed. */
export class Draws {
  private n = 0;
  private readonly seed: number;
  private readonly stream: string;

  constructor(seed: number, stream: string) {
    this.seed = seed;
    this.stream = `drill/${stream}`;
  }

  /** Evenly between two numbers. */
  between(low: number, high: number): number {
    return low + (high - low) * draw(this.seed, this.stream, this.n++);
  }

  /** A whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1));
  }

  /** True in a share of cases. */
  chance(share: number): boolean {
    return this.between(0, 1) < share;
  }

  /** What is drawn by `again` is drawn once more by the next to ask. */
  twice<T>(again: () => T): T {
    const { n } = this;
    const made = again();
    this.n = n;
    return made;
  }

  one<T>(list: readonly T[]): T {
    const found = list[this.whole(0, list.length - 1)];
    if (found === undefined) throw new Error('nothing to draw from');
    return found;
  }

  /** So many of a list in a drawn order, or all of it. */
  some<T>(list: readonly T[], count = list.length): T[] {
    const rest = [...list];
    return Array.from({ length: Math.min(count, list.length) }, () => {
      const [taken] = rest.splice(this.whole(0, rest.length - 1), 1);
      return taken as T;
    });
  }
}

/** How often numbers are drawn anew before a generator is taken to be broken. */
const MOST_TRIES = 200;

/** The first draw that makes a fair question. */
export function untilFair<T>(attempt: () => T | undefined): T {
  for (let i = 0; i < MOST_TRIES; i++) {
    const made = attempt();
    if (made !== undefined) return made;
  }
  throw new Error('no fair question in many draws');
}
