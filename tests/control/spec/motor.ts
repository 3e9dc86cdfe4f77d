/** From selector to motor: coil, contact, leads, winding, rotor and the protector that guards them against heat. */
import { and, not, or, setup, stateIn } from 'xstate';
import { handleOff, handleOn, type Says } from './vocabulary.ts';

export type MotorEvent =
  | `selector to ${'Hand' | 'Off' | 'Auto'}`
  | `work is ${'asked for' | 'done'}`
  | `power ${'fails' | 'sags' | 'returns'}`
  | `pump breaker ${'trips' | 'pushed off' | 'pushed on'}`
  | `pump circuit ${'shorted' | 'cleared'}`
  | `relay ${'opens' | 'welds' | 'renewed'}`
  | `motor lead ${'opens' | 'shorts' | 'mended'}`
  | `winding ${'opens' | 'renewed'}`
  | `rotor ${'seizes' | 'freed'}`
  | `protector ${'fails' | 'renewed'}`
  | 'the protector is hot'
  | 'the protector has cooled';

const at = (region: string, ...states: string[]) => or(states.map((state) => stateIn({ [region]: state })));
const powered = not(at('power supply', 'out'));
const live = and([powered, at('pump breaker', 'on')]);
const coil = and([live, or([at('selector', 'Hand'), and([at('selector', 'Auto'), at('work', 'asked for')])])]);
const contact = or([at('relay', 'welded'), and([coil, not(at('relay', 'open'))])]);
const fed = and([live, contact]);
const current = and([fed, at('motor lead', 'sound'), at('winding', 'sound'), not(at('protector', 'open', 'failed'))]);
const turns = and([current, at('rotor', 'free')]);
const stalls = and([current, at('rotor', 'seized')]);
const warms = and([turns, at('power supply', 'low')]);

const words = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: MotorEvent }, meta: {} as Says },
  guards: {
    'power is there': powered,
    'the circuit is live': live,
    'the circuit is dead': not(live),
    'the circuit is shorted, and power is there': and([powered, at('pump wire', 'shorted')]),
    'a shorted lead is fed': and([fed, at('motor lead', 'shorted')]),
    'the motor turns': turns,
    'the motor stalls': stalls,
    'the motor does not turn': not(turns),
    'the motor does not stall': not(stalls),
    'it turns on a low supply': warms,
    'it does not turn on a low supply': not(warms),
  },
});
const region = words.createStateConfig;

const powerSupply = region({
  initial: 'there',
  states: {
    there: { on: { 'power fails': 'out', 'power sags': 'low' } },
    low: { on: { 'power fails': 'out', 'power returns': 'there' } },
    out: { on: { 'power returns': 'there' } },
  },
});

const breaker = region({
  initial: 'on',
  states: {
    on: {
      meta: handleOn('pumpHandle'),
      on: { 'pump breaker pushed off': 'off', 'pump breaker trips': { guard: 'power is there', target: 'tripped' } },
      always: [
        { guard: 'the circuit is shorted, and power is there', target: 'tripped' },
        { guard: 'a shorted lead is fed', target: 'tripped' },
      ],
    },
    off: { meta: handleOff('pumpHandle'), on: { 'pump breaker pushed on': 'on' } },
    tripped: { meta: handleOff('pumpHandle'), on: { 'pump breaker pushed off': 'off' } },
  },
});

const wire = region({
  initial: 'sound',
  states: {
    sound: { on: { 'pump circuit shorted': 'shorted' } },
    shorted: { on: { 'pump circuit cleared': 'sound' } },
  },
});

const selector = region({
  initial: 'Auto',
  states: {
    Auto: { on: { 'selector to Hand': 'Hand', 'selector to Off': 'Off' } },
    Hand: { on: { 'selector to Auto': 'Auto', 'selector to Off': 'Off' } },
    Off: { on: { 'selector to Auto': 'Auto', 'selector to Hand': 'Hand' } },
  },
});

