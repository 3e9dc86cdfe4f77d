/**
 * The service procedure as a statechart, from the first ring to the closed record. One region tells the phase, one
 * region per step whether it was done in its turn, skipped, or done late. The order scored is that of the phone script
 * and of work on site; nothing is forbidden here, a step out of turn only shows.
 */
import { type AnyMachineSnapshot, initialTransition, setup, transition } from 'xstate';
import type { CallFile } from './schema.ts';
import type { StageId } from './view.ts';

export const PHONE_STEPS = ['danger', 'ask', 'silence', 'breakers', 'reset', 'watch', 'decide'] as const;
export const SITE_STEPS = ['safe', 'find', 'cause', 'mend', 'prove', 'record', 'household'] as const;
export type StepId = (typeof PHONE_STEPS)[number] | (typeof SITE_STEPS)[number];
export type StepState = 'todo' | 'done' | 'skipped' | 'late';

/** `quiet`: the buzzer does not sound when the phone rings, so there is nothing to silence. */
export type ProcedureEvent = { type: StepId | 'quiet' | 'close' | 'visit' | 'arrive' | 'leave' | 'breach' };
type Phase = 'phone' | 'driving' | 'site' | 'closedByPhone' | 'closed' | 'stopped';

/** A step is skipped when one that comes after it is done while it is still to do. */
function stepRegion(step: StepId, later: readonly StepId[]) {
  return {
    initial: 'todo',
    states: {
      todo: {
        on: {
          [step]: 'done',
          ...(step === 'silence' ? { quiet: 'done' } : {}),
          ...Object.fromEntries(later.map((l) => [l, 'skipped'])),
        },
      },
      done: {},
      skipped: { on: { [step]: 'late' } },
      late: {},
    },
  };
}

function regions(steps: readonly StepId[]) {
  return Object.fromEntries(steps.map((step, i) => [step, stepRegion(step, steps.slice(i + 1))]));
}

const procedure = setup({ types: { context: {} as Record<string, never>, events: {} as ProcedureEvent } });

export const procedureMachine = procedure.createMachine({
  id: 'procedure',
  type: 'parallel',
  context: {},
  states: {
    phase: {
      initial: 'phone',
      states: {
        phone: { on: { close: 'closedByPhone', visit: 'driving', breach: 'stopped' } },
        driving: { on: { arrive: 'site' } },
        site: { on: { leave: 'closed', breach: 'stopped' } },
        closedByPhone: {},
        closed: {},
        stopped: {},
      },
    },
    ...regions(PHONE_STEPS),
    ...regions(SITE_STEPS),
  } as Parameters<typeof procedure.createMachine>[0]['states'] & object,
});

export type ProcedureState = AnyMachineSnapshot;

export function procedureStart(): ProcedureState {
  return initialTransition(procedureMachine)[0];
}

export function procedureNext(state: ProcedureState, type: ProcedureEvent['type']): ProcedureState {
  return transition(procedureMachine, state as Parameters<typeof transition>[1] & never, { type })[0];
}

export function phaseOf(state: ProcedureState): Phase {
  return (state.value as { phase: Phase }).phase;
}

export function stepState(state: ProcedureState, step: StepId): StepState {
  return (state.value as Record<StepId, StepState>)[step];
}

/**
 * Steps that a kind of call has: a complaint without an alarm has nothing to silence, reset or watch; a routine visit has no
 * phone and looks for no cause.
 */
export function stepsOf(kind: CallFile['kind']): readonly StepId[] {
  if (kind === 'visit') return ['safe', 'find', 'record', 'household'];
  const phone = kind === 'alarm' ? PHONE_STEPS : (['danger', 'ask', 'breakers', 'decide'] as const);
  return [...phone, ...SITE_STEPS];
}

/** The stage a screen shows as the present one. */
export function stageOf(state: ProcedureState, steps: readonly StepId[]): StageId {
  const phase = phaseOf(state);
  if (phase === 'closed' || phase === 'closedByPhone' || phase === 'stopped') return 'closed';
  if (phase === 'driving') return 'drive';
  const group: readonly StepId[] = phase === 'phone' ? PHONE_STEPS : SITE_STEPS;
  return (
    steps.find((s) => group.includes(s) && stepState(state, s) === 'todo') ??
    (phase === 'phone' ? 'decide' : 'household')
  );
}

const BY_ACTION: Readonly<Record<string, StepId>> = {
  'ask-danger': 'danger',
  'ask-history': 'ask',
  'guide-silence': 'silence',
  'ask-breakers': 'breakers',
  'guide-reset': 'reset',
  'guide-watch': 'watch',
  'decide-close': 'decide',
  'decide-visit': 'decide',
  'make-safe': 'safe',
  'state-cause': 'cause',
  'write-record': 'record',
  'tell-household': 'household',
};

/** The step an action is, if it is one by itself. */
export function stepOfAction(id: string): StepId | undefined {
  return BY_ACTION[id];
}
