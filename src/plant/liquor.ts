/** What the water carries: the thirteen components of ASM1, then what poisons, what disinfects and what that kills. */
import { ASM, ASM_SIZE } from './asm1.ts';

/**
 * Place of each component in a row. Coliforms are in 1e4 per m3, which is the count per 100 mL; quaternary ammonium counts
 * dissolved and sorbed, salt what is over the ordinary, g/m3; chlorine is what is free, g Cl2/m3 (before disinfection
 * all of it), combined what ammonia holds; exposure is what the living coliform have met of chlorine, mg min/L times
 * their number.
 */
export const COMPONENT = {
  ...ASM,
  coliform: ASM_SIZE,
  quaternary: ASM_SIZE + 1,
  salt: ASM_SIZE + 2,
  chlorine: ASM_SIZE + 3,
  combined: ASM_SIZE + 4,
  exposure: ASM_SIZE + 5,
} as const;

/** What is carried before disinfection: all but the last two. */
export const CARRIED = ASM_SIZE + 4;
/** A whole row. */
export const COMPONENTS = ASM_SIZE + 6;

/** Where the water stands, in flow order: the order of every list of volumes by chamber. */
export const HELD = { trash: 0, aeration: 1, clarifier: 2, riser: 3, pump: 4 } as const;
export const CHAMBERS = 5;

/** Layers of the clarifier, top first. Their number is part of the settler's parameters, not a numerical choice. */
export const LAYERS = 5;

/** Well-mixed compartments before disinfection, in flow order; the clarifier is `LAYERS` of them. */
export const COMPARTMENT = { trash: 0, aeration: 1, clarifier: 2 } as const;
export const COMPARTMENTS = 2 + LAYERS;

/** A composition: concentrations by component. */
export type Composition = Float64Array;

export function composition(of: Partial<Record<keyof typeof COMPONENT, number>>): Composition {
  const c = new Float64Array(COMPONENTS);
  for (const key of Object.keys(of) as (keyof typeof COMPONENT)[]) c[COMPONENT[key]] = of[key] ?? 0;
  return c;
}
