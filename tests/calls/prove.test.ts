import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type CallFile,
  type CallProof,
  loadCall,
  prepareCall,
  proveCall,
  shippedCalls,
  shippedLibrary,
} from '../../src/calls/index.ts';

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

const proofs = new Map<string, CallProof>();

function problemsOf(kind: string) {
  const loaded = loadCall(readFileSync(`tests/calls/bad/${kind}.json`, 'utf8'), shippedLibrary());
  if (!loaded.ok) return loaded.problems;
  const proof = proofs.get(kind) ?? proofOf(loaded.value);
  proofs.set(kind, proof);
  return proof.problems;
}

/** Ten kinds of call that nobody should take, as files: what is wrong, where, and a mend for each. */
describe('a bad call', { timeout: 300_000 }, () => {
  it.each([
    ['unsolvable', 'faults', /the scripted expert scores 96 and does not pass/],
    ['inseparable', 'faults', /no check tells it from inlet-blocked: alike in look-into-clean-out/],
    ['self-healing', 'faults[0].present', /compressor-unplugged is over by itself before a visit could end/],
    ['symptom-never-arises', 'report.noticed', /"smell-indoors" is not so when the phone rings/],
    ['shortcut-passes', 'expected.decision', /the shortcut "reset only" passes: .*compressor-unplugged stays/],
    ['missing-language', 'title.es', /the Spanish text is missing/],
    ['time-travel', 'faults[0].onset', /after the report/],
    ['forbidden-yet-needed', 'withheld[0]', /the solution does "replace-float:startStopFloat"/],
    ['hazard-without-caution', 'solution', /sewage lies about, and nobody is told to keep away/],
    ['unknown-version', 'version', /written for a newer Underlawn/],
  ])('that is %s is refused at %s', (kind, path, message) => {
    const found = problemsOf(kind).find((one) => one.path === path && message.test(one.message));
    expect(found?.mend).toMatch(/\w/);
  });

  it('shows what its look-alike has in common with the truth', () => {
    problemsOf('inseparable');
    const [alike] = proofs.get('inseparable')?.lookAlikes ?? [];
    expect(alike?.cause).toBe('inlet-blocked');
    expect(alike?.shared.map(({ check }) => check)).toContain('look-into-clean-out');
    for (const { lines } of alike?.shared ?? []) expect(lines.length).toBeGreaterThan(0);
  });

  it('in which a step of safety is skipped, or all that mends is withheld, is refused before anything else', () => {
    const unsafe = proofOf({ ...good, solution: good.solution.filter((step) => step.do !== 'make-safe') });
    expect(unsafe.problems).toEqual([
      expect.objectContaining({ message: expect.stringContaining('(site-not-made-safe)'), path: 'solution[12]' }),
    ]);
    const barred = proofOf({ ...good, withheld: ['look-at-outlet'] });
    expect(barred.problems.map((one) => one.message)).toContain(
      'all that shows faults[0], compressor-unplugged, is withheld',
    );
  });
});
