/**
 * What a person sees and smells at the works and in the house, from its state. Sights follow the key that operators'
 * guides and a textbook share: chocolate brown with a little crisp foam and an earthy smell is health.
 */
import { clamp, pow } from './num.ts';
import { odourIndex } from './oxygen.ts';

/** Liquor or effluent as it is looked at. */
export interface WaterSeen {
  readonly solids_mgL: number;
  readonly hoursWithoutOxygen: number;
}

export type LiquorColour = 'clear' | 'tan' | 'chocolate-brown' | 'grey-brown' | 'grey' | 'black';
export type EffluentColour = LiquorColour | 'cloudy';

/** Hours without oxygen: nitrate gone (6 to 12), sulfide begun (12 to 24), all black. Derived from the oxygen demand. */
const GREYING_h = 6;
const SULFIDE_h = 12;
const BLACK_h = 24;
/** Solids, mg/L, of a new unit whose jar stands under a tenth at an index of 100 (derived from common practice). */
const YOUNG_mgL = 1000;
/** Solids, mg/L, of effluent of class I (NSF/ANSI 40, mean of 30 days), and where it takes on the liquor's own colour. */
const CLEAR_mgL = 30;
const COLOURED_mgL = 100;

function staleColour(hours: number): LiquorColour | undefined {
  if (hours >= BLACK_h) return 'black';
  if (hours >= SULFIDE_h) return 'grey';
  return hours >= GREYING_h ? 'grey-brown' : undefined;
}

/** Colour of mixed liquor. */
export function liquorColour(water: WaterSeen): LiquorColour {
  if (water.solids_mgL <= CLEAR_mgL) return 'clear';
  return staleColour(water.hoursWithoutOxygen) ?? (water.solids_mgL < YOUNG_mgL ? 'tan' : 'chocolate-brown');
}

/** Colour of what leaves: clear, cloudy, or that of the liquor it carries along. */
export function effluentColour(water: WaterSeen): EffluentColour {
  const colour = liquorColour(water);
  return colour === 'tan' && water.solids_mgL <= COLOURED_mgL ? 'cloudy' : colour;
}

/** Suspended solids over turbidity, mg/L per NTU, of settled secondary effluent: a handbook gives 2.0 to 2.4 (from memory). */
const SOLIDS_PER_NTU = 2.2;
/** Length of a clarity tube, m (convention). */
const TUBE_m = 1;

/**
 * Depth at which the mark in a clarity tube is lost, m, at most the tube's length. Depth (cm) = 244.13 NTU^-0.662, a
 * published fit for turbidity tubes; its use up to mixed liquor is a convention.
 */
export function clarityDepth_m(solids_mgL: number): number {
  if (solids_mgL <= 0) return TUBE_m;
  return Math.min(TUBE_m, 2.4413 * pow(solids_mgL / SOLIDS_PER_NTU, -0.662));
}

/** Air that comes up in the aeration chamber, and what it comes up in. */
export interface FoamState {
  /** Air through the diffusers, and of a healthy unit, L/min. */
  readonly air_Lmin: number;
  readonly reference_Lmin: number;
  /** Heterotrophs in the liquor, mg COD/L, and the share of their activity that no poison takes, 0 to 1. */
  readonly heterotrophs_mgL: number;
  readonly activity: number;
  /** Inert particulates and decay products as a share of the liquor's particulate COD, 0 to 1. */
  readonly inertShare: number;
  /** Soap and detergent that come in: 1 as an ordinary household of the unit's size, 0 when nobody is at home. */
  readonly soap: number;
}

export type FoamKind = 'none' | 'crisp-white' | 'billowing-white' | 'dark-greasy';
export interface Foam {
  readonly kind: FoamKind;
  /** 0 none to 1 up to the lid. */
  readonly amount: number;
}

/** How much the surface boils, 0 still to 1 as a healthy unit does (linear: convention). */
export function bubbling(air_Lmin: number, reference_Lmin: number): number {
  return clamp(air_Lmin / reference_Lmin, 0, 1);
}

/** Bubbling under which no foam forms (convention). */
const STILL = 0.02;
/** Foam of a healthy chamber (convention for "a little"). */
const LITTLE = 0.15;
/** Heterotrophs, mg COD/L, that keep up with an ordinary household's soap (convention: two thirds of mature liquor's). */
const ENOUGH_mgL = 200;
/** Shortage of them at which foam billows (convention). */
const SHORT = 0.1;
/** Inert share where sludge begins to be old and where it is fully so (convention: two and five years in mature liquor). */
const OLD = 0.95;
const OLDEST = 0.98;

/** Share of the soap that too few or poisoned heterotrophs leave over, 0 to 1. */
function soapLeft(s: FoamState): number {
  if (s.soap <= 0) return 0;
  return clamp(1 - (s.heterotrophs_mgL * s.activity) / (ENOUGH_mgL * s.soap), 0, 1);
}

