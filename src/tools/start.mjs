/**
 * `npm start`: the page, with reload, opened in a browser. Vite fails noisily where there is nothing to open it with,
 * as on a server; there its address is printed alone. Flags go to Vite: `npm start -- --port 8080`.
 */
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const { env, platform } = process;

function canOpen() {
  if (platform !== 'linux' || env.BROWSER || env.WSL_DISTRO_NAME) return true;
  const opener = (env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, 'xdg-open')));
  return opener && Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}

if (canOpen()) process.argv.splice(2, 0, '--open');
let vite;
try {
  vite = import.meta.resolve('vite/package.json');
} catch {
  console.error('The packages are not installed. Run: npm ci');
  process.exit(2);
}
await import(new URL('bin/vite.js', vite).href);
