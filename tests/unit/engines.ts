/** JavaScript engines of other families, and how a script is run in each: what it tells comes back as text. */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';

export interface Told {
  readonly engine: string;
  readonly digests: readonly string[];
}

const PATIENCE_ms = 900_000;

/** A Debian program's path; as root on Debian it is installed when it is not there. Undefined where it cannot be had. */
export function program(path: string, debian: string): string | undefined {
  if (existsSync(path)) return path;
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return undefined;
  console.info(`${path} is not there; installing ${debian}.`);
  for (const verb of [['update'], ['install', '-y', '--no-install-recommends', debian]]) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    if (spawnSync('apt-get', ['-qq', ...verb], { stdio: 'ignore', env }).status !== 0) return undefined;
  }
  return existsSync(path) ? path : undefined;
}

/** Serves a page that runs a script, has it opened, and waits for what it posts. */
async function posted(script: string, open: (url: string) => Promise<() => Promise<void> | void>): Promise<Told> {
  let tell: (told: Told) => void;
  const told = new Promise<Told>((resolve) => {
    tell = resolve;
  });
  const server = createServer((request, response) => {
    if (request.method === 'POST') {
      const parts: Buffer[] = [];
      request.on('data', (part: Buffer) => parts.push(part));
      request.on('end', () => {
        response.end();
        tell({
          engine: request.headers['user-agent'] ?? '',
          digests: JSON.parse(Buffer.concat(parts).toString()) as string[],
        });
      });
    } else if (request.url === '/run.js') {
      response.setHeader('content-type', 'text/javascript; charset=utf-8');
      const tells = "globalThis.TELL = (d) => fetch('/told', { method: 'POST', body: JSON.stringify(d) });";
      response.end(`${tells}\n${script}`);
    } else {
      response.setHeader('content-type', 'text/html; charset=utf-8');
      response.end('<!doctype html><title>digest</title><script src="/run.js"></script>');
    }
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const close = await open(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  const late = new Promise<never>((_, reject) => {
    setTimeout(() => reject(new Error('the page told nothing')), PATIENCE_ms).unref();
  });
  try {
    return await Promise.race([told, late]);
  } finally {
    await close();
    server.closeAllConnections();
    server.close();
  }
}

export function inChromium(script: string): Promise<Told> | undefined {
  const executablePath = findBrowser();
  if (executablePath === undefined) return undefined;
  return posted(script, async (url) => {
    const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
    await (await browser.newPage()).goto(url, { waitUntil: 'commit' });
    return () => browser.close();
  });
}

export function inFirefox(script: string): Promise<Told> | undefined {
  const firefox = program('/usr/bin/firefox-esr', 'firefox-esr');
  if (firefox === undefined) return undefined;
  return posted(script, async (url) => {
    const profile = mkdtempSync(join(tmpdir(), 'underlawn-firefox-'));
    writeFileSync(join(profile, 'user.js'), QUIET.map((pref) => `user_pref(${pref});\n`).join(''));
    const args = ['--headless', '--no-remote', '--profile', profile, url];
    const browser = spawn(firefox, args, { stdio: 'ignore', env: { ...process.env, HOME: profile } });
    const gone = new Promise<void>((resolve) => {
      browser.once('exit', () => resolve());
    });
    return async () => {
      browser.kill();
      await gone;
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    };
  });
}

/** Nothing but the page: no update, no first-run tab, no question whether the script is slow. */
const QUIET = [
  '"dom.max_script_run_time", 0',
  '"app.update.enabled", false',
  '"browser.shell.checkDefaultBrowser", false',
  '"browser.aboutwelcome.enabled", false',
  '"datareporting.policy.dataSubmissionEnabled", false',
  '"datareporting.healthreport.uploadEnabled", false',
  '"toolkit.telemetry.enabled", false',
  '"network.captive-portal-service.enabled", false',
  '"network.connectivity-service.enabled", false',
  '"extensions.update.enabled", false',
];

export function inJavaScriptCore(script: string): Told | undefined {
  const jsc = program('/usr/bin/jsc', 'libjavascriptcoregtk-4.0-bin');
  if (jsc === undefined) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'underlawn-jsc-'));
  const file = join(folder, 'run.js');
  // The shell has no console, and XState takes hold of one when it makes a machine's scope.
  const shell = 'globalThis.console = { log() {}, warn() {}, error() {} };';
  writeFileSync(file, `${shell}\nglobalThis.TELL = (d) => print(JSON.stringify(d));\n${script}`);
  const { stdout, stderr, status } = spawnSync(jsc, [file], { encoding: 'utf8', timeout: PATIENCE_ms });
  rmSync(folder, { recursive: true });
  if (status !== 0) throw new Error(`jsc: ${stdout}${stderr}`);
  return { engine: 'JavaScriptCore shell', digests: JSON.parse(stdout) as string[] };
}
