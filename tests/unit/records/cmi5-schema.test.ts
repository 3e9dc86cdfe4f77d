/** Course structures of cmi5 against the schema of the standard, restated (`schemas/cmi5-course.xsd`), by libxml2. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { allShipped, type CallFile } from '../../../src/calls/index.ts';
import { packageOf } from '../../../src/cli/pack.ts';
import { BeyondLimit } from '../../../src/records/limits.ts';
import { PACKED_MODES, type PackedMode } from '../../../src/records/package/platforms.ts';
import { builtPage } from './built-page.ts';
import { COURSES, STRICTLY } from './cmi5-spoiled.ts';
import { faultsBy, namesKnown, namesWritten } from './restated.ts';
import { refuses } from './spoiled.ts';
import { prepared } from './taken.ts';

const SCHEMA = 'cmi5-course.xsd';
const TWO = ['storm-light', 'sunny-line'].map((id) => prepared(id).call);

const folder = builtPage();
afterAll(() => rmSync(folder, { recursive: true }));

/** What `pack` writes; in both languages whichever is asked for. */
function structure(calls: readonly CallFile[], mode: PackedMode, language: 'en' | 'es' = 'en'): string {
  const choice = { platform: 'cmi5', mode, language, page: join(folder, 'page') } as const;
  return String(packageOf(calls, choice).get('cmi5.xml'));
}

/** A call of one's own, with what a text and a mark can come to. */
function own(pass: number): CallFile {
  const [call] = TWO;
  if (!call) throw new Error('no call');
  const told = `A "call" & more\u0007 — ${pass} 💧`;
  return {
    ...call,
    id: `own-${pass}`,
    pass,
    title: { en: told, es: `¿${told}?` },
    summary: { en: `${told}\n`, es: told },
  };
}

describe.each(PACKED_MODES)('the course structure of calls that are %s', (mode) => {
  it('is valid, of all calls that ship and of each by itself', async () => {
    const courses = new Map([['all.xml', structure(allShipped(), mode)]]);
    for (const call of allShipped()) courses.set(`${call.id}.xml`, structure([call], mode));
    expect(courses.size).toBe(allShipped().length + 1);
    expect(await faultsBy(SCHEMA, courses)).toEqual([]);
  });

  it('is valid of a call of one’s own, whatever it says, with every mark that passes it', async () => {
    const calls = Array.from({ length: 100 }, (_, i) => own(i + 1));
    expect(await faultsBy(SCHEMA, new Map([['own.xml', structure(calls, mode)]]))).toEqual([]);
  });

  it.each([' ', '\t\u00a0\n', '\u0007'])(
    'is not written of a call whose title is %j: the platform trims it to nothing (13.1)',
    (blank) => {
      const call = own(70);
      for (const text of ['title', 'summary'] as const)
        for (const told of [
          { en: blank, es: 'x' },
          { en: 'x', es: blank },
        ])
          expect(() => structure([{ ...call, [text]: told }], mode)).toThrow(BeyondLimit);
    },
  );

  it('says the same in whichever language the package is asked for', () => {
    expect(structure(TWO, mode, 'es')).toBe(structure(TWO, mode, 'en'));
  });
});

it('the schema knows what is written and nothing else', () => {
  const written = PACKED_MODES.map((mode) => structure([...TWO, own(70)], mode)).join('');
  expect(namesKnown(SCHEMA)).toEqual(namesWritten(written));
});

const good = () => structure(TWO, 'graded');
refuses(SCHEMA, 'a course structure that is spoiled', COURSES, good);
refuses(SCHEMA, 'a course structure that is spoiled, where ours is stricter than the standard', STRICTLY, good);
