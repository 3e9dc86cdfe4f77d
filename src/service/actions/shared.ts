/** What several places have in common: making definitions, words for lamp and levers, the reset, remarks. */
import { BREAKERS, type BreakerName, type FloatName } from '../../control/index.ts';
import type { PlantCondition } from '../../plant/index.ts';
import { MAINS_V, type UnitSpec } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import type { Lever, LiveFacts } from '../facts.ts';
import { type Message, say } from '../message.ts';
import type { Note, Place } from '../person.ts';

/** Makes definitions of one place: id, group, minutes, what it does, and what else the definition holds. */
export function actionsAt(place: Place) {
  return (
    id: string,
    group: ActionDef['group'],
    minutes: number,
    perform: (doing: Doing) => void,
    more: Partial<ActionDef> = {},
  ): ActionDef => ({ id, place, group, label: say(`act.${id}`), minutes, perform, ...more });
}

/** Makes mends of one place: what the notebook then says of one is `reading.` and its id. */
export function mendsAt(place: Place, common: Partial<ActionDef> = {}) {
  const at = actionsAt(place);
  return (id: string, minutes: number, more: Partial<ActionDef> = {}): ActionDef =>
    at(id, 'mend', minutes, (d) => d.note(say('note.mended'), say(`reading.${id.split(':')[0]}`)), {
      ...common,
      ...more,
    });
}

/** What faults have made of the plant by now. */
export function conditionOf(d: Doing): PlantCondition {
  return d.unit.driveAt(d.unit.t).condition;
}

/** Mains at the panel, V. */
export function mains_V(d: Doing): number {
  return MAINS_V[d.unit.control.regions.supply as keyof typeof MAINS_V];
}

/** Whether a unit has a float. */
export function hasFloat(float: FloatName): (spec: UnitSpec) => boolean {
  return (spec) => spec.panel.floats[float] !== undefined;
}

/** Options of a form whose texts stand under one prefix. */
export function optionsOf(prefix: string, ids: readonly string[]): { id: string; label: Message }[] {
  return ids.map((id) => ({ id, label: say(`${prefix}.${id}`) }));
}

export function leverOf(d: Doing, breaker: BreakerName): Lever {
  return d.unit.control.regions[breaker] as Lever;
}

export function leverFacts(d: Doing): LiveFacts {
  return Object.fromEntries(BREAKERS.map((b) => [`lever.${b}`, leverOf(d, b)])) as LiveFacts;
}

/** The three levers in one sentence. */
export function leverWords(d: Doing): Message {
  const levers = Object.fromEntries(BREAKERS.map((b) => [b, say(`lever.${leverOf(d, b)}`)]));
  return say('reading.levers', levers);
}

/** Lamp and buzzer as they are now. */
export function lampWords(d: Doing): Message {
  const { lamp, buzzer } = d.unit.control.outputs;
  return say(`reading.${lamp ? 'lamp-on' : 'lamp-off'}-${buzzer ? 'buzzer' : 'quiet'}`);
}

/** All levers off, one minute's wait, then on in the order of the unit's label. A locked lever stays as it is. */
export function resetPanel(d: Doing): void {
  const order = d.unit.spec.panel.resetOrder.map((name): BreakerName => `${name}Breaker`);
  const free = order.filter((b) => !d.person.locks.has(b));
  for (const breaker of free) d.unit.send(`${breaker}.off`);
  d.wait(60);
  for (const breaker of free) d.unit.send(`${breaker}.on`);
  d.learn(leverFacts(d));
}

export function good(id: string, values?: Message['values']): Note['remark'] {
  return { tone: 'good', text: say(id, values) };
}

export function off(id: string, values?: Message['values']): Note['remark'] {
  return { tone: 'off', text: say(id, values) };
}

export function plain(id: string, values?: Message['values']): Note['remark'] {
  return { tone: 'plain', text: say(id, values) };
}
