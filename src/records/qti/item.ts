/**
 * A question as an item of QTI 2.2 and of QTI 3.0, with response processing that scores it and says why. Both are written
 * from one tree: 3.0 has the names of 2.2 in small letters with strokes and `qti-` before them, and a body around the words
 * of feedback and rubrics; HTML keeps its own.
 */
import { documentOf, type Element, element } from '../xml.ts';
import type { Choosing, Counting, Question, Sequencing } from './question.ts';
import { type Schema, underSchema } from './schema.ts';

export const QTI = ['qti22', 'qti3'] as const;
export type QtiVersion = (typeof QTI)[number];

const SCHEMA: Readonly<Record<QtiVersion, Schema>> = {
  qti22: {
    namespace: 'http://www.imsglobal.org/xsd/imsqti_v2p2',
    location: 'http://www.imsglobal.org/xsd/qti/qtiv2p2/imsqti_v2p2.xsd',
  },
  qti3: {
    namespace: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
    location: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd',
  },
};

export function itemDocument(question: Question, version: QtiVersion): string {
  const tree = itemTree(question);
  const named = version === 'qti22' ? tree : inVersion3(tree);
  return documentOf({ ...named, attributes: { ...underSchema(SCHEMA[version]), ...named.attributes } });
}

function itemTree({ id, language, title, prompt, shown, ask, ground }: Question): Element {
  const multiple = ask.kind === 'choice' && ask.right.length > 1;
  const parts = partsOf(ask, multiple);
  const right = ask.kind === 'number' ? [ask.value] : ask.right;
  return element(
    'assessmentItem',
    { identifier: id, title, adaptive: 'false', timeDependent: 'false', 'xml:lang': language },
    element(
      'responseDeclaration',
      {
        identifier: 'RESPONSE',
        cardinality: ask.kind === 'order' ? 'ordered' : multiple ? 'multiple' : 'single',
        baseType: ask.kind === 'number' ? 'float' : 'identifier',
      },
      element('correctResponse', {}, ...right.map((one) => element('value', {}, one))),
    ),
    element(
      'outcomeDeclaration',
      { identifier: 'SCORE', cardinality: 'single', baseType: 'float', normalMaximum: '1' },
      element('defaultValue', {}, element('value', {}, '0')),
    ),
    element('outcomeDeclaration', {
      identifier: 'FEEDBACK',
      cardinality: multiple ? 'multiple' : 'single',
      baseType: 'identifier',
    }),
    element(
      'itemBody',
      {},
      element('p', {}, prompt),
      element('ul', {}, ...shown.map((line) => element('li', {}, line))),
      parts.interaction,
      element('rubricBlock', { use: 'scoring', view: 'scorer tutor' }, ...ground.map((line) => element('p', {}, line))),
    ),
    element('responseProcessing', {}, ...parts.processing),
    ...parts.feedback.map(([identifier, why]) =>
      element('modalFeedback', { outcomeIdentifier: 'FEEDBACK', showHide: 'show', identifier }, why),
    ),
  );
}

interface Parts {
  readonly interaction: Element;
  readonly processing: readonly Element[];
  readonly feedback: readonly (readonly [identifier: string, why: string])[];
}

const RESPONSE = element('variable', { identifier: 'RESPONSE' });
const CORRECT = element('correct', { identifier: 'RESPONSE' });
const base = (baseType: string, value: string) => element('baseValue', { baseType }, value);
const set = (identifier: string, value: Element) => element('setOutcomeValue', { identifier }, value);
const scores = (points: '0' | '1') => set('SCORE', base('float', points));

function partsOf(ask: Question['ask'], multiple: boolean): Parts {
  switch (ask.kind) {
    case 'choice':
      return choosing(ask, multiple);
    case 'order':
      return sequencing(ask);
    case 'number':
      return counting(ask);
  }
}

