/** Regret of a class: what the steps of its records cost over the best from the same facts. */
import { describe, expect, it } from 'vitest';
import {
  type CallFile,
  makeRecord,
  play,
  prepareCall,
  reviewAll,
  type StepReviewView,
  shippedCalls,
  stepReviewView,
} from '../../../src/calls/index.ts';
import { dearest, regretIn, reviewed } from '../../../src/records/index.ts';
import { say } from '../../../src/service/index.ts';

const step = (id: string, regret_min?: number) => ({
  label: say(id),
  ...(regret_min === undefined ? {} : { regret_min }),
});

describe('the regret of a record', () => {
  it('is that of its steps together; those that were no choice have none', () => {
    expect(regretIn([step('a', 2.5), step('b'), step('c', 4)])).toBe(6.5);
    expect(regretIn([step('b')])).toBe(0);
  });

  it('comes from the very steps that its debrief shows', { timeout: 120_000 }, () => {
    const prepared = prepareCall(shippedCalls().find(({ id }) => id === 'storm-light') as CallFile);
    const session = play(prepared, 'parts-swapper');
    const shown: StepReviewView[] = [];
    reviewAll(session, (review) => shown.push(stepReviewView(session, review)));
    expect(shown.length).toBeGreaterThan(5);
    expect(reviewed(prepared, makeRecord(session))).toEqual(shown);
  });
});

describe('the steps at which a class lost most', () => {
  it('are told by their words, the dearest first, with in how many records they cost anything', () => {
    const records = [
      [step('swap', 30), step('ask', 2), step('swap', 10)],
      [step('ask', 3), step('look', 0)],
      [step('ask', 4), step('swap')],
    ];
    expect(dearest(records)).toEqual([
      { label: say('swap'), minutes: 40, records: 1 },
      { label: say('ask'), minutes: 9, records: 3 },
    ]);
  });

  it('leave out what cost under a minute in all, and keep their order where two cost the same', () => {
    const records = [
      [step('b', 5), step('tiny', 0.4)],
      [step('a', 5), step('tiny', 0.5)],
    ];
    expect(dearest(records).map(({ label }) => label.id)).toEqual(['a', 'b']);
  });
});
