/** One property as data: the works, the panel's kind and settings, and what its label says. */
import { type DelayId, FLOATS, type FloatName, type PanelKind } from '../control/index.ts';
import type { PlantSpec } from '../plant/index.ts';

/** How a panel doses: by the clock at night, by one wide-angle float, or in small doses all day. */
export type DosingSpec =
  | {
      readonly kind: 'night';
      readonly clock: PanelKind['clock'];
      /** Hours of the panel clock at which a dose may start, its minutes, and the most minutes of one night. */
      readonly starts_h: readonly number[];
      readonly run_min: number;
      readonly nightLimit_min: number;
    }
  | { readonly kind: 'demand' }
  /** A period from start to start (half of it while the override float is made), and the minutes of a dose. */
  | { readonly kind: 'timed'; readonly every_min: number; readonly run_min: number };

/** Delays whose length follows from `dosing`. */
const OF_DOSING = ['dose', 'restFirst', 'restSecond'] as const satisfies readonly DelayId[];
type DelayOfDosing = (typeof OF_DOSING)[number];

/** Delays whose length the unit's file gives. */
export type GivenDelay = Exclude<DelayId, DelayOfDosing>;

export function isOfDosing(delay: DelayId): delay is DelayOfDosing {
  return (OF_DOSING as readonly DelayId[]).includes(delay);
}

export interface FloatHeight {
  readonly makes_m: number;
  readonly breaks_m: number;
}

/** Every panel has the high-water float; which others, its kind decides. */
export type FloatHeights = { readonly [F in Exclude<FloatName, 'highWaterFloat'>]?: FloatHeight | undefined } & {
  readonly highWaterFloat: FloatHeight;
};

export interface PanelSpec {
  readonly alarm: PanelKind['alarm'];
  readonly lamps: PanelKind['lamps'];
  readonly gfci: boolean;
  readonly ultraviolet: boolean;
  readonly dosing: DosingSpec;
  /** Heights above the pump tank's floor at which a float makes (rising) and breaks (falling), m. */
  readonly floats: FloatHeights;
  readonly airSwitch: { readonly falls_kPa: number; readonly rises_kPa: number };
  /** Every delay the panel has, s. */
  readonly delays_s: { readonly [D in GivenDelay]?: number | undefined };
  /** Order in which the label wants the breakers put back on. */
  readonly resetOrder: readonly ('alarm' | 'compressor' | 'pump')[];
  /** Line pressure that the label calls healthy. */
  readonly label: { readonly pressureLow_kPa: number; readonly pressureHigh_kPa: number };
}

export interface UnitSpec {
  readonly id: string;
  readonly name: { readonly en: string; readonly es: string };
  readonly rated_m3d: number;
  readonly plant: PlantSpec;
  readonly panel: PanelSpec;
}

/** What control the panel of a unit needs. */
export function kindOf(panel: PanelSpec): PanelKind {
  const { alarm, lamps, gfci, ultraviolet, dosing } = panel;
  const clock = dosing.kind === 'night' ? dosing.clock : 'digital';
  return { floats: floatsOf(panel), alarm, lamps, dosing: dosing.kind, clock, gfci, ultraviolet };
}

/** The floats a panel has, lowest first. */
export function floatsOf(panel: PanelSpec): readonly FloatName[] {
  return FLOATS.filter((f) => panel.floats[f] !== undefined);
}

/** Heights of a float that the unit has. Throws for one it has not. */
export function floatHeights_m(panel: PanelSpec, float: FloatName): FloatHeight {
  const heights = panel.floats[float];
  if (!heights) throw new Error(`this unit has no ${float}`);
  return heights;
}
