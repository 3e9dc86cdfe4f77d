/** Files as one zip, the same bytes for the same files on any machine: sorted names, one date. */
import { type Zippable, zipSync } from 'fflate';

/** The first day that a zip can name; made in local time, for that is what it is written in. */
const DATE = new Date(1980, 0, 1);
/** Made under Unix, whoever makes it: the field decides how others read the attributes. */
const UNIX = 3;
const LEVEL = 9;

export function zipOf(files: ReadonlyMap<string, Uint8Array | string>): Uint8Array {
  const names = [...files.keys()].sort();
  const sorted: Zippable = Object.fromEntries(
    names.map((name) => [name, [bytesOf(files.get(name) ?? ''), { mtime: DATE, os: UNIX, level: LEVEL }] as const]),
  );
  return zipSync(sorted);
}

function bytesOf(content: Uint8Array | string): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
