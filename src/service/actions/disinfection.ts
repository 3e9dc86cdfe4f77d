/** At the disinfection riser: what is left of the chlorine and how strong it is, its feed, the ultraviolet lamp. */
import type { DisinfectionSpec } from '../../plant/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import { chlorine } from './samples.ts';
import { actionsAt, conditionOf, good, mendsAt, off, plain } from './shared.ts';

const at = actionsAt('disinfection');

function by(...kinds: readonly DisinfectionSpec['kind'][]): Partial<ActionDef> {
  return { needs: { lid: 'riser' }, fits: (spec) => kinds.includes(spec.plant.disinfection.kind) };
}

const LIQUID = by('liquid');
const TABLETS = by('tablets');
const CHLORINE = by('liquid', 'tablets');
/** Strips are tried beside the truck: no lid need be off. */
const STRIPS: Partial<ActionDef> = { fits: (spec) => spec.plant.disinfection.kind !== 'ultraviolet' };
/** The lamp is fed by the compressor's circuit. */
const LAMP = by('ultraviolet');
const LAMP_LOCKED = { ...LAMP, lockOut: 'compressorBreaker' } as const;

/** A store this low, as an eye reads it to a tenth, is filled up at once (convention). */
const LOW = 0.2;

function lookAtDisinfectant(d: Doing): void {
  const share = Math.round(d.read().stock.share * 10) / 10;
  d.note(
    say('note.store'),
    share === 0 ? say('reading.store-empty') : say('reading.store', { share: quantity('share', share, 0.1) }),
    share <= LOW ? off('remark.fill-up') : good('remark.ordinary'),
  );
}

/** Share of the sound feed that is seen to run: some drops, and far too much (convention). */
const SOME = 0.02;
const SCANT = 0.7;
const MUCH = 1.5;

/** Nothing is fed while no water passes: a cup of water is poured in, and the feed watched. */
function watchFeed(d: Doing): void {
  const feed = conditionOf(d).disinfectantFeed;
  const what = say('note.feed');
  if (d.read().stock.share < SOME) d.note(what, say('reading.store-empty'), off('remark.not-disinfected'));
  else if (d.unit.spec.plant.disinfection.kind === 'tablets') {
    if (feed < SCANT) d.note(what, say('reading.tablets-dry'), off('remark.not-disinfected'));
    else if (feed > MUCH) d.note(what, say('reading.tablets-drowned'), off('remark.too-much-chlorine'));
    else d.note(what, say('reading.tablets-wet'), good('remark.ordinary'));
  } else if (feed > MUCH) d.note(what, say('reading.feed-much'), off('remark.too-much-chlorine'));
  else if (feed >= SCANT) d.note(what, say('reading.feed-right'), good('remark.ordinary'));
  else if (feed >= SOME) d.note(what, say('reading.feed-little'), off('remark.not-disinfected'));
  else d.note(what, say('reading.feed-air'), off('remark.not-disinfected'));
}

/** 1 mL in 10 L: g/L of the store become tenths of mg/L under the strip (common practice, no source). */
const DILUTED_mgL_per_gL = 0.1;

function testHypochlorite(d: Doing): void {
  const { disinfection } = d.unit.spec.plant;
  if (disinfection.kind !== 'liquid') return;
  const { share, strength } = d.read().stock;
  if (share < SOME) {
    d.note(say('note.hypochlorite'), say('reading.store-empty'), off('remark.fill-up'));
    return;
  }
  const fresh_mgL = disinfection.strength_gL * DILUTED_mgL_per_gL;
  const truth_mgL = fresh_mgL * strength * conditionOf(d).disinfectantStrength;
  const read_mgL = d.measure(INSTRUMENTS.totalChlorine_mgL, d.unit.stripColour() * truth_mgL);
  const fresh = { fresh: chlorine(fresh_mgL) };
  d.note(
    say('note.hypochlorite'),
    say('reading.diluted', { c: chlorine(read_mgL) }),
    read_mgL < fresh_mgL / 2 ? off('remark.diluted', fresh) : good('remark.diluted', fresh),
  );
}

