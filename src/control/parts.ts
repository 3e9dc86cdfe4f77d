/**
 * The small machines a panel is made of, each with its sound and its faulty states. A unit's control is a parallel
 * machine of them (`machine.ts`); another panel variant takes other parts from here.
 *
 * House rules (held by tests/control/finite.test.ts): empty context, no `after`, no actors, no history; events carry
 * nothing; guards read states only; delays are asked of the engine by `arm` and `disarm`.
 */
import type { BreakerName, DelayId, FloatName } from './events.ts';
import { all, any, guardOf, is, type Logic, none } from './logic.ts';

type Transition = string | { target?: string; guard?: ReturnType<typeof guardOf>; actions?: object; reenter?: boolean };

export interface PartState {
  on?: Record<string, Transition | Transition[]>;
  always?: Transition | Transition[];
  entry?: object;
  exit?: object;
}

export interface Part {
  initial: string;
  states: Record<string, PartState>;
}

function arm(delay: DelayId) {
  return { type: 'arm', params: { delay } };
}

function disarm(delay: DelayId) {
  return { type: 'disarm', params: { delay } };
}

function when(logic: Logic, target: string): { guard: ReturnType<typeof guardOf>; target: string } {
  return { guard: guardOf(logic), target };
}

/** Two states and the events that lead from one to the other and back. */
export function toggle(first: string, second: string, there: string, back: string): Part {
  return {
    initial: first,
    states: { [first]: { on: { [there]: second } }, [second]: { on: { [back]: first } } },
  };
}

/**
 * Sound until an event spoils it, each in its way. What it has become it stays until it is mended: of two faults on one
 * part the later waits for the end of the earlier.
 */
function spoilt(mended: string, ways: Readonly<Record<string, string>>): Part {
  const states = Object.values(ways).map((state) => [state, { on: { [mended]: 'sound' } }] as const);
  return { initial: 'sound', states: { sound: { on: ways }, ...Object.fromEntries(states) } };
}

/**
 * Off, on and tripped: from tripped, "on" does nothing until the lever was pushed fully off. A short in its own wire
 * trips it at once, one in what it feeds as soon as that is fed.
 */
export function breaker(name: BreakerName, wireShorted: Logic, loadShorted: Logic): Part {
  return {
    initial: 'on',
    states: {
      on: {
        on: { [`${name}.off`]: 'off', [`${name}.trips`]: 'tripped' },
        always: when(any(wireShorted, loadShorted), 'tripped'),
      },
      off: { on: { [`${name}.on`]: [when(wireShorted, 'tripped'), { target: 'on' }] } },
      tripped: { on: { [`${name}.off`]: 'off' } },
    },
  };
}

/** A float on its tether. Caught up or down it ignores the water; in a hand it is made. */
export function float(name: FloatName): Part {
  const caught = { [`${name}.heldUp`]: 'heldUp', [`${name}.heldDown`]: 'heldDown' };
  const inHand = { [`${name}.lifted`]: 'lifted' };
  return {
    initial: 'down',
    states: {
      down: { on: { [`${name}.rises`]: 'up', ...caught, ...inHand } },
      up: { on: { [`${name}.falls`]: 'down', ...caught, ...inHand } },
      lifted: { on: { [`${name}.released`]: 'down', ...caught } },
      heldUp: { on: { [`${name}.freed`]: 'down' } },
      heldDown: { on: { [`${name}.freed`]: 'down' } },
    },
  };
}

/** A float's cable: whole, open at a splice, or bridged by water or a crushed jacket. */
export function floatWire(name: FloatName): Part {
  return spoilt(`${name}.wireMended`, { [`${name}.wireOpens`]: 'open', [`${name}.wireBridged`]: 'bridged' });
}

/** Whose leads are on whose terminals: right, or a float's swapped with those of the next one up. */
export function leads(floats: readonly FloatName[]): Part {
  const lower = floats.slice(0, -1);
  const swap = Object.fromEntries(lower.map((f) => [`${f}.leadsSwapped`, `${f}Swapped`]));
  const swapped = lower.map((f) => [`${f}Swapped`, { on: { 'leads.righted': 'right' } }] as const);
  return { initial: 'right', states: { right: { on: swap }, ...Object.fromEntries(swapped) } };
}

/** The utility's supply: on, off, or low enough that motors labour on it. What is off does not sag. */
export function supply(): Part {
  return {
    initial: 'on',
    states: {
      on: { on: { 'supply.fails': 'off', 'supply.sags': 'low' } },
      low: { on: { 'supply.fails': 'off', 'supply.returns': 'on' } },
      off: { on: { 'supply.returns': 'on' } },
    },
  };
}

