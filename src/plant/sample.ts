/** What a laboratory finds in a sample: from a row of concentrations. */

import { ASM, BOD5_SHARE, BSM1_15C, bod5, kjeldahlNitrogen, suspendedSolids } from './asm1.ts';
import { at } from './entry.ts';
import { COMPONENT, type Composition } from './liquor.ts';
import { log } from './num.ts';

export interface Sample {
  readonly cbod5_mgL: number;
  readonly solids_mgL: number;
  readonly ammonia_mgL: number;
  readonly nitrate_mgL: number;
  readonly kjeldahl_mgL: number;
  readonly oxygen_mgL: number;
  readonly alkalinity_mgL: number;
  readonly pH: number;
  /** Chlorine in all, and what of it is free. */
  readonly residual_mgL: number;
  readonly freeChlorine_mgL: number;
  readonly coliform_per100mL: number;
  /** Salt over the supply's and the household's ordinary. */
  readonly salt_mgL: number;
}

/** Carbon dioxide left in aerated water, mol/m3, and the first dissociation constant of carbonic acid (convention; from memory). */
const CARBON_DIOXIDE_molm3 = 0.1;
const CARBONIC_pKa = 6.35;
const CACO3_g_per_mol = 50;

/**
 * Five days burn 0.65 of what is degradable in raw sewage and 0.25 in effluent (BSM1). Between the two we go by how much of
 * it is food and how much is alive already (common practice, no source).
 */
function carbonaceousBod5(c: Composition): number {
  const food = Math.max(0, at(c, ASM.substrate)) + Math.max(0, at(c, ASM.slowSubstrate));
  const alive = Math.max(0, at(c, ASM.heterotrophs)) + Math.max(0, at(c, ASM.autotrophs));
  const raw = food + alive > 0 ? food / (food + alive) : 0;
  return bod5(c, 0, BSM1_15C, BOD5_SHARE.effluent + (BOD5_SHARE.raw - BOD5_SHARE.effluent) * raw);
}

export function sampleOf(c: Composition): Sample {
  const alkalinity = Math.max(0, at(c, ASM.alkalinity));
  return {
    cbod5_mgL: carbonaceousBod5(c),
    solids_mgL: suspendedSolids(c, 0),
    ammonia_mgL: Math.max(0, at(c, ASM.ammonia)),
    nitrate_mgL: Math.max(0, at(c, ASM.nitrate)),
    kjeldahl_mgL: kjeldahlNitrogen(c, 0, BSM1_15C),
    oxygen_mgL: Math.max(0, at(c, ASM.oxygen)),
    alkalinity_mgL: alkalinity * CACO3_g_per_mol,
    pH: CARBONIC_pKa + log(Math.max(alkalinity, 1e-3) / CARBON_DIOXIDE_molm3) / log(10),
    residual_mgL: Math.max(0, at(c, COMPONENT.chlorine) + at(c, COMPONENT.combined)),
    freeChlorine_mgL: Math.max(0, at(c, COMPONENT.chlorine)),
    coliform_per100mL: Math.max(0, at(c, COMPONENT.coliform)),
    salt_mgL: Math.max(0, at(c, COMPONENT.salt)),
  };
}
