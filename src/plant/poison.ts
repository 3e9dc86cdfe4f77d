/** What poisons do to what lives in the liquor: growth slowed, cells killed, the poison used up. g/m3, days. */
import { activityLeft, HYPOCHLORITE, type Inhibition, QUATERNARY_NITRIFICATION } from './accumulation.ts';
import { ASM, type Asm1Parameters } from './asm1.ts';
import { COMBINED_MILDER, chlorineLoss, MONO_RATIO } from './chlorine.ts';
import { at } from './entry.ts';
import { COMPONENT } from './liquor.ts';

/** Sludge of the tests that gave the inhibiting doses, g/m3: more sludge takes as much more (OECD 209; Kim 1987, abstract). */
const TEST_SLUDGE_gm3 = 1500;
const LEAST_SLUDGE_gm3 = 50;

/** Cells killed, m3 a g chlorine and day (convention within 0.02 to 0.1; nitrifiers ten times as easily, convention). */
const KILLS_HETEROTROPHS = 0.1;
const KILLS_AUTOTROPHS = 1;
/** Chlorine that a g of killed cells takes with it, g (convention within 0.3 to 1). */
const TAKEN_BY_KILLED = 0.5;
/**
 * Free-floating coliform killed, m3 a g and day, and at most, 1/d: with ammonia about, 2 log for 130 mg min/L. Source:
 * Hoff 1986 for chloramine, 95 to 180 mg min/L at 5 degC (from memory).
 */
const KILLS_COLIFORM = 51;
const FASTEST_KILL = 2000;

/** Share of quaternary ammonium that a g/m3 of solids binds, against what stays dissolved: 95 % at 3 g/L (common practice, no source). */
const BINDS_m3g = 0.006;
/** Competes for substrate. Source: Zhang 2011 (abstract), 0.12 to 3.6 mg/L, the high end where sludge binds most of it. */
const COMPETES_gm3 = 3.6;
/** Eaten by heterotrophs once substrate is spent, m3 per g COD and day (convention). */
const EATEN = 0.002;

/** Salt over the ordinary that halves growth (convention, no source; a softener's brine stays far below). */
const SALT_HETEROTROPHS: Inhibition = { half_mgL: 25_000, slope: 2 };
const SALT_NITRIFIERS: Inhibition = { half_mgL: 12_000, slope: 2 };

/** Traces under which a poison does nothing worth computing, g/m3. */
const TRACE = { chlorine: 1e-3, quaternary: 1e-3, salt: 50 } as const;

/** What poisoning uses up, g/(m3 d), and the coliform it kills, 1/d. */
export interface Toll {
  chlorine: number;
  quaternary: number;
  coliform: number;
}

/** Whether a row holds poison worth computing. */
export function isPoisoned(c: Float64Array, o: number): boolean {
  return (
    at(c, o + COMPONENT.chlorine) > TRACE.chlorine ||
    at(c, o + COMPONENT.quaternary) > TRACE.quaternary ||
    at(c, o + COMPONENT.salt) > TRACE.salt
  );
}

/** Fastest rate at which a row's poison is lost and its coliform killed, 1/d. */
export function poisonsRate(c: Float64Array, o: number): number {
  const living = Math.max(0, at(c, o + ASM.heterotrophs)) + Math.max(0, at(c, o + ASM.autotrophs));
  const reducing = Math.max(0, at(c, o + ASM.substrate)) + Math.max(0, at(c, o + ASM.slowSubstrate)) + living;
  const lost = chlorineLoss(reducing, false) + TAKEN_BY_KILLED * KILLS_AUTOTROPHS * living;
  return lost + Math.min(FASTEST_KILL, KILLS_COLIFORM * Math.max(0, at(c, o + COMPONENT.chlorine)));
}

/** Share of their activity that heterotrophs keep in a row with so many solids. */
export function heterotrophsKeep(c: Float64Array, o: number, solids_gm3: number, p: Asm1Parameters): number {
  const chlorine = Math.max(0, at(c, o + COMPONENT.chlorine));
  const dissolved = Math.max(0, at(c, o + COMPONENT.quaternary)) / (1 + BINDS_m3g * solids_gm3);
  const substrate = Math.max(0, at(c, o + ASM.substrate));
  const competing = (p.kS + substrate) / (p.kS * (1 + dissolved / COMPETES_gm3) + substrate);
  const underChlorine = activityLeft(HYPOCHLORITE, chlorine * perSludge(solids_gm3));
  return underChlorine * competing * activityLeft(SALT_HETEROTROPHS, Math.max(0, at(c, o + COMPONENT.salt)));
}

function nitrifiersKeep(c: Float64Array, o: number, solids_gm3: number): number {
  const share = perSludge(solids_gm3);
  return (
    activityLeft(HYPOCHLORITE, Math.max(0, at(c, o + COMPONENT.chlorine)) * share) *
    activityLeft(QUATERNARY_NITRIFICATION, Math.max(0, at(c, o + COMPONENT.quaternary)) * share) *
    activityLeft(SALT_NITRIFIERS, Math.max(0, at(c, o + COMPONENT.salt)))
  );
}

/** How much a dose counts against that of the tests, by the sludge that shares it. */
function perSludge(solids_gm3: number): number {
  return TEST_SLUDGE_gm3 / Math.max(LEAST_SLUDGE_gm3, solids_gm3);
}

/** Changes the rates of a poisoned row in place (see `asm1Rates`) and writes what it uses up into `toll`. */
export function poison(c: Float64Array, o: number, solids_gm3: number, p: Asm1Parameters, r: Float64Array, toll: Toll) {
  const chlorine = Math.max(0, at(c, o + COMPONENT.chlorine));
  const quaternary = Math.max(0, at(c, o + COMPONENT.quaternary));
  const substrate = Math.max(0, at(c, o + ASM.substrate));
  const slow = Math.max(0, at(c, o + ASM.slowSubstrate));
  const heterotrophs = Math.max(0, at(c, o + ASM.heterotrophs));
  const autotrophs = Math.max(0, at(c, o + ASM.autotrophs));

  const heterotrophic = heterotrophsKeep(c, o, solids_gm3, p);
  const nitrifying = nitrifiersKeep(c, o, solids_gm3);
  r[0] = at(r, 0) * heterotrophic;
  r[1] = at(r, 1) * heterotrophic;
  r[2] = at(r, 2) * nitrifying;
  // Ammonia holds what it can of the chlorine, and what it holds is milder.
  const held = Math.min(chlorine, MONO_RATIO * Math.max(0, at(c, o + ASM.ammonia)));
  const free = chlorine - held;
  const sharp = free + COMBINED_MILDER * held;
  const killed = KILLS_HETEROTROPHS * sharp * heterotrophs;
  const killedNitrifiers = KILLS_AUTOTROPHS * sharp * autotrophs;
  r[3] = at(r, 3) + killed;
  r[4] = at(r, 4) + killedNitrifiers;

  const reducing = substrate + slow + heterotrophs + autotrophs;
  toll.chlorine =
    free * chlorineLoss(reducing, false) +
    held * chlorineLoss(reducing, true) +
    TAKEN_BY_KILLED * (killed + killedNitrifiers);
  toll.quaternary = EATEN * heterotrophs * quaternary * (p.kS / (p.kS + substrate));
  toll.coliform = Math.min(FASTEST_KILL, KILLS_COLIFORM * chlorine);
}
