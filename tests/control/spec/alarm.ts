/** The alarm circuit as a specification: facts beside it, and the circuit itself, dead or live. */
import { type AlarmKind, liveCircuit } from './alarm-circuit.ts';
import {
  airPressure,
  airSwitch,
  alarmFloat,
  compressorBreaker,
  floatLeads,
  mortal,
  pumpTankWater,
  telephoneLine,
  terminals,
  testButton,
  ultravioletLamp,
} from './alarm-facts.ts';
import { alarmWords } from './alarm-words.ts';
import { handleOff, handleOn, OVER, type Says, type Sight } from './vocabulary.ts';

const region = alarmWords.createStateConfig;

const powerSupply = region({
  initial: 'there',
  states: {
    there: { on: { 'power fails': 'out', 'power sags': 'low' } },
    low: { on: { 'power fails': 'out', 'power returns': 'there' } },
    out: { on: { 'power returns': 'there' } },
  },
});

/** From tripped, "on" does nothing until the handle was pushed fully off. */
const alarmBreaker = region({
  initial: 'on',
  states: {
    on: {
      meta: handleOn('alarmHandle'),
      on: { 'alarm breaker trips': { guard: 'power is there', target: 'tripped' }, 'alarm breaker pushed off': 'off' },
      always: { guard: 'the circuit is shorted and power is there', target: 'tripped' },
    },
    off: { meta: handleOff('alarmHandle'), on: { 'alarm breaker pushed on': 'on' } },
    tripped: { meta: handleOff('alarmHandle'), on: { 'alarm breaker pushed off': 'off' } },
  },
});

const alarmWire = region({
  initial: 'sound',
  states: {
    sound: { on: { 'alarm circuit shorted': 'shorted' } },
    shorted: { on: { 'alarm circuit cleared': 'sound' } },
  },
});

export function sightsOf({ lamps }: AlarmKind): readonly Sight[] {
  return lamps === 'one' ? ['lamp', 'buzzer'] : ['airLamp', 'waterLamp', 'buzzer'];
}

export function alarmMachine(id: string, kind: AlarmKind) {
  const sights = sightsOf(kind);
  const nothing = Object.fromEntries(sights.map((s) => [s, false]));
  const circuit = region({
    initial: 'live',
    states: {
      dead: {
        meta: {
          says: 'a dead circuit shows nothing and remembers nothing',
          sees: nothing,
          over: OVER.deadCircuit,
        } satisfies Says,
        always: { guard: 'the alarm circuit is fed', target: 'live' },
      },
      live: {
        type: 'parallel',
        states: liveCircuit(kind),
        always: { guard: 'the alarm circuit is dead', target: 'dead' },
      },
    },
  });
  const facts = {
    'air pressure': airPressure,
    'air switch': airSwitch,
    'pump-tank water': pumpTankWater,
    'alarm float': alarmFloat,
    'float leads': floatLeads,
    terminals,
    'power supply': powerSupply,
    'alarm breaker': alarmBreaker,
    'alarm wire': alarmWire,
    'test button': testButton(sights),
    buzzer: mortal('buzzer', 'buzzer'),
    'telephone line': telephoneLine,
    'alarm circuit': circuit,
  };
  return kind.lamps === 'one'
    ? alarmWords.createMachine({
        id,
        type: 'parallel',
        context: {},
        states: { ...facts, lamp: mortal('lamp', 'lamp') },
      })
    : alarmWords.createMachine({
        id,
        type: 'parallel',
        context: {},
        states: {
          ...facts,
          'air lamp': mortal('air lamp', 'airLamp'),
          'water lamp': mortal('water lamp', 'waterLamp'),
          'compressor breaker': compressorBreaker,
          'ultraviolet lamp': ultravioletLamp,
        },
      });
}
