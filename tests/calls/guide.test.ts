/** A guide leads through a call by its own solution: whoever does what it says, and nothing else, passes. */
import { describe, expect, it } from 'vitest';
import { type GuideStep, guideOn } from '../../src/calls/guide.ts';
import { REASONED } from '../../src/calls/guide-words.ts';
import { CallSession, judged, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import type { Fill } from '../../src/service/index.ts';
import { ENGLISH, SPANISH, speakAll, TOPICS } from '../unit/spoken.ts';

const calls = shippedCalls();

/** Answers of a form as the guide's words give them: by the labels, which are all that a screen shows. */
function filled(session: CallSession, step: GuideStep) {
  const fields = session.definition(step.id)?.form;
  if (!fields) return {};
  const fill = fields.map((field, i) => {
    const chosen = (step.answers[i]?.chosen ?? []).map((label) => JSON.stringify(label));
    const ids = field.options.filter(({ label }) => chosen.includes(JSON.stringify(label))).map(({ id }) => id);
    return [field.id, field.kind === 'one' ? (ids[0] ?? '') : ids] as const;
  });
  return { fill: Object.fromEntries(fill) };
}

/** Does the step that a guide leads to, so many seconds after the one before. */
function follow(session: CallSession, step: GuideStep, after_s = 0): void {
  session.advance(session.now_ms + after_s * 1000);
  const why = session.act({ id: step.id, ...filled(session, step) });
  if (why) throw new Error(`${step.id}: ${why.id}`);
}

const spoken = new Set<string>();

/** A minute is a slow reader's time for a step. */
const PACES_s = [0, 60];

describe.each(calls.map((call) => [call.id, call] as const))('%s', (_id, call) => {
  const prepared = prepareCall(call);

  it.each(PACES_s)('is passed, with nothing skipped, by whoever is led through it and reads for %i s', (pace_s) => {
    const session = new CallSession(prepared, 'coached');
    while (!session.ended) {
      const guidance = guideOn(session, 'led-whole');
      speakAll(guidance, spoken);
      if (!guidance.step) break;
      follow(session, guidance.step, pace_s);
    }
    expect(session.ended).toBe(true);
    expect(session.breaches).toEqual([]);
    const { passed, score, flags } = judged(session);
    expect(passed).toBe(true);
    // A slow reader may find the night's doses spent, and a proof with them: that costs points, not the pass.
    if (pace_s > 0) return;
    expect(flags).toEqual([]);
    expect(score).toBeGreaterThanOrEqual(90);
  });

  it.each([
    ['led-to-cause', 'state-cause', 'guide-watch'],
    ['led-by-phone', 'decide-visit', 'ask-breakers'],
  ] as const)('is %s up to a step of its own, and no farther', (led, onVisit, byPhone) => {
    const session = new CallSession(prepared, 'coached');
    for (let next = guideOn(session, led).step; next; next = guideOn(session, led).step) follow(session, next);
    expect(session.done.at(-1)?.def.id).toBe(call.expected.decision === 'visit' ? onVisit : byPhone);
  });
});

/** A call on which somebody has done so much already, and what the guide leads to then. */
function after(id: string, ...done: readonly (string | readonly [string, Fill])[]) {
  const call = calls.find((c) => c.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  const session = new CallSession(prepareCall(call), 'coached');
  for (const one of done) {
    const [what, fill] = typeof one === 'string' ? [one] : one;
    const why = session.act({ id: what, ...(fill ? { fill } : {}) });
    if (why ?? session.breach) throw new Error(`${what}: ${why?.id ?? session.breach}`);
  }
  return guideOn(session, 'led-whole').step;
}

const VISIT = ['decide-visit', { urgency: 'before-dosing', load: ['tubing'] }] as const;
const cause = (...keys: string[]) => ['state-cause', { cause: keys, evidence: [] }] as const;

describe('who does other things meanwhile', () => {
  it('is led on from what is not done yet, in whatever order the rest was done', () => {
    expect(after('sunny-line', 'ask-danger', 'ask-hum', 'ask-smell')?.id).toBe('ask-history');
    expect(after('sunny-line', 'ask-danger', 'ask-hum', 'ask-smell', 'ask-history')?.id).toBe('ask-breakers');
  });

  it('is not sent back to the phone once on site', () => {
    expect(after('sunny-line', 'ask-danger', VISIT)?.id).toBe('make-safe');
  });

  it('is led to the cause that was there, and past the checks for it once that is stated', () => {
    const onSite = ['ask-danger', VISIT, 'make-safe', 'listen-compressor'] as const;
    expect(after('sunny-line', ...onSite)?.id).toBe('tee-pressure');
    expect(after('sunny-line', ...onSite, cause('joint-leak'))?.id).toBe('tee-pressure');
    expect(after('sunny-line', ...onSite, cause('line-split'))?.id).toBe('splice-air-line');
  });

  it('is not led to mend twice what was mended before its cause was stated', () => {
    const mended = ['ask-danger', VISIT, 'make-safe', 'splice-air-line', cause('line-split')] as const;
    expect(after('sunny-line', ...mended)?.id).toBe('tee-pressure');
  });

  it('is led to make safe, to open and to lock out first where a step wants it', () => {
    const named = ['ask-danger', VISIT, cause('stuck-down:stopFloat')] as const;
    expect(after('wash-day-light', ...named)?.id).toBe('make-safe');
    expect(after('wash-day-light', ...named, 'make-safe')?.id).toBe('lock-out:pumpBreaker');
    const locked = [...named, 'make-safe', 'lock-out:pumpBreaker'] as const;
    expect(after('wash-day-light', ...locked)?.id).toBe('open-lid:pump');
    expect(after('wash-day-light', ...locked, 'open-lid:pump')?.id).toBe('free-float:stopFloat');
    const unlocked = [...locked, 'open-lid:pump', 'unlock:pumpBreaker'] as const;
    expect(after('wash-day-light', ...unlocked)?.id).toBe('lock-out:pumpBreaker');
  });
});

describe('a walkthrough', () => {
  it('asks for a thought before each check on site, and at no other step', () => {
    const asks = (...done: Parameters<typeof after>[1][]) => after('sunny-line', ...done)?.question?.id;
    expect(asks()).toBeUndefined();
    expect(asks('ask-danger', VISIT)).toBeUndefined();
    const onSite = ['ask-danger', VISIT, 'make-safe'] as const;
    expect(asks(...onSite)).toBe('guide.think.look');
    expect(asks(...onSite, 'listen-compressor')).toBe('guide.think.measure');
    expect(asks(...onSite, cause('line-split'), 'splice-air-line')).toBeUndefined();
  });

  it('says of a check after the mend which cure it proves', () => {
    const mended = ['ask-danger', VISIT, 'make-safe', cause('line-split'), 'splice-air-line'] as const;
    expect(after('sunny-line', ...mended)?.why).toEqual({
      id: 'guide.proof',
      values: { proof: { id: 'proof.pressure' } },
    });
  });
});

describe('the words of the guide', () => {
  it('are whole in both languages, and each that is written for an action is said on some call', () => {
    expect(REASONED.map((id) => `guide.${id}`).filter((id) => !spoken.has(id))).toEqual([]);
  });

  it('speak of the works, in at most 35 words', () => {
    const PERSON = /\b(you|your|usted|well done|good job|wrong|bien hecho)\b/i;
    for (const [id, english] of Object.entries(TOPICS.get('guide') ?? {})) {
      for (const text of [english, SPANISH.texts[id] ?? '']) {
        expect(text, id).not.toMatch(PERSON);
        expect(text.split(/\s+/).length, id).toBeLessThanOrEqual(35);
      }
      if (id.startsWith('guide.think.')) expect(ENGLISH.texts[id], id).toMatch(/\?$/);
    }
  });
});
