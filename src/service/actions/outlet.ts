/** At the compressor's outlet, its air switch and its housing. */
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import { actionsAt, good, mendsAt, off } from './shared.ts';

const at = actionsAt('compressor');
const mend = mendsAt('compressor');

function lookAtOutlet(d: Doing): void {
  const { compressorCord, gfci } = d.unit.control.regions;
  const chafed = compressorCord === 'chafed' || compressorCord === 'chafedOut';
  const out = compressorCord === 'out' || compressorCord === 'chafedOut';
  d.note(
    say('note.outlet'),
    say(out ? 'reading.plug-out' : gfci === 'tripped' ? 'reading.gfci-tripped' : 'reading.plugged-in'),
    out || gfci === 'tripped' ? off('remark.outlet') : undefined,
  );
  if (chafed) d.note(say('note.cord'), say('reading.cord-chafed'), off('remark.cord-chafed'));
}

/** Air is let off at the tee by hand, and let back: pressures at which the switch turns. */
function testAirSwitch(d: Doing): void {
  const { airContact } = d.unit.control.regions;
  if (airContact === 'stuckOpen' || airContact === 'stuckClosed') {
    d.note(say('note.air-switch'), say('reading.switch-stays'), off('remark.switch-stays'));
    return;
  }
  const turns = d.measure(INSTRUMENTS.pressure_kPa, d.unit.airSwitchFalls_kPa());
  const wanted = d.unit.spec.panel.airSwitch.falls_kPa;
  const values = { p: quantity('pressure_kPa', wanted, 0.5) };
  d.note(
    say('note.air-switch'),
    say('reading.switch-turns', { p: quantity('pressure_kPa', turns, 0.5) }),
    Math.abs(turns - wanted) < 2 ? good('remark.switch-turns', values) : off('remark.switch-turns', values),
  );
}

export const OUTLET_ACTIONS: readonly ActionDef[] = [
  at('look-at-outlet', 'look', 0.5, lookAtOutlet, { handsOff: true }),
  at(
    'plug-in-compressor',
    'operate',
    0.5,
    (d) => {
      d.unit.send('compressorCord.plugged');
      d.note(say('note.outlet'), say('reading.plugged-in'));
    },
    {},
  ),
  at(
    'reset-gfci',
    'operate',
    0.5,
    (d) => {
      d.unit.send('gfci.reset');
      const holds = d.unit.control.regions.gfci === 'set';
      d.note(
        say('note.outlet'),
        say(holds ? 'reading.gfci-holds' : 'reading.gfci-trips-again'),
        holds ? undefined : off('remark.outlet'),
      );
    },
    { fits: (spec) => spec.panel.gfci },
  ),
  mend('renew-compressor-cord', 30, { cost_usd: 35, lockOut: 'compressorBreaker' }),
  at('test-air-switch', 'measure', 6, testAirSwitch, {
    hindered: (_person, unit) => (unit.control.outputs.compressorRuns ? undefined : say('why.compressor-silent')),
  }),
  at(
    'open-air-switch',
    'look',
    4,
    (d) => {
      const wet = d.unit.has('sensing-tube-wet');
      const insects = d.unit.has('insects-in-contacts');
      d.note(
        say('note.inside-switch'),
        say(wet ? 'reading.water-in-tube' : insects ? 'reading.insects' : 'reading.switch-clean'),
        wet || insects ? off('remark.inside-switch') : undefined,
      );
    },
    { lockOut: 'alarmBreaker' },
  ),
  mend('blow-out-sensing-tube', 8, { lockOut: 'alarmBreaker' }),
  mend('clean-air-switch', 10, { lockOut: 'alarmBreaker' }),
  mend('replace-air-switch', 20, { cost_usd: 38, load: 'panel-parts', lockOut: 'alarmBreaker' }),
  mend('shade-housing', 20, { cost_usd: 12 }),
];