/** Water asks as long as it stands; a timed dose is asked for once and forgotten without power. */
const work = (timed: boolean) =>
  region({
    initial: 'none',
    states: {
      none: {
        on: { 'work is asked for': timed ? { guard: 'the circuit is live', target: 'asked for' } : 'asked for' },
      },
      'asked for': timed
        ? {
            meta: { says: 'a dose lasts its minutes', runs: ['dose'] } satisfies Says,
            on: { 'work is done': 'none' },
            always: { guard: 'the circuit is dead', target: 'none' } as const,
          }
        : { on: { 'work is done': 'none' } },
    },
  });

const relay = region({
  initial: 'sound',
  states: {
    sound: { on: { 'relay opens': 'open', 'relay welds': 'welded' } },
    open: { on: { 'relay renewed': 'sound' } },
    welded: { on: { 'relay renewed': 'sound' } },
  },
});

const motorLead = region({
  initial: 'sound',
  states: {
    sound: { on: { 'motor lead opens': 'open', 'motor lead shorts': 'shorted' } },
    open: { on: { 'motor lead mended': 'sound' } },
    shorted: { on: { 'motor lead mended': 'sound' } },
  },
});

const winding = region({
  initial: 'sound',
  states: { sound: { on: { 'winding opens': 'open' } }, open: { on: { 'winding renewed': 'sound' } } },
});

const rotor = region({
  initial: 'free',
  states: { free: { on: { 'rotor seizes': 'seized' } }, seized: { on: { 'rotor freed': 'free' } } },
});

/** It opens on heat and closes when it has cooled; one that failed stays open for good. */
const protector = region({
  initial: 'cool',
  states: {
    cool: {
      always: [
        { guard: 'the motor stalls', target: 'heating' },
        { guard: 'it turns on a low supply', target: 'warming' },
      ],
      on: { 'protector fails': 'failed' },
    },
    heating: {
      meta: { says: 'a stalled motor heats its protector within seconds', runs: ['protectorHeat'] } satisfies Says,
      on: { 'the protector is hot': 'open', 'protector fails': 'failed' },
      always: { guard: 'the motor does not stall', target: 'cool' },
    },
    warming: {
      meta: { says: 'a low supply warms the protector of a running motor', runs: ['protectorWarm'] } satisfies Says,
      on: { 'the protector is hot': 'open', 'protector fails': 'failed' },
      always: { guard: 'it does not turn on a low supply', target: 'cool' },
    },
    open: {
      meta: { says: 'an open protector closes when it has cooled', runs: ['protectorCool'] } satisfies Says,
      on: { 'the protector has cooled': 'cool', 'protector fails': 'failed' },
    },
    failed: { on: { 'protector renewed': 'cool' } },
  },
});

const motor = region({
  initial: 'stands',
  states: {
    stands: {
      meta: { says: 'a motor without current stands', sees: { pump: false, stalledPump: false } } satisfies Says,
      always: [
        { guard: 'the motor turns', target: 'turns' },
        { guard: 'the motor stalls', target: 'stalls' },
      ],
    },
    turns: {
      meta: { says: 'a sound motor turns while it is fed', sees: { pump: true, stalledPump: false } } satisfies Says,
      always: { guard: 'the motor does not turn', target: 'stands' },
    },
    stalls: {
      meta: {
        says: 'a seized one draws its current and stands',
        sees: { pump: false, stalledPump: true },
      } satisfies Says,
      always: { guard: 'the motor does not stall', target: 'stands' },
    },
  },
});

export function motorMachine(id: string, timed: boolean) {
  return words.createMachine({
    id,
    type: 'parallel',
    context: {},
    states: {
      'power supply': powerSupply,
      'pump breaker': breaker,
      'pump wire': wire,
      selector,
      work: work(timed),
      relay,
      'motor lead': motorLead,
      winding,
      rotor,
      protector,
      motor,
    },
  });
}
