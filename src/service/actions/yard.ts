/** Out in the yard and at the truck: the clean-out, the disc filter, and what is said and written. */
import type { ActionDef, Doing } from '../action.ts';
import { say } from '../message.ts';
import { actionsAt, conditionOf, good, mendsAt, off, optionsOf } from './shared.ts';

/** What a record must hold to be of use to the next person and to the permit. */
export const RECORD_LINES = ['found', 'readings', 'mended', 'parts', 'proved', 'left-on-auto', 'follow-up'] as const;
/** What a household must be told, among things they must not be told. */
export const TOLD = [
  'what-was-wrong',
  'save-water-today',
  'what-alarm-means',
  'keep-lids-shut',
  'silence-each-time',
  'open-and-look',
] as const;

/** Water over the sewer's invert that counts as standing in it, m. */
const STANDING_m = 0.03;

const house = actionsAt('house');
const cleanOut = actionsAt('clean-out');
const discFilter = actionsAt('disc-filter');

export const YARD_ACTIONS: readonly ActionDef[] = [
  house('make-safe', 'operate', 3, (d) => {
    d.person.madeSafe = true;
    d.note(say('note.make-safe'), say('reading.made-safe'));
  }),
  house('ask-again', 'look', 2, (d) => d.note(say('note.history'), say('reading.said', { text: d.answers.history })), {
    handsOff: true,
  }),
  house(
    'look-at-traps',
    'look',
    5,
    (d) => {
      const dry = d.read().trapSeal_mm <= 0;
      d.note(
        say('note.traps'),
        say(dry ? 'reading.trap-dry' : 'reading.traps-full'),
        dry ? off('remark.trap') : undefined,
      );
    },
    { handsOff: true },
  ),
  mendsAt('house')('fill-trap', 2, { handsOff: true }),
  house(
    'dye-toilet',
    'look',
    12,
    (d) => {
      const leaks = conditionOf(d).clearWater_m3d > 0;
      d.note(
        say('note.toilets'),
        say(leaks ? 'reading.dye-comes' : 'reading.dye-stays'),
        leaks ? off('remark.toilet') : good('remark.ordinary'),
      );
    },
    { handsOff: true },
  ),
  mendsAt('house')('renew-flapper', 10, { handsOff: true, cost_usd: 8 }),
  house('write-record', 'say', 6, (d) => d.note(say('note.record'), say('reading.record')), {
    handsOff: true,
    form: [{ id: 'lines', kind: 'many', options: optionsOf('record', RECORD_LINES) }],
  }),
  house('tell-household', 'say', 4, (d) => d.note(say('note.household'), say('reading.told')), {
    handsOff: true,
    form: [{ id: 'told', kind: 'many', options: optionsOf('told', TOLD) }],
  }),
  house('leave-site', 'say', 1, (d) => d.note(say('note.leave'), say('reading.left')), { handsOff: true }),
  cleanOut('look-into-clean-out', 'look', 1, (d) => {
    const now = d.read();
    const full = now.flows.sewer_m > d.unit.spec.plant.trash.inlet_m + STANDING_m;
    d.learn({ backingUp: full, relief_Ls: now.flows.relieved * 1000 });
    d.note(
      say('note.clean-out'),
      say(full ? 'reading.stands-in-sewer' : 'reading.sewer-clear'),
      full ? off('remark.backed-up') : good('remark.ordinary'),
    );
  }),
  discFilter(
    'open-disc-filter',
    'look',
    4,
    (d) => {
      d.person.filterOpen = true;
      const share = conditionOf(d).filterFlow;
      d.learn({ filterFlow: share });
      const words = share > 0.85 ? 'filter-clean' : share > 0.15 ? 'filter-slimed' : 'filter-blocked';
      d.note(
        say('note.disc-filter'),
        say(`reading.${words}`),
        share > 0.85 ? good('remark.ordinary') : off('remark.filter'),
      );
    },
    { hindered: pumping },
  ),
  discFilter(
    'clean-disc-filter',
    'mend',
    10,
    (d) => {
      d.person.filterOpen = false;
      d.learn({ filterFlow: 1 });
      d.note(say('note.mended'), say('reading.clean-disc-filter'));
    },
    { hindered: pumping },
  ),
];

function pumping(_person: unknown, unit: Doing['unit']): ReturnType<typeof say> | undefined {
  return unit.control.outputs.pumpRuns ? say('why.pump-runs') : undefined;
}
