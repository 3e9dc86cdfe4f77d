/** The compressor runs while it is fed, plugged in and not cut out by its heat; a chafed cord trips what guards it. */
import { and, not, or, setup, stateIn } from 'xstate';
import type { ControlEventName } from '../../../src/control/index.ts';
import { handleOff, handleOn, type Promised, type Says } from './vocabulary.ts';

export type CompressorEvent =
  | `compressor breaker ${'trips' | 'pushed off' | 'pushed on'}`
  | `compressor circuit ${'shorted' | 'cleared'}`
  | `power ${'fails' | 'sags' | 'returns'}`
  | `cord ${'pulled' | 'plugged in' | 'chafes' | 'renewed'}`
  | `ground-fault outlet ${'trips' | 'reset'}`
  | `compressor ${'stops' | 'mended'}`
  | `housing ${'gets hot' | 'cools'}`
  | 'the cut-out is hot'
  | 'the cut-out has cooled';

const at = (region: string, state: string) => stateIn({ [region]: state });
const powered = not(at('power supply', 'out'));
const outletFed = and([powered, at('compressor breaker', 'on')]);
const cordFault = and([at('cord', 'chafed'), at('plug', 'in')]);
const notCutOut = or([at('thermal cut-out', 'cool'), at('thermal cut-out', 'heating up')]);
const runs = and([outletFed, at('outlet', 'set'), at('plug', 'in'), at('works', 'sound'), notCutOut]);

