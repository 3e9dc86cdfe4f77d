/**
 * Activated Sludge Model No. 1: eight processes on thirteen components, g/m3 (alkalinity mol HCO3/m3), days.
 * Source: the IWA Task Group's BSM1 description (Alex et al. 2008), equations and Tables 2 to 4. Hydrolysis is written
 * without its two divisions, and states below zero count as zero in the rates, as in that package's own code. The
 * constants 4.57 and 2.86 are the published ones: 32/7 and 20/7 would move the benchmark's nitrate by 0.3 %.
 * Nothing is allocated.
 */
import { add, at } from './entry.ts';
import { exp, log } from './num.ts';

/** Place of each component among the thirteen. */
export const ASM = {
  inertSoluble: 0,
  substrate: 1,
  inertParticulate: 2,
  slowSubstrate: 3,
  heterotrophs: 4,
  autotrophs: 5,
  decayProducts: 6,
  oxygen: 7,
  nitrate: 8,
  ammonia: 9,
  solubleNitrogen: 10,
  particulateNitrogen: 11,
  alkalinity: 12,
} as const;
export const ASM_SIZE = 13;

/** Components that settle; the others go where the water goes. */
export const PARTICULATE: readonly number[] = [
  ASM.inertParticulate,
  ASM.slowSubstrate,
  ASM.heterotrophs,
  ASM.autotrophs,
  ASM.decayProducts,
  ASM.particulateNitrogen,
];

export interface Asm1Parameters {
  /** Yields, g COD/g N and g COD/g COD; inert part of decay; nitrogen in biomass and in its products, g N/g COD. */
  readonly yieldA: number;
  readonly yieldH: number;
  readonly fP: number;
  readonly iXB: number;
  readonly iXP: number;
  /** Growth and decay, 1/d; half-saturations, g/m3. */
  readonly muH: number;
  readonly kS: number;
  readonly kOH: number;
  readonly kNO: number;
  readonly bH: number;
  readonly etaG: number;
  readonly etaH: number;
  readonly kH: number;
  readonly kX: number;
  readonly muA: number;
  readonly kNH: number;
  readonly bA: number;
  readonly kOA: number;
  /** Ammonification, m3/(g COD d). */
  readonly kA: number;
  /** Alkalinity at which nitrification is halved, mol/m3; 0 leaves the limit out, as ASM1 does. */
  readonly kAlkalinity: number;
}

/** BSM1's set, 15 degC. Source: Alex et al. 2008, Tables 2 and 3. */
export const BSM1_15C: Asm1Parameters = {
  yieldA: 0.24,
  yieldH: 0.67,
  fP: 0.08,
  iXB: 0.08,
  iXP: 0.06,
  muH: 4,
  kS: 10,
  kOH: 0.2,
  kNO: 0.5,
  bH: 0.3,
  etaG: 0.8,
  etaH: 0.8,
  kH: 3,
  kX: 0.1,
  muA: 0.5,
  kNH: 1,
  bA: 0.05,
  kOA: 0.4,
  kA: 0.05,
  kAlkalinity: 0,
};

/** Rates at 10 degC of the law that BSM2 uses; the others do not change with temperature. */
const AT_10C = { muH: 3, bH: 0.2, muA: 0.3, bA: 0.03, kH: 2.5, kA: 0.04 } as const;
/** Above this the law would go on rising while nitrifiers really fall (common practice, no source), degC. */
const WARMEST_C = 30;

/** A set given at 15 degC at another temperature: p15 (p15/p10)^((T-15)/5), the BSM2 law. Source: its reactor code. */
export function atTemperature(p15: Asm1Parameters, temperature_C: number): Asm1Parameters {
  const away = (Math.min(temperature_C, WARMEST_C) - 15) / 5;
  const moved = (key: keyof typeof AT_10C) => p15[key] * exp(log(p15[key] / AT_10C[key]) * away);
  return {
    ...p15,
    muH: moved('muH'),
    bH: moved('bH'),
    muA: moved('muA'),
    bA: moved('bA'),
    kH: moved('kH'),
    kA: moved('kA'),
  };
}

export const RATES = 8;

/**
 * Rates of the eight processes, g/(m3 d), of the concentrations `y[o..o+12]`, into `r`: growth of heterotrophs with
 * oxygen and with nitrate, of autotrophs; decay of both; ammonification; hydrolysis of organics and of their nitrogen.
 */
