/**
 * What disinfects the water as it leaves the clarifier: hypochlorite fed in proportion to flow from a reservoir that
 * runs out and goes stale, tablets that the passing water wets and wears away, or ultraviolet light. Days, m3, g.
 */
import { at } from './entry.ts';
import { exp, log, pow } from './num.ts';

export type DisinfectionSpec =
  | {
      readonly kind: 'liquid';
      /** Chlorine a litre fresh from the store feeds, mg/L of the water, its strength, g/L, and the reservoir, L. */
      readonly dose_mgL: number;
      readonly strength_gL: number;
      readonly reservoir_L: number;
      readonly restocked_d: number;
    }
  | {
      readonly kind: 'tablets';
      /** Chlorine that wears off at a flow, mg/L and m3/d, and the chlorine in a full tube, g. */
      readonly dose_mgL: number;
      readonly flow_m3d: number;
      readonly tube_g: number;
      readonly restocked_d: number;
    }
  | {
      readonly kind: 'ultraviolet';
      /** Dose of a clean lamp in clear water at a flow, mJ/cm2 and m3/d. */
      readonly dose_mJcm2: number;
      readonly flow_m3d: number;
    };

/** What is in store: hypochlorite, L and g/L, or chlorine in tablets, g; and days since it was filled up. */
export const STOCK = { reservoir_L: 0, strength_gL: 1, tablets_g: 2, age_d: 3 } as const;
export const STOCK_SIZE = 4;

/** What faults do to it: neutral at 1. */
export interface DisinfectionCondition {
  /** Share of the sound feed that reaches the water. */
  disinfectantFeed: number;
  /** Share of the chlorine that what is fed should have. */
  disinfectantStrength: number;
  /** Share of a full store that there is at most: it leaks, or nobody fills it up. */
  disinfectantStock: number;
  /** Share of the light that passes the lamp's sleeve. */
  sleeveLight: number;
}

export function fillStock(spec: DisinfectionSpec, share: number, stock: Float64Array): void {
  stock[STOCK.age_d] = 0;
  if (spec.kind === 'liquid') {
    stock[STOCK.reservoir_L] = share * spec.reservoir_L;
    stock[STOCK.strength_gL] = spec.strength_gL;
  }
  if (spec.kind === 'tablets') stock[STOCK.tablets_g] = share * spec.tube_g;
}

/** Loss of strength at 24 degC, 1/d: half in two years; 3.5 times as fast each 10 K. Source: HSDB stability entry. */
const STALES = Math.LN2 / 2 / 365;
const STALES_FASTER = 3.5;

/** Loss of strength of stored hypochlorite, 1/d. */
export function staling(temperature_C: number): number {
  return STALES * pow(STALES_FASTER, (temperature_C - 24) / 10);
}

/** Share of a stack that lies in water however little runs, and how its depth and its wear go with flow (convention). */
const FOOT = 0.4;
const DEPTH_POWER = 0.4;
const WEAR_POWER = 0.5;

/** Chlorine worn off tablets, g/d, at a flow: wetted height (a notch's depth) times a flux that grows with the flow. */
export function wornOff(spec: DisinfectionSpec & { kind: 'tablets' }, flow_m3d: number): number {
  if (flow_m3d <= 0) return 0;
  const share = flow_m3d / spec.flow_m3d;
  const wetted = FOOT + (1 - FOOT) * Math.min(2, pow(share, DEPTH_POWER));
  return spec.dose_mgL * spec.flow_m3d * pow(share, WEAR_POWER) * wetted;
}

/** What is in store beyond a share of a full one is gone. */
function drain(spec: DisinfectionSpec, share: number, stock: Float64Array): void {
  if (spec.kind === 'liquid')
    stock[STOCK.reservoir_L] = Math.min(at(stock, STOCK.reservoir_L), share * spec.reservoir_L);
  if (spec.kind === 'tablets') stock[STOCK.tablets_g] = Math.min(at(stock, STOCK.tablets_g), share * spec.tube_g);
}

/** Share of a full store that is left, and of its first strength; an ultraviolet lamp has none. */
export function stockLeft(
  spec: DisinfectionSpec,
  stock: Float64Array,
): { readonly share: number; readonly strength: number } {
  if (spec.kind === 'liquid') {
    return {
      share: at(stock, STOCK.reservoir_L) / spec.reservoir_L,
      strength: at(stock, STOCK.strength_gL) / spec.strength_gL,
    };
  }
  return { share: spec.kind === 'tablets' ? at(stock, STOCK.tablets_g) / spec.tube_g : 0, strength: 1 };
}

/** Chlorine fed, g, in so many days to a mean flow, m3/d; the store goes down and ages. */
export function feedChlorine(
  spec: DisinfectionSpec,
  condition: DisinfectionCondition,
  flow_m3d: number,
  days: number,
  temperature_C: number,
  stock: Float64Array,
): number {
  if (spec.kind === 'ultraviolet') return 0;
  drain(spec, condition.disinfectantStock, stock);
  stock[STOCK.age_d] = at(stock, STOCK.age_d) + days;
  if (at(stock, STOCK.age_d) >= spec.restocked_d) fillStock(spec, condition.disinfectantStock, stock);
  const flow = Math.max(0, flow_m3d);
  if (spec.kind === 'tablets') {
    const fed = Math.min(
      at(stock, STOCK.tablets_g),
      condition.disinfectantFeed * condition.disinfectantStrength * wornOff(spec, flow) * days,
    );
    stock[STOCK.tablets_g] = at(stock, STOCK.tablets_g) - fed;
    return fed;
  }
  stock[STOCK.strength_gL] = at(stock, STOCK.strength_gL) * exp(-staling(temperature_C) * days);
  const wanted_L = (condition.disinfectantFeed * spec.dose_mgL * flow * days) / spec.strength_gL;
  const given_L = Math.min(at(stock, STOCK.reservoir_L), wanted_L);
  stock[STOCK.reservoir_L] = at(stock, STOCK.reservoir_L) - given_L;
  return given_L * condition.disinfectantStrength * at(stock, STOCK.strength_gL);
}

/** Dose that kills nine in ten coliform, mJ/cm2. Source: 4 to 7, EPA Technology Fact Sheet 4 and Metcalf and Eddy (from memory). */
const TENTH_mJcm2 = 5.5;
/** Coliform that solids shade, share per mg/L, and light that they take, per mg/L (convention). */
const SHADED = 1e-5;
const DIMMED = 0.012;

/** Share of the coliform that outlives the light of a lamp lit for so much of the time. */
export function survivesLight(
  spec: DisinfectionSpec & { kind: 'ultraviolet' },
  condition: DisinfectionCondition,
  flow_m3d: number,
  solids_mgL: number,
  lit: number,
): number {
  const slower = spec.flow_m3d / Math.max(flow_m3d, 1e-3 * spec.flow_m3d);
  const dose = spec.dose_mJcm2 * slower * condition.sleeveLight * exp(-DIMMED * solids_mgL);
  const lightKills = Math.min(1, exp((-log(10) * dose) / TENTH_mJcm2) + SHADED * solids_mgL);
  return lit * lightKills + (1 - lit);
}
