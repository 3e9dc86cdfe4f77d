/** What a household can have noticed when it calls: each tells from the unit whether it is so, by then or in the last days. */
import { notDisinfected } from '../plant/index.ts';
import { type Happening, readout, type Unit } from '../unit/index.ts';
import { isSmelt, sewageLies, standsFull } from './noticed.ts';
import { compressorHeard, HUMS_LABOURED } from './perceive.ts';

/** How far back a household remembers, s. */
const MEMORY_s = 36 * 3600;
/** Hours of the day at which nobody expects spray. */
const DAY_h = { from: 7, to: 21 } as const;

function byDay(t: number): boolean {
  const hour = (t % 86_400) / 3600;
  return hour >= DAY_h.from && hour < DAY_h.to;
}

function happened(unit: Unit, is: (event: Happening) => boolean): boolean {
  return unit.log.some((e) => e.t > unit.t - MEMORY_s && is(e));
}

export const SYMPTOMS = {
  'lamp-lit': (unit: Unit) => unit.control.outputs.lamp,
  'lamp-dark': (unit: Unit) => !unit.control.outputs.lamp,
  /** Where the field is dosed at night only; elsewhere it is nothing to wonder at. */
  'sprays-by-day': (unit: Unit) =>
    unit.spec.panel.dosing.kind === 'night' &&
    ((unit.control.outputs.pumpRuns && byDay(unit.t)) ||
      happened(unit, ({ what, t }) => what === 'pumpRuns.on' && byDay(t))),
  'smell-outdoors': (unit: Unit) => isSmelt(readout(unit, unit.t).sensed),
  'smell-chlorine': (unit: Unit) => readout(unit, unit.t).sensed.outdoors.kind === 'chlorine',
  'smell-indoors': (unit: Unit) => readout(unit, unit.t).sensed.indoors.kind !== 'none',
  /** Turbid or grey water from the heads, or as an inspector sampled it. */
  'cloudy-water': (unit: Unit) => readout(unit, unit.t).sensed.effluent !== 'clear',
  /** As an inspector found: germs and next to no chlorine. */
  'not-disinfected': (unit: Unit) => notDisinfected(readout(unit, unit.t).water.pump),
  'wet-lawn': (unit: Unit) => {
    const { fieldBreak_m, lineBreak_m, lowOutlet_m, soilTakes } = unit.driveAt(unit.t).condition;
    return fieldBreak_m + lineBreak_m + lowOutlet_m > 0 || soilTakes < 0.5;
  },
  'compressor-strained': (unit: Unit) => {
    const { compressorRuns, compressorLoad = 0 } = compressorHeard(unit, readout(unit, unit.t));
    return compressorRuns === true && compressorLoad > HUMS_LABOURED;
  },
  'compressor-silent': (unit: Unit) => !unit.control.outputs.compressorRuns,
  'slow-drains': (unit: Unit) => standsFull(readout(unit, unit.t).flows.sewer_m, unit.spec),
  'sewage-out': (unit: Unit) => sewageLies(readout(unit, unit.t)),
} as const satisfies Record<string, (unit: Unit) => boolean>;

export type SymptomId = keyof typeof SYMPTOMS;
export const SYMPTOM_IDS = Object.keys(SYMPTOMS) as [SymptomId, ...SymptomId[]];