const words = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: CompressorEvent }, meta: {} as Says },
  guards: {
    'power is there': powered,
    'the circuit is shorted, and power is there': and([powered, at('compressor wire', 'shorted')]),
    'a chafed cord is plugged in, and power is there': and([powered, cordFault]),
    'a chafed cord is plugged in, and the outlet is fed': and([outletFed, cordFault]),
    'nothing keeps it from running': runs,
    'something keeps it from running': not(runs),
    'it runs in a hot housing': and([runs, at('housing', 'hot')]),
    'it stands, or the housing is cool': not(and([runs, at('housing', 'hot')])),
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

/** On a plain outlet the breaker is all there is against a chafed cord. */
const breaker = (guarded: boolean) =>
  region({
    initial: 'on',
    states: {
      on: {
        meta: handleOn('compressorHandle'),
        on: {
          'compressor breaker trips': { guard: 'power is there', target: 'tripped' },
          'compressor breaker pushed off': 'off',
        },
        always: [
          { guard: 'the circuit is shorted, and power is there', target: 'tripped' },
          ...(guarded
            ? []
            : [{ guard: 'a chafed cord is plugged in, and power is there', target: 'tripped' } as const]),
        ],
      },
      off: {
        meta: handleOff('compressorHandle'),
        // Pushed onto a short it does not even hold for an instant: the outlet does not notice.
        on: {
          'compressor breaker pushed on': [
            { guard: 'the circuit is shorted, and power is there', target: 'tripped' },
            'on',
          ],
        },
      },
      tripped: { meta: handleOff('compressorHandle'), on: { 'compressor breaker pushed off': 'off' } },
    },
  });

const wire = region({
  initial: 'sound',
  states: {
    sound: { on: { 'compressor circuit shorted': 'shorted' } },
    shorted: { on: { 'compressor circuit cleared': 'sound' } },
  },
});

/** A plain outlet is always set. */
const outlet = (guarded: boolean) =>
  region({
    initial: 'set',
    states: guarded
      ? {
          set: {
            on: { 'ground-fault outlet trips': { guard: 'power is there', target: 'tripped' } },
            always: { guard: 'a chafed cord is plugged in, and the outlet is fed', target: 'tripped' },
          },
          tripped: { on: { 'ground-fault outlet reset': 'set' } },
        }
      : { set: {} },
  });

const plug = region({
  initial: 'in',
  states: { in: { on: { 'cord pulled': 'out' } }, out: { on: { 'cord plugged in': 'in' } } },
});

const cord = region({
  initial: 'sound',
  states: { sound: { on: { 'cord chafes': 'chafed' } }, chafed: { on: { 'cord renewed': 'sound' } } },
});

const works = region({
  initial: 'sound',
  states: { sound: { on: { 'compressor stops': 'stopped' } }, stopped: { on: { 'compressor mended': 'sound' } } },
});

const housing = region({
  initial: 'cool',
  states: { cool: { on: { 'housing gets hot': 'hot' } }, hot: { on: { 'housing cools': 'cool' } } },
});

/** It opens hot, so the compressor stands until it has cooled; in a hot housing that happens again and again. */
const cutout = region({
  initial: 'cool',
  states: {
    cool: { always: { guard: 'it runs in a hot housing', target: 'heating up' } },
    'heating up': {
      meta: { says: 'running in a hot housing it heats up', runs: ['cutoutHeat'] } satisfies Says,
      on: { 'the cut-out is hot': 'open' },
      always: { guard: 'it stands, or the housing is cool', target: 'cool' },
    },
    open: {
      meta: { says: 'a cut-out that opened closes when it has cooled', runs: ['cutoutCool'] } satisfies Says,
      on: { 'the cut-out has cooled': 'cool' },
    },
  },
});

const compressor = region({
  initial: 'runs',
  states: {
    runs: {
      meta: { says: 'nothing keeps the compressor from running', sees: { compressor: true } } satisfies Says,
      always: { guard: 'something keeps it from running', target: 'stands' },
    },
    stands: {
      meta: {
        says: 'the compressor never runs dead, unplugged, cut out or broken',
        sees: { compressor: false },
      } satisfies Says,
      always: { guard: 'nothing keeps it from running', target: 'runs' },
    },
  },
});

function compressorMachine(id: string, guarded: boolean) {
  return words.createMachine({
    id,
    type: 'parallel',
    context: {},
    states: {
      'power supply': powerSupply,
      'compressor breaker': breaker(guarded),
      'compressor wire': wire,
      outlet: outlet(guarded),
      plug,
      cord,
      works,
      housing,
      'thermal cut-out': cutout,
      compressor,
    },
  });
}

const DOES: Readonly<Record<CompressorEvent, readonly ControlEventName[]>> = {
  'compressor breaker trips': ['compressorBreaker.trips'],
  'compressor breaker pushed off': ['compressorBreaker.off'],
  'compressor breaker pushed on': ['compressorBreaker.on'],
  'compressor circuit shorted': ['compressorBreaker.shorts'],
  'compressor circuit cleared': ['compressorBreaker.shortCleared'],
  'power fails': ['supply.fails'],
  'power sags': ['supply.sags'],
  'power returns': ['supply.returns'],
  'cord pulled': ['compressorCord.pulled'],
  'cord plugged in': ['compressorCord.plugged'],
  'cord chafes': ['compressorCord.chafes'],
  'cord renewed': ['compressorCord.renewed'],
  'ground-fault outlet trips': ['gfci.trips'],
  'ground-fault outlet reset': ['gfci.reset'],
  'compressor stops': ['compressor.stops'],
  'compressor mended': ['compressor.mended'],
  'housing gets hot': ['housing.heats'],
  'housing cools': ['housing.cools'],
  'the cut-out is hot': ['cutout.hot'],
  'the cut-out has cooled': ['cutout.cool'],
};

export const COMPRESSOR_PROMISES: readonly Promised[] = (['u1', 'u2', 'u3'] as const).map((unit): Promised => {
  const guarded = unit === 'u2';
  const { 'ground-fault outlet trips': trips, 'ground-fault outlet reset': reset, ...plain } = DOES;
  return {
    name: 'compressor and cut-out',
    unit,
    machine: compressorMachine(`compressor of ${unit}`, guarded),
    does: guarded ? DOES : plain,
    sights: ['compressor', 'compressorHandle'],
    delays: ['cutoutHeat', 'cutoutCool'],
    anytime: [
      'compressor breaker pushed off',
      'compressor breaker pushed on',
      ...(guarded ? ['ground-fault outlet reset'] : []),
    ],
    faults: {
      'compressor breaker tripped once': ['compressor breaker trips'],
      'compressor breaker trips again': ['compressor circuit shorted', 'compressor circuit cleared'],
      'supply low': ['power sags'],
      'cord pulled': ['cord pulled', 'cord plugged in'],
      'housing hot': ['housing gets hot', 'housing cools'],
      'cord chafed': ['cord chafes', 'cord renewed'],
      'compressor stopped': ['compressor stops', 'compressor mended'],
      ...(guarded ? { 'ground-fault outlet tripped': ['ground-fault outlet trips'] } : {}),
    },
  };
});
