/** Rates of the processes at a temperature and for a sludge, and how the sludge comes to settle well or badly. */
import { atTemperature, BSM1_15C } from './asm1.ts';
import { thickest_gm3 } from './hopper.ts';
import { clamp, exp, pow } from './num.ts';
import type { Kinetics } from './process.ts';
import { settlerFor } from './settleability.ts';

/** Corners of the settling fluxes are rounded by this, so that the step is not caught in them. */
const ROUNDING = 0.01;
/** Without oxygen particulates dissolve at this rate, 1/d (common practice 0.1 to 0.3, no source). */
const ANAEROBIC = 0.2;
/** What lies in the trash tank digests at this rate at 15 degC, 1/d, doubling each 10 K (common practice, no source). */
const DIGESTION = 0.5 / 365;
/** Of what digests this share goes back into the water, the rest leaves as gas (convention). */
const RETURNED = 0.3;
/** Die-off of coliform in the works, 1/d (convention). */
const DIE_OFF = 1;
/** Alkalinity at which nitrification is halved, mol/m3 (common practice, no source; not part of ASM1). */
const ALKALINITY = 0.5;

export function kineticsAt(temperature_C: number, index_mLg: number): Kinetics {
  return {
    biology: { ...atTemperature(BSM1_15C, temperature_C), kAlkalinity: ALKALINITY },
    settling: { ...settlerFor(index_mLg), rounding: ROUNDING },
    thickest_gm3: thickest_gm3(index_mLg),
    anaerobic: ANAEROBIC,
    digestion: DIGESTION * pow(2, (temperature_C - 15) / 10),
    returned: RETURNED,
    dieOff: DIE_OFF,
  };
}

/**
 * Sludge short of air grows threads and bulks: its index goes towards twice the sound one, and back, within some ten
 * days (common practice that low oxygen bulks, no source; extent and time are conventions).
 */
const BULKS_TO = 1;
const BULKS_d = 10;
const SHORT_mgL = 1;

/** Factor of the sound volume index after so many days at an oxygen, mg/L. */
export function bulked(factor: number, oxygen_mgL: number, days: number): number {
  const towards = 1 + BULKS_TO * clamp(1 - oxygen_mgL / SHORT_mgL, 0, 1);
  return towards + (factor - towards) * exp(-days / BULKS_d);
}

/**
 * Sludge that stands without oxygen under water with nitrate makes nitrogen, and after an hour the gas lifts it (common
 * practice: over 6 mg/L of nitrate, an hour; no source). The share lifted is a convention, 1/d.
 */
const RISES_AFTER_h = 1;
const NITRATE_mgL = 6;
const WITHOUT_OXYGEN_mgL = 0.2;
const LIFTED = 2.4;

/** Hours that the lowest sludge has stood so. */
export function stoodGassing_h(hours: number, oxygen_mgL: number, nitrate_mgL: number, days: number): number {
  const gassing = oxygen_mgL < WITHOUT_OXYGEN_mgL && nitrate_mgL > NITRATE_mgL;
  return gassing ? hours + 24 * days : Math.max(0, hours - 48 * days);
}

/** Share of the lowest sludge that gas lifts to the top, 1/d. */
export function liftedShare(stood_h: number): number {
  return stood_h > RISES_AFTER_h ? LIFTED : 0;
}
