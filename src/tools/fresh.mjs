import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Newest change under a file or folder, ms. A folder counts itself, so that a deleted file is noticed too. */
function newest(path) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return 0;
  let latest = stat.mtimeMs;
  if (stat.isDirectory()) for (const entry of readdirSync(path)) latest = Math.max(latest, newest(join(path, entry)));
  return latest;
}

export function isFresh(output, inputs) {
  const built = statSync(output, { throwIfNoEntry: false })?.mtimeMs;
  return built !== undefined && inputs.every((input) => newest(input) <= built);
}
