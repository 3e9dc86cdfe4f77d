/** The live alarm circuit: delays, latches, lamps, the sound and the dialler. Leaving it forgets all of them. */
import { alarmWords } from './alarm-words.ts';
import { CALLED, type Says } from './vocabulary.ts';

export interface AlarmKind {
  /** A latching panel keeps its lamp lit until it loses power; a following one goes dark with the condition. */
  readonly latches: boolean;
  /** One lamp for all, or one for air and one for water. */
  readonly lamps: 'one' | 'two';
}

const region = alarmWords.createStateConfig;

/** A freed switch opens for an instant before air or water takes it: its delay starts anew. */
const lowAir = region({
  initial: 'open',
  states: {
    open: { always: { guard: 'the air switch is closed', target: 'waiting' } },
    waiting: {
      meta: { says: 'low air waits a minute before it counts', runs: ['lowAir'] } satisfies Says,
      on: { 'low-air delay ends': 'stands', 'air switch freed': { guard: 'the air switch is caught', target: 'open' } },
      always: { guard: 'the air switch is open', target: 'open' },
    },
    stands: {
      on: { 'air switch freed': { guard: 'the air switch is caught', target: 'open' } },
      always: { guard: 'the air switch is open', target: 'open' },
    },
  },
});

const highWater = region({
  initial: 'open',
  states: {
    open: { always: { guard: 'the high-water switch is closed', target: 'waiting' } },
    waiting: {
      meta: { says: 'high water waits five seconds', runs: ['highWater'] } satisfies Says,
      on: {
        'high-water delay ends': 'stands',
        'alarm float freed': { guard: 'freeing it opens the contact', target: 'open' },
        'alarm float let go': { guard: 'the hand lets go of the contact', target: 'open' },
      },
      always: { guard: 'the high-water switch is open', target: 'open' },
    },
    stands: {
      on: {
        'alarm float freed': { guard: 'freeing it opens the contact', target: 'open' },
        'alarm float let go': { guard: 'the hand lets go of the contact', target: 'open' },
      },
      always: { guard: 'the high-water switch is open', target: 'open' },
    },
  },
});

const lampOut = region({
  initial: 'shines',
  states: {
    shines: {
      meta: { says: 'fed and sound, the ultraviolet lamp shines', sees: { ultraviolet: true } } satisfies Says,
      always: { guard: 'the ultraviolet lamp is dark', target: 'waiting' },
    },
    waiting: {
      meta: {
        says: 'a dark ultraviolet lamp waits a minute before it counts',
        sees: { ultraviolet: false },
        runs: ['lampOut'],
      } satisfies Says,
      on: { 'lamp-out delay ends': 'stands' },
      always: { guard: 'the ultraviolet lamp shines', target: 'shines' },
    },
    stands: {
      meta: { says: 'the ultraviolet lamp is out', sees: { ultraviolet: false } } satisfies Says,
      always: { guard: 'the ultraviolet lamp shines', target: 'shines' },
    },
  },
});

const oneLamp = (latches: boolean) =>
  region({
    initial: 'dark',
    states: {
      dark: {
        meta: { says: 'no alarm, no light', sees: { lamp: false } } satisfies Says,
        always: { guard: 'any condition stands', target: 'lit' },
        ...(latches ? { on: { 'a surge strikes': 'lit' } } : {}),
      },
      lit: {
        meta: latches
          ? ({ says: 'once lit the lamp stays lit while the circuit is live', sees: { lamp: true } } satisfies Says)
          : ({ says: 'the lamp is lit while a condition stands', sees: { lamp: true } } satisfies Says),
        ...(latches ? {} : { always: { guard: 'no condition stands', target: 'dark' } as const }),
      },
    },
  });

const airLamp = region({
  initial: 'dark',
  states: {
    dark: {
      meta: { says: 'no air alarm, no light', sees: { airLamp: false } } satisfies Says,
      always: { guard: 'an air condition stands', target: 'lit' },
      on: { 'a surge strikes': 'lit' },
    },
    lit: {
      meta: {
        says: 'low air or a dark ultraviolet lamp lit the air lamp, it stays',
        sees: { airLamp: true },
      } satisfies Says,
    },
  },
});

const waterLamp = region({
  initial: 'dark',
  states: {
    dark: {
      meta: { says: 'no water alarm, no light', sees: { waterLamp: false } } satisfies Says,
      always: { guard: 'high water stands', target: 'lit' },
      on: { 'a surge strikes': 'lit' },
    },
    lit: {
      meta: { says: 'high water lit the water lamp, it stays', sees: { waterLamp: true } } satisfies Says,
    },
  },
});

/** Silence stops the sound only; a condition that rises anew sounds again, also while the other one stands. */
const sound = (latches: boolean) =>
  region({
    initial: 'quiet',
    states: {
      quiet: {
        meta: { says: 'no alarm, no sound', sees: { buzzer: false } } satisfies Says,
        always: { guard: 'any condition stands', target: 'sounding' },
        ...(latches ? { on: { 'a surge strikes': 'sounding' } } : {}),
      },
      sounding: {
        meta: { says: 'an alarm sounds until it is silenced', sees: { buzzer: true } } satisfies Says,
        on: { 'silence pressed': 'silenced' },
        ...(latches ? {} : { always: { guard: 'no condition stands', target: 'quiet' } as const }),
      },
      silenced: {
        meta: { says: 'a silenced alarm is quiet until a condition rises', sees: { buzzer: false } } satisfies Says,
        on: {
          'low-air delay ends': 'sounding',
          'high-water delay ends': 'sounding',
          'lamp-out delay ends': 'sounding',
        },
        ...(latches ? {} : { always: { guard: 'no condition stands', target: 'quiet' } as const }),
      },
    },
  });

const dialler = region({
  initial: 'resting',
  states: {
    resting: { always: { guard: 'an alarm lamp is called for', target: 'counting' } },
    counting: {
      meta: { says: 'five unbroken minutes of alarm before a call', runs: ['dial'] } satisfies Says,
      always: { guard: 'no alarm lamp is called for', target: 'resting' },
      on: {
        'five minutes pass': [{ guard: 'the line is good', target: 'waiting a day', actions: CALLED }, 'waiting a day'],
      },
    },
    'waiting a day': {
      meta: { says: 'unresolved, it calls again after a day', runs: ['dialAgain'] } satisfies Says,
      always: { guard: 'no alarm lamp is called for', target: 'resting' },
      on: {
        'a day passes': [
          { guard: 'the line is good', target: 'waiting a day', reenter: true, actions: CALLED },
          { target: 'waiting a day', reenter: true },
        ],
      },
    },
  },
});

/** The regions of a live alarm circuit of a kind of panel. */
export function liveCircuit({ latches, lamps }: AlarmKind) {
  return lamps === 'one'
    ? {
        'low air': lowAir,
        'high water': highWater,
        'alarm lamp': oneLamp(latches),
        'alarm sound': sound(latches),
        dialler,
      }
    : {
        'low air': lowAir,
        'high water': highWater,
        'lamp-out contact': lampOut,
        'air alarm': airLamp,
        'water alarm': waterLamp,
        'alarm sound': sound(latches),
        dialler,
      };
}
