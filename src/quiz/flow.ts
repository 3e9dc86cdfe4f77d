/** Put the chambers in the order in which the water comes to them. */
import { PASSED } from '../plant/layout.ts';
import { say } from '../service/message.ts';
import { Draws } from './draws.ts';
import type { Maker } from './drill.ts';
import { ordering } from './sequence.ts';
import { unitRows } from './sheet.ts';

/** Whose water each opening of the plant passes on. */
const BEFORE: Readonly<Record<keyof typeof PASSED, string>> = {
  trashOut: 'trash-tank',
  slot: 'aeration',
  clarifierOut: 'clarifier',
  riserOut: 'disinfection',
};

/** The plant keeps its openings in flow order; the pump lifts from the last body of water, through the filter, to the field. */
function wayOfWater(): readonly string[] {
  const openings = Object.keys(PASSED) as (keyof typeof PASSED)[];
  const chambers = [...openings].sort((a, b) => PASSED[a] - PASSED[b]).map((opening) => BEFORE[opening]);
  return ['house', ...chambers, 'pump-tank', 'disc-filter', 'field'];
}

export const flowDrill: Maker = (seed, spec) => ({
  skill: 'flow',
  seed,
  prompt: say('drill.flow.ask'),
  figure: { kind: 'sheet', rows: unitRows(spec) },
  ask: ordering(new Draws(seed, 'flow'), 'flow', wayOfWater()),
});
