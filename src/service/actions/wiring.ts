/** Under the panel's cover, with its circuit locked out: terminals, relay, timer, buzzer, insulation; supply and phone line. */
import { BREAKERS, type BreakerName } from '../../control/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { type Message, quantity, say } from '../message.ts';
import { actionsAt, good, mains_V, mendsAt, off, plain } from './shared.ts';

const at = actionsAt('panel');
const mend = mendsAt('panel');

/** Insulation of a sound circuit and of one that leaks to ground, Mohm; at least 1 is sound (common practice, no source). */
const SOUND_Mohm = 40;
const LEAKING_Mohm = 0.1;

/** What is fed by a circuit leaks to ground by itself, with the panel's own wire disconnected. */
function loadLeaks(d: Doing, breaker: BreakerName): boolean {
  const { motorLead, compressorCord } = d.unit.control.regions;
  if (breaker === 'pumpBreaker') return motorLead === 'shorted';
  return breaker === 'compressorBreaker' && (compressorCord === 'chafed' || compressorCord === 'chafedOut');
}

/** Insulation to ground of a dead circuit, first whole, then with its load disconnected. */
function insulation(breaker: BreakerName): ActionDef[] {
  const circuit = say(`circuit.${breaker}`);
  return [
    at(
      `insulation-test:${breaker}`,
      'measure',
      5,
      (d) => {
        const wire = d.unit.control.regions[`${breaker}Wire`] === 'shorted';
        const leaks = wire || loadLeaks(d, breaker);
        const truth = leaks ? LEAKING_Mohm : SOUND_Mohm;
        const r = quantity('resistance_Mohm', d.measure(INSTRUMENTS.insulation_Mohm, truth), 0.1);
        d.note(
          say('note.insulation', { circuit }),
          say(leaks ? (wire ? 'reading.leaks-in-wire' : 'reading.leaks-in-load') : 'reading.insulated', { r }),
          leaks ? off('remark.insulation') : good('remark.insulation'),
        );
      },
      { label: say('act.insulation-test', { circuit }), lockOut: breaker },
    ),
    mend(`mend-wiring:${breaker}`, 40, { label: say('act.mend-wiring', { circuit }), cost_usd: 22, lockOut: breaker }),
  ];
}

/** Whose tags do not match their terminals: a float's leads on those of the next one up. */
function crossedLeads(state: string): Message {
  return say('reading.leads-crossed', { float: say(`float.${state.replace('Swapped', '')}`) });
}

/** Water, a lead that moves under the finger, tags that do not match their terminals. */
function lookIntoPanel(d: Doing): void {
  const { regions } = d.unit.control;
  const found = [
    ...(regions.alarmTerminals === 'bridged' ? [say('reading.drops-on-terminals')] : []),
    ...(d.unit.has('terminal-loose') ? [say('reading.lead-moves')] : []),
    ...(regions.leads !== 'right' ? [crossedLeads(String(regions.leads))] : []),
  ];
  for (const reading of found) d.note(say('note.inside-panel'), reading, off('remark.inside-panel'));
  if (found.length === 0) d.note(say('note.inside-panel'), say('reading.dry-and-tight'));
}

/** Contact of the pump's relay with the coil dead (Off) and live (Hand), the lever held ten seconds each. */
function testRelay(d: Doing): void {
  const { selector } = d.unit.control.regions;
  const contact = (way: 'off' | 'hand') => {
    d.unit.send(`selector.${way}`);
    d.wait(10);
    return d.unit.control.outputs.contact;
  };
  const welded = contact('off');
  const closes = contact('hand');
  const fed = d.unit.control.outputs.coil;
  d.unit.send(`selector.${selector as 'off' | 'hand' | 'auto'}`);
  if (!welded && !fed) {
    d.note(say('note.relay'), say('reading.coil-dead'), plain('remark.coil-dead'));
    return;
  }
  const id = welded ? 'reading.relay-welded' : closes ? 'reading.relay-sound' : 'reading.relay-open';
  d.note(say('note.relay'), say(id), welded || !closes ? off('remark.relay') : undefined);
}

export const WIRING_ACTIONS: readonly ActionDef[] = [
  at('supply-volts', 'measure', 2, (d) => {
    const volts = d.measure(INSTRUMENTS.voltage_V, mains_V(d));
    d.note(
      say('note.supply-volts'),
      say('reading.volts', { v: quantity('voltage_V', volts, 0.1) }),
      volts > 105 ? undefined : off('remark.supply-low'),
    );
  }),
  at('report-supply', 'say', 60, (d) => d.note(say('note.report-supply'), say('reading.report-supply')), {
    handsOff: true,
  }),
  ...BREAKERS.flatMap(insulation),
  at('look-into-panel', 'look', 4, lookIntoPanel, { lockOut: 'all' }),
  mend('dry-panel', 30, { cost_usd: 8, lockOut: 'all' }),
  mend('tighten-terminals', 12, { lockOut: 'all' }),
  mend('right-leads', 12, { lockOut: 'all' }),
  at('test-relay', 'measure', 4, testRelay, {
    inner_s: 20,
    hindered: (person) => (person.locks.has('pumpBreaker') ? say('why.locked') : undefined),
  }),
  mend('renew-relay', 20, { cost_usd: 45, load: 'panel-parts', lockOut: 'pumpBreaker' }),
  mend('renew-timer', 25, {
    cost_usd: 95,
    load: 'panel-parts',
    lockOut: 'pumpBreaker',
    fits: (spec) => spec.panel.dosing.kind !== 'demand',
  }),
  mend('renew-buzzer', 10, { cost_usd: 18, load: 'panel-parts', lockOut: 'alarmBreaker' }),
  at(
    'check-phone-line',
    'measure',
    2,
    (d) => {
      const sound = d.unit.control.regions.phoneLine === 'good';
      d.note(
        say('note.phone-line'),
        say(sound ? 'reading.dial-tone' : 'reading.no-dial-tone'),
        sound ? undefined : plain('remark.dials-nobody'),
      );
    },
    { handsOff: true },
  ),
  mend('mend-phone-line', 15, { cost_usd: 4 }),
];
