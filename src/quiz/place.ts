/** Point at the part of the works where a fault sits, as the catalogue has it. */

import type { FaultPlace } from '../faults/entry.ts';
import { type FaultFamily, faultsOf, type PlacedFault } from '../faults/index.ts';
import { say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { Draws } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { nameOf } from './faultNames.ts';

const FAMILIES: readonly FaultFamily[] = ['air', 'floats', 'pump', 'field', 'solids', 'disinfection', 'ground'];
/** What other makes have elsewhere, what lies along the way and not in one place, and what has its place in its name. */
const ELSEWHERE =
  /^(air-switch|sensing-tube|insects|capacitor|floats-swapped|siphoning|storm|clear-water|lid-|sewer|tank-leaks|pump-tank|disc-filter|compressor)/;

function pointable(spec: UnitSpec): readonly PlacedFault[] {
  return faultsOf(spec).filter(({ id, family }) => FAMILIES.includes(family) && !ELSEWHERE.test(id));
}

/** From the house to the field, as the plan is drawn. */
const PARTS: readonly FaultPlace[] = [
  ...(['house', 'clean-out', 'trash-tank', 'aeration', 'clarifier', 'disinfection'] as const),
  ...(['pump-tank', 'disc-filter', 'spray-field', 'compressor', 'panel'] as const),
];

export const placeDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'place');
  const fault = draws.one(pointable(spec));
  const values = { fault: nameOf(fault), part: say(`part.${fault.place}`) };
  const shown = say('drill.place.shown', values);
  const next = say('drill.place.next');
  const option = (id: FaultPlace): Option => ({
    id,
    label: say('drill.option', { label: say(`part.${id}`) }),
    why:
      id === fault.place
        ? say('drill.three', { a: shown, b: say(`drill.place.holds.${id}`), c: next })
        : say('drill.three', { a: say(`drill.place.holds.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'place',
    seed,
    prompt: say('drill.place.ask', values),
    figure: { kind: 'plan', parts: PARTS },
    ask: { kind: 'point', right: fault.place, options: PARTS.map(option) },
  };
};
