/**
 * What a fault is to the engine: a patch on plant, thresholds, control and clock that begins at an instant, may grow,
 * may come and go, and ends when it is mended. The catalogue (`faults/`) holds patches as data; this applies them.
 */
import type { ControlEventName, FloatName } from '../control/index.ts';
import { draw, exponential, type Gathered, type PlantCondition, SOUND } from '../plant/index.ts';

export interface FaultEffect {
  /** Entries of the plant's condition at full severity; in between they go evenly from sound to this. */
  readonly plant?: Partial<Readonly<PlantCondition>>;
  /** Shift of the height at which a float makes and breaks, m, at full severity. */
  readonly floats?: Partial<Readonly<Record<FloatName, number>>>;
  /** The same where it is how the float is tied: a rule shows it, whatever the float weighs or rides on. */
  readonly tethers?: Partial<Readonly<Record<FloatName, number>>>;
  /** Shift of the pressures at which the air switch turns, kPa, at full severity. */
  readonly airSwitch_kPa?: number;
  /** Control events at its onset and at its end (an end that leaves nothing to undo has none). */
  readonly control?: { readonly starts: readonly ControlEventName[]; readonly ends: readonly ControlEventName[] };
  /** Hours the panel clock is shifted by at full severity. */
  readonly clock_h?: number;
  /** Extra uses of a fixture, so many, so far apart. */
  readonly uses?: { readonly fixture: string; readonly times: number; readonly every_min: number };
  /** Days from the onset on which nobody is at home. */
  readonly away_d?: number;
  /** What has gathered in the tanks, there at once at the onset: only a hauler's truck takes it away again. */
  readonly gathers?: Gathered;
  /** Share of its colour that a test strip of the technician's shows, at full severity. */
  readonly strips?: number;
}

/**
 * Always there until it is mended; for so many hours and then over; or on and off with mean hours (exponential waiting
 * times from the fault's own stream).
 */
export type FaultPresence = 'always' | { readonly for_h: number } | { readonly on_h: number; readonly off_h: number };

/** One fault of one property. Times are engine seconds. */
export interface UnitFault {
  readonly id: string;
  readonly effect: FaultEffect;
  readonly onset_s: number;
  /** 0 to 1, reached evenly over `ramp_s` after the onset. */
  readonly severity: number;
  readonly ramp_s: number;
  readonly present: FaultPresence;
}

/** A fault in a running unit. */
export interface FaultState {
  readonly fault: UnitFault;
  readonly switches: readonly number[];
  /** When it ends for good: at once by a mend, later where it fades. */
  mended_s: number;
  /** Since when it fades evenly, until `mended_s`. */
  fades_s: number | undefined;
}

/** A fault that has not been mended yet. */
export function faultState(fault: UnitFault, seed: number): FaultState {
  return { fault, switches: switchInstants(fault, seed), mended_s: Number.POSITIVE_INFINITY, fades_s: undefined };
}

const INTERMITTENT_DAYS = 60;

/** Instants at which a fault turns on, off, on, ... (first on at its onset), for as long as a call can last. */
export function switchInstants(fault: UnitFault, seed: number): number[] {
  if (fault.present === 'always') return [fault.onset_s];
  if ('for_h' in fault.present) return [fault.onset_s, fault.onset_s + Math.round(fault.present.for_h * 3600)];
  const instants = [fault.onset_s];
  const end = fault.onset_s + INTERMITTENT_DAYS * 86_400;
  let t = fault.onset_s;
  for (let i = 0; t < end; i++) {
    const mean_s = (i % 2 === 0 ? fault.present.on_h : fault.present.off_h) * 3600;
    t += Math.max(1, Math.floor(exponential(mean_s, draw(seed, `fault/${fault.id}`, i))));
    instants.push(t);
  }
  return instants;
}

/** Whether a fault is there at an instant (its first instant included). */
export function isPresent(state: FaultState, t: number): boolean {
  if (t >= state.mended_s) return false;
  let on = false;
  for (const at of state.switches) {
    if (at > t) break;
    on = !on;
  }
  return on;
}

/** Whether it is over for good: mended, or past its last switching off. */
export function isOver(state: FaultState, t: number): boolean {
  const { switches, mended_s } = state;
  return t >= mended_s || (switches.length % 2 === 0 && (switches.at(-1) ?? Number.POSITIVE_INFINITY) <= t);
}

/** How far it has come, 0 to its severity. */
export function severityAt(state: FaultState, t: number): number {
  if (!isPresent(state, t)) return 0;
  const { fades_s, mended_s } = state;
  if (fades_s === undefined || t <= fades_s) return grownAt(state.fault, t);
  return (grownAt(state.fault, fades_s) * (mended_s - t)) / (mended_s - fades_s);
}

function grownAt({ onset_s, ramp_s, severity }: UnitFault, t: number): number {
  return ramp_s <= 0 || t >= onset_s + ramp_s ? severity : (severity * (t - onset_s)) / ramp_s;
}

