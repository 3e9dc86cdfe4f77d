/** Every shipped call written for SCORM, held against strict rules of our own and against a host's own checks. */
import { Scorm12API, Scorm2004API } from 'scorm-again';
import { describe, expect, it } from 'vitest';
import { shippedCalls } from '../../../src/calls/index.ts';
import type { Learnt } from '../../../src/records/learnt/learnt.ts';
import { BeyondLimit } from '../../../src/records/limits.ts';
import { ended12, left12, type Setting, suspended12 } from '../../../src/records/scorm/scorm12.ts';
import { ended2004, left2004, suspended2004 } from '../../../src/records/scorm/scorm2004.ts';
import { wrongIn12 } from './strict12.ts';
import { learnt } from './taken.ts';

const QUIET = { autocommit: false, logLevel: 5 };
const WRONG = [{ do: 'ask-danger' }, { do: 'decide-close' }];
const ALL: readonly Learnt[] = [
  ...shippedCalls().map(({ id }) => learnt(id, 'graded')),
  ...['storm-light', 'sunny-line'].flatMap((id) => [learnt(id, 'practice'), learnt(id, 'graded', WRONG)]),
];

it('every shipped call is told alike: an id for each thing, once', () => {
  for (const { activity, interactions } of ALL) {
    expect(new Set(interactions.map((one) => one.id)).size, activity).toBe(interactions.length);
    expect(interactions.length, activity).toBeGreaterThanOrEqual(8);
  }
});

/** Settings that a fresh host of SCORM 1.2 does not take. */
function refusedBy12(settings: readonly Setting[]): readonly Setting[] {
  const host = new Scorm12API(QUIET);
  host.LMSInitialize('');
  return settings.filter(([element, value]) => String(host.LMSSetValue(element, value)) !== 'true');
}

function refusedBy2004(settings: readonly Setting[]): readonly Setting[] {
  const host = new Scorm2004API(QUIET);
  host.lmsInitialize('');
  return settings.filter(([element, value]) => String(host.lmsSetValue(element, value)) !== 'true');
}

const valueIn = (settings: readonly Setting[], name: string) => settings.find(([element]) => element === name)?.[1];

describe('SCORM 1.2', () => {
  it('takes every shipped call, solved, practised and wrongly closed, by the letter', () => {
    for (const one of ALL) {
      const settings = [...ended12(one), ...suspended12(one.activity, 'AbC-_'), ...left12(one.duration_s, true)];
      expect(
        settings.flatMap(([element, value]) => wrongIn12(element, value) ?? []),
        one.activity,
      ).toEqual([]);
      expect(refusedBy12(settings), one.activity).toEqual([]);
    }
  });

  it('has one status for both: passed or failed where it is judged, else completed', () => {
    const status = (one: Learnt) => valueIn(ended12(one), 'cmi.core.lesson_status');
    expect(status(learnt('storm-light', 'graded'))).toBe('passed');
    expect(status(learnt('sunny-line', 'graded', WRONG))).toBe('failed');
    expect(status(learnt('storm-light', 'practice'))).toBe('completed');
  });

  it('has its answers after those that the platform has already', () => {
    const [id] = ended12(learnt('storm-light', 'graded'), 7).filter(([element]) => element.endsWith('.id'));
    expect(id).toEqual(['cmi.interactions.7.id', 'storm-light.decision']);
  });

  it('has a long way cut after the last step that fits whole', () => {
    const long = ended12(learnt('dead-lamp', 'graded')).filter(([, value]) => value.startsWith('ask-danger,'));
    expect(long.length).toBe(2);
    for (const [, value] of long) {
      expect(value.length).toBeLessThanOrEqual(255);
      expect(value.length).toBeGreaterThan(200);
      expect(value.endsWith(',')).toBe(false);
    }
  });

  it('refuses what it cannot hold instead of writing something else', () => {
    const one = learnt('storm-light', 'graded');
    expect(() => ended12({ ...one, score: 100.01 })).toThrow(BeyondLimit);
    expect(() => ended12({ ...one, activity: 'two words' })).toThrow(BeyondLimit);
    expect(() => suspended12('storm-light', 'a'.repeat(4097))).toThrow(BeyondLimit);
    expect(suspended12('storm-light', 'a'.repeat(4096))[1]?.[1].length).toBe(4096);
  });
});

describe('SCORM 2004', () => {
  it('takes every shipped call, solved, practised and wrongly closed', () => {
    for (const one of ALL) {
      const settings = [...ended2004(one), ...suspended2004(one.activity, 'AbC-_'), ...left2004(one.duration_s, false)];
      expect(refusedBy2004(settings), one.activity).toEqual([]);
    }
  });

  it('tells completion and success apart', () => {
    const both = (one: Learnt) =>
      ['cmi.completion_status', 'cmi.success_status', 'cmi.score.scaled'].map((name) => valueIn(ended2004(one), name));
    expect(both(learnt('storm-light', 'graded'))).toEqual(['completed', 'passed', '1']);
    expect(both(learnt('sunny-line', 'graded', WRONG)).slice(0, 2)).toEqual(['completed', 'failed']);
    expect(both(learnt('storm-light', 'practice')).slice(0, 2)).toEqual(['completed', 'unknown']);
  });

  it('keeps at most 250 answers, and 125 steps of one', () => {
    const one = learnt('storm-light', 'graded');
    const many = { ...one, interactions: Array.from({ length: 300 }, () => one.interactions[0] as never) };
    expect(ended2004(many).filter(([element]) => element.endsWith('.id')).length).toBe(250);
    const steps = { id: 'steps', kind: 'performance', response: Array(130).fill('ask-hum'), weighting: 0 } as const;
    const [, value = ''] =
      ended2004({ ...one, interactions: [steps] }).find(([element]) => element.endsWith('learner_response')) ?? [];
    expect(value.split('[,]').at(-1)).toBe('125[.]ask-hum');
    expect(refusedBy2004(ended2004({ ...one, interactions: [steps] }))).toEqual([]);
  });

  it('is left with suspend where it goes on later, and as usual where it is over', () => {
    expect(left2004(61.5, true)).toEqual([
      ['cmi.session_time', 'PT1M1.5S'],
      ['cmi.exit', 'suspend'],
    ]);
    expect(left2004(1, false)[1]).toEqual(['cmi.exit', 'normal']);
    expect(left12(61.5, true)).toEqual([
      ['cmi.core.session_time', '0000:01:01.50'],
      ['cmi.core.exit', 'suspend'],
    ]);
  });
});
