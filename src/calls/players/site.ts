/** What every careful visit has: the site made safe, the cure proved, the property left ready, the record and the talk. */

import { type ProofId, placedFault } from '../../faults/index.ts';
import { type Fill, RECORD_LINES } from '../../service/index.ts';
import { floatsOf } from '../../unit/index.ts';
import { isOverAlarm, isTooLow } from '../drawn-down.ts';
import { proofsShown } from '../proof.ts';
import { STATE_CAUSE } from '../session-actions.ts';
import { WRITE_RECORD } from '../visit/form.ts';
import type { Hand } from './hand.ts';

const ALL_TOLD = ['what-was-wrong', 'what-alarm-means', 'keep-lids-shut'];
const FOLLOW_UP = ['call-tomorrow', 'count-trip', 'visit-if-again'];

export function closeByPhone(hand: Hand): void {
  hand.do('decide-close', { 'follow-up': FOLLOW_UP });
}

export function makeSafe(hand: Hand): void {
  hand.do('make-safe');
  if (hand.has('clear-field')) hand.do('clear-field');
}

/** Says what it was, with every note of these checks as evidence. */
export function nameCause(hand: Hand, keys: readonly string[], checks: readonly string[]): void {
  const evidence = hand.session.service.person.notebook.filter((n) => n.by !== undefined && checks.includes(n.by));
  hand.do(STATE_CAUSE, { cause: [...keys], evidence: evidence.map((n) => n.id) });
}

/** Shows what the mend of these faults wants shown. */
export function proveCure(hand: Hand, keys: readonly string[]): void {
  const { session } = hand;
  const panel = session.prepared.spec.panel;
  const wanted = new Set(keys.flatMap((key) => placedFault(key).proof));
  if (wanted.has('water-alarm') || wanted.has('floats')) lowerWater(hand);
  const has = (proof: ProofId) => proofsShown(session.done, panel).has(proof);
  const lift = (float: string) => {
    hand.doSafely(`lift-float:${float}`);
  };
  for (const proof of PROVING) {
    if (!wanted.has(proof) || has(proof)) continue;
    switch (proof) {
      case 'pressure':
        hand.doSafely('tee-pressure');
        break;
      case 'air-alarm':
        hand.do('reset-panel');
        hand.doSafely('make-air-alarm');
        break;
      case 'clock':
        hand.do('read-timer');
        break;
      case 'lamp':
        hand.do('press-test');
        break;
      case 'disinfects':
        hand.doSafely(hand.has('watch-feed') ? 'watch-feed' : 'look-at-ultraviolet');
        break;
      case 'dosing':
        if (hand.has('advance-timer')) startDose(hand, () => has('dosing'));
        else lift('startStopFloat');
        break;
      case 'spray':
        showSpray(hand);
        break;
      case 'floats':
        for (const float of floatsOf(panel)) lift(float);
        break;
      case 'water-alarm':
        hand.do('reset-panel');
        lift('highWaterFloat');
        break;
      case 'stops':
        hand.do('selector-off');
        hand.do('selector-auto');
        break;
      case 'watched':
        break;
    }
  }
}

/**
 * A dose by the timer. The water may stand too low for one to be due: at the open tank the floats are tied up. And the clock
 * may have lost its time while the circuit was locked out: it is read and set. A timer doses in Auto only.
 */
function startDose(hand: Hand, starts: () => boolean): void {
  if (hand.session.service.unit.control.regions.selector !== 'auto') hand.do('selector-auto');
  const helps = [[], ['open-lid:pump'], ['read-timer', 'set-timer']];
  for (const help of helps) {
    if (starts()) return;
    for (const id of help) if (hand.has(id)) hand.do(id);
    hand.do('advance-timer');
  }
}

/** What is cheap and what a pump run shows first; the panel is watched when all else is done. */
const PROVING: readonly ProofId[] = [
  'pressure',
  'clock',
  'lamp',
  'disinfects',
  'stops',
  'dosing',
  'spray',
  'floats',
  'water-alarm',
  'air-alarm',
  'watched',
];

const IN_FULL = ['reading.spray-full', 'reading.zone-full'];

/** The field at work; once more where the dose ended on the way to it, and with a tank too low to show it after water was brought. */
export function showSpray(hand: Hand): void {
  const look = hand.has('zone-pressure') ? 'zone-pressure' : 'look-at-field';
  const doses = hand.session.service.unit.control.outputs.pumpRuns;
  const seen = inHand(hand, look);
  if (seen !== undefined && IN_FULL.includes(seen)) return;
  if (!hand.session.service.person.lids.has('pump')) hand.do('open-lid:pump');
  hand.do('look-into-pump-tank');
  const ended = doses && seen === 'reading.heads-down';
  if (isTooLow(hand.session.service)) hand.do('hose-in');
  else if (!ended) return;
  inHand(hand, look);
}

/** Looks at the field while it is dosed, in Hand where no dose runs. What was seen there first. */
function inHand(hand: Hand, id: string): string | undefined {
  const runs = hand.session.service.unit.control.outputs.pumpRuns && id === 'look-at-field';
  if (!runs) hand.do('selector-hand');
  const look = hand.do(id);
  if (!runs) hand.do('selector-auto');
  return look?.outcome.notes[0]?.reading.id;
}

/** Most five-minute runs in Hand that bring the water down. */
const MOST_RUNS = 14;

/** Water that stands over the alarm float is pumped down before one leaves: else the lamp comes back. */
function lowerWater(hand: Hand): void {
  const { service } = hand.session;
  const { person } = service;
  const over = () => isOverAlarm(service);
  if (!person.lids.has('pump')) hand.do('open-lid:pump');
  hand.do('look-into-pump-tank');
  if (!over()) return;
  hand.do('selector-hand');
  for (let i = 0; i < MOST_RUNS && over() && person.facts.pumpRuns?.value === true; i++) {
    hand.do('watch-panel');
    hand.do('look-into-pump-tank');
  }
  hand.do('selector-auto');
}

/** Lids on, selector in Auto, alarm reset and watched; then the record, the talk, and away. */
export function leave(hand: Hand, record: Fill = { lines: [...RECORD_LINES] }): void {
  const { person, unit } = hand.session.service;
  for (const circuit of [...person.locks]) {
    hand.do(`unlock:${circuit}`);
    hand.do(`breaker-on:${circuit}`);
  }
  if (unit.control.regions.selector !== 'auto') hand.do('selector-auto');
  if (person.lids.has('pump')) lowerWater(hand);
  for (const lid of [...person.lids]) hand.do(`close-lid:${lid}`);
  hand.do('reset-panel');
  hand.do('watch-panel');
  hand.do(WRITE_RECORD, record);
  hand.do('tell-household', { told: ALL_TOLD });
  hand.do('leave-site');
}
