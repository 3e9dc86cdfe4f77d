/** What a household's sewage is made of: the thirteen components of ASM1 from the strengths that tables give. */
import { BOD5_SHARE, BSM1_15C, SOLIDS_PER_COD } from './asm1.ts';
import { type Composition, composition } from './liquor.ts';

/** Sewage of one person, g/d, and what tables give as concentrations. */
export interface Strength {
  readonly bod5_gPersonDay: number;
  readonly solids_gPersonDay: number;
  readonly nitrogen_gPersonDay: number;
  /** Alkalinity of the water supply, mol HCO3/m3, and coliform of the sewage, per 100 mL. */
  readonly alkalinity_molm3: number;
  readonly coliform_per100mL: number;
}

/**
 * Source: EPA 625/R-00/008 Table 3-8 by use (from memory), g per person and day: 63.2 BOD5, 70.7 suspended solids, 11.2
 * nitrogen. Coliform 1e6 per 100 mL: California State Board review. Alkalinity is a convention (250 mg/L as CaCO3).
 */
export const EPA_STRENGTH: Strength = {
  bod5_gPersonDay: 63.2,
  solids_gPersonDay: 70.7,
  nitrogen_gPersonDay: 11.2,
  alkalinity_molm3: 5,
  coliform_per100mL: 1e6,
};

/** How the strengths split, our conventions: of the particulate COD what is inert, of the degradable what is alive. */
const INERT = 0.15;
const ALIVE = 0.04;
const INERT_SOLUBLE = 0.06;
/** Of the nitrogen: ammonia already, and urea and other dissolved organic nitrogen. */
const AMMONIA = 0.25;
const DISSOLVED = 0.45;
const { iXB, iXP, fP } = BSM1_15C;

/** Concentrations of a person's strength in so much water, m3 per person and day. */
export function influentOf(strength: Strength, water_m3PersonDay: number): Composition {
  const per = 1 / water_m3PersonDay;
  const degradable = (strength.bod5_gPersonDay * per) / BOD5_SHARE.raw;
  const particulate = (strength.solids_gPersonDay * per) / SOLIDS_PER_COD;
  const nitrogen = strength.nitrogen_gPersonDay * per;
  const alive = ALIVE * degradable;
  const inert = INERT * particulate;
  const slow = Math.min(particulate - inert - alive, degradable - (1 - fP) * alive);
  return composition({
    inertSoluble: INERT_SOLUBLE * degradable,
    substrate: degradable - slow - (1 - fP) * alive,
    inertParticulate: particulate - alive - slow,
    slowSubstrate: slow,
    heterotrophs: alive,
    ammonia: AMMONIA * nitrogen,
    solubleNitrogen: DISSOLVED * nitrogen,
    particulateNitrogen: (1 - AMMONIA - DISSOLVED) * nitrogen - iXB * alive - iXP * (particulate - alive - slow),
    alkalinity: strength.alkalinity_molm3 + (AMMONIA * nitrogen) / 14,
    coliform: strength.coliform_per100mL,
  });
}

/** Sewage of published strength in the published 69.3 gal a person and day: 240 mg/L of BOD5. */
export const ORDINARY_SEWAGE = influentOf(EPA_STRENGTH, 0.2623);