/** Chlorine of clean water with a drop of bleach that strips are tried on, mg/L, and what good ones show at least (convention). */
const STANDARD_mgL = 2;
const SHOWS_mgL = 1;

function checkStrips(d: Doing): void {
  const read_mgL = d.measure(INSTRUMENTS.totalChlorine_mgL, d.unit.stripColour() * STANDARD_mgL);
  const standard = { c: chlorine(STANDARD_mgL) };
  d.note(
    say('note.standard'),
    say('reading.standard', { c: chlorine(read_mgL) }),
    read_mgL < SHOWS_mgL ? off('remark.strips-stale', standard) : good('remark.standard', standard),
  );
}

function readTabletLabel(d: Doing): void {
  if (d.unit.has('wrong-tablets')) d.note(say('note.tablets'), say('reading.label-pool'), off('remark.pool-tablets'));
  else d.note(say('note.tablets'), say('reading.label-right'), good('remark.ordinary'));
}

/** Share of the light that passes a sleeve which looks clear enough (convention). */
const CLEAR = 0.8;

function lookAtSleeve(d: Doing): void {
  const clear = conditionOf(d).sleeveLight >= CLEAR;
  d.note(
    say('note.sleeve'),
    say(clear ? 'reading.sleeve-clear' : 'reading.sleeve-coated'),
    clear ? good('remark.ordinary') : off('remark.not-disinfected'),
  );
}

function lookAtUltraviolet(d: Doing): void {
  const lit = d.unit.control.outputs.ultravioletLit;
  d.note(
    say('note.ultraviolet'),
    say(lit ? 'reading.ultraviolet-lit' : 'reading.ultraviolet-dark'),
    lit ? plain('remark.ultraviolet') : off('remark.ultraviolet'),
  );
}

/** Puts fresh chlorine in: what the notebook says of it is `reading.` and the mend's id. */
function fillsUp(id: string, minutes: number, more: Partial<ActionDef>): ActionDef {
  const perform = (d: Doing) => {
    d.unit.restock();
    d.note(say('note.mended'), say(`reading.${id}`));
  };
  return at(id, 'mend', minutes, perform, { cost_usd: 12, load: 'chlorine', ...more });
}

const mend = mendsAt('disinfection');

export const DISINFECTION_ACTIONS: readonly ActionDef[] = [
  at('look-at-disinfectant', 'look', 1, lookAtDisinfectant, CHLORINE),
  at('watch-feed', 'look', 4, watchFeed, CHLORINE),
  at('test-hypochlorite', 'measure', 6, testHypochlorite, LIQUID),
  at('check-strips', 'measure', 4, checkStrips, STRIPS),
  at('read-tablet-label', 'look', 2, readTabletLabel, TABLETS),
  at('look-at-ultraviolet', 'look', 1, lookAtUltraviolet, LAMP),
  at('look-at-sleeve', 'look', 8, lookAtSleeve, LAMP_LOCKED),
  fillsUp('refill-disinfectant', 5, {
    ...CHLORINE,
    // Fresh calcium hypochlorite on pool tablets: what is in the tube is read first.
    breach: (unit) => (unit.has('wrong-tablets') ? 'chlorine-mixed' : undefined),
  }),
  mend('open-fresh-strips', 2, { cost_usd: 18, ...STRIPS }),
  mend('clean-feed', 20, LIQUID),
  mend('prime-feed', 8, LIQUID),
  mend('set-feed', 8, LIQUID),
  mend('free-tablets', 10, TABLETS),
  fillsUp('change-tablets', 15, TABLETS),
  mend('clean-sleeve', 20, LAMP_LOCKED),
  mend('renew-ultraviolet-lamp', 20, { cost_usd: 85, load: 'ultraviolet-lamp', ...LAMP_LOCKED }),
];