/** Whether the plant's condition changes with time right after an instant. */
export function isGrowing(state: FaultState, t: number): boolean {
  if (!isPresent(state, t)) return false;
  return state.fades_s !== undefined || t < state.fault.onset_s + state.fault.ramp_s;
}

/** First instant after `t` at which a fault starts, stops, is fully grown or has faded. */
export function nextFaultInstant(state: FaultState, t: number): number {
  if (t >= state.mended_s) return Number.POSITIVE_INFINITY;
  let next = state.switches.find((at) => at > t) ?? Number.POSITIVE_INFINITY;
  const grown = state.fault.onset_s + state.fault.ramp_s;
  if (grown > t && grown < next) next = grown;
  return Math.min(next, state.mended_s);
}

/** How entries of the condition add up when two faults touch the same one. */
const COMBINE: Readonly<Record<keyof PlantCondition, (a: number, b: number) => number>> = {
  lineHole_m: wider,
  jointHole_m: wider,
  compressorFlow: times,
  compressorPressure: times,
  intakeLoss_kPa_per_Lmin2: plus,
  filterFlow: times,
  pumpHead: times,
  pumpLoss: times,
  weepHole: times,
  checkFlow: times,
  checkHolds: times,
  lineBreak_m: wider,
  fieldBreak_m: wider,
  openingsLeft: times,
  zonesOpen: times,
  lowOutlet_m: Math.max,
  soilTakes: times,
  diffuserLoss: times,
  transfer: times,
  volumeIndex: times,
  disinfectantFeed: times,
  disinfectantStrength: times,
  disinfectantStock: times,
  sleeveLight: times,
  bleach_gd: plus,
  quaternary_gd: plus,
  salt_gd: plus,
  grease_gd: plus,
  trapsUsed: times,
  clearWater_m3d: plus,
  seepage_m2: plus,
  sewerFlow: times,
  inletFlow: times,
  outletFlow: times,
  trashLeak_m2d: plus,
  lidGap: plus,
  roof_m2: plus,
  drainGap: plus,
  ventFlow: times,
  baffle: times,
  slotOpen: times,
  lineWater_m: plus,
};

function times(a: number, b: number): number {
  return a * b;
}

function plus(a: number, b: number): number {
  return a + b;
}

/** Two holes pass what one hole of their joint area passes. */
function wider(a: number, b: number): number {
  return Math.sqrt(a * a + b * b);
}

/** The plant's condition at an instant, written into `out`. */
export function conditionAt(states: readonly FaultState[], t: number, out: PlantCondition): PlantCondition {
  Object.assign(out, SOUND);
  for (const state of states) {
    const plant = state.fault.effect.plant;
    if (!plant) continue;
    const severity = severityAt(state, t);
    if (severity === 0) continue;
    for (const key of Object.keys(plant) as (keyof PlantCondition)[]) {
      const worst = plant[key];
      if (worst !== undefined) out[key] = COMBINE[key](out[key], SOUND[key] + severity * (worst - SOUND[key]));
    }
  }
  return out;
}

/** Share of its colour that a test strip shows at an instant. */
export function stripColour(states: readonly FaultState[], t: number): number {
  let share = 1;
  for (const state of states) share *= 1 - severityAt(state, t) * (1 - (state.fault.effect.strips ?? 1));
  return share;
}

/** Shift of a float's heights at an instant, m. */
export function floatShift(states: readonly FaultState[], float: FloatName, t: number): number {
  let shift = tetherShift(states, float, t);
  for (const state of states) shift += severityAt(state, t) * (state.fault.effect.floats?.[float] ?? 0);
  return shift;
}

/** The part of a float's shift that comes from how it is tied, m. */
export function tetherShift(states: readonly FaultState[], float: FloatName, t: number): number {
  let shift = 0;
  for (const state of states) shift += severityAt(state, t) * (state.fault.effect.tethers?.[float] ?? 0);
  return shift;
}

/** Shift of the air switch's pressures at an instant, kPa. */
export function switchShift_kPa(states: readonly FaultState[], t: number): number {
  let shift = 0;
  for (const state of states) shift += severityAt(state, t) * (state.fault.effect.airSwitch_kPa ?? 0);
  return shift;
}

/** Shift of the panel clock at an instant, s. */
export function clockShift(states: readonly FaultState[], t: number): number {
  let shift = 0;
  for (const state of states) shift += severityAt(state, t) * (state.fault.effect.clock_h ?? 0) * 3600;
  return shift;
}

/** How fast a growing or fading fault changes, severity a second. */
function growth_per_s({ fault, fades_s, mended_s }: FaultState, t: number): number {
  if (fades_s === undefined || t < fades_s) return fault.severity / fault.ramp_s;
  return -grownAt(fault, fades_s) / (mended_s - fades_s);
}

/** How fast the panel clock gains on true time right after an instant, s/s; even until the next fault instant. */
export function clockDrift(states: readonly FaultState[], t: number): number {
  let drift = 0;
  for (const state of states) {
    const { effect } = state.fault;
    if (effect.clock_h !== undefined && isGrowing(state, t)) drift += growth_per_s(state, t) * effect.clock_h * 3600;
  }
  return drift;
}
