/** The words a specification is written in: what is seen, which delays run, and how an event is done on a panel. */
import type { AnyStateMachine } from 'xstate';
import type { ControlEventName, DelayId } from '../../../src/control/index.ts';
import type { PanelName } from '../panels.ts';

/**
 * What a person at the panel, at the pump or at the compressor sees or hears: lamps, what runs, whether the panel's
 * clock goes, whether a breaker's handle is on.
 */
export type Sight =
  | 'lamp'
  | 'airLamp'
  | 'waterLamp'
  | 'buzzer'
  | 'pump'
  | 'stalledPump'
  | 'compressor'
  | 'ultraviolet'
  | 'clock'
  | 'alarmHandle'
  | 'compressorHandle'
  | 'pumpHandle';

/** What a state of a specification asserts: in words, and as what must be seen while it is active. */
export interface Says {
  readonly says: string;
  readonly sees?: Readonly<Partial<Record<Sight, boolean>>>;
  /** A higher one outranks a lower one where both speak of the same sight: see `OVER`. */
  readonly over?: number;
  /** Delays that run here. All others that the promise watches must not. */
  readonly runs?: readonly DelayId[];
}

/** Who has the last word on a lamp: what the panel wants, a held test, a dead part, a dead circuit. */
export const OVER = { test: 1, deadPart: 2, deadCircuit: 3 } as const;

/** Name of the action of a specification that says: the telephone rings at the number dialled. */
export const CALLED = 'the number is called';

/** A promise of a unit: its machine, and how its words touch a panel. */
export interface Promised {
  readonly name: string;
  readonly unit: PanelName;
  readonly machine: AnyStateMachine;
  /** What each event of the specification is at the panel, in order. */
  readonly does: Readonly<Record<string, readonly ControlEventName[]>>;
  /** Done before the start, so that the machine's first state is that of the panel. */
  readonly before?: readonly ControlEventName[];
  readonly sights: readonly Sight[];
  readonly delays: readonly DelayId[];
  /** Events of hands: possible in every state, also where they must change nothing. */
  readonly anytime: readonly string[];
  /** Events of each fault: one fault at a time is let in. Events of no fault are ordinary. */
  readonly faults: Readonly<Record<string, readonly string[]>>;
}

/** The walk without any fault. */
export const SOUND = 'sound';

type Handle = 'alarmHandle' | 'compressorHandle' | 'pumpHandle';

export function handleOn(sight: Handle): Says {
  return { says: 'the handle stands on', sees: { [sight]: true } };
}

export function handleOff(sight: Handle): Says {
  return { says: 'the handle stands off or half way', sees: { [sight]: false } };
}
