/**
 * Packages by the letter of what they are to be, rule by rule with the section beside each. The schemas of the standards carry no
 * licence to be kept here: those of SCORM are fetched where that goes (`scorm-schemas.test.ts`), those of QTI are restated
 * (`qti-schemas.test.ts`).
 */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { type CallFile, CallSession, makeRecord } from '../../../src/calls/index.ts';
import { playSteps } from '../../../src/calls/solution.ts';
import { answers } from '../../../src/cli/answers.ts';
import { items } from '../../../src/cli/items.ts';
import { UsageError } from '../../../src/cli/output.ts';
import { pack, packageOf } from '../../../src/cli/pack.ts';
import { zipOf } from '../../../src/cli/zip.ts';
import { readLaunched } from '../../../src/records/package/entry.ts';
import type { Platform } from '../../../src/records/package/platforms.ts';
import { builtPage } from './built-page.ts';
import { all, inner, readXml } from './read-xml.ts';
import { prepared } from './taken.ts';

const CALLS = ['storm-light', 'sunny-line'].map((id) => prepared(id).call);
const OWN: CallFile = {
  ...prepared('sunny-line').call,
  id: 'own-call',
  title: { en: 'A "call" & more', es: 'Propio' },
};

let folder = '';
beforeAll(() => {
  folder = builtPage();
});
afterAll(() => rmSync(folder, { recursive: true }));

const choice = (platform: Platform) =>
  ({ platform, mode: 'graded', language: 'en', page: join(folder, 'page') }) as const;
const filesOf = (platform: Platform, calls = CALLS) => unzipSync(zipOf(packageOf(calls, choice(platform))));
const textOf = (files: Readonly<Record<string, Uint8Array>>, name: string) =>
  strFromU8(files[name] ?? new Uint8Array());

describe.each(['scorm12', 'scorm2004'] as const)('the manifest of %s', (platform) => {
  const manifest = () => readXml(textOf(filesOf(platform), 'imsmanifest.xml'));

  it('lies at the root and names its version (1.2 CAM 2.3.2*; 2004 4th Ed. CAM 3.4*)', () => {
    const root = manifest();
    expect(root.name).toBe('manifest');
    expect(inner(root)).toEqual(['metadata', 'organizations', 'resources']);
    expect(all(root, 'schema')[0]?.text).toBe('ADL SCORM');
    expect(all(root, 'schemaversion')[0]?.text).toBe(platform === 'scorm12' ? '1.2' : '2004 4th Edition');
    expect(root.attributes.xmlns).toBe(
      platform === 'scorm12'
        ? 'http://www.imsproject.org/xsd/imscp_rootv1p1p2'
        : 'http://www.imsglobal.org/xsd/imscp_v1p1',
    );
  });

  it('has identifiers that are names, each once', () => {
    const ids = (function idsIn(node: ReturnType<typeof manifest>): string[] {
      return [...(node.attributes.identifier ? [node.attributes.identifier] : []), ...node.children.flatMap(idsIn)];
    })(manifest());
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[A-Za-z_][\w.-]*$/);
  });

  it('has one organization, the default, with an item for each call that leads to its resource', () => {
    const root = manifest();
    const [organization, ...others] = all(root, 'organization');
    expect(others).toEqual([]);
    expect(all(root, 'organizations')[0]?.attributes.default).toBe(organization?.attributes.identifier);
    const resources = new Map(all(root, 'resource').map((one) => [one.attributes.identifier, one]));
    const items = all(root, 'item');
    expect(items.map((one) => all(one, 'title')[0]?.text)).toEqual(CALLS.map(({ title }) => title.en));
    for (const one of items) {
      const resource = resources.get(one.attributes.identifierref);
      expect(resource?.attributes).toMatchObject({
        type: 'webcontent',
        href: expect.stringMatching(/^call-.*\.html$/),
      });
    }
  });

  it('says of each resource what it is, with the attribute as that version spells it', () => {
    const attribute = platform === 'scorm12' ? 'adlcp:scormtype' : 'adlcp:scormType';
    expect(all(manifest(), 'resource').map(({ attributes }) => attributes[attribute])).toEqual(['sco', 'sco', 'asset']);
  });

  it('lists every file that is there, and none that is not', () => {
    const files = Object.keys(filesOf(platform)).filter((name) => name !== 'imsmanifest.xml');
    const listed = all(manifest(), 'file').map(({ attributes }) => attributes.href);
    expect([...listed].sort()).toEqual(files.sort());
    for (const { attributes } of all(manifest(), 'dependency')) expect(attributes.identifierref).toBe('page');
  });
});

