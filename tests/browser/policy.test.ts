/** What the built page may do and whom it may speak to, read from its files. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildPage, PAGE } from '../../src/tools/build-page.ts';

/** Names that look like addresses and are never fetched: XML namespaces, and the vocabulary of xAPI and cmi5. */
const IDENTIFIERS = [
  'http://www.w3.org/2000/svg',
  'http://www.w3.org/1999/xhtml',
  'http://www.w3.org/1998/Math/MathML',
  'https://w3id.org/xapi/cmi5/context/',
  'http://adlnet.gov/expapi/verbs/',
  'http://adlnet.gov/expapi/activities/',
];
const TEXT = /\.(?:js|css|html|svg|json|webmanifest)$/;
/** An address with a host, or one that takes the scheme of the page. */
const ADDRESS = /\b(?:https?|wss?):\/\/[\w.-]+[^\s"'`)]*|(?<=["'`(=])\/\/[a-z\d-]+(?:\.[a-z\d-]+)+[^\s"'`)]*/gi;

beforeAll(() => {
  if (!process.env.UNDERLAWN_BUILT) buildPage();
});

describe('the policy of the built page', () => {
  const page = () => readFileSync(join(PAGE, 'index.html'), 'utf8');
  const policy = () => {
    const [, text = ''] = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(page()) ?? [];
    return new Map(text.split(/;\s*/).map((one) => [one.split(' ')[0] ?? '', one.split(' ').slice(1)] as const));
  };

  it('lets nothing come from another host, and nothing run but its own files', () => {
    expect(policy().get('default-src')).toEqual(["'self'"]);
    expect(policy().get('script-src')).toEqual(["'self'"]);
    expect(policy().get('style-src')).toEqual(["'self'"]);
    expect(policy().get('connect-src')).toEqual(["'self'"]);
    expect(policy().get('object-src')).toEqual(["'none'"]);
    expect(policy().get('base-uri')).toEqual(["'none'"]);
    expect(policy().get('form-action')).toEqual(["'none'"]);
    // A picture or a sound may be made on the spot; no code may.
    const allowed = new Set(["'self'", "'none'", 'data:', 'blob:']);
    for (const sources of policy().values()) expect(sources.filter((one) => !allowed.has(one))).toEqual([]);
    expect(page()).not.toMatch(/unsafe-/);
  });

  it('is not stood in the way by code or styles within the page', () => {
    expect(page().match(/<script(?![^>]*\ssrc=)/g)).toBeNull();
    expect(page().match(/<style|\sstyle=|\son\w+=|javascript:/gi)).toBeNull();
  });
});

describe('the files of the built page', () => {
  const files = () =>
    readdirSync(PAGE, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && TEXT.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name));

  it('name no other host to fetch from', () => {
    expect(files().length).toBeGreaterThan(200);
    const named = files().flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(ADDRESS)].map(([address]) => `${file}: ${address}`),
    );
    expect(named.filter((one) => !IDENTIFIERS.some((id) => one.includes(`: ${id}`)))).toEqual([]);
    // The pattern does find what there is.
    for (const id of IDENTIFIERS) expect(named.some((one) => one.includes(id))).toBe(true);
  });

  it('make no code from text', () => {
    for (const file of files().filter((name) => name.endsWith('.js'))) {
      expect([file, /\beval\(|\bimportScripts\(/.test(readFileSync(file, 'utf8'))]).toEqual([file, false]);
    }
  });
});

describe('what the page is built from', () => {
  const json = <T>(file: string) => JSON.parse(readFileSync(file, 'utf8')) as T;

  it('is named in its exact version, and each package in the lock file by the digest of what was fetched', () => {
    const { dependencies, devDependencies } = json<Record<string, Record<string, string>>>('package.json');
    const wanted = Object.entries({ ...dependencies, ...devDependencies });
    expect(wanted.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
    const { packages } = json<{ packages: Record<string, { integrity?: string; resolved?: string }> }>(
      'package-lock.json',
    );
    const locked = Object.entries(packages).filter(([name]) => name !== '');
    expect(locked.filter(([, { integrity }]) => !integrity?.startsWith('sha512-')).map(([name]) => name)).toEqual([]);
    expect(locked.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
  });
});
