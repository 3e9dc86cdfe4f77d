/**
 * The small machines a panel is made of, each with its sound and its faulty states. A unit's control is a parallel
 * machine of them (`machine.ts`); another panel variant takes other parts from here.
 *
 * House rules (held by tests/control/finite.test.ts): empty context, no `after`, no actors, no history; events carry
 * nothing; guards read states only; delays are asked of the engine by `arm` and `disarm`.
 */
import type { BreakerName, DelayId, FloatName } from './events.ts';
import { guardOf, type Logic, none } from './logic.ts';

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

/** Off, on and tripped: from tripped, "on" does nothing until the lever was pushed fully off. A short trips at once. */
export function breaker(name: BreakerName, shorted: Logic): Part {
  return {
    initial: 'on',
    states: {
      on: {
        on: { [`${name}.off`]: 'off', [`${name}.trips`]: 'tripped' },
        always: when(shorted, 'tripped'),
      },
      off: { on: { [`${name}.on`]: [when(shorted, 'tripped'), { target: 'on' }] } },
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
      heldUp: { on: { [`${name}.freed`]: 'down', ...caught } },
      heldDown: { on: { [`${name}.freed`]: 'down', ...caught } },
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
      stuckOpen: { on: { 'airContact.freed': 'open', ...stuck } },
      stuckClosed: { on: { 'airContact.freed': 'open', ...stuck } },
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

/** Silence stops the buzzer only; the rise of either condition, or a loss of the circuit, clears it. */
export function silence(alarm: Logic, live: Logic, lowAirRises: Logic, highWaterRises: Logic): Part {
  return {
    initial: 'off',
    states: {
      off: { on: { 'silence.pressed': when(alarm, 'on') } },
      on: {
        on: { 'lowAir.due': when(lowAirRises, 'off'), 'highWater.due': when(highWaterRises, 'off') },
        always: when(none(live), 'off'),
      },
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
  const to = { 'relay.opens': 'open', 'relay.welds': 'welded', 'relay.renewed': 'sound' };
  return { initial: 'sound', states: { sound: { on: to }, open: { on: to }, welded: { on: to } } };
}

/** The timer's clock: keeps time, lives on its reserve while unfed, and has lost the time when that is used up. */
export function timerClock(live: Logic): Part {
  return {
    initial: 'keeping',
    states: {
      keeping: { always: when(none(live), 'reserve') },
      reserve: {
        entry: arm('timerReserve'),
        exit: disarm('timerReserve'),
        always: when(live, 'keeping'),
        on: { 'timer.reserveEnds': 'lost' },
      },
      lost: { on: { 'timer.set': when(live, 'keeping') } },
    },
  };
}

/** Dose demand seals in at a timer start and ends with its minutes, or when the stop float breaks. */
export function doseDemand(mayStart: Logic, mayRun: Logic): Part {
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
