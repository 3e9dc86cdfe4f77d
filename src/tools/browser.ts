/** Where a Chromium is on this machine, and how to get one. Nothing is ever downloaded by a test itself. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const APT_PACKAGES = ['chromium-headless-shell', 'fonts-dejavu-core'];

/** Flags that keep a headless Chromium quiet and its pixels alike on every machine of one kind. */
export const LAUNCH_ARGS = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
  '--disable-gpu-rasterization',
  '--font-render-hinting=none',
  '--disable-lcd-text',
];

/** Places to look, best first: Debian's headless shell runs the tests in half the time of the full browser. */
function candidates(env: NodeJS.ProcessEnv): string[] {
  const windows = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].flatMap((folder) =>
    folder
      ? [
          join(folder, 'Google/Chrome/Application/chrome.exe'),
          join(folder, 'Chromium/Application/chrome.exe'),
          join(folder, 'Microsoft/Edge/Application/msedge.exe'),
        ]
      : [],
  );
  const mac = ['Google Chrome', 'Chromium', 'Microsoft Edge'].map(
    (app) => `/Applications/${app}.app/Contents/MacOS/${app}`,
  );
  const linux = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  return [...linux.map((name) => `/usr/bin/${name}`), '/snap/bin/chromium', ...mac, ...windows];
}

/** Path of a browser: CHROME_PATH if it names one, else the first found. NO_BROWSER=1 means: as if there were none. */
export function findBrowser(env: NodeJS.ProcessEnv = process.env): string | undefined {
  if (env.NO_BROWSER) return undefined;
  if (env.CHROME_PATH) return existsSync(env.CHROME_PATH) ? env.CHROME_PATH : undefined;
  return candidates(env).find((path) => existsSync(path));
}

/** What a person should do to get one, in one line. */
export function howToGetBrowser(env: NodeJS.ProcessEnv = process.env): string {
  if (env.CHROME_PATH) return `CHROME_PATH names no file: ${env.CHROME_PATH}`;
  if (isDebian())
    return `No browser found. Run: sudo apt-get install --no-install-recommends ${APT_PACKAGES.join(' ')}`;
  return 'No browser found. Install Chrome, Chromium or Edge, or set CHROME_PATH to one.';
}

function isDebian(): boolean {
  return process.platform === 'linux' && existsSync('/etc/debian_version');
}

/** As root on Debian, installs the headless shell. Says what it does; false where it cannot or it failed. */
export function installBrowser(): boolean {
  if (!isDebian() || process.getuid?.() !== 0) return false;
  console.log(`No browser found; installing ${APT_PACKAGES.join(' and ')}.`);
  const patience = ['-qq', '-o', 'Acquire::Retries=2', '-o', 'Acquire::http::Timeout=30'];
  return [['update'], ['install', '-y', '--no-install-recommends', ...APT_PACKAGES]].every((verb) => {
    const { status } = spawnSync('apt-get', [...patience, ...verb], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    return status === 0;
  });
}
