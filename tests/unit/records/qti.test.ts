/** Questions as items: built as the standard has them, and scored by a player of response processing as the drill itself does. */
import { describe, expect, it } from 'vitest';
import { type Answer, checked, type Drill, SKILLS } from '../../../src/quiz/drill.ts';
import { drill } from '../../../src/quiz/index.ts';
import { itemDocument, QTI } from '../../../src/records/qti/item.ts';
import { itemPackage } from '../../../src/records/qti/package.ts';
import { type Question, questionOf } from '../../../src/records/qti/question.ts';
import { speak } from '../../../src/words/speak.ts';
import { SPECS } from '../../control/panels.ts';
import { ENGLISH, SPANISH } from '../spoken.ts';
import { answered } from './qti-player.ts';
import { all, inner, readXml } from './read-xml.ts';

const SPEAK = { en: speak(ENGLISH, 'us', true), es: speak(SPANISH, 'si', true) };
const UNITS = [SPECS.u1, SPECS.u2, SPECS.u3];
const SEEDS = 40;

const DRILLS: readonly Drill[] = SKILLS.flatMap((skill) =>
  Array.from({ length: SEEDS }, (_, seed) =>
    drill(skill, seed, UNITS[seed % 3] ?? SPECS.u1, seed % 2 === 0 ? 'us' : 'si'),
  ),
);

/** As many answers as a question has, and numbers at the edges of what still counts. */
function answersOf({ ask }: Drill): readonly Answer[] {
  if (ask.kind === 'choice' || ask.kind === 'point') return ask.options.map(({ id }) => id);
  if (ask.kind === 'order') {
    // As it is right, as it is shown, turned round, and with each two neighbors changed.
    const swapped = ask.right.slice(1).map((_, i) => {
      const { right } = ask;
      return [...right.slice(0, i), right[i + 1] ?? '', right[i] ?? '', ...right.slice(i + 2)];
    });
    return [ask.right, ask.items.map(({ id }) => id), [...ask.right].reverse(), ...swapped];
  }
  const { value, tolerance, slips } = ask;
  return [value, value + 0.999 * tolerance, value - 1.001 * tolerance, ...slips.map((slip) => slip.value), -999];
}

/** An answer to a drill as it is given to the item: by the item's own names. */
function responseOf({ ask }: Drill, question: Question, given: Answer): readonly string[] {
  if (ask.kind === 'number') return [String(given)];
  const [ours, theirs] =
    ask.kind === 'order'
      ? [ask.items, question.ask.kind === 'order' ? question.ask.items : []]
      : [ask.options, question.ask.kind === 'choice' ? question.ask.options : []];
  const named = (id: string) => theirs[ours.findIndex((one) => one.id === id)]?.id ?? '';
  return typeof given === 'object' ? given.map(named) : [named(String(given))];
}

