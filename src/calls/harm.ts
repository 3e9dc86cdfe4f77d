/** What a call did to the lawn, the works and the household, beside what it cost. Shown, never scored. */
import { emptyFlows } from '../plant/index.ts';
import { standsFull } from '../service/index.ts';
import { readout, type Unit } from '../unit/index.ts';
import { isCleared, trueFaults } from './flags.ts';
import { phaseOf } from './procedure.ts';
import type { CallSession } from './session.ts';

/** Adds up how long the house's drains stood full from an instant on. To be given to a session as its observer. */
export class DrainsWatch {
  private readonly from_s: number;
  private last_s: number;
  private stood = false;
  seconds = 0;

  constructor(from_s: number) {
    this.from_s = from_s;
    this.last_s = from_s;
  }

  /** Looks at the unit after each of its steps; what stood at both ends of a step stood all through it. */
  readonly look = (unit: Unit): void => {
    if (unit.t < this.from_s) return;
    const stands = standsFull(sewerLevel_m(unit), unit.spec);
    if (stands && this.stood) this.seconds += unit.t - this.last_s;
    this.last_s = unit.t;
    this.stood = stands;
  };
}

function sewerLevel_m(unit: Unit): number {
  return unit.works.observe(unit.driveAt(unit.t), unit.y, emptyFlows()).sewer_m;
}

export interface Harm {
  readonly needlessParts: number;
  readonly needlessMoney_usd: number;
  /** Drives beyond the first: for a part that was not on the truck, or because a cause still stands. */
  readonly furtherDrives: number;
  readonly shortOfAir_m3: number;
  /** Over the clean-out, indoors, and out of the trash tank. */
  readonly ontoTheGround_m3: number;
  readonly hoursWithoutOxygen: number;
  /** To the field though the rule forbids it, and hours that the stored water was not disinfected. */
  readonly untreated_m3: number;
  readonly hoursUndisinfected: number;
  readonly hoursWithoutDrains: number;
}

export function harmOf(session: CallSession, drains: DrainsWatch): Harm {
  const { unit } = session.service;
  const end = readout(unit, unit.t);
  const needless = session.done.filter((d) => d.outcome.needless);
  return {
    needlessParts: needless.length,
    needlessMoney_usd: needless.reduce((sum, { def }) => sum + (def.cost_usd ?? 0), 0),
    furtherDrives: session.done.filter((d) => d.outcome.fetched).length + (mustComeBack(session) ? 1 : 0),
    shortOfAir_m3: end.shortOfAir_m3,
    ontoTheGround_m3: end.relieved_m3 + end.indoors_m3 + end.leaked_m3,
    hoursWithoutOxygen: end.hoursWithoutOxygen,
    untreated_m3: end.untreated_m3,
    hoursUndisinfected: end.undisinfected_h,
    hoursWithoutDrains: drains.seconds / 3600,
  };
}

/** A call that ended while a cause stands, or that was stopped, wants somebody once more. */
function mustComeBack(session: CallSession): boolean {
  return phaseOf(session.procedure) === 'stopped' || !trueFaults(session).every((key) => isCleared(session, key));
}
