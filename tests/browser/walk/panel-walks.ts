/** What hands do at a panel in the shipped calls, and what that is to the specification of each promise. */
import type { CallFile } from '../../../src/calls/index.ts';
import type { UnitSpec } from '../../../src/unit/index.ts';
import { SPECS } from '../../control/panels.ts';
import { PROMISES } from '../../control/spec/promises.ts';
import { type Promised, SOUND } from '../../control/spec/vocabulary.ts';
import type { Hand } from './handed.ts';
import type { Manner } from './person.ts';

/** Something done by its action's id, with the answers of its form, as calls write it in their solutions. */
export type Doing = CallFile['solution'][number];

export interface PanelWalk {
  readonly promised: Promised;
  /** The call in which it is walked. */
  readonly call: string;
  readonly where: 'on site' | 'by phone';
  readonly manner: Manner;
  /** The fault whose events are let in, as in the walk of the same name on the bare panel. */
  readonly fault: string;
  /** What had happened to the panel before the hands come to it. */
  readonly history: readonly string[];
  /** How the person gets there. */
  readonly before: readonly Doing[];
  readonly hands: readonly Hand[];
  /** Hands that are not of this promise, and only put the panel back between two paths. */
  readonly back: readonly Hand[];
  /**
   * Actions that only look, done where no delay runs: the first one after every step that changes the state, all of them
   * where that state is new.
   */
  readonly looks: readonly string[];
  /** Whether the alarm on the page shows lamp and buzzer as the specification means them. */
  readonly live: boolean;
}

/** The delays of the unit that all shipped calls are about, s. */
export const DELAYS_s: UnitSpec['panel']['delays_s'] = SPECS.u1.panel.delays_s;

const u1 = (name: string): Promised => {
  const promised = PROMISES.find((p) => p.name === name && p.unit === 'u1');
  if (!promised) throw new Error(`no promise "${name}"`);
  return promised;
};

/** A visit to a panel that has no alarm: the doses do not come, everything else is sound. */
const ARRIVE: readonly Doing[] = [
  { do: 'decide-visit', fill: { urgency: 'before-dosing', load: ['float'] } },
  { do: 'make-safe' },
];
const AT_THE_TANK: readonly Doing[] = [...ARRIVE, { do: 'open-lid:pump' }];

const SILENCE: Hand = { name: 'press Silence', action: 'press-silence', is: ['silence pressed'] };
const TEST: Hand = { name: 'hold Test', action: 'press-test', is: ['test pressed', 'test released'], notedAfter: 1 };
const AIR: readonly Hand[] = [
  { name: 'compressor off', action: 'breaker-off:compressorBreaker', is: ['air pressure falls'] },
  { name: 'compressor on', action: 'breaker-on:compressorBreaker', is: ['air pressure recovers'] },
];
const WAIT_FOR_AIR: Hand = { name: 'wait a minute', is: ['low-air delay ends'] };
const WAIT_FOR_WATER: Hand = { name: 'wait five seconds', is: ['high-water delay ends'] };
const LIFT: Hand = {
  name: 'lift the alarm float',
  action: 'lift-float:highWaterFloat',
  is: ['alarm float lifted by hand', 'high-water delay ends', 'alarm float let go'],
  notedAfter: 2,
};
const ALARM_BREAKER: readonly Hand[] = [
  { name: 'alarm breaker off', action: 'breaker-off:alarmBreaker', is: ['alarm breaker pushed off'] },
  { name: 'alarm breaker on', action: 'breaker-on:alarmBreaker', is: ['alarm breaker pushed on'] },
];
/** All levers off for a minute: the air goes and comes with the compressor, the alarm circuit is dead meanwhile. */
const RESET: Hand = {
  name: 'reset the panel',
  action: 'reset-panel',
  is: ['alarm breaker pushed off', 'air pressure falls', 'alarm breaker pushed on', 'air pressure recovers'],
};
const GUIDED: readonly Hand[] = [
  { name: 'guide to Silence', action: 'guide-silence', is: ['silence pressed'] },
  { name: 'guide a reset', action: 'guide-reset', is: ['alarm breaker pushed off', 'alarm breaker pushed on'] },
];

const BREAKERS = ['alarm', 'compressor', 'pump'].flatMap((circuit): Hand[] =>
  (['off', 'on'] as const).map((way) => ({
    name: `${circuit} breaker ${way}`,
    action: `breaker-${way}:${circuit}Breaker`,
    is: [`${circuit} breaker pushed ${way}`],
  })),
);

function byPhone(call: string, fault: string, history: readonly string[], waits: readonly Hand[]): PanelWalk {
  return {
    promised: u1('reset'),
    call,
    where: 'by phone',
    manner: { by: 'pointer' },
    fault,
    history,
    before: [{ do: 'ask-danger' }, { do: 'ask-lamp' }],
    hands: [...GUIDED, ...waits],
    back: [],
    looks: ['ask-breakers'],
    live: true,
  };
}

export const PANEL_WALKS: readonly PanelWalk[] = [
  {
    promised: u1('alarm and silence'),
    call: 'noon-sprinklers',
    where: 'on site',
    manner: { by: 'keys', closeUp: true },
    fault: 'high-water float lifted',
    history: [],
    before: AT_THE_TANK,
    hands: [SILENCE, TEST, ...AIR, WAIT_FOR_AIR, LIFT],
    back: [RESET],
    looks: ['read-panel'],
    live: true,
  },
  {
    promised: u1('reset'),
    call: 'noon-sprinklers',
    where: 'on site',
    manner: { by: 'keys' },
    fault: SOUND,
    history: [],
    before: ARRIVE,
    hands: [SILENCE, ...AIR, WAIT_FOR_AIR, ...ALARM_BREAKER, RESET],
    back: [],
    looks: ['read-panel'],
    live: true,
  },
  byPhone('sunny-line', SOUND, ['air pressure falls', 'low-air delay ends', 'silence pressed'], [WAIT_FOR_AIR]),
  byPhone('wash-day-light', SOUND, ['water rises over all floats', 'high-water delay ends'], [WAIT_FOR_WATER]),
  byPhone('storm-light', 'surge on the latch', ['a surge strikes', 'silence pressed'], []),
  {
    promised: u1('breakers and supply'),
    call: 'noon-sprinklers',
    where: 'on site',
    manner: { by: 'keys' },
    fault: SOUND,
    history: [],
    before: ARRIVE,
    hands: BREAKERS,
    back: [],
    looks: ['read-panel', 'selector-hand', 'press-test', 'listen-compressor'],
    live: false,
  },
];
