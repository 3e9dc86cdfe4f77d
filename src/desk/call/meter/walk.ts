/** Walking over a drawing by arrow keys: from one place to the nearest one that way. */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

const WAYS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A step aside counts as so many steps ahead, so that a row is left only where it ends. */
const ASIDE = 3;

/** Index of the nearest spot that lies the key's way from the one at `from`; undefined for another key or at an edge. */
export function stepTo(key: string, from: number, spots: readonly Spot[]): number | undefined {
  const way = WAYS[key];
  const here = spots[from];
  if (way === undefined || here === undefined) return undefined;
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  spots.forEach((spot, i) => {
    const [dx, dy] = [spot.x - here.x, spot.y - here.y];
    const ahead = dx * way.x + dy * way.y;
    const aside = Math.abs(dx * way.y) + Math.abs(dy * way.x);
    if (i === from || ahead <= aside / ASIDE) return;
    const far = ahead + ASIDE * aside;
    if (far < least) [best, least] = [i, far];
  });
  return best;
}
