/** Another version of the page, built from the sources with a few places changed. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** What the build reads. */
const SOURCES = ['src', 'scenarios', 'assets', 'package.json', 'tsconfig.json', 'vite.config.ts'];

export interface Edit {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

export interface OtherVersion {
  /** Folder of the built page. */
  readonly page: string;
  readonly remove: () => void;
}

export function buildWith(edits: readonly Edit[]): OtherVersion {
  const folder = mkdtempSync(join(tmpdir(), 'underlawn-version-'));
  for (const name of SOURCES) cpSync(name, join(folder, name), { recursive: true });
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  for (const { file, from, to } of edits) {
    const text = readFileSync(join(folder, file), 'utf8');
    if (!text.includes(from)) throw new Error(`${file} does not say: ${from}`);
    writeFileSync(join(folder, file), text.replace(from, to));
  }
  const { status } = spawnSync(
    process.execPath,
    [resolve('node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'error'],
    // Whoever runs this sets NODE_ENV, under which Vite would build the page for development.
    { cwd: folder, stdio: 'inherit', env: { ...process.env, NODE_ENV: 'production' } },
  );
  if (status !== 0) throw new Error('the other version does not build');
  return { page: join(folder, 'dist/web'), remove: () => rmSync(folder, { recursive: true }) };
}
