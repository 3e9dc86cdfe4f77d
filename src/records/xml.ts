/** XML as a tree, written out the same way every time. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
}

type Node = Element | string;

export function element(name: string, attributes: Element['attributes'] = {}, ...children: readonly Node[]): Element {
  return { name, attributes, children };
}

/** A document of its own: elements indented by two, an element that holds text on one line. */
export function documentOf(root: Element): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;
}

function written({ name, attributes, children }: Element, indent: string): string {
  const head = `${indent}<${name}${Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escaped(value)}"`)
    .join('')}`;
  if (children.length === 0) return `${head}/>`;
  if (children.some((child) => typeof child === 'string')) return `${head}>${children.map(inline).join('')}</${name}>`;
  const inner = children.map((child) => written(child as Element, `${indent}  `)).join('\n');
  return `${head}>\n${inner}\n${indent}</${name}>`;
}

function inline(node: Node): string {
  return typeof node === 'string' ? escaped(node) : written(node, '');
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** What is left of a text without the characters that XML 1.0 has no place for. */
export function writable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to go
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');
}

/** What stands for itself in text and in attributes alike. */
function escaped(text: string): string {
  return writable(text).replace(/[&<>"]/g, (one) => ENTITIES[one] ?? one);
}
