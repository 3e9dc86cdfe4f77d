/** Finds calls, records and units for the command line: shipped ones by id, others by path. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import {
  allShipped,
  type CallFile,
  type Checked,
  LARGEST_FILE_bytes,
  loadCall,
  shippedLibrary,
  tooLarge,
} from '../calls/index.ts';
import { UsageError } from './output.ts';

/** Text of a file, refused unread when it is too large to be what it says. */
export function readText(path: string): Checked<string> {
  let bytes: number;
  try {
    const about = statSync(path);
    if (!about.isFile()) throw new UsageError(`${path} is not a file; name a JSON file`);
    bytes = about.size;
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`${path} cannot be read; check the path`);
  }
  if (bytes > LARGEST_FILE_bytes) return { ok: false, problems: [tooLarge(bytes)] };
  return { ok: true, value: readFileSync(path, 'utf8') };
}

/** A call by its shipped id, or from a file. */
export function findCall(name: string): Checked<CallFile> {
  const shipped = allShipped().find((c) => c.id === name);
  if (shipped) return { ok: true, value: shipped };
  if (!existsSync(name)) {
    throw new UsageError(
      `no call "${name}"; name a file, or one of ${allShipped()
        .map((c) => c.id)
        .join(', ')}`,
    );
  }
  const text = readText(name);
  return text.ok ? loadCall(text.value, shippedLibrary()) : text;
}

/** A file, or the JSON files of a folder by their names. */
export function filesIn(path: string): readonly string[] {
  try {
    if (!statSync(path).isDirectory()) return [path];
  } catch {
    throw new UsageError(`${path} cannot be read; check the path`);
  }
  return readdirSync(path)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(path, name));
}
