/**
 * The schemas of standards as we restated them (`schemas/`), and libxml2 to hold a file against them. They know what we write and
 * nothing else, each definition as the standard's own schema has it or narrower; where each is from stands in their heads.
 */
import { readFileSync } from 'node:fs';
import { validateXML } from 'xmllint-wasm';

export interface Fault {
  readonly file: string;
  readonly says: string;
}

/** What several of the schemas bring in. */
const PARTS = ['xml.xsd', 'qti-values.xsd'];

export const schemaText = (name: string): string => readFileSync(new URL(`schemas/${name}`, import.meta.url), 'utf8');

/** What is wrong with files by one schema, by their names. */
export async function faultsBy(schema: string, files: ReadonlyMap<string, string>): Promise<readonly Fault[]> {
  const { valid, errors, rawOutput } = await validateXML({
    xml: [...files].map(([name, contents]) => ({ fileName: name.replaceAll('/', '-'), contents })),
    schema: [{ fileName: schema, contents: schemaText(schema) }],
    preload: PARTS.map((fileName) => ({ fileName, contents: schemaText(fileName) })),
  });
  // A schema that cannot be read finds nothing wrong, and nothing right either.
  if (!valid && errors.length === 0) throw new Error(rawOutput);
  return errors.map(({ loc, message }) => ({ file: loc?.fileName ?? '', says: message }));
}

export interface Names {
  readonly elements: readonly string[];
  readonly attributes: readonly string[];
}

const each = (text: string, pattern: RegExp): readonly string[] =>
  [...new Set([...text.matchAll(pattern)].map(([, name = '']) => name))].sort();

/** The names that a schema knows. */
export function namesKnown(schema: string): Names {
  const text = schemaText(schema);
  return {
    elements: each(text, /<xs:element name="([\w-]+)"/g),
    attributes: each(text, /<xs:attribute (?:name|ref)="([\w:-]+)"/g),
  };
}

/** The names that stand in a text of our writer's, without what names namespaces and schemas. */
export function namesWritten(text: string): Names {
  const tags = text.replace(/<\?[^>]*>|xmlns\S*|xsi:\S*|>[^<]*(?=<)/g, '');
  return { elements: each(text, /<([\w-]+)/g), attributes: each(tags, /\s([\w:-]+)="/g) };
}
