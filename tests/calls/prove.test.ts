import { describe, expect, it } from 'vitest';
import { type CallFile, prepareCall, proveCall, shippedCalls } from '../../src/calls/index.ts';

const good = shippedCalls().find((c) => c.id === 'mower-passed');
if (!good) throw new Error('the call does not ship');
const proofOf = (call: CallFile) => proveCall(prepareCall(call));

describe('the proof of a call', { timeout: 300_000 }, () => {
  it('holds for a sound one: it is solved, no shortcut passes, and it says how hard it is', () => {
    const proof = proofOf(good);
    expect(proof.problems).toEqual([]);
    expect(proof.symptomsArise).toBe(true);
    expect(proof.solvedBy).toEqual(['solution', 'expert']);
    expect(proof.difficulty?.bits).toBeGreaterThan(2);
    expect(proof.difficulty?.expectedMinutes).toBeGreaterThan(60);
  });

  it('names a symptom that does not arise and a solution that does not pass, each with its mend', () => {
    const surge = shippedCalls().find((c) => c.id === 'storm-light');
    if (!surge) throw new Error('the call does not ship');
    const proof = proofOf({
      ...surge,
      report: { ...surge.report, noticed: ['lamp-lit', 'smell-indoors'] },
      solution: surge.solution.filter((step) => step.do !== 'guide-watch'),
    });
    const messages = proof.problems.map((p) => p.message).join('\n');
    expect(messages).toContain('"smell-indoors" is not so when the phone rings');
    expect(proof.symptomsArise).toBe(false);
    expect(proof.solvedBy).not.toContain('solution');
    expect(proof.problems.every((p) => p.mend.length > 0)).toBe(true);
  });
});
