/** What the alarm circuit promises on each unit: alarm and silence, reset, dialler, and the two lamps of one unit. */
import type { AnyStateMachine } from 'xstate';
import type { ControlEventName, DelayId, FloatName } from '../../../src/control/index.ts';
import { alarmMachine, sightsOf } from './alarm.ts';
import type { AlarmKind } from './alarm-circuit.ts';
import type { AlarmEvent } from './alarm-words.ts';
import type { Promised } from './vocabulary.ts';

type Unit = 'u1' | 'u2' | 'u3';
type Does = Partial<Record<AlarmEvent, readonly ControlEventName[]>>;

export const ALARM_KINDS: Readonly<Record<Unit, AlarmKind>> = {
  u1: { latches: true, lamps: 'one' },
  u2: { latches: false, lamps: 'one' },
  u3: { latches: true, lamps: 'two' },
};

/** Floats below that of the alarm, lowest first. */
const BELOW: Readonly<Record<Unit, readonly Exclude<FloatName, 'highWaterFloat'>[]>> = {
  u1: ['stopFloat', 'doseFloat', 'overrideFloat'],
  u2: ['startStopFloat'],
  u3: ['redundantOffFloat', 'stopFloat', 'doseFloat', 'overrideFloat'],
};

/** In one go up and down the ladder; between the two highest floats only where their leads may be swapped. */
function water(unit: Unit): Does {
  const below = BELOW[unit];
  const rises = below.map((f): ControlEventName => `${f}.rises`);
  const falls = below.map((f): ControlEventName => `${f}.falls`).reverse();
  return {
    'water rises over all floats': [...rises, 'highWaterFloat.rises'],
    'water falls below all floats': ['highWaterFloat.falls', ...falls],
    'water makes the float below': rises,
    'water leaves the float below': falls,
    'water makes the alarm float': ['highWaterFloat.rises'],
    'water leaves the alarm float': ['highWaterFloat.falls'],
    'float leads swapped': below.slice(-1).map((f): ControlEventName => `${f}.leadsSwapped`),
    'float leads righted': ['leads.righted'],
  };
}

const ONE_LAMP: Does = { 'lamp dies': ['lamp.dies'], 'lamp renewed': ['lamp.renewed'] };

const TWO_LAMPS: Does = {
  'air lamp dies': ['airLamp.dies'],
  'air lamp renewed': ['airLamp.renewed'],
  'water lamp dies': ['waterLamp.dies'],
  'water lamp renewed': ['waterLamp.renewed'],
};

const ULTRAVIOLET: Does = {
  'lamp-out delay ends': ['lampOut.due'],
  'ultraviolet lamp dies': ['ultraviolet.fails'],
  'ultraviolet lamp renewed': ['ultraviolet.renewed'],
};

const CONDITIONS: Does = {
  'air pressure falls': ['air.falls'],
  'air pressure recovers': ['air.rises'],
  'low-air delay ends': ['lowAir.due'],
  'high-water delay ends': ['highWater.due'],
  'silence pressed': ['silence.pressed'],
};

const SWITCH_FAULTS: Does = {
  'air switch sticks open': ['airContact.sticksOpen'],
  'air switch sticks closed': ['airContact.sticksClosed'],
  'air switch freed': ['airContact.freed'],
  'alarm float caught up': ['highWaterFloat.heldUp'],
  'alarm float caught down': ['highWaterFloat.heldDown'],
  'alarm float freed': ['highWaterFloat.freed'],
  'alarm float lifted by hand': ['highWaterFloat.lifted'],
  'alarm float let go': ['highWaterFloat.released'],
  'alarm float wire breaks': ['highWaterFloat.wireOpens'],
  'alarm float wire bridged': ['highWaterFloat.wireBridged'],
  'alarm float wire mended': ['highWaterFloat.wireMended'],
  'terminals wetted': ['alarmTerminals.wetted'],
  'terminals dried': ['alarmTerminals.dried'],
  'a surge strikes': ['latch.surge'],
  'buzzer dies': ['horn.dies'],
  'buzzer renewed': ['horn.renewed'],
};

const TEST: Does = { 'test pressed': ['test.pressed'], 'test released': ['test.released'] };

const HANDLE: Does = {
  'alarm breaker pushed off': ['alarmBreaker.off'],
  'alarm breaker pushed on': ['alarmBreaker.on'],
  'power fails': ['supply.fails'],
  'power returns': ['supply.returns'],
};

const TROUBLE: Does = {
  'alarm breaker trips': ['alarmBreaker.trips'],
  'alarm circuit shorted': ['alarmBreaker.shorts'],
  'alarm circuit cleared': ['alarmBreaker.shortCleared'],
  'power sags': ['supply.sags'],
};