export function airContact(): Part {
  const stuck = { 'airContact.sticksOpen': 'stuckOpen', 'airContact.sticksClosed': 'stuckClosed' };
  return {
    initial: 'open',
    states: {
      open: { on: { 'air.falls': 'closed', ...stuck } },
      closed: { on: { 'air.rises': 'open', ...stuck } },
      stuckOpen: { on: { 'airContact.freed': 'open' } },
      stuckClosed: { on: { 'airContact.freed': 'open' } },
    },
  };
}

/** A condition that must stand unbroken for a delay before it counts. */
export function delayed(cause: Logic, delay: DelayId, due: string): Part {
  return {
    initial: 'idle',
    states: {
      idle: { always: when(cause, 'timing') },
      timing: { entry: arm(delay), exit: disarm(delay), on: { [due]: 'made' }, always: when(none(cause), 'idle') },
      made: { always: when(none(cause), 'idle') },
    },
  };
}

/** Seal-in relay: a condition seals it, only loss of its circuit opens it. */
export function latch(sealing: Logic, live: Logic): Part {
  return {
    initial: 'open',
    states: {
      open: { always: when(sealing, 'sealed'), on: { 'latch.surge': when(live, 'sealed') } },
      sealed: { always: when(none(live), 'open') },
    },
  };
}

/** Silence stops the buzzer only; the rise of any condition, or a loss of the circuit, clears it. */
export function silence(alarm: Logic, live: Logic, conditions: readonly ('lowAir' | 'highWater' | 'lampOut')[]): Part {
  const rises = conditions.map((c) => [`${c}.due`, when(is(c, 'timing'), 'off')] as const);
  return {
    initial: 'off',
    states: {
      off: { on: { 'silence.pressed': when(alarm, 'on') } },
      on: { on: Object.fromEntries(rises), always: when(none(live), 'off') },
    },
  };
}

/** Calls once after an unbroken alarm, and again each day it stays unresolved. */
export function dialler(alarm: Logic, lineGood: Logic): Part {
  const dial = (target: string) => ({ guard: guardOf(lineGood), target, actions: { type: 'dial' }, reenter: true });
  return {
    initial: 'idle',
    states: {
      idle: { always: when(alarm, 'timing') },
      timing: {
        entry: arm('dial'),
        exit: disarm('dial'),
        on: { 'dialler.due': [dial('waiting'), { target: 'waiting' }] },
        always: when(none(alarm), 'idle'),
      },
      waiting: {
        entry: arm('dialAgain'),
        exit: disarm('dialAgain'),
        on: { 'dialler.again': [dial('waiting'), { target: 'waiting', reenter: true }] },
        always: when(none(alarm), 'idle'),
      },
    },
  };
}

export function selector(): Part {
  const to = { 'selector.hand': 'hand', 'selector.off': 'off', 'selector.auto': 'auto' };
  return { initial: 'auto', states: { auto: { on: to }, hand: { on: to }, off: { on: to } } };
}

export function relay(): Part {
  return spoilt('relay.renewed', { 'relay.opens': 'open', 'relay.welds': 'welded' });
}

/** The leads to the pump's motor: whole, loose at a terminal, or chafed through to ground. */
export function motorLead(): Part {
  return spoilt('motorLead.mended', { 'motorLead.opens': 'open', 'motorLead.shorts': 'shorted' });
}

/**
 * The clock of a night timer: keeps time, lives on its reserve while unfed, and has stood still when that is used up.
 * A digital one then blinks until it is set; a mechanical one goes on, late, as soon as it is fed. A dead one stands.
 */
export function timerClock(live: Logic, clock: 'digital' | 'mechanical'): Part {
  const dies = { 'timer.dies': 'dead' };
  const stands = { entry: { type: 'stopClock' }, exit: { type: 'startClock' } };
  return {
    initial: 'keeping',
    states: {
      keeping: { always: when(none(live), 'reserve'), on: { 'timer.loses': 'lost', ...dies } },
      reserve: {
        entry: arm('timerReserve'),
        exit: disarm('timerReserve'),
        always: when(live, 'keeping'),
        on: { 'timer.reserveEnds': 'lost', 'timer.loses': 'lost', ...dies },
      },
      lost: {
        ...stands,
        ...(clock === 'mechanical' ? { always: when(live, 'keeping') } : {}),
        on: { 'timer.set': when(live, 'keeping'), ...dies },
      },
      dead: { ...stands, on: { 'timer.renewed': 'keeping' } },
    },
  };
}

