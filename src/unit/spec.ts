/** One property as data: the works, the panel's settings, and what its label says. */
import type { DelayId, FloatName } from '../control/index.ts';
import type { PlantSpec } from '../plant/index.ts';

export interface PanelSpec {
  /** Heights above the pump tank's floor at which a float makes (rising) and breaks (falling), m. */
  readonly floats: Readonly<Record<FloatName, { readonly makes_m: number; readonly breaks_m: number }>>;
  readonly airSwitch: { readonly falls_kPa: number; readonly rises_kPa: number };
  readonly timer: {
    /** Hours of the panel clock at which a dose may start, its minutes, and the most minutes of one night. */
    readonly starts_h: readonly number[];
    readonly run_min: number;
    readonly nightLimit_min: number;
  };
  /** Every delay but the dose's, which is `timer.run_min`. */
  readonly delays_s: Readonly<Record<Exclude<DelayId, 'dose'>, number>>;
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
