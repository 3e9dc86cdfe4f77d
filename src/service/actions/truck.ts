/** A licensed hauler's truck: which tank it pumps out. What is left is seed; the unit needs days to weeks to come back. */
import type { HauledTank } from '../../plant/index.ts';
import type { ActionDef } from '../action.ts';
import { say } from '../message.ts';
import type { LidId, Place } from '../person.ts';
import { actionsAt } from './shared.ts';

/** A truck that comes for one tank, and its time at it (common practice, no source). */
const COST_usd = 350;
const MINUTES = 45;

const PLACES: Readonly<Record<HauledTank, Place>> = {
  trash: 'trash-tank',
  aeration: 'aeration',
  pump: 'pump-tank',
};

function pumpsOut(tank: HauledTank & LidId, more: Partial<ActionDef>): ActionDef {
  const place = PLACES[tank];
  return actionsAt(place)(
    `pump-out:${tank}`,
    'mend',
    MINUTES,
    (d) => {
      d.unit.haul(tank);
      d.note(say('note.mended'), say('reading.pump-out', { tank: say(`part.${place}`) }));
    },
    { label: say('act.pump-out', { tank: say(`part.${place}`) }), needs: { lid: tank }, cost_usd: COST_usd, ...more },
  );
}

export const TRUCK_ACTIONS: readonly ActionDef[] = [
  pumpsOut('trash', {}),
  // No air goes in before the truck has filled the chamber up again.
  pumpsOut('aeration', { lockOut: 'compressorBreaker' }),
  pumpsOut('pump', { lockOut: 'pumpBreaker' }),
];