/** Dose demand seals in at a timer start and ends with its minutes, or when the stop float breaks. */
export function nightDoses(mayStart: Logic, mayRun: Logic): Part {
  return {
    initial: 'off',
    states: {
      off: { on: { 'timer.start': when(mayStart, 'on') } },
      on: {
        entry: arm('dose'),
        exit: disarm('dose'),
        on: { 'dose.ends': 'off' },
        always: when(none(mayRun), 'off'),
      },
    },
  };
}

/**
 * Small doses by a timer all day long, a period from start to start. With the override float made the next dose comes
 * after half a period. A dose that is due waits for its water.
 */
export function timedDoses(runs: Logic, mayStart: Logic, mayRun: Logic, hurried: Logic): Part {
  const stops = when(none(runs), 'idle');
  const start = when(mayStart, 'on');
  const hurry = when(all(hurried, mayStart), 'on');
  return {
    initial: 'firstHalf',
    states: {
      idle: { always: when(runs, 'firstHalf') },
      firstHalf: {
        entry: arm('restFirst'),
        exit: disarm('restFirst'),
        on: { 'rest.half': [hurry, { target: 'secondHalf' }], 'timer.start': start },
        always: stops,
      },
      secondHalf: {
        entry: arm('restSecond'),
        exit: disarm('restSecond'),
        on: { 'rest.ends': 'waiting', 'timer.start': start },
        always: [stops, hurry],
      },
      waiting: { always: [stops, start] },
      on: {
        entry: arm('dose'),
        exit: disarm('dose'),
        on: { 'dose.ends': 'firstHalf' },
        always: [stops, when(none(mayRun), 'firstHalf')],
      },
    },
  };
}

/** A thermal switch: heats while its cause stands, opens, closes again when cooled. */
export function thermal(cause: Logic, heat: DelayId, cool: DelayId, hot: string, cooled: string): Part {
  return {
    initial: 'closed',
    states: {
      closed: { always: when(cause, 'heating') },
      heating: { entry: arm(heat), exit: disarm(heat), on: { [hot]: 'open' }, always: when(none(cause), 'closed') },
      open: { entry: arm(cool), exit: disarm(cool), on: { [cooled]: 'closed' } },
    },
  };
}

/** The motor's own protector: opens soon on a stalled rotor, later on a motor that labours, and may fail open. */
export function protector(stalls: Logic, labours: Logic): Part {
  const part = thermal(stalls, 'protectorHeat', 'protectorCool', 'protector.hot', 'protector.cool');
  const fails = { 'protector.fails': 'failed' };
  const { heating, open } = part.states;
  return {
    initial: 'closed',
    states: {
      closed: { on: fails, always: [when(stalls, 'heating'), when(labours, 'warming')] },
      warming: {
        entry: arm('protectorWarm'),
        exit: disarm('protectorWarm'),
        on: { 'protector.hot': 'open', ...fails },
        always: when(none(labours), 'closed'),
      },
      heating: { ...heating, on: { ...heating?.on, ...fails } },
      open: { ...open, on: { ...open?.on, ...fails } },
      failed: { on: { 'protector.renewed': 'closed' } },
    },
  };
}

/** An outlet that trips on a leak to ground, and does not stay set while the leak is there. */
export function gfci(leak: Logic): Part {
  return {
    initial: 'set',
    states: {
      set: { on: { 'gfci.trips': 'tripped' }, always: when(leak, 'tripped') },
      tripped: { on: { 'gfci.reset': { guard: guardOf(none(leak)), target: 'set' } } },
    },
  };
}

/** The compressor's plug, and whether its cord is chafed through. */
export function cord(): Part {
  const swing = (to: string, event: string) => ({ [`compressorCord.${event}`]: to });
  return {
    initial: 'plugged',
    states: {
      plugged: { on: { ...swing('out', 'pulled'), ...swing('chafed', 'chafes') } },
      out: { on: { ...swing('plugged', 'plugged'), ...swing('chafedOut', 'chafes') } },
      chafed: { on: { ...swing('chafedOut', 'pulled'), ...swing('plugged', 'renewed') } },
      chafedOut: { on: { ...swing('chafed', 'plugged'), ...swing('out', 'renewed') } },
    },
  };
}
