import { describe, expect, it } from 'vitest';
import {
  PHONE_STEPS,
  type ProcedureEvent,
  phaseOf,
  procedureNext,
  procedureStart,
  SITE_STEPS,
  stageOf,
  stepState,
  stepsOf,
} from '../../src/calls/procedure.ts';

const after = (...events: ProcedureEvent['type'][]) => events.reduce(procedureNext, procedureStart());

/** The phone script: danger, questions, silence, every breaker read, one reset, five minutes' watch, decision. */
describe('the procedure', () => {
  it('goes from the first ring to the closed record, step by step', () => {
    let state = procedureStart();
    for (const step of PHONE_STEPS) {
      expect(stageOf(state, stepsOf('alarm'))).toBe(step);
      state = procedureNext(state, step);
      expect(stepState(state, step)).toBe('done');
    }
    state = procedureNext(procedureNext(state, 'visit'), 'arrive');
    for (const step of SITE_STEPS) {
      expect(stageOf(state, stepsOf('alarm'))).toBe(step);
      state = procedureNext(state, step);
    }
    expect(phaseOf(procedureNext(state, 'leave'))).toBe('closed');
  });

  it('shows a step as skipped when a later one came first, and as late when it follows', () => {
    const skipped = after('danger', 'reset');
    expect(stepState(skipped, 'breakers')).toBe('skipped');
    expect(stepState(procedureNext(skipped, 'breakers'), 'breakers')).toBe('late');
  });

  it('has nothing to silence where the buzzer is quiet at the first ring, and skips nothing by that', () => {
    const quiet = after('quiet');
    expect(stepState(quiet, 'silence')).toBe('done');
    expect(stepState(quiet, 'danger')).toBe('todo');
    expect(stageOf(quiet, stepsOf('alarm'))).toBe('danger');
  });

  it('has nothing to silence, reset or watch in a complaint without an alarm', () => {
    expect(stepsOf('complaint').slice(0, 4)).toEqual(['danger', 'ask', 'breakers', 'decide']);
  });

  it('stops at a breach wherever it is, and stays closed once closed', () => {
    expect(phaseOf(after('danger', 'breach'))).toBe('stopped');
    expect(phaseOf(after('visit', 'arrive', 'breach'))).toBe('stopped');
    expect(phaseOf(after('close', 'visit'))).toBe('closedByPhone');
  });
});
