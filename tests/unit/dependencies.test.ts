/** What we stand on: exact versions, whole and unaltered, permissive where it ships, and nothing that runs while it is installed. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Package {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const read = (file: string) => JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>;
const own = read('package.json') as { dependencies: Record<string, string>; devDependencies: Record<string, string> };
const lock = read('package-lock.json') as { packages: Record<string, Package> };
const packages = Object.entries(lock.packages).filter(([path]) => path !== '');
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

/** Licences under which what ships may be passed on with its notice and nothing else (SPDX); the typeface's is its own kind. */
const PERMISSIVE = new Set(['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'OFL-1.1']);
/** Tools that are used and never passed on may also be under these. */
const FOR_TOOLS = new Set(['MPL-2.0', 'BlueOak-1.0.0', 'CC-BY-4.0', 'MIT OR Apache-2.0']);
/** Says its licence in a file only: MIT. */
const IN_A_FILE = new Set(['rulr']);

describe('what the project depends on', () => {
  it('is named by exact versions', () => {
    for (const [name, version] of Object.entries({ ...own.dependencies, ...own.devDependencies })) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
    }
  });

  it('is held to the digest of what was once fetched', () => {
    for (const [path, { integrity }] of packages) expect(integrity, path).toMatch(/^sha512-/);
  });

  it('runs nothing while it is installed', () => {
    expect(packages.filter(([, one]) => one.hasInstallScript).map(([path]) => path)).toEqual([]);
  });

  it('ships under permissive licences, and uses no tool under a stranger one', () => {
    for (const [path, { license = '', dev, devOptional }] of packages) {
      if (IN_A_FILE.has(nameOf(path))) continue;
      const tool = dev === true || devOptional === true;
      expect(PERMISSIVE.has(license) || (tool && FOR_TOOLS.has(license)), `${path}: ${license}`).toBe(true);
    }
  });

  it('ships no more than is told in docs/hosting.md', () => {
    const shipped = packages.filter(([, one]) => one.dev !== true && one.devOptional !== true);
    const told = readFileSync('docs/hosting.md', 'utf8');
    const untold = shipped.filter(([path, { version, license }]) => {
      return !told.includes(`| \`${nameOf(path)}\` | ${version} | ${license} |`);
    });
    expect(untold.map(([path, { version, license }]) => `| \`${nameOf(path)}\` | ${version} | ${license} |`)).toEqual(
      [],
    );
  });
});
