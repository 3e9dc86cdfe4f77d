/** A package of items: the files, and `imsmanifest.xml` that lists them. */
import { UNDERLAWN, uuid5 } from '../uuid.ts';
import { documentOf, element } from '../xml.ts';
import { itemDocument, type QtiVersion } from './item.ts';
import type { Question } from './question.ts';
import { type Schema, underSchema } from './schema.ts';

const PACKAGE = {
  qti22: {
    namespace: 'http://www.imsglobal.org/xsd/imscp_v1p1',
    location: 'http://www.imsglobal.org/xsd/qti/qtiv2p2/qtiv2p2_imscpv1p2_v1p0.xsd',
    schema: 'QTIv2.2 Package',
    schemaversion: '1.0.0',
    type: 'imsqti_item_xmlv2p2',
  },
  qti3: {
    namespace: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
    location: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd',
    schema: 'QTI Package',
    schemaversion: '3.0.0',
    type: 'imsqti_item_xmlv3p0',
  },
} as const satisfies Record<QtiVersion, Schema & Readonly<Record<string, string>>>;

/** Files by their names within the package. */
export function itemPackage(questions: readonly Question[], version: QtiVersion): ReadonlyMap<string, string> {
  const files = questions.map((one) => [`items/${one.id}.xml`, itemDocument(one, version)] as const);
  return new Map([['imsmanifest.xml', manifest(questions, version)], ...files]);
}

function manifest(questions: readonly Question[], version: QtiVersion): string {
  const { schema, schemaversion, type } = PACKAGE[version];
  const name = uuid5(UNDERLAWN, `items ${questions.map(({ id, language }) => `${id} ${language}`).join(' ')}`);
  return documentOf(
    element(
      'manifest',
      { ...underSchema(PACKAGE[version]), identifier: `underlawn-${name}` },
      element('metadata', {}, element('schema', {}, schema), element('schemaversion', {}, schemaversion)),
      element('organizations'),
      element(
        'resources',
        {},
        ...questions.map(({ id }) =>
          element(
            'resource',
            { identifier: id, type, href: `items/${id}.xml` },
            element('file', { href: `items/${id}.xml` }),
          ),
        ),
      ),
    ),
  );
}
