/** Under the panel's cover: what a meter finds, and the lamp. */
import { type BreakerName, FLOATS, type FloatName, LAMPS, type OutputId } from '../../control/index.ts';
import { WINDING_ohm } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import type { Note } from '../person.ts';
import { actionsAt, good, hasFloat, mains_V, mendsAt, off, plain } from './shared.ts';

const at = actionsAt('panel');
const mend = mendsAt('panel');

/** Circuit that a float's wires belong to. */
function circuitOf(float: FloatName): BreakerName {
  return float === 'highWaterFloat' ? 'alarmBreaker' : 'pumpBreaker';
}

const MADE = {
  redundantOffFloat: 'redundantOffMade',
  stopFloat: 'stopMade',
  startStopFloat: 'startStopMade',
  doseFloat: 'doseMade',
  overrideFloat: 'overrideMade',
  highWaterFloat: 'highWaterMade',
} as const satisfies Record<FloatName, OutputId>;

/** Current of the effluent pump, A. */
export function pumpCurrent(d: Doing): number {
  return d.read().pumpCurrent_A;
}

/** Turning lightly it moves little water; well over its rated current it moves too much, or labours (common practice, no source). */
const LIGHT = 0.75;
const HEAVY = 1.08;
const STANDS = 2;

function currentRemark(amps: number, rated_A: number): Note['remark'] {
  const values = { a: quantity('current_A', rated_A, 0.1) };
  const share = amps / rated_A;
  if (share > STANDS) return off('remark.rotor-stands', values);
  if (share > HEAVY) return off('remark.amps-high', values);
  return share > 0 && share < LIGHT ? off('remark.amps-low', values) : plain('remark.rated-amps', values);
}

function continuity(float: FloatName): ActionDef {
  const name = say(`float.${float}`);
  return at(
    `float-continuity:${float}`,
    'measure',
    3,
    (d) => {
      const made = d.unit.control.outputs[MADE[float]];
      d.learn({ [`contact.${float}`]: made });
      d.note(
        say('note.continuity', { float: name }),
        made
          ? say('reading.closed', { r: quantity('resistance_ohm', d.measure(INSTRUMENTS.resistance_ohm, 0.6), 0.1) })
          : say('reading.open-circuit'),
      );
    },
    { label: say('act.float-continuity', { float: name }), fits: hasFloat(float), lockOut: circuitOf(float) },
  );
}

export const METER_ACTIONS: readonly ActionDef[] = [
  at('pump-amps', 'measure', 3, (d) => {
    const amps = d.measure(INSTRUMENTS.current_A, pumpCurrent(d));
    const rated = d.unit.spec.plant.effluentPump.ratedCurrent_A;
    const words = say('reading.amps', { a: quantity('current_A', amps, 0.1) });
    d.note(say('note.pump-amps'), words, currentRemark(amps, rated));
  }),
  at(
    'amps-in-hand',
    'measure',
    3,
    (d) => {
      const { selector } = d.unit.control.regions;
      d.unit.send('selector.hand');
      d.wait(10);
      const amps = d.measure(INSTRUMENTS.current_A, pumpCurrent(d));
      d.unit.send(`selector.${selector as 'hand' | 'off' | 'auto'}`);
      const rated = d.unit.spec.plant.effluentPump.ratedCurrent_A;
      const words = say('reading.amps', { a: quantity('current_A', amps, 0.1) });
      d.note(say('note.amps-in-hand'), words, currentRemark(amps, rated));
    },
    {
      inner_s: 10,
      hindered: (person) => (person.locks.has('pumpBreaker') ? say('why.locked') : undefined),
    },
  ),
  at('pump-volts', 'measure', 3, (d) => {
    const { controlLive, contact } = d.unit.control.outputs;
    const volts = d.measure(INSTRUMENTS.voltage_V, controlLive && contact ? mains_V(d) : 0);
    d.note(say('note.pump-volts'), say('reading.volts', { v: quantity('voltage_V', volts, 0.1) }));
  }),
  at(
    'winding-ohms',
    'measure',
    4,
    (d) => {
      const { winding, protector } = d.unit.control.regions;
      const sound = winding === 'sound' && protector !== 'open' && protector !== 'failed';
      d.note(
        say('note.winding'),
        sound
          ? say('reading.ohms', {
              r: quantity('resistance_ohm', d.measure(INSTRUMENTS.resistance_ohm, WINDING_ohm), 0.1),
            })
          : say('reading.open-circuit'),
        sound ? good('remark.winding-sound') : off('remark.winding-open'),
      );
    },
    { lockOut: 'pumpBreaker' },
  ),
  at('compressor-volts', 'measure', 3, (d) => {
    const volts = d.measure(INSTRUMENTS.voltage_V, d.unit.control.outputs.compressorLive ? mains_V(d) : 0);
    const silent = !d.unit.control.outputs.compressorRuns;
    d.note(
      say('note.compressor-volts'),
      say('reading.volts', { v: quantity('voltage_V', volts, 0.1) }),
      volts > 100 && silent ? off('remark.fed-but-silent') : undefined,
    );
  }),
  ...FLOATS.map(continuity),
  ...LAMPS.map((lamp) =>
    mend(`renew-lamp:${lamp}`, 10, {
      label: say('act.renew-lamp', { lamp: say(`part.${lamp}`) }),
      cost_usd: 14,
      lockOut: 'alarmBreaker',
      fits: (spec) => (lamp === 'lamp') === (spec.panel.lamps === 'one'),
    }),
  ),
];
