/**
 * Where each quantity sits in the one state array. Volumes first, then the mass of every component in every
 * compartment, then ledgers (what came in, left and was converted, so that every advance can be audited), then
 * gauges. Add a component to `COMPONENTS` and transport, audit and snapshot carry it.
 */

/**
 * Bodies of water with a level of their own, in flow order. Chambers joined by a large opening share one level:
 * aeration chamber and clarifier; pump tank and disinfection riser, once the tank stands above its inlet.
 */
export const BASINS = ['trash', 'aeration', 'pump'] as const;

/** Well-mixed compartments that carry components, in flow order. */
export const COMPARTMENTS = ['trash', 'aeration', 'clarifier', 'riser', 'pump'] as const;

/** Dissolved oxygen, and the oxygen demand (carbon and ammonia) that the sludge still has to burn; both in g O2. */
export const COMPONENTS = ['oxygen', 'demand'] as const;

const MASS = BASINS.length;
const LEDGER = MASS + COMPARTMENTS.length * COMPONENTS.length;
const PER_COMPONENT = 3;
const GAUGE = LEDGER + 4 + COMPONENTS.length * PER_COMPONENT;

export const VOLUME = { trash: 0, aeration: 1, pump: 2 } as const;
export const COMPARTMENT = { trash: 0, aeration: 1, clarifier: 2, riser: 3, pump: 4 } as const;
export const COMPONENT = { oxygen: 0, demand: 1 } as const;

/** Index of a component's mass, g, in a compartment. */
export function massIndex(compartment: number, component: number): number {
  return MASS + compartment * COMPONENTS.length + component;
}

/** Water ledgers, m3 since the start: drawn in the house, dosed to the field, over the clean-out, onto the floor. */
export const WATER = { drawn: LEDGER, sprayed: LEDGER + 1, relieved: LEDGER + 2, indoors: LEDGER + 3 } as const;

/** Ledgers of a component, g since the start. */
export function ledgerIndex(component: number): { in: number; out: number; converted: number } {
  const at = LEDGER + 4 + component * PER_COMPONENT;
  return { in: at, out: at + 1, converted: at + 2 };
}

/** Hours the liquor has been without oxygen; seconds run; water dosed while the liquor lacked oxygen, m3. */
export const GAUGES = {
  hoursWithoutOxygen: GAUGE,
  pumpRun_s: GAUGE + 1,
  compressorRun_s: GAUGE + 2,
  shortOfAir_m3: GAUGE + 3,
} as const;

export const STATE_SIZE = GAUGE + 4;

/** Absolute tolerances of the integrator by state; 0 leaves a ledger out of the error norm. */
export function tolerances(): Float64Array {
  const atol = new Float64Array(STATE_SIZE);
  for (let i = 0; i < MASS; i++) atol[i] = 1e-6;
  for (let i = MASS; i < LEDGER; i++) atol[i] = 0.02;
  atol[GAUGES.hoursWithoutOxygen] = 0.01;
  return atol;
}
