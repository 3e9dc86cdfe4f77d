/** How sludge settles: volume index, settled volume, state point of a clarifier, and capture in a first tank. */
import { clamp, exp, log } from './num.ts';
import { BSM1_SETTLER, FIVEFOLD, type SettlerParameters } from './takacs.ts';

/** A litre jar holds no more than this, mL/L; above 300 a reading must be diluted (common practice, no source). */
const JAR_mLL = 1000;

/** Sludge volume index, mL/g, of a settled volume (mL/L, 30 min) and solids (mg/L). Source: its definition. */
export function volumeIndex(settled_mLL: number, solids_mgL: number): number {
  return (settled_mLL * 1000) / solids_mgL;
}

/** Settled volume after 30 min, mL/L. */
export function settledVolume(index_mLg: number, solids_mgL: number): number {
  return Math.min(JAR_mLL, (index_mLg * solids_mgL) / 1000);
}

/**
 * Vesilind's velocity v0 exp(-k X) by sludge volume index: v0 = gamma exp(-delta S), k = alpha + beta S, S in L/g.
 * Sets of the public calculator library AMO-Tools-Suite (ORNL): index at rest or stirred, dilute or not.
 */
export interface SettlingFit {
  readonly alpha: number;
  readonly beta: number;
  readonly delta: number;
  readonly gamma: number;
}

export const SETTLING_FITS = {
  groundStandard: { alpha: 0.351, beta: 0.58, delta: 6.02, gamma: 18.2 },
  groundStirred: { alpha: 0.245, beta: 2.96, delta: 10.73, gamma: 24.3 },
  slowStandard: { alpha: 0.261, beta: 1.7, delta: 3.7, gamma: 14.9 },
  slowStirred: { alpha: 0.211, beta: 2.36, delta: 5.93, gamma: 14.6 },
} as const satisfies Record<string, SettlingFit>;

/** Solids flux by settling, kg/(m2 h), at a concentration, g/L, and a volume index, L/g. */
export function settlingFlux(fit: SettlingFit, solids_gL: number, index_Lg: number): number {
  return fit.gamma * solids_gL * exp(-fit.delta * index_Lg - (fit.alpha + fit.beta * index_Lg) * solids_gL);
}

/**
 * The layered settler's parameters of sludge with a volume index, mL/g, by the fit that slows as sludge bulks; the
 * ratios of its other parameters to these are those of BSM1, rounded (convention).
 */
export function settlerFor(index_mLg: number): SettlerParameters {
  const { alpha, beta, delta, gamma } = SETTLING_FITS.slowStandard;
  const s = index_mLg / 1000;
  const theoretical_md = 24 * gamma * exp(-delta * s);
  const hindered_m3g = (alpha + beta * s) / 1000;
  return {
    ...BSM1_SETTLER,
    theoretical_md,
    hindered_m3g,
    fastest_md: theoretical_md * (BSM1_SETTLER.fastest_md / BSM1_SETTLER.theoretical_md),
    flocculant_m3g: FIVEFOLD * hindered_m3g,
  };
}

/** Correction and share of particulate in total COD of the first clarifier of BSM2. Source: its module. */
const OTTERPOHL = { correction: 0.65, particulate: 0.85 } as const;

/**
 * Share of particulates that a first tank keeps at a detention time: Otterpohl and Freund as in BSM2, removal of COD
 * (%) = 0.65 (2.88 f - 0.118) (1.45 + 6.15 ln minutes) over f = 0.85. Clipped to 0..`most`, since the logarithm
 * passes what is real at a day or two.
 */
export function captured(detention_min: number, most = 1): number {
  if (detention_min <= 0) return 0;
  const { correction, particulate } = OTTERPOHL;
  const ofCod = correction * (2.88 * particulate - 0.118) * (1.45 + 6.15 * log(detention_min));
  return clamp(ofCod / particulate / 100, 0, most);
}
