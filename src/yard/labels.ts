/** Message ids the yard asks texts for. It holds no sentence of its own. */
import type { FloatId, PartId } from '../scene/types.ts';
import { type Message, quantity, say } from '../service/message.ts';

/** Order of the numbers on the plate: the way of the water, then the dry parts without a number. */
export const NUMBERED: readonly PartId[] = [
  'trash-tank',
  'aeration',
  'clarifier',
  'disinfection',
  'pump-tank',
  'disc-filter',
  'spray-field',
];

export const partName = (part: PartId): Message => say(`part.${part}`);
export const floatName = (id: FloatId): Message => say(`yard.float.${id}`);

/** Every id of the close-ups, so that a test can hold the words to them. */
export const CLOSEUP_LABELS = [
  'yard.panel.alarm',
  'yard.panel.compressor',
  'yard.panel.pump',
  'yard.panel.on',
  'yard.panel.trip',
  'yard.panel.off',
  'yard.panel.timer',
  'yard.panel.airSwitch',
  'yard.panel.relay',
  'yard.panel.selector',
  'yard.panel.hand',
  'yard.panel.auto',
  'yard.panel.hours',
  'yard.panel.cycles',
  'yard.panel.silence',
  'yard.panel.test',
  'yard.panel.buzzer',
  'yard.panel.reset',
  'yard.panel.reset1',
  'yard.panel.reset2',
  'yard.panel.reset3',
  'yard.panel.reset4',
  'yard.float.stop',
  'yard.float.dose',
  'yard.float.override',
  'yard.float.high-water',
  'yard.floats.tree',
  'yard.floats.pump',
  'yard.floats.intake',
  'yard.floats.discharge',
  'yard.floats.checkValve',
  'yard.floats.inlet',
  'yard.floats.core',
  'yard.floats.made',
  'yard.floats.open',
  'yard.floats.unknown',
] as const;
export type CloseupLabel = (typeof CLOSEUP_LABELS)[number];

export const label = (id: CloseupLabel): Message => say(id);
export const clock = (s: number): Message => say('yard.clock', { t: quantity('clock_s', s) });
export const length = (m: number): Message => say('yard.length', { h: quantity('length_m', m, 0.01) });
export const pressure = (kPa: number): Message => say('yard.pressure', { p: quantity('pressure_kPa', kPa, 0.1) });
