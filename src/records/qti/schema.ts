/**
 * What a document says of its schema: its namespace, and where the schema is published. The list of the schemas of QTI 3.0 (final
 * release, 1 May 2022) has it that both are given; for 2.2, `common practice, no source`.
 */
import type { Element } from '../xml.ts';

export interface Schema {
  readonly namespace: string;
  readonly location: string;
}

export function underSchema({ namespace, location }: Schema): Element['attributes'] {
  return {
    xmlns: namespace,
    'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
    'xsi:schemaLocation': `${namespace} ${location}`,
  };
}
