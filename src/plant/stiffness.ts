/**
 * How fast the processes' equations can fall off: a bound of their spectral radius, 1/d, from what each compartment
 * exchanges, settles and eats. The stabilised stepper takes as many stages as it asks for.
 */
import { ASM, type Asm1Parameters } from './asm1.ts';
import { at } from './entry.ts';
import { COMPONENT } from './liquor.ts';
import { poisonsRate } from './poison.ts';

/** Rates of loss in a row of concentrations: substrate eaten, oxygen breathed, ammonia nitrified, poison and what it kills; 1/d. */
export function reactionRate(c: Float64Array, o: number, p: Asm1Parameters): number {
  const substrate = Math.max(0, at(c, o + ASM.substrate));
  const oxygen = Math.max(0, at(c, o + ASM.oxygen));
  const ammonia = Math.max(0, at(c, o + ASM.ammonia));
  const heterotrophs = Math.max(0, at(c, o + ASM.heterotrophs));
  const autotrophs = Math.max(0, at(c, o + ASM.autotrophs));
  const feeding = (p.muH * heterotrophs) / p.yieldH;
  const nitrifying = (p.muA * autotrophs) / p.yieldA;
  const eaten = (feeding * p.kS) / square(p.kS + substrate);
  const breathed =
    (feeding * (1 - p.yieldH) * (substrate / (p.kS + substrate)) * p.kOH) / square(p.kOH + oxygen) +
    (nitrifying * (4.57 - p.yieldA) * (ammonia / (p.kNH + ammonia)) * p.kOA) / square(p.kOA + oxygen);
  const nitrified = (nitrifying * p.kNH) / square(p.kNH + ammonia);
  const chlorine = at(c, o + COMPONENT.chlorine);
  return Math.max(eaten + breathed, nitrified + breathed, chlorine > 0 ? poisonsRate(c, o) : 0);
}

function square(x: number): number {
  return x * x;
}
