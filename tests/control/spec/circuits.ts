/** Three circuits leave the panel; opening one leaves the others alive. Each is watched at what it feeds. */
import { and, not, setup, stateIn } from 'xstate';
import type { ControlEventName } from '../../../src/control/index.ts';
import { handleOff, handleOn, type Promised, type Says, type Sight } from './vocabulary.ts';

const CIRCUITS = ['alarm', 'compressor', 'pump'] as const;
type Circuit = (typeof CIRCUITS)[number];

export type CircuitEvent =
  | `${Circuit} breaker ${'trips' | 'pushed off' | 'pushed on'}`
  | `${Circuit} circuit ${'shorted' | 'cleared'}`
  | `power ${'fails' | 'sags' | 'returns'}`;

const at = (region: string, state: string) => stateIn({ [region]: state });
const powered = not(at('power supply', 'out'));
const live = (circuit: Circuit) => and([powered, at(`${circuit} breaker`, 'on')]);
const shorted = (circuit: Circuit) => and([powered, at(`${circuit} wire`, 'shorted')]);

const words = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: CircuitEvent }, meta: {} as Says },
  guards: {
    'power is there': powered,
    'the alarm circuit is live': live('alarm'),
    'the compressor circuit is live': live('compressor'),
    'the pump circuit is live': live('pump'),
    'the alarm circuit is dead': not(live('alarm')),
    'the compressor circuit is dead': not(live('compressor')),
    'the pump circuit is dead': not(live('pump')),
    'the alarm circuit is shorted, and power is there': shorted('alarm'),
    'the compressor circuit is shorted, and power is there': shorted('compressor'),
    'the pump circuit is shorted, and power is there': shorted('pump'),
  },
});

/** A breaker: from tripped, "on" does nothing until it was pushed fully off; on a short it trips at every "on". */
function breaker<C extends Circuit>(circuit: C) {
  return words.createStateConfig({
    initial: 'on',
    states: {
      on: {
        meta: handleOn(`${circuit}Handle`),
        on: {
          [`${circuit} breaker trips`]: { guard: 'power is there', target: 'tripped' },
          [`${circuit} breaker pushed off`]: 'off',
        },
        always: { guard: `the ${circuit} circuit is shorted, and power is there`, target: 'tripped' },
      },
      off: { meta: handleOff(`${circuit}Handle`), on: { [`${circuit} breaker pushed on`]: 'on' } },
      tripped: { meta: handleOff(`${circuit}Handle`), on: { [`${circuit} breaker pushed off`]: 'off' } },
    },
  });
}

function wire(circuit: Circuit) {
  return words.createStateConfig({
    initial: 'sound',
    states: {
      sound: { on: { [`${circuit} circuit shorted`]: 'shorted' } },
      shorted: { on: { [`${circuit} circuit cleared`]: 'sound' } },
    },
  });
}

function circuitOf(circuit: Circuit, sights: readonly Sight[]) {
  const seen = (on: boolean) => Object.fromEntries(sights.map((s) => [s, on]));
  return words.createStateConfig({
    initial: 'live',
    states: {
      live: {
        meta: { says: `a live ${circuit} circuit feeds what hangs on it`, sees: seen(true) } satisfies Says,
        always: { guard: `the ${circuit} circuit is dead`, target: 'dead' },
      },
      dead: {
        meta: { says: `a dead ${circuit} circuit feeds nothing`, sees: seen(false) } satisfies Says,
        always: { guard: `the ${circuit} circuit is live`, target: 'live' },
      },
    },
  });
}

const supply = words.createStateConfig({
  initial: 'there',
  states: {
    there: { on: { 'power fails': 'out', 'power sags': 'low' } },
    low: { on: { 'power fails': 'out', 'power returns': 'there' } },
    out: { on: { 'power returns': 'there' } },
  },
});

function circuitsMachine(id: string, lamps: readonly Sight[]) {
  return words.createMachine({
    id,
    type: 'parallel',
    context: {},
    states: {
      'power supply': supply,
      'alarm breaker': breaker('alarm'),
      'compressor breaker': breaker('compressor'),
      'pump breaker': breaker('pump'),
      'alarm wire': wire('alarm'),
      'compressor wire': wire('compressor'),
      'pump wire': wire('pump'),
      'alarm circuit': circuitOf('alarm', lamps),
      'compressor circuit': circuitOf('compressor', ['compressor']),
      'pump circuit': circuitOf('pump', ['pump']),
    },
  });
}

const does = Object.fromEntries([
  ...CIRCUITS.flatMap((c): [CircuitEvent, ControlEventName[]][] => [
    [`${c} breaker trips`, [`${c}Breaker.trips`]],
    [`${c} breaker pushed off`, [`${c}Breaker.off`]],
    [`${c} breaker pushed on`, [`${c}Breaker.on`]],
    [`${c} circuit shorted`, [`${c}Breaker.shorts`]],
    [`${c} circuit cleared`, [`${c}Breaker.shortCleared`]],
  ]),
  ['power fails', ['supply.fails']],
  ['power sags', ['supply.sags']],
  ['power returns', ['supply.returns']],
]) as Promised['does'];

export const CIRCUIT_PROMISES: readonly Promised[] = (['u1', 'u2', 'u3'] as const).map((unit): Promised => {
  const lamps: readonly Sight[] = unit === 'u3' ? ['airLamp', 'waterLamp', 'buzzer'] : ['lamp', 'buzzer'];
  return {
    name: 'breakers and supply',
    unit,
    machine: circuitsMachine(`circuits of ${unit}`, lamps),
    does,
    // Held test, Hand and water over the lowest float: then lamp, buzzer and pump tell whether their circuits live.
    before: ['test.pressed', 'selector.hand', ...(unit === 'u3' ? (['redundantOffFloat.rises'] as const) : [])],
    sights: [...lamps, 'compressor', 'pump', 'alarmHandle', 'compressorHandle', 'pumpHandle'],
    delays: [],
    anytime: CIRCUITS.flatMap((c) => [`${c} breaker pushed off`, `${c} breaker pushed on`]),
    faults: Object.fromEntries(
      CIRCUITS.map((c) => [`${c} breaker trips again`, [`${c} circuit shorted`, `${c} circuit cleared`]]),
    ),
  };
});
