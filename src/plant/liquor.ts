/** What the water carries: the thirteen components of ASM1, then what disinfects and what it kills. */
import { ASM, ASM_SIZE } from './asm1.ts';

/**
 * Place of each component in a compartment's row. Chlorine is the total residual, g Cl2/m3. Coliforms are in 1e4 per
 * m3, which is the count per 100 mL; exposure is what the water has met of chlorine, mg min/L, carried with it.
 */
export const COMPONENT = {
  ...ASM,
  chlorine: ASM_SIZE,
  coliform: ASM_SIZE + 1,
  exposure: ASM_SIZE + 2,
} as const;
export const COMPONENTS = ASM_SIZE + 3;

/** Where the water stands, in flow order: the order of every list of volumes by chamber. */
export const HELD = { trash: 0, aeration: 1, clarifier: 2, riser: 3, pump: 4 } as const;
export const CHAMBERS = 5;

/** Layers of the clarifier, top first. Their number is part of the settler's parameters, not a numerical choice. */
export const LAYERS = 5;

/** Well-mixed compartments, in flow order; the clarifier is `LAYERS` of them. */
export const COMPARTMENT = {
  trash: 0,
  aeration: 1,
  clarifier: 2,
  riser: 2 + LAYERS,
  pump: 3 + LAYERS,
} as const;
export const COMPARTMENTS = 4 + LAYERS;

/** A composition: concentrations by component. */
export type Composition = Float64Array;

export function composition(of: Partial<Record<keyof typeof COMPONENT, number>>): Composition {
  const c = new Float64Array(COMPONENTS);
  for (const key of Object.keys(of) as (keyof typeof COMPONENT)[]) c[COMPONENT[key]] = of[key] ?? 0;
  return c;
}
