/** At the trash tank: its lids and risers, its tees, the salt in its water. */
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { type Message, quantity, say } from '../message.ts';
import type { Note } from '../person.ts';
import { actionsAt, conditionOf, good, mendsAt, off, plain } from './shared.ts';

/** Share of its clear flow below which a tee is seen to be packed, and below which a baffle is seen to be gone (convention). */
const PACKED = 0.5;
const GONE = 0.7;

function lookAtTees(d: Doing): void {
  const { baffle, inletFlow, outletFlow } = conditionOf(d);
  const wipes = inletFlow < PACKED;
  d.note(
    say('note.inlet-tee'),
    say(wipes ? 'reading.tee-wipes' : 'reading.tee-clear'),
    wipes ? off('remark.filter') : good('remark.ordinary'),
  );
  const lost = baffle < GONE;
  const packed = outletFlow < PACKED;
  d.note(
    say('note.outlet-tee'),
    say(lost ? 'reading.baffle-gone' : packed ? 'reading.tee-packed' : 'reading.tee-clear'),
    lost ? off('remark.baffle') : packed ? off('remark.filter') : good('remark.ordinary'),
  );
}

/** Opening by which a lid is felt not to be tight (convention). */
const LOOSE = 0.2;

function lookAtLids(d: Doing): void {
  const unsafe = d.unit.has('lid-unsafe');
  const loose = conditionOf(d).lidGap >= LOOSE;
  const what = say('note.lids');
  if (unsafe) d.note(what, say('reading.lid-cracked'), off('remark.lid-hazard'));
  if (loose) d.note(what, say('reading.lid-no-gasket'), off('remark.lid-gap'));
  if (!unsafe && !loose) d.note(what, say('reading.lids-sound'), good('remark.ordinary'));
}

function riserWords(d: Doing): { readonly reading: Message; readonly remark: Note['remark'] } {
  if (conditionOf(d).seepage_m2 <= 0) return { reading: say('reading.riser-dry'), remark: good('remark.ordinary') };
  const raining = d.unit.weather.rain_mmh(d.unit.t) > 0;
  return { reading: say(raining ? 'reading.riser-runs' : 'reading.riser-stained'), remark: off('remark.clear-water') };
}

function lookAtRisers(d: Doing): void {
  const { reading, remark } = riserWords(d);
  d.note(say('note.riser-joint'), reading, remark);
}

/** Chloride in common salt, by weight, and what a supply and a household leave without a softener, mg/L (common practice, no source). */
const CHLORIDE = 0.607;
const ORDINARY_mgL = 60;
/** Over this water tastes of salt: EPA's secondary standard for drinking water, mg/L (from memory). */
const SALTY_mgL = 250;

function dipChloride(d: Doing): void {
  const truth = ORDINARY_mgL + CHLORIDE * d.read().water.trash.salt_mgL;
  const read = d.measure(INSTRUMENTS.chloride_mgL, truth);
  d.note(
    say('note.chloride'),
    say('reading.chloride', { c: quantity('concentration_mgL', read, 10) }),
    read > SALTY_mgL
      ? off('remark.brine')
      : plain('remark.chloride', { c: quantity('concentration_mgL', SALTY_mgL, 10) }),
  );
}

const at = actionsAt('trash-tank');
const mend = mendsAt('trash-tank');
const needs = { lid: 'trash' } as const;

export const TRASH_TANK_ACTIONS: readonly ActionDef[] = [
  at('look-at-lids', 'look', 4, lookAtLids),
  at('look-at-risers', 'look', 3, lookAtRisers, { needs }),
  at('look-at-tees', 'look', 4, lookAtTees, { needs }),
  at('dip-chloride', 'measure', 4, dipChloride, { needs }),
  mend('seal-lid', 15, { cost_usd: 25 }),
  mend('renew-lid', 25, { cost_usd: 95 }),
  mend('seal-riser', 60, { cost_usd: 40, needs }),
  mend('clear-inlet', 20, { needs }),
  mend('clear-outlet', 20, { needs }),
  mend('refit-baffle', 30, { cost_usd: 35, needs }),
  // A contractor empties the tank first, and seals it from above and from outside: nobody goes in.
  at(
    'repair-tank',
    'mend',
    240,
    (d) => {
      d.unit.haul('trash');
      d.note(say('note.mended'), say('reading.repair-tank'));
    },
    { cost_usd: 1200, needs },
  ),
];