function choosing({ options }: Choosing, multiple: boolean): Parts {
  return {
    interaction: element(
      'choiceInteraction',
      { responseIdentifier: 'RESPONSE', shuffle: 'false', maxChoices: multiple ? '0' : '1' },
      ...options.map((option) => element('simpleChoice', { identifier: option.id }, option.text)),
    ),
    processing: [
      element(
        'responseCondition',
        {},
        element('responseIf', {}, element('match', {}, RESPONSE, CORRECT), scores('1')),
        element('responseElse', {}, scores('0')),
      ),
      // Each answer has its own word: what is told is what was chosen.
      set('FEEDBACK', RESPONSE),
    ],
    feedback: options.map(({ id, why }) => [id, why]),
  };
}

/** Of a wrong sequence it is told what belongs in the first place that is wrong. */
function sequencing({ items, right, whole }: Sequencing): Parts {
  const says = (identifier: string) => set('FEEDBACK', base('identifier', identifier));
  const place = (n: number) => element('index', { n: String(n) }, RESPONSE);
  return {
    interaction: element(
      'orderInteraction',
      { responseIdentifier: 'RESPONSE', shuffle: 'false' },
      ...items.map((item) => element('simpleChoice', { identifier: item.id }, item.text)),
    ),
    processing: [
      element(
        'responseCondition',
        {},
        element('responseIf', {}, element('isNull', {}, RESPONSE), scores('0')),
        element('responseElseIf', {}, element('match', {}, RESPONSE, CORRECT), scores('1'), says('whole')),
        ...right.map((id, i) =>
          element(
            'responseElseIf',
            {},
            element('not', {}, element('match', {}, place(i + 1), base('identifier', id))),
            scores('0'),
            says(id),
          ),
        ),
      ),
    ],
    feedback: [['whole', whole], ...items.map(({ id, why }) => [id, why] as const)],
  };
}

function counting({ label, value, tolerance, why, slips, other }: Counting): Parts {
  const near = (to: Element, reach: string) =>
    element('equal', { toleranceMode: 'absolute', tolerance: `${reach} ${reach}` }, RESPONSE, to);
  const says = (identifier: string) => set('FEEDBACK', base('identifier', identifier));
  const slipId = (i: number) => `slip-${i + 1}`;
  return {
    interaction: element(
      'p',
      {},
      `${label} `,
      element('textEntryInteraction', { responseIdentifier: 'RESPONSE', expectedLength: String(value.length + 4) }),
    ),
    processing: [
      element(
        'responseCondition',
        {},
        // Nothing was typed: nothing is said.
        element('responseIf', {}, element('isNull', {}, RESPONSE), scores('0')),
        element('responseElseIf', {}, near(CORRECT, tolerance), scores('1'), says('right')),
        ...slips.map((slip, i) =>
          element('responseElseIf', {}, near(base('float', slip.value), slip.reach), scores('0'), says(slipId(i))),
        ),
        element('responseElse', {}, scores('0'), says('other')),
      ),
    ],
    feedback: [['right', why], ...slips.map((slip, i) => [slipId(i), slip.why] as const), ['other', other]],
  };
}

const HTML = ['p', 'ul', 'li'];
const small = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

function inVersion3({ name, attributes, children }: Element): Element {
  const inner = children.map((child) => (typeof child === 'string' ? child : inVersion3(child)));
  if (HTML.includes(name)) return { name, attributes, children: inner };
  return {
    name: `qti-${small(name)}`,
    attributes: Object.fromEntries(Object.entries(attributes).map(([key, value]) => [small(key), value])),
    children: inBody(name, inner),
  };
}

/** What 3.0 puts between an element and its words. */
function inBody(name: string, inner: Element['children']): Element['children'] {
  if (name === 'modalFeedback') return [element('qti-content-body', {}, element('p', {}, ...inner))];
  if (name === 'rubricBlock') return [element('qti-content-body', {}, ...inner)];
  return inner;
}
