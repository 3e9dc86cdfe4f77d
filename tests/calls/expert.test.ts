/** A call that went astray, looked back on: what each step was worth by what could be known then. */
import { beforeAll, describe, expect, it } from 'vitest';
import {
  CallSession,
  playSolution,
  prepareCall,
  reviewOf,
  type StepReviewView,
  shippedCalls,
  stepReviewView,
} from '../../src/calls/index.ts';
import { speakAll } from '../unit/spoken.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);

const ASTRAY: readonly (readonly [string, Readonly<Record<string, string | readonly string[]>>?])[] = [
  ['ask-danger'],
  ['ask-hum'],
  ['guide-reset'],
  ['guide-watch'],
  ['decide-visit', { urgency: 'now', load: ['diaphragm-kit'] }],
  ['make-safe'],
  ['lock-out:compressorBreaker'],
  ['renew-diaphragms'],
  ['unlock:compressorBreaker'],
  ['breaker-on:compressorBreaker'],
  ['tick-suspect', { fault: 'line-split', on: 'yes' }],
  ['listen-compressor'],
  ['tee-pressure'],
  ['look-at-field'],
  ['state-cause', { cause: ['timer-misset'], evidence: [] }],
  ['leave-site'],
];

function astray(): CallSession {
  const session = new CallSession(prepared, 'coached');
  for (const [id, fill] of ASTRAY) {
    const why = session.act({ id, ...(fill ? { fill } : {}) });
    if (why) throw new Error(`${id}: ${why.id}`);
  }
  return session;
}

describe('a call that went astray', () => {
  const session = astray();
  let views: readonly StepReviewView[] = [];
  const heard: (readonly [number, number])[] = [];
  const at = (id: string, nth = 0) => {
    const steps = session.done.flatMap((d, step) => (d.def.id === id ? [step] : []));
    const view = views.find((v) => v.step === steps[nth]);
    if (!view) throw new Error(`no review of ${id}`);
    return view;
  };

  beforeAll(() => {
    const reviews = [...reviewOf(session, (done, of) => heard.push([done, of]))];
    views = reviews.map((review) => stepReviewView(session, review));
  }, 240_000);

  it('is reviewed step by step, and tells how the setting up goes', () => {
    expect(views.map((v) => v.step)).toEqual(session.done.map((_, step) => step));
    const [first] = heard;
    expect(first).toEqual([0, heard.length]);
    expect(heard.at(-1)).toEqual([heard.length - 1, heard.length]);
  });

  it('holds the steps of the procedure against nobody, and gives the bits of reset and watching to the watching', () => {
    for (const id of ['ask-danger', 'guide-reset', 'guide-watch', 'decide-visit', 'make-safe']) {
      expect([id, at(id).regret_min, at(id).finding]).toEqual([id, undefined, undefined]);
    }
    expect(at('guide-reset').expected_bits).toBeUndefined();
    expect(at('guide-watch').expected_bits).toBeGreaterThan(0.5);
  });

  it('finds the diaphragms renewed too early: a repair of 48 USD on a chance of a few in a hundred', () => {
    const mend = at('renew-diaphragms');
    expect(mend.finding).toBe('too-early');
    // 40 minutes and 48 USD are 80 minutes, of which a right guess would have saved next to nothing.
    expect(mend.regret_min).toBeGreaterThan(60);
    expect(mend.regret_min).toBeLessThan(81);
  });

  it('finds a look at the field brought nothing for its minute, and a listen at the compressor worth most', () => {
    expect(at('look-at-field').brought_bits).toBeCloseTo(0, 6);
    expect(at('look-at-field').regret_min).toBeGreaterThan(0.5);
    expect(at('listen-compressor')).toMatchObject({ finding: 'best' });
    expect(at('listen-compressor').brought_bits).toBeGreaterThan(1);
  });

  it('finds the cause named against the readings', () => {
    expect(at('state-cause')).toMatchObject({ finding: 'against-evidence' });
  });

  it('shows beliefs that sum to no more than 1, and the suspects ticked by then', () => {
    for (const view of views) {
      for (const when of ['before', 'after'] as const) {
        expect(view.causes.reduce((sum, c) => sum + c[when], 0)).toBeLessThanOrEqual(1.0000001);
      }
    }
    const ticked = (view: StepReviewView) => view.causes.filter((c) => c.ticked).map((c) => c.name.id);
    expect(ticked(at('renew-diaphragms'))).toEqual([]);
    expect(ticked(at('tee-pressure'))).toEqual(['fault.line-split']);
  });

  it('is spoken whole', () => {
    expect(() => speakAll(views)).not.toThrow();
  });
});

/** In "Six loads and a red light" the household is asked to save water, which ends the wash day and no fault. */
it('saving water is no cure: what comes after it is still weighed', () => {
  const washDay = shippedCalls().find((c) => c.id === 'wash-day-light');
  if (!washDay) throw new Error('the call does not ship');
  const session = playSolution(prepareCall(washDay));
  const saved = session.done.find((d) => d.def.id === 'advise-save-water');
  expect(saved?.outcome.mended).toEqual(['wash-day']);
  const step = session.done.findIndex((d) => d.def.id === 'look-into-pump-tank');
  for (const review of reviewOf(session)) {
    if (review.step < step) continue;
    expect(review.regret).toBeDefined();
    break;
  }
}, 120_000);
