/**
 * Response processing as the standard tells it, for the few expressions that we write, in either version's names: a second way to
 * come to score and feedback, which knows nothing of drills (QTI 2.2 and 3.0, Assessment, Section and Item model: response processing).
 */
import { all, type Node, readXml } from './read-xml.ts';

export interface Outcome {
  readonly score: number;
  /** What the item says of the answer. */
  readonly said: readonly string[];
}

type Value = readonly string[] | undefined;

/** Names as 2.2 has them, whichever version they are of. */
function plain(node: Node): Node {
  const camel = (name: string) =>
    name.replace(/^qti-/, '').replaceAll(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  return {
    ...node,
    name: camel(node.name),
    attributes: Object.fromEntries(Object.entries(node.attributes).map(([key, value]) => [camel(key), value])),
    children: node.children.map(plain),
  };
}

export function answered(xml: string, response: Value): Outcome {
  const item = plain(readXml(xml));
  const [declared] = all(item, 'responseDeclaration');
  const correct = all(declared as Node, 'value').map(({ text }) => text);
  const ordered = declared?.attributes.cardinality !== 'multiple';
  const float = declared?.attributes.baseType === 'float';
  const outcomes = new Map<string, Value>([['SCORE', ['0']]]);

  function valueIn({ name, attributes, text, children }: Node): Value {
    if (name === 'variable')
      return attributes.identifier === 'RESPONSE' ? response : outcomes.get(attributes.identifier ?? '');
    if (name === 'correct') return correct;
    if (name === 'baseValue') return [text];
    if (name === 'index') {
      const [of] = children.map(valueIn);
      const found = of?.[Number(attributes.n) - 1];
      return found === undefined ? undefined : [found];
    }
    throw new Error(`no value ${name}`);
  }
  function holds({ name, attributes, children }: Node): boolean {
    if (name === 'not') return !children.every(holds);
    const [a, b] = children.map(valueIn);
    if (name === 'isNull') return a === undefined || a.length === 0;
    if (a === undefined || b === undefined) return false;
    if (name === 'match') {
      if (float) throw new Error('match on floats');
      const [left, right] = ordered ? [a, b] : [[...a].sort(), [...b].sort()];
      return left.join(' ') === right.join(' ');
    }
    if (name !== 'equal' || attributes.toleranceMode !== 'absolute') throw new Error(`no condition ${name}`);
    const [down = Number.NaN, up = down] = (attributes.tolerance ?? '').split(' ').map(Number);
    // The tolerance lies around the second value, both ends included.
    return Number(a[0]) >= Number(b[0]) - down && Number(a[0]) <= Number(b[0]) + up;
  }
  function run(node: Node): void {
    if (node.name === 'setOutcomeValue') {
      const [value] = node.children;
      if (value) outcomes.set(node.attributes.identifier ?? '', valueIn(value));
      return;
    }
    if (node.name !== 'responseCondition') throw new Error(`no rule ${node.name}`);
    for (const { name, children } of node.children) {
      const [condition, ...then] = children;
      if (name !== 'responseElse' && !(condition && holds(condition))) continue;
      for (const rule of name === 'responseElse' ? children : then) run(rule);
      return;
    }
  }

  for (const rule of all(item, 'responseProcessing')[0]?.children ?? []) run(rule);
  const shown = outcomes.get('FEEDBACK') ?? [];
  const said = all(item, 'modalFeedback').filter(({ attributes }) => shown.includes(attributes.identifier ?? ''));
  return { score: Number(outcomes.get('SCORE')?.[0]), said: said.map(({ text }) => text.trim()) };
}