export function asm1Rates(y: Float64Array, o: number, p: Asm1Parameters, r: Float64Array): void {
  const substrate = counted(y, o + ASM.substrate);
  const slow = counted(y, o + ASM.slowSubstrate);
  const heterotrophs = counted(y, o + ASM.heterotrophs);
  const autotrophs = counted(y, o + ASM.autotrophs);
  const oxygen = counted(y, o + ASM.oxygen);
  const nitrate = counted(y, o + ASM.nitrate);
  const ammonia = counted(y, o + ASM.ammonia);

  const aerobic = oxygen / (p.kOH + oxygen);
  const anoxic = (1 - aerobic) * (nitrate / (p.kNO + nitrate));
  const fed = p.muH * (substrate / (p.kS + substrate)) * heterotrophs;
  r[0] = fed * aerobic;
  r[1] = fed * anoxic * p.etaG;
  const nitrified = p.muA * (ammonia / (p.kNH + ammonia)) * (oxygen / (p.kOA + oxygen)) * autotrophs;
  r[2] = p.kAlkalinity > 0 ? nitrified * limit(counted(y, o + ASM.alkalinity), p.kAlkalinity) : nitrified;
  r[3] = p.bH * heterotrophs;
  r[4] = p.bA * autotrophs;
  r[5] = p.kA * counted(y, o + ASM.solubleNitrogen) * heterotrophs;
  const held = p.kX * heterotrophs + slow;
  const hydrolysis = held > 0 ? (p.kH * heterotrophs * (aerobic + p.etaH * anoxic)) / held : 0;
  r[6] = hydrolysis * slow;
  r[7] = hydrolysis * counted(y, o + ASM.particulateNitrogen);
}

/** What the rates do to each component, g/(m3 d), added to `dy[o..o+12]` times `scale` (a volume, or days in a second). */
export function asm1React(r: Float64Array, p: Asm1Parameters, scale: number, dy: Float64Array, o: number): void {
  const r1 = at(r, 0);
  const r2 = at(r, 1);
  const r3 = at(r, 2);
  const r4 = at(r, 3);
  const r5 = at(r, 4);
  const r6 = at(r, 5);
  const r7 = at(r, 6);
  const r8 = at(r, 7);
  const lost = (1 - p.yieldH) / p.yieldH;
  const decay = r4 + r5;
  add(dy, o + ASM.substrate, scale * (r7 - (r1 + r2) / p.yieldH));
  add(dy, o + ASM.slowSubstrate, scale * ((1 - p.fP) * decay - r7));
  add(dy, o + ASM.heterotrophs, scale * (r1 + r2 - r4));
  add(dy, o + ASM.autotrophs, scale * (r3 - r5));
  add(dy, o + ASM.decayProducts, scale * (p.fP * decay));
  add(dy, o + ASM.oxygen, scale * (-lost * r1 - ((4.57 - p.yieldA) / p.yieldA) * r3));
  add(dy, o + ASM.nitrate, scale * (r3 / p.yieldA - (lost / 2.86) * r2));
  add(dy, o + ASM.ammonia, scale * (r6 - p.iXB * (r1 + r2) - (p.iXB + 1 / p.yieldA) * r3));
  add(dy, o + ASM.solubleNitrogen, scale * (r8 - r6));
  add(dy, o + ASM.particulateNitrogen, scale * ((p.iXB - p.fP * p.iXP) * decay - r8));
  const taken = (p.iXB / 14) * (r1 + r2 + r3);
  add(dy, o + ASM.alkalinity, scale * ((lost / (14 * 2.86)) * r2 + r6 / 14 - r3 / (7 * p.yieldA) - taken));
}

/** Solids a g of COD that is not dissolved, g. Source: BSM1. */
export const SOLIDS_PER_COD = 0.75;

/** Total suspended solids, g/m3, of what settles. ASM1 knows no mineral solids. */
export function suspendedSolids(y: Float64Array, o: number): number {
  return (
    SOLIDS_PER_COD *
    (at(y, o + ASM.inertParticulate) +
      at(y, o + ASM.slowSubstrate) +
      at(y, o + ASM.heterotrophs) +
      at(y, o + ASM.autotrophs) +
      at(y, o + ASM.decayProducts))
  );
}

/** Chemical oxygen demand, g/m3. */
export function chemicalDemand(y: Float64Array, o: number): number {
  let sum = 0;
  for (let i = ASM.inertSoluble; i <= ASM.decayProducts; i++) sum += at(y, o + i);
  return sum;
}

/** Share of the degradable COD that five days burn: effluent, and raw influent. Source: BSM1 description. */
export const BOD5_SHARE = { effluent: 0.25, raw: 0.65 } as const;

/** Five-day biochemical oxygen demand, g/m3. */
export function bod5(y: Float64Array, o: number, p: Asm1Parameters, share: number): number {
  const biomass = at(y, o + ASM.heterotrophs) + at(y, o + ASM.autotrophs);
  return share * (at(y, o + ASM.substrate) + at(y, o + ASM.slowSubstrate) + (1 - p.fP) * biomass);
}

/** Kjeldahl nitrogen, g N/m3. */
export function kjeldahlNitrogen(y: Float64Array, o: number, p: Asm1Parameters): number {
  const biomass = at(y, o + ASM.heterotrophs) + at(y, o + ASM.autotrophs);
  const inert = at(y, o + ASM.decayProducts) + at(y, o + ASM.inertParticulate);
  const free = at(y, o + ASM.ammonia) + at(y, o + ASM.solubleNitrogen) + at(y, o + ASM.particulateNitrogen);
  return free + p.iXB * biomass + p.iXP * inert;
}

function limit(x: number, half: number): number {
  return x / (half + x);
}

/** A state as the rates see it: never below zero. */
function counted(y: Float64Array, i: number): number {
  const value = y[i] as number;
  return Math.max(value, 0);
}
