/** Transitions of a machine without an actor that runs. */
import { type AnyActorScope, type AnyStateMachine, createActor } from 'xstate';

export interface AskedAction {
  readonly type: string;
  readonly params?: unknown;
}

/**
 * What XState's pure `transition()` gives a machine to run in: nothing is started, actions are only collected. That
 * function makes one anew for each call, with a whole actor in it, which costs more than the transition itself.
 */
export function pureScope(machine: AnyStateMachine, collect: (action: AskedAction) => void): AnyActorScope {
  const self = createActor(machine);
  const nothing = () => {};
  return {
    self,
    system: self.system,
    id: '',
    sessionId: '',
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: collect,
  };
}
