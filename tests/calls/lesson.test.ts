/** The words of a reviewed step: what happened, what it meant for the causes, the next useful question (after Shute 2008). */
import { describe, expect, it } from 'vitest';
import { CallSession, prepareCall, type StepReview, shippedCalls, stepReviewView } from '../../src/calls/index.ts';
import { FAULTS } from '../../src/faults/index.ts';
import { say } from '../../src/service/index.ts';
import { ENGLISH, messagesIn, SPANISH, speakAll, TOPICS } from '../unit/spoken.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const session = new CallSession(prepareCall(call), 'practice');
session.act({ id: 'ask-danger' });
session.act({ id: 'tick-suspect', fill: { fault: 'line-split', on: 'yes' } });
session.act({ id: 'ask-hum' });

type Belief = Readonly<Record<string, number>>;
const chances = (belief: Belief) => Object.entries(belief).map(([cause, chance]) => ({ cause, chance }));

/** The review of the second step, `ask-hum`, with beliefs of the test's own. */
function view(before: Belief, after: Belief, judged: Partial<StepReview> = {}) {
  const review = {
    step: 1,
    at_ms: 0,
    before: chances(before),
    after: chances(after),
    brought_bits: 0.5,
    weighed: true,
    ...judged,
  };
  return stepReviewView(session, review);
}
const ids = (made: ReturnType<typeof view>) => made.lesson.map((one) => one.id);

const EVEN = { 'line-split': 0.4, 'diaphragm-worn': 0.3, 'stuck-down:stopFloat': 0.3 };
const SPLIT = { 'line-split': 0.97, 'diaphragm-worn': 0.02, 'stuck-down:stopFloat': 0.01 };
const PUMP = { 'line-split': 0.7, 'diaphragm-worn': 0.28, 'stuck-down:stopFloat': 0.02 };

/** Each kind of step once, with the texts its lesson is made of. */
const KINDS = [
  ['a check that parted two sides', view(EVEN, PUMP), ['shifted-between', 'ask.apart']],
  ['a check that settled it', view(EVEN, SPLIT, { finding: 'best', regret: 0 }), ['shifted-between', 'ask.enough']],
  [
    'a check that parted two causes of one side',
    view({ 'line-split': 0.5, 'diaphragm-worn': 0.5 }, { 'line-split': 0.8, 'diaphragm-worn': 0.2 }),
    ['shifted-within', 'ask.apart'],
  ],
  [
    'one against what is not listed',
    view({ sound: 0.5, 'line-split': 0.5 }, { sound: 0.1, 'line-split': 0.9 }),
    ['shifted', 'ask.enough'],
  ],
  ['a cause that rose alone', view({ 'line-split': 0.5 }, { 'line-split': 0.6 }), ['rose', 'ask.enough']],
  ['a cause that fell alone', view({ 'line-split': 0.5 }, { 'line-split': 0.3 }), ['fell', 'ask.enough']],
  [
    'a check of which another was worth more',
    view(EVEN, EVEN, { regret: 6, best: 'tee-pressure' }),
    ['still', 'ask.better'],
  ],
  ['a check when enough was known', view(EVEN, EVEN, { regret: 6 }), ['still', 'ask.act']],
  [
    'a check that could tell nothing',
    view(EVEN, EVEN, { finding: 'told-nothing', regret: 6, best: 'tee-pressure' }),
    ['told-nothing', 'ask.apart'],
  ],
  [
    'a mend on little',
    view(EVEN, EVEN, { finding: 'too-early', chance: 0.001, regret: 40, best: 'tee-pressure' }),
    ['too-early', 'ask.settle'],
  ],
  [
    'a cause against the readings',
    view(EVEN, EVEN, { finding: 'against-evidence', chance: 0.001 }),
    ['against-evidence', 'ask.contrary'],
  ],
  ['a cause that was likely enough', view(EVEN, EVEN, { chance: 0.96 }), ['given']],
  ['a cause that was not', view(EVEN, EVEN, { chance: 0.4 }), ['given', 'ask.apart']],
] as const;

describe('the lesson of a step', () => {
  it.each(KINDS)('%s', (_name, made, texts) => {
    expect(ids(made)).toEqual(texts.map((id) => `lesson.${id}`));
    expect(made.seen.map((one) => one.id)).toEqual(['note.line']);
  });

  it('shows causes before and after, the likeliest on top, those ticked beforehand marked', () => {
    const { causes } = view(EVEN, SPLIT);
    expect(causes.map((c) => [c.name.id, c.before, c.after, c.ticked])).toEqual([
      ['fault.line-split', 0.4, 0.97, true],
      ['fault.diaphragm-worn', 0.3, 0.02, false],
      ['fault.stuck-down', 0.3, 0.01, false],
    ]);
  });

  it('tells of the lamp where it was seen on the side for the first time, or otherwise than before', () => {
    const visit = new CallSession(prepareCall(call), 'practice');
    visit.act({ id: 'ask-danger' });
    visit.act({ id: 'decide-visit', fill: { urgency: 'now', load: [] } });
    visit.act({ id: 'make-safe' });
    visit.act({ id: 'listen-compressor' });
    const seen = (step: number) => {
      const review = { step, at_ms: 0, before: chances(EVEN), after: chances(EVEN), brought_bits: 0, weighed: true };
      return messagesIn(stepReviewView(visit, review).seen).map((one) => one.id);
    };
    expect(seen(0)).not.toContain('reading.lamp-on-quiet');
    expect(seen(2)).toContain('reading.lamp-on-quiet');
    expect(seen(3)).not.toContain('reading.lamp-on-quiet');
  });

  it('names the mend, not a check, where nothing more was worth finding out', () => {
    expect(view(EVEN, EVEN, { regret: 6 }).best?.id).toBe('lesson.best.act');
    expect(view(EVEN, EVEN, { regret: 6, best: 'reset-panel > watch-panel' }).best?.id).toBe('act.watch-panel');
  });
});

describe('its words', () => {
  const functions = [...new Set(FAULTS.map((f) => f.family))].map((family) => say(`function.${family}`));

  it('are whole in both languages, and all of them are said', () => {
    const spoken = speakAll([KINDS.map(([, made]) => made), functions]);
    expect(Object.keys(TOPICS.get('lesson') ?? {}).filter((id) => !spoken.has(id))).toEqual([]);
  });

  it('speak of the works, not of the person, without praise or blame, in at most 60 words', () => {
    const PERSON = /\b(you|your|usted|su|well done|good|wrong|bad|should|bien hecho|mal|debió)\b/i;
    for (const [id, english] of Object.entries(TOPICS.get('lesson') ?? {})) {
      for (const text of [english, SPANISH.texts[id] ?? '']) {
        expect(text, id).not.toMatch(PERSON);
        expect(text.split(/\s+/).length, id).toBeLessThanOrEqual(30);
      }
      if (id.startsWith('lesson.ask.')) expect(ENGLISH.texts[id], id).toMatch(/\?$/);
    }
  });
});