const DIAL: Does = {
  'five minutes pass': ['dialler.due'],
  'a day passes': ['dialler.again'],
  'telephone line dies': ['phoneLine.dies'],
  'telephone line mended': ['phoneLine.mended'],
};

const COMPRESSOR: Does = {
  'compressor breaker pushed off': ['compressorBreaker.off'],
  'compressor breaker pushed on': ['compressorBreaker.on'],
};

const FAULTS: Readonly<Record<string, readonly AlarmEvent[]>> = {
  'lamp dead': ['lamp dies', 'lamp renewed'],
  'air lamp dead': ['air lamp dies', 'air lamp renewed'],
  'water lamp dead': ['water lamp dies', 'water lamp renewed'],
  'buzzer dead': ['buzzer dies', 'buzzer renewed'],
  'air switch stuck open': ['air switch sticks open', 'air switch freed'],
  'air switch stuck closed': ['air switch sticks closed', 'air switch freed'],
  'high-water float stuck up': ['alarm float caught up', 'alarm float freed'],
  'high-water float stuck down': ['alarm float caught down', 'alarm float freed'],
  'high-water float lifted': ['alarm float lifted by hand', 'alarm float let go'],
  'high-water float wire open': ['alarm float wire breaks', 'alarm float wire mended'],
  'high-water float wire bridged': ['alarm float wire bridged', 'alarm float wire mended'],
  'high-water leads swapped': [
    'float leads swapped',
    'float leads righted',
    'water makes the float below',
    'water leaves the float below',
    'water makes the alarm float',
    'water leaves the alarm float',
  ],
  'terminals wet': ['terminals wetted', 'terminals dried'],
  'surge on the latch': ['a surge strikes'],
  'ultraviolet lamp out': ['ultraviolet lamp dies', 'ultraviolet lamp renewed'],
  'alarm breaker tripped once': ['alarm breaker trips'],
  'alarm breaker trips again': ['alarm circuit shorted', 'alarm circuit cleared'],
  'supply low': ['power sags'],
  'telephone line dead': ['telephone line dies', 'telephone line mended'],
};

const HANDS: readonly AlarmEvent[] = [
  'silence pressed',
  'alarm breaker pushed off',
  'alarm breaker pushed on',
  'compressor breaker pushed off',
  'compressor breaker pushed on',
  'a surge strikes',
];

function promised(
  name: string,
  unit: Unit,
  machine: AnyStateMachine,
  does: Does,
  delays: readonly DelayId[],
  ordinary: readonly string[] = [],
): Promised {
  const kind = ALARM_KINDS[unit];
  const events = Object.keys(does);
  return {
    name,
    unit,
    machine,
    does: does as Promised['does'],
    sights: [...sightsOf(kind), 'alarmHandle', ...(name === 'two lamps' ? (['ultraviolet'] as const) : [])],
    delays,
    anytime: HANDS.filter((h) => events.includes(h)),
    faults: Object.fromEntries(
      Object.entries(FAULTS).filter(
        ([fault, own]) => !ordinary.includes(fault) && own.every((e) => events.includes(e)),
      ),
    ),
  };
}

function alarmPromises(unit: Unit): Promised[] {
  const kind = ALARM_KINDS[unit];
  const machine = alarmMachine(`alarm circuit of ${unit}`, kind);
  const own = kind.lamps === 'one' ? ONE_LAMP : { ...TWO_LAMPS, ...ULTRAVIOLET };
  const ring = { ...CONDITIONS, ...SWITCH_FAULTS, ...water(unit), ...own };
  const delays: readonly DelayId[] = ['lowAir', 'highWater', ...(kind.lamps === 'two' ? (['lampOut'] as const) : [])];
  return [
    promised('alarm and silence', unit, machine, { ...ring, ...TEST }, delays),
    promised('reset', unit, machine, { ...ring, ...HANDLE, ...TROUBLE }, delays, [
      'alarm breaker tripped once',
      'supply low',
    ]),
    promised('dialler', unit, machine, { ...ring, ...TEST, ...DIAL, ...HANDLE }, [...delays, 'dial', 'dialAgain']),
    ...(kind.lamps === 'two'
      ? [
          promised(
            'two lamps',
            unit,
            machine,
            { ...CONDITIONS, ...water(unit), ...ULTRAVIOLET, ...COMPRESSOR },
            delays,
            ['ultraviolet lamp out'],
          ),
        ]
      : []),
  ];
}

export const ALARM_PROMISES: readonly Promised[] = (['u1', 'u2', 'u3'] as const).flatMap(alarmPromises);
