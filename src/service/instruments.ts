/** Honest instruments: a reading is the truth with the instrument's own scatter, rounded to its smallest step. */
import { gaussian } from '../plant/index.ts';

export interface Instrument {
  readonly id: string;
  /** Smallest step that can be read, and standard deviation of repeated readings, in the reading's own unit. */
  readonly resolution: number;
  readonly scatter: number;
  readonly lowest: number;
  readonly highest: number;
}

/** Resolutions are those of ordinary field instruments (common practice, no source). */
export const INSTRUMENTS = {
  pressure_kPa: { id: 'pressure', resolution: 0.5, scatter: 0.2, lowest: 0, highest: 60 },
  headPressure_kPa: { id: 'headPressure', resolution: 10, scatter: 4, lowest: 0, highest: 700 },
  oxygen_mgL: { id: 'oxygen', resolution: 0.1, scatter: 0.08, lowest: 0, highest: 20 },
  level_m: { id: 'tape', resolution: 0.005, scatter: 0.003, lowest: 0, highest: 3 },
  current_A: { id: 'clamp', resolution: 0.1, scatter: 0.1, lowest: 0, highest: 100 },
  voltage_V: { id: 'volts', resolution: 0.1, scatter: 0.6, lowest: 0, highest: 600 },
  resistance_ohm: { id: 'ohms', resolution: 0.1, scatter: 0.05, lowest: 0, highest: 20_000 },
  insulation_Mohm: { id: 'insulation', resolution: 0.1, scatter: 0.03, lowest: 0, highest: 1000 },
  drawDown_Ls: { id: 'drawDown', resolution: 0.01, scatter: 0.012, lowest: 0, highest: 3 },
} as const satisfies Record<string, Instrument>;

/** What the instrument shows at its `use`-th reading. */
export function showing(instrument: Instrument, truth: number, seed: number, use: number): number {
  const scattered = truth + instrument.scatter * gaussian(seed, `instrument/${instrument.id}`, use);
  const steps = Math.round(
    Math.min(Math.max(scattered, instrument.lowest), instrument.highest) / instrument.resolution,
  );
  return steps * instrument.resolution;
}
