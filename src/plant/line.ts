/**
 * The line from the effluent pump to the field as faults have left it: pump, check valve, disc filter, buried pipe, and
 * everything that is open at its end. Heads in m, flows in L/s, elevations in m from grade.
 */
import { type DischargeLine, filterLoss, orificeFlow, pressureOf, pumpFlow } from './hydraulics.ts';
import { exp, PI } from './num.ts';
import type { DischargeSpec } from './spec.ts';

/** What faults do from the pump to the field and to its ground: neutral in a sound unit. */
export interface LineCondition {
  /** Share of its clean flow that the disc filter lets through. */
  filterFlow: number;
  /** Pump: what wear or air leaves of its head, and factor of the loss within it (dirt in its screen or impeller). */
  pumpHead: number;
  pumpLoss: number;
  /** What is open of the small hole in the pipe over the pump, which lets air out of the pump and breaks a siphon. */
  weepHole: number;
  /** Check valve: share of the sound flow that it lets out, and of the line's water that it holds back after a run. */
  checkFlow: number;
  checkHolds: number;
  /** Bores of openings that do not belong there, m: of the buried line before the field, and in the field itself. */
  lineBreak_m: number;
  fieldBreak_m: number;
  /** Shares of the field's openings that are free, and of its zones that are let in. */
  openingsLeft: number;
  zonesOpen: number;
  /** Depth under grade of an outlet of the line that stands open while the pump rests, m; 0 where there is none. */
  lowOutlet_m: number;
  /** Share of a dose that the ground takes in as it comes. */
  soilTakes: number;
}

export const WHOLE_LINE: LineCondition = {
  filterFlow: 1,
  pumpHead: 1,
  pumpLoss: 1,
  weepHole: 1,
  checkFlow: 1,
  checkHolds: 1,
  lineBreak_m: 0,
  fieldBreak_m: 0,
  openingsLeft: 1,
  zonesOpen: 1,
  lowOutlet_m: 0,
  soilTakes: 1,
};

/** The line in its present state: the same terms, with the losses of filter and check valve, m per (L/s)^2. */
export interface LineState extends DischargeLine {
  readonly filter: number;
  readonly check: number;
  /** Elevation of the outlet through which it drains with the pump at rest, and how freely: 0 while air breaks the siphon. */
  readonly lowOutlet_m: number;
  readonly siphons: number;
}

/** A field with less than this share of its openings is a dead end. */
const LEAST_OPEN = 1e-3;

export function lineState(line: DischargeLine, condition: LineCondition): LineState {
  return {
    ...line,
    // Affinity: what turns slower or reaches less far loses head at every flow alike, H = r2 H0 - a Q2 (pump handbooks).
    shutoff_m: line.shutoff_m * condition.pumpHead,
    pump: line.pump * condition.pumpLoss,
    nozzles: fieldLoss(line, condition),
    filter: filterLoss(line, condition.filterFlow),
    check: filterLoss(line, condition.checkFlow) - line.cleanFilter,
    lowOutlet_m: -condition.lowOutlet_m,
    siphons: condition.lowOutlet_m > 0 ? 1 - condition.weepHole : 0,
  };
}

/** Loss of all that is open at the line's end, side by side: what each passes under one metre adds up. */
function fieldLoss(line: DischargeLine, condition: LineCondition): number {
  const left = condition.openingsLeft * condition.zonesOpen;
  const broken = openEnd(condition.lineBreak_m) + openEnd(condition.fieldBreak_m);
  if (left >= 1 && broken === 0) return line.nozzles;
  const passes = Math.max(left, LEAST_OPEN) / Math.sqrt(line.nozzles) + broken;
  return 1 / (passes * passes);
}

/** What an open pipe end passes under one metre of head, L/s: all of it becomes speed. */
function openEnd(bore_m: number): number {
  return 1000 * orificeFlow(bore_m, 1, 1);
}

/** Flow of the running pump into the line, L/s, with the tank's water at a level. */
export function pumpedFlow(line: LineState, level_m: number): number {
  return pumpFlow(line, line.nozzleElevation_m - level_m, line.filter + line.check);
}

/** The low outlet: a drain of the line of 10 mm, Cd 0.6 (convention); what it passes under one metre, L/s. */
const LOW_OUTLET = 1000 * orificeFlow(0.01, 1, 0.6);

/**
 * Flow of the resting pump's line, L/s: where nothing lets air in, water runs on to an outlet that lies lower than the
 * tank's. A pump at rest costs what the running one does at that flow, and gives nothing (convention).
 */
export function siphonFlow(line: LineState, level_m: number): number {
  const resting = { ...line, shutoff_m: 0, nozzles: 1 / (LOW_OUTLET * LOW_OUTLET) };
  return line.siphons * pumpFlow(resting, line.lowOutlet_m - level_m, line.filter + line.check);
}

/** Time in which the line runs back through an open check valve, s: 17 L under 2 m of head (convention). */
const RUNS_BACK_s = 20;

/** What comes back into the tank so long after the pump stopped, m3/s; in all what the pipe holds and the valve does not. */
export function runsBack(discharge: DischargeSpec, checkHolds: number, stopped_s: number): number {
  const held_m3 = (PI / 4) * discharge.pipeBore_m * discharge.pipeBore_m * discharge.pipeLength_m;
  return ((1 - checkHolds) * held_m3 * exp(-stopped_s / RUNS_BACK_s)) / RUNS_BACK_s;
}

/** What gauges at grade read along the line while the pump runs, kPa. */
export interface LinePressures {
  /** Over the pump, under its check valve; there with a valve behind it shut; before and after the disc filter. */
  readonly pump: number;
  readonly shut: number;
  readonly beforeFilter: number;
  readonly afterFilter: number;
}

/** With the tank's water at a level, and so much of its prime that the pump has. */
export function linePressures(line: LineState, level_m: number, prime: number): LinePressures {
  const flow = pumpedFlow(line, level_m);
  const under = (loss: number) => prime * pressureOf(line.shutoff_m + level_m - loss * flow * flow);
  return {
    pump: under(line.pump),
    shut: under(0),
    beforeFilter: under(line.pump + line.check),
    afterFilter: under(line.pump + line.check + line.filter),
  };
}

/**
 * Current of the running pump as a share of the rated one. Of the shaft's power a part turns an empty impeller; the rest
 * grows with flow and head, along the falling head that the vanes give (Euler), to its most at run-out. Shares are
 * conventions: a third of the rated current turning in air, nearly half against a shut valve, 0.95 at the design flow.
 */
export function pumpCurrentShare(line: DischargeLine, pumpHead: number, flow_Ls: number): number {
  const ofRunOut = flow_Ls / Math.sqrt(line.shutoff_m / line.pump);
  return 0.35 + pumpHead * (0.1 + 0.75 * ofRunOut * (2 - ofRunOut));
}
