import type { ActionDef } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import type { LidId, Place } from '../person.ts';
import { noteSurface, noteWater } from './looks.ts';
import { actionsAt, good, off, plain } from './shared.ts';

const LID_PLACES: Readonly<Record<LidId, Place>> = {
  trash: 'trash-tank',
  aeration: 'aeration',
  riser: 'disinfection',
  pump: 'pump-tank',
};

function lidActions(lid: LidId): ActionDef[] {
  const make = actionsAt(LID_PLACES[lid]);
  const name = say(`lid.${lid}`);
  return [
    make(
      `open-lid:${lid}`,
      'operate',
      3,
      (d) => {
        d.person.lids.add(lid);
        d.note(say('note.lid', { lid: name }), say('reading.lid-off'), plain('remark.guard-lid'));
      },
      {
        label: say('act.open-lid', { lid: name }),
        hindered: (person) =>
          person.buried.has(lid) ? say('why.lid-buried') : person.lids.has(lid) ? say('why.lid-open') : undefined,
      },
    ),
    make(
      `close-lid:${lid}`,
      'operate',
      2,
      (d) => {
        d.person.lids.delete(lid);
        d.note(say('note.lid', { lid: name }), say('reading.lid-on'));
      },
      {
        label: say('act.close-lid', { lid: name }),
        hindered: (person) => (person.lids.has(lid) ? undefined : say('why.lid-closed')),
      },
    ),
  ];
}

/** Water this far under the outlet has gone elsewhere, m (convention). */
const BELOW_m = -0.03;

const trash = actionsAt('trash-tank');
const aeration = actionsAt('aeration');
const clarifier = actionsAt('clarifier');
const riser = actionsAt('disinfection');

export const TANK_ACTIONS: readonly ActionDef[] = [
  ...(['trash', 'aeration', 'riser', 'pump'] as const).flatMap(lidActions),
  trash(
    'look-into-trash-tank',
    'look',
    1,
    (d) => {
      const now = d.read();
      const above = now.flows.trash_m - d.unit.spec.plant.trash.outlet_m;
      d.learn({ trashLevel_m: now.flows.trash_m });
      if (above < BELOW_m) d.note(say('note.trash-tank'), say('reading.below-outlet'), off('remark.below-outlet'));
      else
        d.note(
          say('note.trash-tank'),
          say(above > 0.05 ? 'reading.backed-up' : 'reading.at-outlet'),
          above > 0.05 ? off('remark.backed-up') : good('remark.ordinary'),
        );
    },
    { needs: { lid: 'trash' } },
  ),
  aeration(
    'look-into-aeration',
    'look',
    1,
    (d) => {
      const now = d.read();
      d.learn({ bubbles_Lmin: now.flows.air.diffuser_Lmin, aerationLevel_m: now.flows.aeration_m });
      d.learn({ liquorColour: noteWater(d, 'aeration') });
      noteSurface(d);
    },
    { needs: { lid: 'aeration' } },
  ),
  aeration(
    'measure-oxygen',
    'measure',
    4,
    (d) => {
      const oxygen = d.measure(INSTRUMENTS.oxygen_mgL, d.read().oxygen_mgL);
      d.learn({ oxygen_mgL: oxygen });
      d.note(
        say('note.oxygen'),
        say('reading.oxygen', { c: quantity('concentration_mgL', oxygen, 0.1) }),
        oxygen < 2 ? off('remark.oxygen-want') : good('remark.oxygen-want'),
      );
    },
    { needs: { lid: 'aeration' } },
  ),
  clarifier(
    'look-into-clarifier',
    'look',
    1,
    (d) => {
      const now = d.read();
      d.learn({ aerationLevel_m: now.flows.aeration_m, clarifierColour: noteWater(d, 'clarifier') });
      const above = now.flows.aeration_m - d.unit.spec.plant.aeration.outlet_m;
      d.note(
        say('note.clarifier'),
        say(above > 0.05 ? 'reading.backed-up' : 'reading.at-outlet'),
        above > 0.05 ? off('remark.backed-up') : good('remark.ordinary'),
      );
    },
    { needs: { lid: 'aeration' } },
  ),
  riser(
    'look-into-riser',
    'look',
    1,
    (d) => {
      const now = d.read();
      const backed = now.flows.pump_m > d.unit.spec.plant.pump.inlet_m + 0.02;
      d.learn({
        riserLevel_m: Math.max(now.flows.pump_m, d.unit.spec.plant.pump.inlet_m),
        riserColour: noteWater(d, 'riser'),
      });
      d.note(
        say('note.riser'),
        say(backed ? 'reading.backed-up' : 'reading.at-outlet'),
        backed ? off('remark.backed-up') : good('remark.ordinary'),
      );
    },
    { needs: { lid: 'riser' } },
  ),
];
