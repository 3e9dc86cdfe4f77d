import { describe, expect, it } from 'vitest';
import {
  judged,
  makeRecord,
  play,
  playSolution,
  prepareCall,
  referenceSpent,
  replay,
  shippedCalls,
} from '../../src/calls/index.ts';
import { noticedOf, unitAtReport } from '../../src/calls/setup.ts';
import { SYMPTOMS } from '../../src/service/index.ts';

/** Scripted people on every shipped call: who must pass, and who must not. */
describe.each(shippedCalls().map((call) => [call.id, call] as const))('%s', (_id, call) => {
  const prepared = prepareCall(call);

  it('is solved by its own solution with 90 or more, and replays to its claims', () => {
    const session = playSolution(prepared);
    expect(session.ended).toBe(true);
    const verdict = judged(session);
    expect(verdict.flags).toEqual([]);
    expect(verdict.passed).toBe(true);
    expect(verdict.score).toBeGreaterThanOrEqual(90);
    const record = JSON.parse(JSON.stringify(makeRecord(session)));
    expect(replay(prepared, record).firstDifference).toBeUndefined();
  });

  it('is passed by a reset alone only where it is rightly closed by phone', () => {
    expect(judged(play(prepared, 'reset-only')).passed).toBe(call.expected.decision === 'close');
  });

  it('shows what was noticed when the phone rings', () => {
    const unit = unitAtReport(prepared);
    for (const symptom of noticedOf(call)) expect(SYMPTOMS[symptom](unit), symptom).toBe(true);
    if (call.kind === 'complaint') expect(SYMPTOMS['lamp-dark'](unit)).toBe(true);
  });
});

describe('the stop float hung down', () => {
  const call = shippedCalls().find((c) => c.id === 'wash-day-light');
  if (!call) throw new Error('the call does not ship');

  it('lets Hand pump and Auto not', () => {
    const session = playSolution(prepareCall({ ...call, solution: call.solution.slice(0, 13) }));
    expect(session.service.person.onSite).toBe(true);
    const reading = (id: string) => {
      expect(session.act({ id })).toBeUndefined();
      return session.service.person.notebook.findLast((n) => n.by === id)?.reading.values?.pump;
    };
    session.act({ id: 'clear-field' });
    expect(reading('selector-hand')).toEqual({ id: 'word.pump-runs' });
    expect(reading('selector-auto')).toEqual({ id: 'word.pump-still' });
  });
});

describe('the dose float hung down', () => {
  it('doses by day through the override, and never alarms', () => {
    const call = shippedCalls().find((c) => c.id === 'noon-sprinklers');
    if (!call) throw new Error('the call does not ship');
    const session = play(prepareCall(call), 'reset-only');
    const { log } = session.service.unit;
    const starts = log.filter((e) => e.what === 'pumpRuns.on' && e.t > 2 * 86_400);
    const hours = starts.map((e) => (e.t % 86_400) / 3600);
    expect(hours.some((h) => h > 11.5 && h < 13)).toBe(true);
    expect(log.some((e) => e.what === 'lamp.on')).toBe(false);
  });
});

it('a solution that a dose cuts short with another seed is no measure: the times of its own steps are', () => {
  const call = shippedCalls().find((c) => c.id === 'tired-spray');
  if (!call) throw new Error('the call does not ship');
  const own = referenceSpent(prepareCall(call));
  const cut = prepareCall({ ...call, seed: 10 });
  expect(playSolution(cut).ended).toBe(false);
  expect(referenceSpent(cut).minutes).toBeCloseTo(own.minutes, -1);
});