/** Foam: white and billowing while sludge is young or poisoned, dark and greasy when it is old, else a little and crisp. */
export function foam(s: FoamState): Foam {
  const air = bubbling(s.air_Lmin, s.reference_Lmin);
  if (air < STILL) return { kind: 'none', amount: 0 };
  const left = soapLeft(s);
  const white = left * Math.min(1, s.soap);
  const old = clamp((s.inertShare - OLD) / (OLDEST - OLD), 0, 1);
  const amount = (extra: number) => air * (LITTLE + (1 - LITTLE) * extra);
  if (left > SHORT && white >= old) return { kind: 'billowing-white', amount: amount(white) };
  if (old > 0) return { kind: 'dark-greasy', amount: amount(old) };
  return { kind: 'crisp-white', amount: amount(0) };
}

/** Oxygen of an extended-aeration plant over which it gets too much air, mg/L. Source: operators' guide (read). */
const MUCH_OXYGEN_mgL = 3;

/**
 * Whether fine specks stay in water that has settled clear: pin floc, of very old sludge in too much air. Source: a
 * trouble list of operators' guides (read); where sludge is so old, as for its foam.
 */
export function pinFloc(s: { readonly inertShare: number; readonly oxygen_mgL: number }): boolean {
  return s.inertShare > OLD && s.oxygen_mgL > MUCH_OXYGEN_mgL;
}

export interface AirOutdoors {
  readonly hoursWithoutOxygen: number;
  /** Total chlorine in what is sprayed or stands under an open lid, mg/L. */
  readonly residual_mgL: number;
  /** How far the lids let air out: 0 gasketed and bolted, 1 open. */
  readonly open: number;
}

export type OutdoorSmell = 'none' | 'earthy' | 'musty' | 'rotten-eggs' | 'chlorine';
export interface Smell<Kind> {
  readonly kind: Kind;
  /** 0 none to 1 strong. */
  readonly strength: number;
}

/** Part of the smell that comes out past tight lids, by vent and spray (convention). */
const PAST_LIDS = 0.5;
/** Strength of healthy liquor's smell under an open lid (convention). */
const EARTHY = 0.2;
/** Residual, mg/L, above which chlorine is smelt (common practice), and at which it is strongest (convention). */
const CHLORINE_mgL = 4;
const STRONG_CHLORINE_mgL = 10;

/** What one smells beside the works: the stronger of too little air and too much chlorine, else earth if a lid is off. */
export function smellOutdoors(a: AirOutdoors): Smell<OutdoorSmell> {
  const stale = odourIndex(a.hoursWithoutOxygen) * (PAST_LIDS + (1 - PAST_LIDS) * clamp(a.open, 0, 1));
  const chlorine = a.residual_mgL > CHLORINE_mgL ? Math.min(1, a.residual_mgL / STRONG_CHLORINE_mgL) : 0;
  if (chlorine > stale) return { kind: 'chlorine', strength: chlorine };
  if (stale > 0) return { kind: a.hoursWithoutOxygen < SULFIDE_h ? 'musty' : 'rotten-eggs', strength: stale };
  return a.open > 0 ? { kind: 'earthy', strength: EARTHY * Math.min(1, a.open) } : { kind: 'none', strength: 0 };
}

/** Strength of the trash tank's own smell at a lid that lies there without its gasket (convention). */
const SEPTIC_AT_LID = 0.3;

/** What comes out of the trash tank past lids that are not tight (1 for one): septic always, healthy works or not. */
export function smellAtLids(gap: number): Smell<OutdoorSmell> {
  return gap > 0 ? { kind: 'rotten-eggs', strength: Math.min(1, SEPTIC_AT_LID * gap) } : { kind: 'none', strength: 0 };
}

export interface AirIndoors {
  /** Seal of the driest trap, mm. */
  readonly seal_mm: number;
  /** Joints of the drains that let sewer air in: 1 as a toilet without its seal; none where left out. */
  readonly gap?: number;
  /** Sewage stands at or above the lowest fixture. */
  readonly backedUp: boolean;
}

/** Strength of sewer air from one dry trap (convention). */
const SEWER_AIR = 0.6;

/** What one smells in the house: sewage that backs up, or sewer air past a dry trap or a bad joint, which needs no fault of the works. */
export function smellIndoors(a: AirIndoors): Smell<'none' | 'sewer-air' | 'septic'> {
  if (a.backedUp) return { kind: 'septic', strength: 1 };
  const open = Math.max(a.seal_mm > 0 ? 0 : 1, Math.min(1, a.gap ?? 0));
  return open > 0 ? { kind: 'sewer-air', strength: SEWER_AIR * open } : { kind: 'none', strength: 0 };
}