it('the manifest of SCORM 2004 leaves the verdict to the call, and the order to the learner (SN 3.2*, 3.13*)', () => {
  const root = readXml(textOf(filesOf('scorm2004'), 'imsmanifest.xml'));
  const set = { completionSetByContent: 'true', objectiveSetByContent: 'true' };
  expect(all(root, 'imsss:deliveryControls').map(({ attributes }) => attributes)).toEqual([set, set]);
  expect(all(root, 'imsss:controlMode')[0]?.attributes).toEqual({ choice: 'true', flow: 'true' });
});

describe('the course structure of cmi5', () => {
  const files = () => filesOf('cmi5', [...CALLS, OWN]);
  const root = () => readXml(textOf(files(), 'cmi5.xml'));

  it('is named cmi5.xml at the root, in its namespace (13.2, 14.1)', () => {
    expect(root().name).toBe('courseStructure');
    expect(root().attributes).toEqual({ xmlns: 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd' });
    expect(inner(root())).toEqual(['course', 'au', 'au', 'au']);
  });

  it('has absolute ids, each once (3.0, 13.1)', () => {
    const ids = root().children.map(({ attributes }) => attributes.id ?? '');
    expect(new Set(ids).size).toBe(4);
    for (const id of ids) expect(id).toMatch(/^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
  });

  it('has title, description and address of each unit in their order, in both languages (13.1.4)', () => {
    for (const au of all(root(), 'au')) {
      expect(inner(au)).toEqual(['title', 'description', 'url']);
      for (const text of ['title', 'description']) {
        const langs = all(all(au, text)[0] as never, 'langstring').map(({ attributes }) => attributes.lang);
        expect(langs).toEqual(['en', 'es']);
      }
      expect(au.attributes).toMatchObject({ moveOn: 'Passed', masteryScore: '0.7', launchMethod: 'AnyWindow' });
    }
  });

  it('has relative addresses of files in the package, without a query (8.1, 14.1)', () => {
    for (const { text } of all(root(), 'url')) {
      expect(text).toMatch(/^[\w./-]+$/);
      expect(files()).toHaveProperty([text]);
    }
  });

  it('asks for completion, and for no mastery, where it is practised', () => {
    const practised = packageOf(CALLS, { ...choice('cmi5'), mode: 'practice' }).get('cmi5.xml');
    const [au] = all(readXml(String(practised)), 'au');
    expect(au?.attributes.moveOn).toBe('Completed');
    expect(au?.attributes).not.toHaveProperty('masteryScore');
  });

  it('gives a changed call another id, and the same call the same one', () => {
    const idOf = (call: CallFile) =>
      all(readXml(String(packageOf([call], choice('cmi5')).get('cmi5.xml'))), 'au')[0]?.attributes.id;
    const [first] = CALLS;
    if (!first) throw new Error('no call');
    expect(idOf(first)).toBe(idOf({ ...first }));
    expect(idOf({ ...first, pass: 71 })).not.toBe(idOf(first));
  });
});

describe('packages', () => {
  it('are zipped as the format has it: the same bytes twice, sorted names, one date (APPNOTE 4.3)', () => {
    const zip = zipOf(packageOf(CALLS, choice('scorm12')));
    expect(Buffer.from(zip.slice(0, 4)).toString('latin1')).toBe('PK\u0003\u0004');
    expect(zipOf(packageOf(CALLS, choice('scorm12')))).toEqual(zip);
    const names = Object.keys(unzipSync(zip));
    expect(names).toEqual([...names].sort());
    // Bytes 10 to 13 of an entry: time and date; midnight of 1 January 1980 is 0 and 0x0021.
    expect([...zip.slice(10, 14)]).toEqual([0, 0, 0x21, 0]);
  });

  it('have an entry page for each call that says how it was launched, and only for cmi5 may speak to another host', () => {
    const page = textOf(filesOf('scorm12'), 'call-storm-light.html');
    const line = /<meta name="underlawn-course" content="([^"]*)"/.exec(page)?.[1]?.replaceAll('&quot;', '"') ?? '';
    expect(readLaunched(line)).toMatchObject({ as: 'scorm12', call: 'storm-light', mode: 'graded' });
    expect(page).toContain("connect-src 'self';");
    expect(textOf(filesOf('cmi5'), 'call-storm-light.html')).toContain("connect-src 'self' https: http:;");
    expect(filesOf('scorm12')).not.toHaveProperty(['index.html']);
    // What a platform serves is the platform's to keep: nothing of it is installed, or answers from a copy.
    expect(Object.keys(filesOf('scorm12')).filter((name) => /sw\.js|webmanifest|icons/.test(name))).toEqual([]);
    expect(page).not.toMatch(/rel="(?:manifest|apple-touch-icon)"/);
  });

  it('bring the file of a call that does not ship, its title escaped', () => {
    const files = filesOf('scorm12', [OWN]);
    expect(JSON.parse(textOf(files, 'calls/own-call.json'))).toMatchObject({ id: 'own-call', title: OWN.title });
    expect(all(readXml(textOf(files, 'imsmanifest.xml')), 'title')[0]?.text).toBe(OWN.title.en);
    expect(textOf(files, 'call-own-call.html')).toContain('calls/own-call.json');
  });

  it('refuse a line in the head that is none of ours', () => {
    for (const line of ['', '{', '{"as":"scorm13","call":"a","mode":"graded","uuid":"x"}', '{"as":"cmi5"}', 'null']) {
      expect(readLaunched(line)).toBeUndefined();
    }
  });
});

describe('the command line', () => {
  const page = () => ['--page', join(folder, 'page')];

  it('packs calls', () => {
    const out = join(folder, 'out.zip');
    expect(pack(['storm-light', '--as', 'cmi5', '-o', out, ...page()])).toBe(0);
    expect(unzipSync(readFileSync(out))).toHaveProperty(['cmi5.xml']);
  });

  it.each([
    [['--as', 'scorm12', '-o', 'x.zip'], /needs CALLS/],
    [['storm-light', '--as', 'scorm12'], /needs -o/],
    [['storm-light', '--as', 'scorm13', '-o', 'x.zip'], /write one of scorm12, scorm2004, cmi5/],
    [['storm-light', '--as', 'cmi5', '-o', 'x.zip', '--page', 'nowhere'], /no built page/],
    [['no-such-call', '--as', 'cmi5', '-o', 'x.zip'], /no call/],
    [['storm-light', 'storm-light', '--as', 'cmi5', '-o', 'x.zip'], /twice/],
    [['storm-light', '--as', 'cmi5', '--mode', 'hard', '-o', 'x.zip'], /write one of graded, practice/],
  ])('refuses %j', (args, why) => {
    const told = () => pack(args.includes('--page') ? args : [...args, ...page()]);
    expect(told).toThrow(UsageError);
    expect(told).toThrow(why);
  });

  it('writes out what records answered, and refuses one that does not replay', async () => {
    const { call } = prepared('storm-light');
    const session = new CallSession(prepared('storm-light'), 'graded');
    playSteps(session, call.solution);
    const record = makeRecord(session);
    const [good, bad] = [join(folder, 'K.json'), join(folder, 'L.json')];
    writeFileSync(good, JSON.stringify(record));
    writeFileSync(bad, JSON.stringify({ ...record, claims: { ...record.claims, score: 1 } }));
    const [out, err] = [process.stdout, process.stderr].map((one) => vi.spyOn(one, 'write').mockReturnValue(true));
    const code = await answers([good, bad]);
    const [told, said] = [out, err].map((one) => one?.mock.calls.map(([text]) => String(text)).join('') ?? '');
    vi.restoreAllMocks();
    expect(code).toBe(1);
    expect(told?.split('\r\n')[1]).toBe('K,storm-light,graded,true,100,decision,choice,close,close,correct,0,');
    expect(said).toMatch(/L\.json: .*score/);
  });

  it('writes questions, the same bytes for the same seed', async () => {
    const [a, b, c] = ['a', 'b', 'c'].map((name) => join(folder, `${name}.zip`)) as [string, string, string];
    for (const out of [a, b]) expect(await items(['--as', 'qti3', '-o', out, '--seed', '7', '--count', '12'])).toBe(0);
    await items(['--as', 'qti3', '-o', c, '--seed', '8', '--count', '12']);
    expect(readFileSync(a)).toEqual(readFileSync(b));
    expect(readFileSync(a)).not.toEqual(readFileSync(c));
    await expect(items(['--as', 'qti3', '-o', a, '--count', '1.5'])).rejects.toThrow(UsageError);
    await expect(items(['--as', 'qti1', '-o', a])).rejects.toThrow(UsageError);
  });
});
