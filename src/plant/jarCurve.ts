/** How the sludge line of a jar comes down. */
import { type JarLiquor, type JarReading, jarLayers, readingOf, settledIn } from './jar.ts';

/** The sludge line at a minute of standing, mL/L. */
export interface JarLine {
  readonly minutes: number;
  readonly settled_mLL: number;
}

/** The reading of `readJar`, with the line as it came down to it: where it was poured, and so many times after. */
export function followJar(
  liquor: JarLiquor,
  minutes: number,
  times: number,
): { readonly reading: JarReading; readonly curve: readonly JarLine[] } {
  const curve: JarLine[] = [{ minutes: 0, settled_mLL: settledIn(liquor, jarLayers(liquor, 0)) }];
  const x = jarLayers(liquor, minutes, (layers, share) => {
    if (share * times < curve.length) return;
    curve.push({ minutes: share * minutes, settled_mLL: settledIn(liquor, layers) });
  });
  const reading = readingOf(liquor, minutes, x);
  // Liquor too thick to settle takes no step.
  if (curve.length === 1) curve.push({ minutes, settled_mLL: reading.settled_mLL });
  return { reading, curve };
}
