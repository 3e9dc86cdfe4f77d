/**
 * Why a number is what it is: the parts it is made of at that instant, the equation that joins them, and where that comes
 * from. Everything open: for the debrief and for a trainer, never on a call. Each sum adds up to its number.
 */
import { STATE_SIZE } from '../plant/index.ts';
import { readout, type Unit } from '../unit/index.ts';
import { air, airFlow, intake, oxygen, stroke } from './why/air.ts';
import type { Instant, Told, WhyPart } from './why/instant.ts';
import { current, field, flow, head, passage } from './why/line.ts';
import { blanket, jar, liquor, scum, sediment, sludge } from './why/solids.ts';
import { aerationLevel, clarified, residual, rise, solidsOut, stay, tank } from './why/water.ts';
import { WHY_IDS, type WhyId } from './why-ids.ts';

export type { WhyPart };

export interface Why extends Told {
  readonly id: WhyId;
}

/** What tells each number; undefined where there is nothing of it at the instant. */
const TELLERS: Readonly<Record<WhyId, (here: Instant) => Told | undefined>> = {
  ...{ air, 'air-flow': airFlow, stroke, intake, oxygen },
  ...{ liquor, jar, blanket, rise, clarified, 'solids-out': solidsOut, residual },
  ...{ head, passage, field, flow, current },
  ...{ tank, 'aeration-level': aerationLevel, sediment, stay, sludge, scum },
};

/** Every number that can be told why, of a unit at an instant (s) between its last event and its horizon. */
export function whysOf(unit: Unit, t: number): readonly Why[] {
  const y = unit.stateAt(t, new Float64Array(STATE_SIZE));
  unit.passage.advance(y, t, unit.driveAt(t));
  const here: Instant = { unit, t, now: readout(unit, t), y };
  return WHY_IDS.flatMap((id) => {
    const why = TELLERS[id](here);
    return why === undefined ? [] : [{ id, ...why }];
  });
}
