/** The manifests of our packages against the XML schemas of SCORM 1.2 and SCORM 2004 4th edition, by libxml2. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { packageOf } from '../../../src/cli/pack.ts';
import { zipOf } from '../../../src/cli/zip.ts';
import { builtPage } from './built-page.ts';
import { fetchSchemas, type Schema } from './scorm-schemas.ts';
import { prepared } from './taken.ts';

const schemas = fetchSchemas();
if (!schemas) console.info('the registry does not answer: the manifests are not held against the schemas of SCORM');

const folder = builtPage();
afterAll(() => rmSync(folder, { recursive: true }));

/** The manifest of two calls as a package. */
function packedManifest(platform: 'scorm12' | 'scorm2004'): string {
  const calls = ['storm-light', 'sunny-line'].map((id) => prepared(id).call);
  const choice = { platform, mode: 'graded', language: 'en', page: join(folder, 'page') } as const;
  return strFromU8(unzipSync(zipOf(packageOf(calls, choice)))['imsmanifest.xml'] ?? new Uint8Array());
}

/** One schema that brings those of every namespace a manifest uses. */
const WRAPPERS = {
  scorm12: wrapper({
    'http://www.imsproject.org/xsd/imscp_rootv1p1p2': 'imscp_rootv1p1p2.xsd',
    'http://www.adlnet.org/xsd/adlcp_rootv1p2': 'adlcp_rootv1p2.xsd',
  }),
  scorm2004: wrapper({
    'http://www.imsglobal.org/xsd/imscp_v1p1': 'imscp_v1p1.xsd',
    'http://www.adlnet.org/xsd/adlcp_v1p3': 'adlcp_v1p3.xsd',
    'http://www.adlnet.org/xsd/adlseq_v1p3': 'adlseq_v1p3.xsd',
    'http://www.adlnet.org/xsd/adlnav_v1p3': 'adlnav_v1p3.xsd',
    'http://www.imsglobal.org/xsd/imsss': 'imsss_v1p0.xsd',
  }),
} as const;

function wrapper(files: Readonly<Record<string, string>>): string {
  const imports = Object.entries(files).map(
    ([namespace, file]) => `<xs:import namespace="${namespace}" schemaLocation="${file}"/>`,
  );
  return `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">${imports.join('')}</xs:schema>`;
}

async function errorsIn(manifest: string, schema: string, preload: readonly Schema[]): Promise<readonly string[]> {
  const { errors } = await validateXML({
    xml: [{ fileName: 'imsmanifest.xml', contents: manifest }],
    schema: [{ fileName: 'all.xsd', contents: schema }],
    preload: [...preload],
  });
  return errors.map(({ message }) => message);
}

describe.skipIf(!schemas).each(['scorm12', 'scorm2004'] as const)('the manifest of %s', (platform) => {
  const held = (manifest: string) => errorsIn(manifest, WRAPPERS[platform], schemas?.[platform] ?? []);

  it('is valid', async () => {
    expect(await held(packedManifest(platform))).toEqual([]);
  });

  it.each([
    ['an element of no schema', (text: string) => text.replace('<organizations', '<organisations/><organizations')],
    ['a resource without its type', (text: string) => text.replace(/type="webcontent"/, '')],
    ['a kind of resource that there is not', (text: string) => text.replace(/(scorm[tT]ype)="sco"/, '$1="SCO"')],
  ])('with %s is not', async (_what, spoil) => {
    const good = packedManifest(platform);
    const bad = spoil(good);
    expect(bad).not.toBe(good);
    expect((await held(bad)).length).toBeGreaterThan(0);
  });
});
