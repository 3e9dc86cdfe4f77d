/** What the alarm circuit watches: air and water as they stand, the switches in them, and the parts that may fail. */
import { alarmWords } from './alarm-words.ts';
import { OVER, type Says, type Sight } from './vocabulary.ts';

const region = alarmWords.createStateConfig;

export const airPressure = region({
  initial: 'good',
  states: {
    good: { on: { 'air pressure falls': 'low' } },
    low: { on: { 'air pressure recovers': 'good' } },
  },
});

/** The ladder: water makes the floats from below and leaves them from above, one by one or all of them. */
export const pumpTankWater = region({
  initial: 'low',
  states: {
    low: {
      on: { 'water makes the float below': 'at the float below', 'water rises over all floats': 'at the alarm float' },
    },
    'at the float below': {
      on: { 'water leaves the float below': 'low', 'water makes the alarm float': 'at the alarm float' },
    },
    'at the alarm float': {
      on: { 'water leaves the alarm float': 'at the float below', 'water falls below all floats': 'low' },
    },
  },
});

export const airSwitch = region({
  initial: 'sound',
  states: {
    sound: { on: { 'air switch sticks open': 'stuck open', 'air switch sticks closed': 'stuck closed' } },
    'stuck open': { on: { 'air switch freed': 'sound' } },
    'stuck closed': { on: { 'air switch freed': 'sound' } },
  },
});

export const alarmFloat = region({
  initial: 'sound',
  states: {
    sound: {
      on: {
        'alarm float caught up': 'caught up',
        'alarm float caught down': 'caught down',
        'alarm float lifted by hand': 'in a hand',
        'alarm float wire breaks': 'wire broken',
        'alarm float wire bridged': 'wire bridged',
      },
    },
    'caught up': { on: { 'alarm float freed': 'sound' } },
    'caught down': { on: { 'alarm float freed': 'sound' } },
    'in a hand': { on: { 'alarm float let go': 'sound' } },
    'wire broken': { on: { 'alarm float wire mended': 'sound' } },
    'wire bridged': { on: { 'alarm float wire mended': 'sound' } },
  },
});

export const floatLeads = region({
  initial: 'right',
  states: {
    right: { on: { 'float leads swapped': 'swapped with the float below' } },
    'swapped with the float below': { on: { 'float leads righted': 'right' } },
  },
});

export const terminals = region({
  initial: 'dry',
  states: {
    dry: { on: { 'terminals wetted': 'wet' } },
    wet: { on: { 'terminals dried': 'dry' } },
  },
});

export const compressorBreaker = region({
  initial: 'on',
  states: {
    on: { on: { 'compressor breaker pushed off': 'off' } },
    off: { on: { 'compressor breaker pushed on': 'on' } },
  },
});

/** The ultraviolet lamp is fed from the compressor's circuit. */
export const ultravioletLamp = region({
  initial: 'sound',
  states: {
    sound: { on: { 'ultraviolet lamp dies': 'dead' } },
    dead: { on: { 'ultraviolet lamp renewed': 'sound' } },
  },
});

export const telephoneLine = region({
  initial: 'good',
  states: {
    good: { on: { 'telephone line dies': 'dead' } },
    dead: { on: { 'telephone line mended': 'good' } },
  },
});

/** Held, the test lights and sounds everything that can. */
export function testButton(sights: readonly Sight[]) {
  const all = Object.fromEntries(sights.map((s) => [s, true]));
  return region({
    initial: 'released',
    states: {
      released: { on: { 'test pressed': 'held' } },
      held: {
        meta: {
          says: 'a held test lights every lamp and sounds the buzzer',
          sees: all,
          over: OVER.test,
        } satisfies Says,
        on: { 'test released': 'released' },
      },
    },
  });
}

/** A lamp or the buzzer: dead, it shows nothing, whatever the panel wants. */
export function mortal<Part extends 'lamp' | 'air lamp' | 'water lamp' | 'buzzer'>(part: Part, sight: Sight) {
  return region({
    initial: 'sound',
    states: {
      sound: { on: { [`${part} dies`]: 'dead' } },
      dead: {
        meta: { says: `a dead ${part} shows nothing`, sees: { [sight]: false }, over: OVER.deadPart } satisfies Says,
        on: { [`${part} renewed`]: 'sound' },
      },
    },
  });
}
