/** At the clarifier: how high the sludge stands in it, and whether its way back is open. */
import type { ActionDef, Doing } from '../action.ts';
import { CLARIFIER_CLEAR_m, clearWater_m } from '../fullness.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import { actionsAt, conditionOf, good, mendsAt, off } from './shared.ts';

function coreClarifier(d: Doing): void {
  const clear_m = d.measure(INSTRUMENTS.core_m, clearWater_m(d.unit.spec, d.read()));
  const limit = { limit: quantity('length_m', CLARIFIER_CLEAR_m, 0.01) };
  d.note(
    say('note.blanket'),
    say('reading.blanket', { clear: quantity('length_m', clear_m, 0.01) }),
    clear_m < CLARIFIER_CLEAR_m ? off('remark.blanket', limit) : good('remark.blanket', limit),
  );
}

/** Share of its opening below which a rod meets something in the slot (convention). */
const PACKED = 0.5;

function probeSlot(d: Doing): void {
  const packed = conditionOf(d).slotOpen < PACKED;
  d.note(
    say('note.slot'),
    say(packed ? 'reading.slot-packed' : 'reading.slot-open'),
    packed ? off('remark.slot') : good('remark.ordinary'),
  );
}

const at = actionsAt('clarifier');
const needs = { lid: 'aeration' } as const;

export const CLARIFIER_ACTIONS: readonly ActionDef[] = [
  at('core-clarifier', 'measure', 6, coreClarifier, { needs }),
  at('probe-slot', 'look', 6, probeSlot, { needs }),
  mendsAt('clarifier', { needs })('clear-slot', 25),
];
