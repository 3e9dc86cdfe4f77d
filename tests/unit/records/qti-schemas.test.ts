/** Items and manifests of QTI 2.2 and 3.0 against the schemas of the standard, restated (`schemas/`), by libxml2. */
import { beforeAll, describe, expect, it } from 'vitest';
import { SKILLS, type System } from '../../../src/quiz/drill.ts';
import { drill } from '../../../src/quiz/index.ts';
import { itemDocument, QTI, type QtiVersion } from '../../../src/records/qti/item.ts';
import { itemPackage } from '../../../src/records/qti/package.ts';
import { type Question, questionOf } from '../../../src/records/qti/question.ts';
import { speak } from '../../../src/words/speak.ts';
import { SPECS } from '../../control/panels.ts';
import { ENGLISH, SPANISH } from '../spoken.ts';
import { type Fault, faultsIn, type Kind, schemaText } from './qti-schemas.ts';
import { ITEMS, ITEMS_OF_3, MANIFESTS, MANIFESTS_OF_3, type Spoiled, STRICTLY } from './qti-spoiled.ts';
import { all, readXml } from './read-xml.ts';

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
    expect(await faultsIn(version, 'item', new Map(Object.entries(items)))).toEqual([]);
    expect(await faultsIn(version, 'manifest', new Map([['imsmanifest.xml', list]]))).toEqual([]);
  });

  it('the schemas know what is written and nothing else', () => {
    const written = { item: QUESTIONS.map((one) => itemDocument(one, version)).join(''), manifest: manifest(version) };
    for (const kind of ['item', 'manifest'] as const) {
      const schema = schemaText(`${version}-${kind}.xsd`);
      const names = (text: string, pattern: RegExp) =>
        [...new Set([...text.matchAll(pattern)].map(([, name]) => name))].sort();
      expect(names(schema, /<xs:element name="([\w-]+)"/g)).toEqual(names(written[kind], /<([\w-]+)/g));
      const tags = written[kind].replace(/<\?[^>]*>|xmlns\S*|xsi:\S*|>[^<]*(?=<)/g, '');
      expect(names(schema, /<xs:attribute (?:name|ref)="([\w:-]+)"/g)).toEqual(names(tags, /\s([\w:-]+)="/g));
    }
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
      const [first] = await faultsIn(version, kind, new Map([['one.xml', text]]));
      expect(first?.says).toMatch(/No matching global declaration/);
    }
  });

  const item = (kind: Question['ask']['kind']) =>
    itemDocument(QUESTIONS.find(({ ask }) => ask.kind === kind) ?? MANY, version);
  refuses(version, 'item', 'spoiled', version === 'qti22' ? ITEMS : [...ITEMS, ...ITEMS_OF_3], item);
  refuses(version, 'item', 'spoiled, where ours is stricter than the standard', STRICTLY, item);
  refuses(version, 'manifest', 'spoiled', version === 'qti22' ? MANIFESTS : [...MANIFESTS, ...MANIFESTS_OF_3], () =>
    manifest(version),
  );
});

/** All of one kind are looked at in one go: libxml2 takes longer to start than to read. */
function refuses(
  version: QtiVersion,
  kind: Kind,
  how: string,
  table: readonly Spoiled[],
  good: (of: Question['ask']['kind']) => string,
): void {
  describe(`a ${kind} that is ${how}, is refused:`, () => {
    const name = (one: Spoiled) => `${table.indexOf(one)}.xml`;
    let faults: readonly Fault[] = [];
    beforeAll(async () => {
      const bad = table.map((one) => [name(one), good(one.of ?? 'choice').replace(one.find, one.instead)] as const);
      faults = await faultsIn(version, kind, new Map(bad));
    });

    it.each(table.map((one) => [one.what, one] as const))('%s', (_what, one) => {
      const before = good(one.of ?? 'choice');
      expect(before.replace(one.find, one.instead)).not.toBe(before);
      const said = faults.filter(({ file }) => file === name(one)).map(({ says }) => says);
      expect(said.join('\n')).toMatch(one.says);
    });
  });
}
