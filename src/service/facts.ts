/**
 * What a person has learnt: each fact with the instant it was learnt. The picture of a call (`scene/known.ts`) and the
 * notebook are made of facts and of nothing else, so nothing hidden can leak into them.
 */
import type { BreakerName, FloatName } from '../control/index.ts';
import type { EffluentColour, Spot } from '../plant/index.ts';

export type Lever = 'on' | 'off' | 'tripped';
export type FloatPosition = 'hanging' | 'up' | 'held-down' | 'held-up' | 'lifted';

export interface FactValues extends LeverFacts, FloatFacts, ContactFacts {
  /** Any lamp of the panel. */
  lamp: 'lit' | 'dark';
  /** The two lamps of a panel that tells air from water. */
  airLamp: 'lit' | 'dark';
  waterLamp: 'lit' | 'dark';
  buzzer: boolean;
  testHeld: boolean;
  selector: 'hand' | 'off' | 'auto';
  /** Seconds the panel clock is ahead of true time. */
  clockAhead_s: number;
  counters: { readonly pumpHours: number; readonly pumpCycles: number };
  compressorRuns: boolean;
  /** The outlet of the compressor: whether its plug is in, and whether the outlet itself has tripped. */
  outletPlugged: boolean;
  outletTripped: boolean;
  ultravioletLit: boolean;
  rattle: boolean;
  /** Load of the compressor as its hum tells it, 0 open line to 1 dead-headed. */
  compressorLoad: number;
  airPressure_kPa: number;
  leak: { readonly where: 'line' | 'joint'; readonly hole_m: number };
  foam: boolean;
  intakeDirt: number;
  bubbles_Lmin: number;
  oxygen_mgL: number;
  /** What colour the water is, as it was looked at from above. */
  liquorColour: EffluentColour;
  clarifierColour: EffluentColour;
  riserColour: EffluentColour;
  pumpTankColour: EffluentColour;
  /** Total chlorine of the pump tank by the strip. */
  residual_mgL: number;
  jar: JarSeen;
  /** Thickness of what lies in the pump tank, by spot, and of what lies and floats in the trash tank. */
  pumpTankCores: readonly Core[];
  trashSludge_m: number;
  trashScum_m: number;
  /** Levels, m from grade. */
  trashLevel_m: number;
  aerationLevel_m: number;
  riserLevel_m: number;
  pumpTankLevel_m: number;
  pumpRuns: boolean;
  filterFlow: number;
  headPressure_kPa: number;
  relief_Ls: number;
  backingUp: boolean;
}

export interface Core {
  readonly spot: Spot;
  readonly sludge_m: number;
}

/** A jar of settled sludge as it was read. */
export interface JarSeen {
  readonly minutes: number;
  /** How much of it is sludge, mL/L: all of it where no line has formed. */
  readonly settled_mLL: number;
  readonly liquor: EffluentColour;
  readonly above: EffluentColour;
  readonly specks: boolean;
  /** Gas has lifted the sludge. */
  readonly floats: boolean;
}

type LeverFacts = { [B in BreakerName as `lever.${B}`]: Lever };
type FloatFacts = { [F in FloatName as `float.${F}`]: FloatPosition };
type ContactFacts = { [F in FloatName as `contact.${F}`]: boolean };

export interface Sighting<T> {
  readonly at_s: number;
  readonly value: T;
}

export type Facts = { readonly [K in keyof FactValues]?: Sighting<FactValues[K]> };
export type LiveFacts = { readonly [K in keyof FactValues]?: FactValues[K] };

/** Facts with what was learnt at an instant added; the newer one wins. */
export function learn(facts: Facts, at_s: number, learnt: LiveFacts): Facts {
  const added = Object.fromEntries(Object.entries(learnt).map(([key, value]) => [key, { at_s, value }]));
  return { ...facts, ...added };
}
