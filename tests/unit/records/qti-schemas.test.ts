/** Items and manifests of QTI 2.2 and 3.0 against the schemas of the standard, restated (`schemas/`), by libxml2. */
import { describe, expect, it } from 'vitest';
import { SKILLS, type System } from '../../../src/quiz/drill.ts';
import { drill } from '../../../src/quiz/index.ts';
import { itemDocument, QTI, type QtiVersion } from '../../../src/records/qti/item.ts';
import { itemPackage } from '../../../src/records/qti/package.ts';
import { type Question, questionOf } from '../../../src/records/qti/question.ts';
import { speak } from '../../../src/words/speak.ts';
import { SPECS } from '../../control/panels.ts';
import { ENGLISH, SPANISH } from '../spoken.ts';
import { ITEMS, ITEMS_OF_3, MANIFESTS, MANIFESTS_OF_3, type SpoiledItem, STRICTLY } from './qti-spoiled.ts';
import { all, readXml } from './read-xml.ts';
import { faultsBy, namesKnown, namesWritten } from './restated.ts';
import { refuses } from './spoiled.ts';

const UNITS = [SPECS.u1, SPECS.u2, SPECS.u3];
const SEEDS = 6;
const PACKAGES: readonly (readonly [Question['language'], System])[] = [
  ['en', 'us'],
  ['en', 'si'],
  ['es', 'us'],
  ['es', 'si'],
];

/** No drill has several right answers; an item may. */
const MANY: Question = {
  id: 'many',
  language: 'en',
  title: 'Many & <more>',
  prompt: 'Which?',
  shown: ['a', 'b'],
  ask: { kind: 'choice', options: ['a', 'b'].map((id) => ({ id, text: id, why: `Why ${id}?` })), right: ['a', 'b'] },
  ground: ['By a book.'],
};

/** Every kind of drill by every seed, and so on every unit. */
function questionsIn(language: Question['language'], system: System): readonly Question[] {
  const say = speak(language === 'en' ? ENGLISH : SPANISH, system, true);
  const questions = SKILLS.flatMap((skill) =>
    UNITS.flatMap((unit, i) =>
      Array.from({ length: SEEDS / UNITS.length }, (_, round) =>
        questionOf(drill(skill, round * UNITS.length + i, unit, system), language, say),
      ),
    ),
  );
  return [...questions, MANY];
}

const QUESTIONS = questionsIn('en', 'us');

describe.each(QTI)('in version %s', (version) => {
  const attribute = (plain: string) =>
    version === 'qti22' ? plain : plain.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  const tag = (plain: string) => (version === 'qti22' ? plain : `qti-${attribute(plain)}`);
  const manifest = (of: QtiVersion) => itemPackage(QUESTIONS.slice(0, 3), of).get('imsmanifest.xml') ?? '';

  it.each(PACKAGES)('the whole package is valid, in %s and %s', async (language, system) => {
    const { 'imsmanifest.xml': list = '', ...items } = Object.fromEntries(
      itemPackage(questionsIn(language, system), version),
    );
    expect(Object.keys(items).length).toBe(SKILLS.length * SEEDS + 1);
    expect(await faultsBy(`${version}-item.xsd`, new Map(Object.entries(items)))).toEqual([]);
    expect(await faultsBy(`${version}-manifest.xsd`, new Map([['imsmanifest.xml', list]]))).toEqual([]);
  });

  it('the schemas know what is written and nothing else', () => {
    const written = { item: QUESTIONS.map((one) => itemDocument(one, version)).join(''), manifest: manifest(version) };
    for (const kind of ['item', 'manifest'] as const)
      expect(namesKnown(`${version}-${kind}.xsd`)).toEqual(namesWritten(written[kind]));
  });

  it('beside its schema: what is asked fits the response that is declared', () => {
    const kinds = new Set<string>();
    for (const one of QUESTIONS) {
      const root = readXml(itemDocument(one, version));
      const [response] = all(root, tag('responseDeclaration'));
      const { cardinality, [attribute('baseType')]: type } = response?.attributes ?? {};
      for (const kind of ['choiceInteraction', 'orderInteraction', 'textEntryInteraction'])
        for (const asked of all(root, tag(kind)))
          kinds.add([kind, asked.attributes[attribute('maxChoices')], 'of', cardinality, type].join(' '));
    }
    // Several choices are not asked of a single value, and what is typed is a number (the rules in Schematron of both versions).
    expect([...kinds].sort()).toEqual([
      'choiceInteraction 0 of multiple identifier',
      'choiceInteraction 1 of single identifier',
      'orderInteraction  of ordered identifier',
      'textEntryInteraction  of single float',
    ]);
  });

  it('an item and a manifest of the other version are refused', async () => {
    const other = version === 'qti22' ? 'qti3' : 'qti22';
    for (const [kind, text] of [
      ['item', itemDocument(MANY, other)],
      ['manifest', manifest(other)],
    ] as const) {
      const [first] = await faultsBy(`${version}-${kind}.xsd`, new Map([['one.xml', text]]));
      expect(first?.says).toMatch(/No matching global declaration/);
    }
  });

  const item = ({ of = 'choice' }: SpoiledItem) =>
    itemDocument(QUESTIONS.find(({ ask }) => ask.kind === of) ?? MANY, version);
  const [items, manifests] = [`${version}-item.xsd`, `${version}-manifest.xsd`];
  const three = version === 'qti3';
  refuses(items, 'an item that is spoiled', three ? [...ITEMS, ...ITEMS_OF_3] : ITEMS, item);
  refuses(items, 'an item that is spoiled, where ours is stricter than the standard', STRICTLY, item);
  refuses(manifests, 'a manifest that is spoiled', three ? [...MANIFESTS, ...MANIFESTS_OF_3] : MANIFESTS, () =>
    manifest(version),
  );
});
