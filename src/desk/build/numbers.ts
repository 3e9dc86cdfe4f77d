/** The numbers of a unit that Build offers to change; a file may change any of them. */
import type { Measure } from '../../service/message.ts';

export interface OfferedNumber {
  readonly path: string;
  readonly measure: Measure;
  /** What it is of, where its kind does not say. */
  readonly part?: string;
  /** Word for what it is. */
  readonly kind:
    | 'makes'
    | 'breaks'
    | 'run'
    | 'night'
    | 'every'
    | 'falls'
    | 'rises'
    | 'free-air'
    | 'restocked'
    | 'heads';
}

const FLOATS = ['redundantOffFloat', 'stopFloat', 'startStopFloat', 'doseFloat', 'overrideFloat', 'highWaterFloat'];

export const OFFERED_NUMBERS: readonly OfferedNumber[] = [
  ...FLOATS.flatMap((part): OfferedNumber[] => [
    { path: `panel.floats.${part}.makes_m`, measure: 'length_m', part, kind: 'makes' },
    { path: `panel.floats.${part}.breaks_m`, measure: 'length_m', part, kind: 'breaks' },
  ]),
  { path: 'panel.dosing.run_min', measure: 'duration_min', kind: 'run' },
  { path: 'panel.dosing.nightLimit_min', measure: 'duration_min', kind: 'night' },
  { path: 'panel.dosing.every_min', measure: 'duration_min', kind: 'every' },
  { path: 'panel.airSwitch.falls_kPa', measure: 'pressure_kPa', kind: 'falls' },
  { path: 'panel.airSwitch.rises_kPa', measure: 'pressure_kPa', kind: 'rises' },
  { path: 'plant.air.free_Lmin', measure: 'airFlow_Lmin', kind: 'free-air' },
  { path: 'plant.disinfection.restocked_d', measure: 'count', kind: 'restocked' },
  { path: 'plant.discharge.nozzles', measure: 'count', kind: 'heads' },
];
