/** The water seal of a drain trap, which dries out where nobody lets water run, and with it what keeps sewer air out. */
import { exp } from './num.ts';

/** Saturation pressure of water vapour, Pa. Source: Magnus form with Sonntag's constants (WMO guide): -45 to 60 degC. */
export function vapourPressure_Pa(temperature_C: number): number {
  return 611.2 * exp((17.62 * temperature_C) / (243.12 + temperature_C));
}

/** Seal of a trap that water has just run through, mm: 50 to 75 (texts on traps, read). */
export const FULL_SEAL_mm = 60;
/** Air of a lived-in room, degC (convention). */
export const ROOM_C = 21;

/** Loss at 20 degC and half humidity, mm/d: the middle of the 1 to 2 that texts on traps give (convention; from memory). */
const REFERENCE_mmd = 1.5;
const REFERENCE_C = 20;
const REFERENCE_HUMIDITY = 0.5;

/** What still air lacks of its fill of vapour, Pa; humidity is a share, 0 to 1. */
function deficit_Pa(temperature_C: number, humidity: number): number {
  return vapourPressure_Pa(temperature_C) * Math.max(0, 1 - humidity);
}

/** Water a trap loses, mm/d: in proportion to the vapour that the air of the room still takes (Dalton's law). */
export function trapLoss_mmd(temperature_C: number, humidity: number): number {
  return (REFERENCE_mmd * deficit_Pa(temperature_C, humidity)) / deficit_Pa(REFERENCE_C, REFERENCE_HUMIDITY);
}

/** Days until a seal so deep is gone; never in saturated air. */
export function daysToDry(seal_mm: number, temperature_C: number, humidity: number): number {
  const loss_mmd = trapLoss_mmd(temperature_C, humidity);
  return loss_mmd > 0 ? Math.max(0, seal_mm) / loss_mmd : Number.POSITIVE_INFINITY;
}

/** Seal left, mm, of a trap that was full when water last ran. Seals are 50 to 75 mm deep (texts on traps, read). */
export function trapSeal_mm(full_mm: number, daysSinceUse: number, temperature_C: number, humidity: number): number {
  return Math.max(0, full_mm - daysSinceUse * trapLoss_mmd(temperature_C, humidity));
}

/** Seal that a draw leaves in a trap whose drain has no vent: the rest is sucked after the water, mm (convention). */
const SUCKED_SEAL_mm = 15;

/** Seal of a trap right after water has run, mm, where the vent lets in such a share of its air. */
export function leftSeal_mm(ventFlow: number): number {
  return FULL_SEAL_mm - (1 - ventFlow) * (FULL_SEAL_mm - SUCKED_SEAL_mm);
}

/**
 * Seal, mm, that still stands against the pressure of a vented drain: plumbing codes let it swing by an inch of water at
 * a trap (from memory).
 */
export const SAFE_SEAL_mm = 25;
