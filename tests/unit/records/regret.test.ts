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
import { regretsOf } from '../../../src/cli/class-regret.ts';
import { dearest, marked, regretIn, reviewed } from '../../../src/records/index.ts';
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

  it('comes from the very steps that its debrief shows, worked out once for all who did the same', {
    timeout: 240_000,
  }, () => {
    const prepared = prepareCall(shippedCalls().find(({ id }) => id === 'sunny-line') as CallFile);
    const session = play(prepared, 'solution');
    const shown: StepReviewView[] = [];
    reviewAll(session, (review) => shown.push(stepReviewView(session, review)));
    expect(reviewed(prepared, makeRecord(session))).toEqual(shown);
    const text = JSON.stringify(makeRecord(session));
    const counted = ['K.', 'M.'].flatMap((who) => {
      const one = marked({ who, text }, () => prepared);
      return one.state === 'counts' ? [{ marked: one, text }] : [];
    });
    const told: number[] = [];
    const { of, dearest } = regretsOf(counted, new Map([['sunny-line', prepared]]), (done) => told.push(done));
    expect(told).toEqual([1, 2]);
    expect(regretIn(shown)).toBeGreaterThan(1);
    expect(counted.map((one) => of(one.marked))).toEqual([regretIn(shown), regretIn(shown)]);
    expect(dearest[0]).toMatchObject({ records: 2 });
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
