/** Honest instruments: a reading is the truth with the instrument's own scatter, rounded to its smallest step. */
import { gaussian } from '../plant/index.ts';

export interface Gauge {
  readonly id: string;
  /** Smallest step that can be read, and standard deviation of repeated readings, in the reading's own unit. */
  readonly resolution: number;
  readonly scatter: number;
  readonly lowest: number;
  readonly highest: number;
}

/** A pad of a test strip, held against printed colours: the nearest one is read. */
export interface Pad {
  readonly id: string;
  /** What the printed colours stand for, rising. */
  readonly colours: readonly number[];
  /** Standard deviation of repeated readings as a share of the truth: where there is nothing, no colour comes. */
  readonly scatterShare: number;
}

export type Instrument = Gauge | Pad;

/** Colours of a chlorine strip, mg/L (common practice, no source). Below half the first it shows none. */
const CHLORINE_mgL = [0, 0.5, 1, 2, 3, 5, 10] as const;

/** Resolutions are those of ordinary field instruments (common practice, no source). */
export const INSTRUMENTS = {
  pressure_kPa: { id: 'pressure', resolution: 0.5, scatter: 0.2, lowest: 0, highest: 60 },
  headPressure_kPa: { id: 'headPressure', resolution: 10, scatter: 4, lowest: 0, highest: 700 },
  oxygen_mgL: { id: 'oxygen', resolution: 0.1, scatter: 0.08, lowest: 0, highest: 20 },
  level_m: { id: 'tape', resolution: 0.005, scatter: 0.003, lowest: 0, highest: 3 },
  current_A: { id: 'clamp', resolution: 0.1, scatter: 0.1, lowest: 0, highest: 100 },
  voltage_V: { id: 'volts', resolution: 0.1, scatter: 0.6, lowest: 0, highest: 600 },
  capacitance_uF: { id: 'microfarads', resolution: 0.1, scatter: 0.2, lowest: 0, highest: 200 },
  resistance_ohm: { id: 'ohms', resolution: 0.1, scatter: 0.05, lowest: 0, highest: 20_000 },
  insulation_Mohm: { id: 'insulation', resolution: 0.1, scatter: 0.03, lowest: 0, highest: 1000 },
  drawDown_Ls: { id: 'drawDown', resolution: 0.01, scatter: 0.012, lowest: 0, highest: 3 },
  totalChlorine_mgL: { id: 'totalChlorine', colours: CHLORINE_mgL, scatterShare: 0.1 },
  freeChlorine_mgL: { id: 'freeChlorine', colours: CHLORINE_mgL, scatterShare: 0.1 },
  pH: { id: 'pH', resolution: 0.5, scatter: 0.15, lowest: 6, highest: 9 },
  settled_mLL: { id: 'jar', resolution: 10, scatter: 5, lowest: 0, highest: 1000 },
  core_m: { id: 'core', resolution: 0.01, scatter: 0.004, lowest: 0, highest: 2 },
  meter_Ls: { id: 'waterMeter', resolution: 0.001, scatter: 0, lowest: 0, highest: 3 },
  chloride_mgL: { id: 'chloride', resolution: 10, scatter: 12, lowest: 30, highest: 3000 },
  scum_m: { id: 'scumProbe', resolution: 0.01, scatter: 0.006, lowest: 0, highest: 1 },
} as const satisfies Record<string, Instrument>;

/** What the instrument shows at its `use`-th reading. */
export function showing(instrument: Instrument, truth: number, seed: number, use: number): number {
  const chance = gaussian(seed, `instrument/${instrument.id}`, use);
  if ('colours' in instrument) return nearest(instrument.colours, truth * (1 + instrument.scatterShare * chance));
  const scattered = truth + instrument.scatter * chance;
  const steps = Math.round(
    Math.min(Math.max(scattered, instrument.lowest), instrument.highest) / instrument.resolution,
  );
  return steps * instrument.resolution;
}

function nearest(marks: readonly number[], value: number): number {
  return marks.reduce((best, mark) => (Math.abs(mark - value) < Math.abs(best - value) ? mark : best), 0);
}
