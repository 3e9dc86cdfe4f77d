/** Drills on one skill each. */
import { say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { airLineDrill } from './airLine.ts';
import type { Drill, Maker, Skill, System } from './drill.ts';
import { floatsDrill } from './floats.ts';
import { flowDrill } from './flow.ts';
import { gasDrill } from './gas.ts';
import { happensDrill } from './happens.ts';
import { jarDrill } from './jar.ts';
import { limitsDrill } from './limits.ts';
import { lockedDrill } from './locked.ts';
import { lockOutDrill } from './lockOut.ts';
import { meterDrill } from './meter.ts';
import { gaugeDrill, leakDrill, oxygenDrill } from './numbers/air.ts';
import { chlorineDrill, ctDrill, tabletsDrill } from './numbers/chlorine.ts';
import { countersDrill } from './numbers/counters.ts';
import { ampsDrill } from './numbers/electric.ts';
import { loadDrill, overflowDrill, pumpOutDrill, sludgeDrill } from './numbers/solids.ts';
import { detentionDrill, drawDownDrill, floatGapDrill, timerDrill } from './numbers/water.ts';
import { panelDrill } from './panel.ts';
import { phoneDrill } from './phone.ts';
import { placeDrill } from './place.ts';
import { risingDrill } from './rising.ts';
import { sampleDrill } from './sample.ts';
import { splitDrill } from './split.ts';
import { TOPIC_OF } from './topics.ts';
import { urgentDrill } from './urgent.ts';

const MAKERS: Readonly<Record<Skill, Maker>> = {
  floats: floatsDrill,
  'air-line': airLineDrill,
  jar: jarDrill,
  panel: panelDrill,
  meter: meterDrill,
  flow: flowDrill,
  rising: risingDrill,
  detention: detentionDrill,
  'float-gap': floatGapDrill,
  'draw-down': drawDownDrill,
  timer: timerDrill,
  gauge: gaugeDrill,
  oxygen: oxygenDrill,
  leak: leakDrill,
  load: loadDrill,
  sludge: sludgeDrill,
  'pump-out': pumpOutDrill,
  overflow: overflowDrill,
  chlorine: chlorineDrill,
  tablets: tabletsDrill,
  ct: ctDrill,
  sample: sampleDrill,
  amps: ampsDrill,
  place: placeDrill,
  happens: happensDrill,
  split: splitDrill,
  phone: phoneDrill,
  lockout: lockOutDrill,
  locked: lockedDrill,
  urgent: urgentDrill,
  gas: gasDrill,
  limits: limitsDrill,
  counters: countersDrill,
};

/** The drill of a skill with these numbers, on a unit, its sums in a system of units. */
export function drill(skill: Skill, seed: number, spec: UnitSpec, system: System = 'us'): Drill {
  const made = MAKERS[skill](seed, spec, system);
  return { ...made, topic: TOPIC_OF[skill], source: say(`drill.source.${skill}`) };
}
