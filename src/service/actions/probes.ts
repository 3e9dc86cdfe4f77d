/** Under the panel's cover, with a meter: volts or ohms between any two screws, amps round any one conductor. */
import { FLOATS, type FloatName } from '../../control/index.ts';
import {
  ampsIn,
  type Circuit,
  CONDUCTORS,
  type ConductorId,
  circuitOf,
  circuitOfTerminal,
  isLive,
  kindOf,
  ohmsBetween,
  type TerminalId,
  terminalsOf,
  type UnitSpec,
  voltsBetween,
} from '../../unit/index.ts';
import type { ActionDef, Doing, FieldDef, Fill } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { type Message, quantity, say } from '../message.ts';
import type { Note } from '../person.ts';
import { terminalWords } from '../terminalWords.ts';
import { pumpCurrent } from './meter.ts';
import { actionsAt, off, optionsOf, plain } from './shared.ts';

const at = actionsAt('panel');

/** Closed a few ohms, under 100; open over 10 kohm (common practice, from memory). */
const CLOSED_ohm = 100;
const OPEN_ohm = 10_000;
/** Between these a wire hangs free; under these the supply sags, V (common practice, no source). */
const STRAY_V = { from: 2, to: 15 } as const;
const SAGS_V = { from: 80, to: 105 } as const;

function probeForm(spec: UnitSpec): readonly FieldDef[] {
  const options = terminalsOf(kindOf(spec.panel)).map((id) => ({ id, label: terminalWords(id) }));
  return ['red', 'black'].map((id) => ({ id, kind: 'one', options }));
}

function screws(fill: Fill): { readonly red: TerminalId; readonly black: TerminalId } {
  return { red: String(fill.red) as TerminalId, black: String(fill.black) as TerminalId };
}

function circuitNow(d: Doing): Circuit {
  return circuitOf(kindOf(d.unit.spec.panel), d.unit.control, pumpCurrent(d));
}

/** The splices hang in the pump tank's riser, under its lid. */
const atSplices: ActionDef['hindered'] = (person, _unit, fill = {}) => {
  const { red, black } = screws(fill);
  const under = red.startsWith('splice') || black.startsWith('splice');
  return under && !person.lids.has('pump') ? say('why.lid', { lid: say('lid.pump') }) : undefined;
};

function noteBetween(d: Doing, what: string, reading: Message, remark?: Note['remark']): void {
  const { red, black } = screws(d.fill);
  const words = say('reading.between', { red: terminalWords(red), black: terminalWords(black), reading });
  d.note(say(what), words, remark, what === 'note.meter-volts' ? namedVolts(d.fill) : namedOhms(d.fill));
}

/** The named check that reads the volts of these two screws. */
function namedVolts(fill: Fill): string | undefined {
  if (isAcross(fill, 'line', 'neutral')) return 'supply-volts';
  if (isAcross(fill, 'outlet.hot', 'outlet.neutral')) return 'compressor-volts';
  return acrossPump(fill) ? 'pump-volts' : undefined;
}

function namedOhms(fill: Fill): string | undefined {
  if (acrossPump(fill)) return 'winding-ohms';
  const float = floatBetween(fill);
  return float ? `float-continuity:${float}` : undefined;
}

function acrossPump(fill: Fill): boolean {
  return isAcross(fill, 'motor.1', 'motor.2') || isAcross(fill, 'splice.1', 'splice.2');
}

function isAcross(fill: Fill, one: TerminalId, other: TerminalId): boolean {
  const { red, black } = screws(fill);
  return (red === one && black === other) || (red === other && black === one);
}

function readVolts(d: Doing): void {
  const { red, black } = screws(d.fill);
  const volts = d.measure(INSTRUMENTS.voltage_V, voltsBetween(circuitNow(d), red, black));
  const reading = say('reading.volts', { v: quantity('voltage_V', volts, 0.1) });
  const strays = volts > STRAY_V.from && volts < STRAY_V.to;
  const sags = volts > SAGS_V.from && volts < SAGS_V.to;
  noteBetween(
    d,
    'note.meter-volts',
    reading,
    strays ? plain('remark.stray-volts') : sags ? off('remark.supply-low') : undefined,
  );
}

/** The float whose contact lies between the two probes, if one does. */
function floatBetween(fill: Fill): FloatName | undefined {
  return FLOATS.find((f) => isAcross(fill, `${f}.feed`, `${f}.back`));
}

function readOhms(d: Doing): void {
  const { red, black } = screws(d.fill);
  const circuit = circuitNow(d);
  if (isLive(circuit, red) || isLive(circuit, black)) {
    noteBetween(d, 'note.meter-ohms', say('reading.meter-refuses'), off('remark.ohms-live'));
    return;
  }
  const truth = ohmsBetween(circuit, red, black);
  const float = floatBetween(d.fill);
  if (float && (truth < CLOSED_ohm || truth > OPEN_ohm)) d.learn({ [`contact.${float}`]: truth < CLOSED_ohm });
  if (truth > INSTRUMENTS.resistance_ohm.highest) {
    noteBetween(d, 'note.meter-ohms', say('reading.open-circuit'));
    return;
  }
  const r = quantity('resistance_ohm', d.measure(INSTRUMENTS.resistance_ohm, truth), 0.1);
  const neither = float !== undefined && truth >= CLOSED_ohm && truth <= OPEN_ohm;
  noteBetween(d, 'note.meter-ohms', say('reading.ohms', { r }), neither ? plain('remark.other-way') : undefined);
}

function readAmps(d: Doing): void {
  const id = String(d.fill.conductor) as ConductorId;
  const amps = d.measure(INSTRUMENTS.current_A, ampsIn(circuitNow(d), id));
  const reading = say('reading.amps', { a: quantity('current_A', amps, 0.1) });
  d.note(
    say('note.clamp-amps'),
    say('reading.round', { conductor: say(`conductor.${id}`), reading }),
    besideAmps(d, id),
    id === 'pump' ? (d.unit.control.regions.selector === 'hand' ? 'amps-in-hand' : 'pump-amps') : undefined,
  );
}

function besideAmps(d: Doing, id: ConductorId): Note['remark'] {
  if (id === 'pumpCord') return plain('remark.cord-cancels');
  if (id !== 'pump') return undefined;
  return plain('remark.rated-amps', { a: quantity('current_A', d.unit.spec.plant.effluentPump.ratedCurrent_A, 0.1) });
}

export const PROBE_ACTIONS: readonly ActionDef[] = [
  at('meter-volts', 'measure', 2, readVolts, { formOn: probeForm, hindered: atSplices }),
  at('meter-ohms', 'measure', 2, readOhms, {
    formOn: probeForm,
    hindered: atSplices,
    lockOut: (fill) => {
      const { red, black } = screws(fill);
      return [...new Set([red, black].flatMap((id) => circuitOfTerminal(id) ?? []))];
    },
  }),
  at('clamp-amps', 'measure', 2, readAmps, {
    form: [{ id: 'conductor', kind: 'one', options: optionsOf('conductor', CONDUCTORS) }],
  }),
];
