/** A page as `npm run build` leaves one, in a folder of its own, as small as a package of it can be. */
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The folder; the page lies in its `page`. */
export function builtPage(): string {
  const folder = mkdtempSync(join(tmpdir(), 'underlawn-pack-'));
  mkdirSync(join(folder, 'page/assets'), { recursive: true });
  mkdirSync(join(folder, 'page/.vite'));
  writeFileSync(join(folder, 'page/.vite/manifest.json'), '{}');
  writeFileSync(join(folder, 'page/assets/b.js'), 'b');
  writeFileSync(join(folder, 'page/assets/a.css'), 'a');
  mkdirSync(join(folder, 'page/icons'));
  for (const name of ['sw.js', 'underlawn.webmanifest', 'icons/icon-192.png'])
    writeFileSync(join(folder, 'page', name), '');
  writeFileSync(join(folder, 'page/index.html'), readFileSync('src/index.html', 'utf8'));
  return folder;
}
