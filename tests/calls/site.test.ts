/** What an expert's hands do on site, whenever they come to it. */
import { describe, expect, it } from 'vitest';
import { CallSession, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { Hand } from '../../src/calls/players/hand.ts';
import { proveCure } from '../../src/calls/players/site.ts';
import { proofsShown } from '../../src/calls/proof.ts';

const MINUTE = 60_000;
const TO_THE_MEND = [
  ...['ask-danger', 'guide-reset', 'guide-watch', 'make-safe', 'clear-field', 'lock-out:pumpBreaker'],
  ...['open-lid:pump', 'renew-pump-cord', 'unlock:pumpBreaker', 'breaker-on:pumpBreaker'],
];

describe('a field that is to be shown at work', () => {
  /** The override float pumps down what stands too high, and may end in the minute one walks to the heads. */
  it('is shown, whenever the dose ends that one meets', () => {
    const call = shippedCalls().find(({ id }) => id === 'trips-again');
    if (call === undefined) throw new Error('the call does not ship');
    const prepared = prepareCall(call);
    const met: string[] = [];
    for (let wait = 0; wait < 40; wait += 2) {
      const session = new CallSession(prepared, 'practice');
      const hand = new Hand(session);
      for (const id of TO_THE_MEND.slice(0, 3)) hand.do(id);
      hand.do('decide-visit', { urgency: 'before-dosing', load: ['pump-parts', 'pump'] });
      for (const id of TO_THE_MEND.slice(3)) hand.do(id);
      session.advance(session.now_ms + wait * MINUTE);
      proveCure(hand, ['pump-cord-chafed']);
      const looks = session.done.filter(({ def }) => def.id === 'look-at-field');
      met.push(looks[0]?.outcome.notes[0]?.reading.id ?? 'none');
      expect(proofsShown(session.done, prepared.spec.panel).has('spray'), `after ${wait} min more`).toBe(true);
    }
    expect(met).toContain('reading.heads-down');
  });
});
