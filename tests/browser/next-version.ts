/** A next version of the built page, made of its files without a build: some texts changed, and all names that follow from it. */
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import type { Listing } from '../../src/desk/offline/listing.ts';
import { PAGE } from '../../src/tools/build-page.ts';
import { listingOf, WORKER } from '../../src/tools/offline.ts';

export interface NextVersion {
  readonly folder: string;
  /** Names below `assets` that the version before has not. */
  readonly fresh: readonly string[];
  readonly remove: () => void;
}

interface Change {
  /** The file below `assets`, up to what the bundler adds to tell versions apart. */
  readonly stem: string;
  readonly from: string;
  readonly to: string;
}

/** `listed` changes what the service worker's listing says of the version. */
export function nextVersion(change: Change, listed: (listing: Listing) => Partial<Listing> = () => ({})): NextVersion {
  const folder = mkdtempSync(join(tmpdir(), 'underlawn-next-'));
  cpSync(PAGE, folder, { recursive: true });
  const assets = join(folder, 'assets');
  const changed = readdirSync(assets).find((name) => name.startsWith(`${change.stem}-`) && name.endsWith('.js'));
  if (changed === undefined) throw new Error(`no file ${change.stem}`);
  const text = readFileSync(join(assets, changed), 'utf8');
  if (!text.includes(change.from)) throw new Error(`${changed} does not say: ${change.from}`);
  writeFileSync(join(assets, changed), text.replaceAll(change.from, change.to));
  const names = renamed(assets, changed, change.to);
  for (const file of textsIn(folder)) {
    let said = readFileSync(file, 'utf8');
    for (const [old, name] of names) said = said.replaceAll(old, name);
    writeFileSync(file, said);
  }
  for (const [old, name] of names) renameSync(join(assets, old), join(assets, name));
  relist(folder, listed);
  return { folder, fresh: [...names.values()], remove: () => rmSync(folder, { recursive: true }) };
}

/** A file's name follows from what is in it, and so do the names of all that name it, one after the other. */
function renamed(assets: string, changed: string, salt: string): ReadonlyMap<string, string> {
  const texts = new Map(
    readdirSync(assets).flatMap((name) =>
      /\.(?:js|css)$/.test(name) ? [[name, readFileSync(join(assets, name), 'utf8')] as const] : [],
    ),
  );
  const names = new Map<string, string>();
  const follow = [changed];
  for (let name = follow.pop(); name !== undefined; name = follow.pop()) {
    if (names.has(name)) continue;
    const known = name;
    names.set(known, known.replace(/-.{8}(\.\w+)$/, `-${hashOf(known + salt)}$1`));
    for (const [other, text] of texts) if (text.includes(known)) follow.push(other);
  }
  return names;
}

const hashOf = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 8);

function textsIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:js|css|html)$/.test(entry.name) && entry.name !== WORKER)
    .map((entry) => join(entry.parentPath, basename(entry.name)));
}

function relist(folder: string, listed: (listing: Listing) => Partial<Listing>): void {
  const file = join(folder, WORKER);
  const said = readFileSync(file, 'utf8');
  const code = said.slice(said.indexOf('\n') + 1);
  const listing = listingOf(folder, code);
  writeFileSync(file, `const LISTING=${JSON.stringify({ ...listing, ...listed(listing) })};\n${code}`);
}
