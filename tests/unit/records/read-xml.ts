/** Reads XML of the plain kind that we write: elements, attributes, text, the five entities. Throws where it is not well formed. */
export interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
  /** All text within, inner elements' too. */
  readonly text: string;
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const TAG = /<(\/?)([\w:.-]+)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>/y;

const unescaped = (text: string) =>
  text.replaceAll(/&(\w*);?/g, (whole, name: string) => {
    const known = ENTITIES[name];
    if (known === undefined || !whole.endsWith(';')) throw new Error(`bare "${whole}"`);
    return known;
  });

interface Open {
  readonly name: string;
  readonly attributes: Record<string, string>;
  readonly children: Node[];
  text: string;
}

export function readXml(source: string): Node {
  const head = '<?xml version="1.0" encoding="UTF-8"?>\n';
  if (!source.startsWith(head)) throw new Error('no declaration');
  const root: Open = { name: '', attributes: {}, children: [], text: '' };
  const open: Open[] = [root];
  for (let at = head.length; at < source.length; ) {
    const inner = open.at(-1) ?? root;
    if (source[at] !== '<') {
      const end = source.indexOf('<', at);
      const piece = unescaped(source.slice(at, end < 0 ? undefined : end));
      if (open.length === 1 && piece.trim() !== '') throw new Error('text outside');
      for (const one of open) one.text += piece;
      at = end < 0 ? source.length : end;
      continue;
    }
    TAG.lastIndex = at;
    const [whole, closing, name = '', attributes = '', empty] = TAG.exec(source) ?? [];
    if (whole === undefined) throw new Error(`no tag at ${source.slice(at, at + 40)}`);
    at += whole.length;
    if (closing) {
      if (inner.name !== name) throw new Error(`${name} closes ${inner.name}`);
      open.pop();
      continue;
    }
    const child: Open = { name, attributes: attributesIn(attributes), children: [], text: '' };
    inner.children.push(child);
    if (!empty) open.push(child);
  }
  const [only, ...more] = root.children;
  if (open.length !== 1 || !only || more.length > 0) throw new Error('not one whole element');
  return only;
}

function attributesIn(text: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, key = '', value = ''] of text.matchAll(/([\w:.-]+)="([^"]*)"/g)) {
    if (key in found) throw new Error(`${key} twice`);
    found[key] = unescaped(value);
  }
  return found;
}

/** All elements of a name, at any depth. */
export function all(node: Node, name: string): readonly Node[] {
  return [...(node.name === name ? [node] : []), ...node.children.flatMap((child) => all(child, name))];
}

export const inner = (node: Node): readonly string[] => node.children.map(({ name }) => name);
