/** A call being made: changed by path, taken back, written as a file and read again to the same bytes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problemsOf, propertyOf } from '../../../src/build/checked.ts';
import { type Draft, keysIn, lengthAt, shownAt, textAt, valueAt, withValue } from '../../../src/build/draft.ts';
import { begin, change, type Edits, makeAgain, takeBack } from '../../../src/build/edits.ts';
import { draftText, readDraft } from '../../../src/build/file.ts';
import { idFrom, newDraft, newFault } from '../../../src/build/new-draft.ts';
import { STEPS, stepOf } from '../../../src/build/steps.ts';
import { loadCall, shippedCalls, shippedLibrary } from '../../../src/calls/index.ts';
import { fileText } from '../../../src/share/index.ts';

const library = shippedLibrary();
const draftOf = (text: string): Draft => {
  const read = readDraft(text);
  if ('problem' in read) throw new Error(read.problem.message);
  return read.draft;
};

describe('a value at a path', () => {
  const draft: Draft = { faults: [{ fault: 'a' }, { fault: 'b', present: { on_h: 4 } }], title: { en: 'x', es: 7 } };

  it('is read wherever it stands, and nothing is read where nothing stands', () => {
    expect(keysIn('faults[1].present.on_h')).toEqual(['faults', 1, 'present', 'on_h']);
    expect(valueAt(draft, 'faults[1].present.on_h')).toBe(4);
    for (const path of ['faults[2].fault', 'title.fr', 'faults.length', 'constructor', 'title.en.length']) {
      expect(valueAt(draft, path)).toBeUndefined();
    }
    expect([textAt(draft, 'title', 'en'), textAt(draft, 'title', 'es'), shownAt(draft, 'title.es')]).toEqual([
      'x',
      '',
      '7',
    ]);
    expect(lengthAt(draft, 'faults')).toBe(2);
  });

  it('is changed there and nowhere else, made where it was not, and taken out of a list with its place', () => {
    expect(withValue(draft, 'faults[0].severity', 0.5)).toEqual({
      ...draft,
      faults: [
        { fault: 'a', severity: 0.5 },
        { fault: 'b', present: { on_h: 4 } },
      ],
    });
    expect(withValue(draft, 'storms[0]', { hours: 1 })).toEqual({ ...draft, storms: [{ hours: 1 }] });
    expect(valueAt(withValue(draft, 'faults[0]', undefined), 'faults')).toEqual([{ fault: 'b', present: { on_h: 4 } }]);
    expect(withValue(draft, 'title', undefined)).not.toHaveProperty('title');
    expect(Object.keys(withValue(draft, 'faults', []))).toEqual(['faults', 'title']);
  });
});

describe('changes', () => {
  const path = fc.constantFrom('title.en', 'pass', 'faults[0].severity', 'seed');
  const step = fc.oneof(
    fc.record({ path, value: fc.nat(9), typed: fc.boolean() }),
    fc.constantFrom('back' as const, 'again' as const),
  );

  it('are all taken back to the beginning, and all made again to the end', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const first = newDraft();
        const end = steps.reduce((edits: Edits, one) => {
          if (one === 'back') return takeBack(edits) ?? edits;
          if (one === 'again') return makeAgain(edits) ?? edits;
          return change(edits, one.path, one.value, one.typed);
        }, begin(first));
        const all = (from: Edits, by: (edits: Edits) => Edits | undefined) => {
          let at = from;
          for (let next = by(at); next !== undefined; next = by(at)) at = next;
          return at;
        };
        const back = all(end, takeBack);
        expect(back.now).toEqual(first);
        expect(all(back, makeAgain).now).toEqual(all(end, makeAgain).now);
      }),
    );
  });

  it('of one field letter by letter are one, until another field or a pause by taking back comes between', () => {
    let edits = begin(newDraft());
    for (const text of ['R', 'Re', 'Red']) edits = change(edits, 'title.en', text, true);
    edits = change(edits, 'title.es', 'R', true);
    expect(edits.before).toHaveLength(2);
    const back = takeBack(edits);
    expect(back && textAt(back.now, 'title', 'en')).toBe('Red');
  });

  it('that change nothing are none', () => {
    expect(change(begin(newDraft()), 'pass', 70).before).toEqual([]);
  });
});

describe('a draft as a file', () => {
  it.each(shippedCalls().map((call) => [call.id, call] as const))(
    '%s: loaded and saved is the same bytes',
    (_id, call) => {
      const text = fileText(call);
      expect(draftText(draftOf(text))).toBe(text);
    },
  );

  it('made step by step, saved, loaded and saved again is the same bytes, half made and whole', () => {
    const half = withValue(newDraft(), 'faults[0]', newFault('line-split', undefined, '2031-05-13T16:30'));
    const once = draftText(half);
    expect(draftText(draftOf(once))).toBe(once);
    const [call] = shippedCalls();
    const shuffled = Object.fromEntries(Object.entries({ ...call }).reverse()) as Draft;
    const whole = draftText(shuffled);
    expect(whole).toBe(call && fileText(call));
  });

  it('is refused where it is no JSON or no object, with a mend', () => {
    for (const text of ['{', '[1]', '"call"']) {
      const read = readDraft(text);
      expect('problem' in read && read.problem.mend).toMatch(/\w/);
    }
  });
});

describe('what is wrong with a draft', () => {
  it('of a new call is what is still to be written, and a fault; nothing of its property', () => {
    const problems = problemsOf(newDraft(), library);
    expect(problems.filter(({ message }) => message !== 'nothing is written here').map(({ path }) => path)).toEqual([
      'id',
      'solution',
      'faults',
    ]);
    expect(problems.map(({ path }) => path)).toContain('title.es');
  });

  it('shows also behind texts that are still to be written', () => {
    const late = withValue(newDraft(), 'faults[0]', newFault('line-split', undefined, '2031-05-20T00:00'));
    expect(problemsOf(late, library)).toContainEqual(expect.objectContaining({ path: 'faults[0].onset' }));
  });

  it('belongs to one of the steps, whatever its path', () => {
    expect(stepOf('faults[0].onset')).toBe('faults');
    expect(stepOf('report.said[1].es')).toBe('said');
    expect(stepOf('colour')).toBe('proof');
    expect(STEPS).toContain(stepOf(''));
  });

  it('is nothing where the call is whole, whichever call that ships', () => {
    for (const call of shippedCalls()) expect(problemsOf(draftOf(fileText(call)), library)).toEqual([]);
  });
});

describe('the property of a draft', () => {
  it('can be lived through from the first moment on, without texts, faults or solution', () => {
    const property = propertyOf(newDraft(), library);
    expect(property?.call.faults).toEqual([]);
    expect(property?.report_s).toBe(4 * 86_400 + 16.5 * 3600);
  });

  it('is none while something of it is impossible', () => {
    expect(propertyOf(withValue(newDraft(), 'start', '2031-02-30T10:00'), library)).toBeUndefined();
    expect(propertyOf(withValue(newDraft(), 'unit', 'u9'), library)).toBeUndefined();
  });

  it('has the numbers that were changed, and refuses those that no unit has', () => {
    const high = withValue(newDraft(), 'changed', { 'panel.floats.highWaterFloat.makes_m': 1.01 });
    expect(propertyOf(high, library)?.spec.panel.floats.highWaterFloat.makes_m).toBe(1.01);
    const strange = withValue(newDraft(), 'changed', { 'panel.floats.thirdFloat.makes_m': 1 });
    expect(problemsOf(strange, library)).toContainEqual(
      expect.objectContaining({ path: 'changed.panel.floats.thirdFloat.makes_m', message: 'u1 has no number there' }),
    );
    const wrong = withValue(newDraft(), 'changed', { 'plant.air.free_Lmin': -3 });
    expect(problemsOf(wrong, library)).toContainEqual(expect.objectContaining({ path: 'changed.plant.air.free_Lmin' }));
  });
});

it('an id is made of a title', () => {
  expect(idFrom('Señal roja, ¡otra vez!')).toBe('senal-roja-otra-vez');
  expect(idFrom('3 days dark')).toBe('days-dark');
  const [call] = shippedCalls();
  if (!call) throw new Error('no call ships');
  expect(loadCall(JSON.stringify({ ...call, id: idFrom(call.title.es) }), library).ok).toBe(true);
});