describe.each(QTI)('in version %s', (version) => {
  it('every answer to every drill scores and is told as the drill has it, in both languages', () => {
    for (const one of DRILLS) {
      for (const language of ['en', 'es'] as const) {
        const question = questionOf(one, language, SPEAK[language]);
        const xml = itemDocument(question, version);
        for (const given of answersOf(one)) {
          const { right, why } = checked(one, given);
          const { score, said } = answered(xml, responseOf(one, question, given));
          expect([one.skill, one.seed, given, score]).toEqual([one.skill, one.seed, given, right ? 1 : 0]);
          expect(said, `${one.skill} ${one.seed} ${given}`).toEqual([SPEAK[language](why)]);
        }
        expect(answered(xml, undefined)).toEqual({ score: 0, said: [] });
      }
    }
  });

  it('an item is made of the parts that there are, in their order', () => {
    const name = (plain: string) =>
      version === 'qti22' ? plain : `qti-${plain.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
    for (const one of DRILLS) {
      const root = readXml(itemDocument(questionOf(one, 'en', SPEAK.en), version));
      expect(root.name).toBe(name('assessmentItem'));
      const parts = [
        'responseDeclaration',
        'outcomeDeclaration',
        'outcomeDeclaration',
        'itemBody',
        'responseProcessing',
      ];
      expect(inner(root).slice(0, 5)).toEqual(parts.map(name));
      expect(new Set(inner(root).slice(5))).toEqual(new Set([name('modalFeedback')]));
      const strokes = version === 'qti22' ? 'timeDependent' : 'time-dependent';
      expect(root.attributes).toMatchObject({ adaptive: 'false', [strokes]: 'false', 'xml:lang': 'en' });
      const interactions = ['choiceInteraction', 'orderInteraction', 'textEntryInteraction'].flatMap((kind) =>
        all(root, name(kind)),
      );
      expect(interactions.length).toBe(1);
      // For who teaches: the source, after the worked solution where there is a sum.
      const ground = all(root, name('rubricBlock')).flatMap((rubric) => all(rubric, 'p').map(({ text }) => text));
      expect(ground.at(-1)).toBe(SPEAK.en(one.source));
      expect(ground.length).toBe(1 + (one.ask.kind === 'number' ? one.ask.worked.length : 0));
      // What is shown is told in words, the whole of it.
      expect(all(root, 'li').length).toBeGreaterThanOrEqual(3);
      const identifiers = [...all(root, name('simpleChoice')), root].map(
        ({ attributes }) => attributes.identifier ?? '',
      );
      for (const id of identifiers) expect(id).toMatch(/^[A-Za-z_][\w.-]{0,127}$/);
      expect(new Set(identifiers).size).toBe(identifiers.length);
    }
  });

  it('several right answers are asked for as such: all of them, in any order, and none besides', () => {
    const question: Question = {
      id: 'many',
      language: 'en',
      title: 'Many & <more>',
      prompt: 'Which?',
      shown: ['a', 'b', 'c'],
      ask: {
        kind: 'choice',
        options: ['a', 'b', 'c'].map((id) => ({ id, text: id.toUpperCase(), why: `Why ${id}?` })),
        right: ['a', 'c'],
      },
      ground: ['By a book.'],
    };
    const xml = itemDocument(question, version);
    expect(readXml(xml).attributes.title).toBe('Many & <more>');
    expect(answered(xml, ['c', 'a'])).toEqual({ score: 1, said: ['Why a?', 'Why c?'] });
    expect(answered(xml, ['a']).score).toBe(0);
    expect(answered(xml, ['a', 'b', 'c']).score).toBe(0);
    const interaction = version === 'qti22' ? 'choiceInteraction' : 'qti-choice-interaction';
    const limit = version === 'qti22' ? 'maxChoices' : 'max-choices';
    expect(all(readXml(xml), interaction)[0]?.attributes[limit]).toBe('0');
  });

  it('a package lists each item once, under the type of its version', () => {
    const questions = DRILLS.slice(0, 5).map((one) => questionOf(one, 'es', SPEAK.es));
    const files = itemPackage(questions, version);
    const root = readXml(files.get('imsmanifest.xml') ?? '');
    const resources = all(root, 'resource');
    expect(resources.map(({ attributes }) => attributes.href)).toEqual([...files.keys()].slice(1));
    const type = version === 'qti22' ? 'imsqti_item_xmlv2p2' : 'imsqti_item_xmlv3p0';
    expect(new Set(resources.map(({ attributes }) => attributes.type))).toEqual(new Set([type]));
    expect(all(root, 'schemaversion')[0]?.text).toBe(version === 'qti22' ? '1.0.0' : '3.0.0');
  });

  it('every file says of which schema it is and where that is published', () => {
    const [question] = DRILLS.map((one) => questionOf(one, 'en', SPEAK.en));
    for (const file of itemPackage(question ? [question] : [], version).values()) {
      const { xmlns, 'xsi:schemaLocation': where } = readXml(file).attributes;
      expect(where).toMatch(/^\S+ https?:\/\/\S+\.xsd$/);
      expect(where?.split(' ')[0]).toBe(xmlns);
    }
  });
});
