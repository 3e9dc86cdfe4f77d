/**
 * The schemas of QTI as we restated them (`schemas/`), and libxml2 to hold a file against them. They know what we write and
 * nothing else, each definition as the standard's own schema has it or narrower; where each is from stands in their heads.
 */
import { readFileSync } from 'node:fs';
import { validateXML } from 'xmllint-wasm';
import type { QtiVersion } from '../../../src/records/qti/item.ts';

export type Kind = 'item' | 'manifest';

export interface Fault {
  readonly file: string;
  readonly says: string;
}

const PARTS = ['xml.xsd', 'qti-values.xsd'];

export const schemaText = (name: string): string => readFileSync(new URL(`schemas/${name}`, import.meta.url), 'utf8');

/** What is wrong with files of one kind, by their names. */
export async function faultsIn(
  version: QtiVersion,
  kind: Kind,
  files: ReadonlyMap<string, string>,
): Promise<readonly Fault[]> {
  const schema = `${version}-${kind}.xsd`;
  const { valid, errors, rawOutput } = await validateXML({
    xml: [...files].map(([name, contents]) => ({ fileName: name.replaceAll('/', '-'), contents })),
    schema: [{ fileName: schema, contents: schemaText(schema) }],
    preload: PARTS.map((fileName) => ({ fileName, contents: schemaText(fileName) })),
  });
  // A schema that cannot be read finds nothing wrong, and nothing right either.
  if (!valid && errors.length === 0) throw new Error(rawOutput);
  return errors.map(({ loc, message }) => ({ file: loc?.fileName ?? '', says: message }));
}
