/** Dissolved oxygen: saturation, transfer from air, and what its absence smells of. */
import { clamp, exp, pow } from './num.ts';
import type { AirSpec } from './spec.ts';

/**
 * Oxygen saturation of fresh water under 1 atm of moist air, mg/L. Source: Benson and Krause 1984 as used in USGS
 * tables: ln C = -139.34411 + 1.575701e5/T - 6.642308e7/T^2 + 1.2438e10/T^3 - 8.621949e11/T^4, T in kelvin.
 */
export function oxygenSaturation(temperature_C: number): number {
  const t = temperature_C + 273.15;
  return exp(-139.34411 + (157570.1 - (6.642308e7 - (1.2438e10 - 8.621949e11 / t) / t) / t) / t);
}

/** Oxygen in a standard cubic metre of air, g. Source: air at 20 C, 1 atm; ASCE transfer standard uses 0.2785 kg. */
const OXYGEN_IN_AIR_gm3 = 278;

/** What only temperature changes: saturation, mg/L, and the factor 1.024^(T-20) of the transfer. */
export interface OxygenAt {
  readonly temperature_C: number;
  readonly saturation_mgL: number;
  readonly transferFactor: number;
}

export function oxygenAt(temperature_C: number): OxygenAt {
  return {
    temperature_C,
    saturation_mgL: oxygenSaturation(temperature_C),
    transferFactor: pow(1.024, temperature_C - 20),
  };
}

/**
 * Transfer coefficient in the tank, 1/s, of an air flow through diffusers at a depth:
 * KLa = alpha 1.024^(T-20) SOTR / (V C*20), SOTR = air x 278 g/m3 x efficiency; efficiency falls with flow^-0.15
 * (the exponent is a convention, no source). Depth raises saturation: 1 + 0.03858 d for fine bubbles.
 */
export function oxygenTransfer(
  spec: AirSpec,
  water: OxygenAt,
  air_Lmin: number,
  depth_m: number,
  volume_m3: number,
): number {
  if (air_Lmin <= 0 || depth_m <= 0) return 0;
  const efficiency = spec.transferPerMetre * depth_m * pow(air_Lmin / spec.transferReference_Lmin, -0.15);
  const standard_gs = (air_Lmin / 60_000) * OXYGEN_IN_AIR_gm3 * efficiency;
  return (spec.alpha * water.transferFactor * standard_gs) / (volume_m3 * 9.092 * depthFactor(depth_m));
}

/** Saturation the liquor tends to, mg/L: beta C*(T) with the depth factor. */
export function fieldSaturation(spec: AirSpec, water: OxygenAt, depth_m: number): number {
  return spec.beta * water.saturation_mgL * depthFactor(depth_m);
}

function depthFactor(depth_m: number): number {
  return 1 + 0.03858 * Math.max(0, depth_m);
}

/** Time over which odour lingers after air is back, s (common practice: "some days", no source). */
const LINGER_s = 2 * 86_400;

/** Growth of the "hours without oxygen", h/s: one hour an hour while there is none, fading when it is back. */
export function hoursWithoutOxygenRate(oxygen_mgL: number, hours: number): number {
  const x = Math.max(0, oxygen_mgL) / 0.3;
  const without = 1 / (1 + x * x * x * x);
  return without / 3600 - ((1 - without) * hours) / LINGER_s;
}

/**
 * Odour at the aeration chamber, 0 none to 1 rotten eggs: sulfide begins 12 to 24 h after the oxygen is gone
 * (derived from the oxygen demand left in nitrate; qualitative in the literature).
 */
export function odourIndex(hoursWithoutOxygen: number): number {
  const x = (hoursWithoutOxygen - 6) / 18;
  return clamp(x, 0, 1);
}
