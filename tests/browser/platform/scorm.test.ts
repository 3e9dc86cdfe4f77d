/**
 * A package of either SCORM version opened by a platform in a real browser: `scorm-again` holds the API in the window above,
 * the package lies in a frame below it.
 */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { doStep, withPointer } from '../../../src/tools/people.ts';
import { wrongIn12 } from '../../unit/records/strict12.ts';
import { inBrowser, runAxe } from '../page.ts';
import { shipped, stepsIn, type Unpacked, unpacked } from './packages.ts';
import { type Answer, serve } from './serve.ts';
import { stand } from './stand.ts';

/** A call of the platform's API, as the host noted it. */
type Called = readonly [name: string, args: readonly string[], result: string];

const V12 = {
  as: 'scorm12',
  class: 'Scorm12API',
  object: 'API',
  set: 'LMSSetValue',
  commit: 'LMSCommit',
  get: 'LMSGetValue',
  end: 'LMSFinish',
  kept: { 'cmi.core.lesson_status': 'incomplete', 'cmi.core.entry': 'resume' },
  /** The host's data when all is over. */
  ended: (points: string) => ({
    suspend_data: '',
    core: {
      lesson_status: 'passed',
      lesson_location: 'storm-light',
      score: { raw: points, min: '0', max: '100' },
      session_time: expect.stringMatching(/^0000:\d\d:\d\d\.\d\d$|^\d\d:\d\d:\d\d/),
      exit: '',
    },
    interactions: { 0: { id: 'storm-light.decision', type: 'choice', student_response: 'close', result: 'correct' } },
  }),
} as const;

const V2004 = {
  as: 'scorm2004',
  class: 'Scorm2004API',
  object: 'API_1484_11',
  set: 'SetValue',
  commit: 'Commit',
  get: 'GetValue',
  end: 'Terminate',
  kept: { 'cmi.completion_status': 'incomplete', 'cmi.entry': 'resume' },
  ended: (points: string) => ({
    suspend_data: '',
    location: 'storm-light',
    completion_status: 'completed',
    success_status: 'passed',
    score: { scaled: String(Number(points) / 100), raw: points, min: '0', max: '100' },
    session_time: expect.stringMatching(/^PT/),
    exit: 'normal',
    interactions: { 0: { id: 'storm-light.decision', type: 'choice', learner_response: 'close', result: 'correct' } },
  }),
} as const;

type Version = typeof V12 | typeof V2004;

const call = shipped('storm-light');
/** Steps done before the learner goes on at another machine. */
const HALF = 3;

/** The window above: the host's API, every call of it noted, and the package in a frame. */
function hostPage({ as, class: name, object }: Version, kept: Readonly<Record<string, string>>): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Host</title><script src="/host/${as}.js"></script><script>
    const api = new ${name}({ autocommit: false, logLevel: 5 });
    const kept = ${JSON.stringify(kept)};
    if (Object.keys(kept).length > 0) api.loadFromFlattenedJSON(kept, '');
    const calls = [];
    window.${object} = new Proxy(api, { get: (of, name) => typeof of[name] !== 'function' ? of[name] : (...args) => {
      const result = of[name](...args);
      calls.push([name, args, String(result)]);
      return result;
    } });
    window.seen = () => ({ calls, cmi: JSON.parse(JSON.stringify(api.cmi)) });
  </script><iframe name="package" title="Package" src="/package/call-storm-light.html" width="1240" height="760"></iframe>`;
}

inBrowser('a SCORM package', () => {
  const { machine, served } = stand();

  /** A platform that serves one package; `kept` is what it has of the learner's attempt. */
  async function platform(version: Version, files: Unpacked, kept: () => Readonly<Record<string, string>>) {
    const host = readFileSync(`node_modules/scorm-again/dist/${version.as}.min.js`, 'utf8');
    const one = await serve(({ url: { pathname } }): Answer | undefined => {
      if (pathname === '/') return { status: 200, body: hostPage(version, kept()), type: 'text/html' };
      if (pathname.startsWith('/host/')) return { status: 200, body: host };
      const body = files[pathname.replace('/package/', '')];
      return body && { status: 200, body };
    });
    served.push(one);
    return one.url;
  }

  interface Seen {
    readonly calls: readonly Called[];
    readonly cmi: object;
  }
  const seen = (page: Page) => page.evaluate(() => (window as unknown as { seen: () => Seen }).seen());

  async function frameOf(page: Page) {
    const frame = page.frame('package');
    if (frame === null) throw new Error('no frame');
    await frame.waitForSelector('.part-chip');
    return frame;
  }

  it.each([V12, V2004])(
    'of $as opens at its call, is kept step by step, goes on elsewhere, and is recorded as passed',
    async (version) => {
      let kept: Record<string, string> = {};
      const url = await platform(version, unpacked([call], version.as), () => kept);
      const settings = (calls: readonly Called[]) =>
        calls.flatMap(([name, [element = '', value = '']]) =>
          name === version.set ? [[element, value] as const] : [],
        );

      const first = await machine();
      await first.page.goto(url);
      const there = await frameOf(first.page);
      for (const { do: id, fill = {} } of call.solution.slice(0, HALF))
        await doStep(there, withPointer(there), id, fill);
      const leftIn = (calls: readonly Called[]) =>
        settings(calls).findLast(([element]) => element === 'cmi.suspend_data')?.[1];
      await expect.poll(async () => stepsIn(leftIn((await seen(first.page)).calls)), { timeout: 20_000 }).toBe(HALF);
      const { calls: before } = await seen(first.page);
      const [half, left = ''] = [settings(before), leftIn(before)];
      expect(before.at(-1)?.[0]).toBe(version.commit);
      expect(first.errors).toEqual([]);
      await first.close();

      kept = { ...version.kept, 'cmi.suspend_data': left };
      const { page, errors, close } = await machine();
      await page.goto(url);
      const frame = await frameOf(page);
      expect(await frame.locator('.notebook tbody tr').count()).toBeGreaterThanOrEqual(HALF);
      for (const { do: id, fill = {} } of call.solution.slice(HALF)) await doStep(frame, withPointer(frame), id, fill);
      const note = frame.locator('dialog .course-note');
      await note.getByText(/Recorded with your course: \d+ of 100, passed\./).waitFor();
      const points = /\d+/.exec((await note.textContent()) ?? '')?.[0] ?? '';
      // The page goes: the platform is told before it is gone.
      await page.evaluate(() => document.querySelector('iframe')?.remove());
      const { calls, cmi } = await seen(page);
      expect(cmi).toMatchObject(version.ended(points));
      expect(calls.filter(([name]) => name === version.end).length).toBe(1);
      expect(calls.at(-1)?.[0]).toBe(version.end);
      expect(calls.filter(([name, , result]) => name !== version.get && result !== 'true')).toEqual([]);
      if (version === V12) {
        const set = [...half, ...settings(calls)];
        expect(set.flatMap(([element, value]) => wrongIn12(element, value) ?? [])).toEqual([]);
      }
      expect(errors).toEqual([]);
      await close();
    },
  );

  it('says so where no platform is there, and the call can be taken all the same: also one that does not ship', async () => {
    const own = { ...call, id: 'own-call' };
    const url = await platform(V12, unpacked([own], 'scorm12'), () => ({}));
    const { page, errors, close } = await machine();
    await page.goto(`${url}/package/call-own-call.html`);
    await page.waitForSelector('.part-chip');
    expect(await page.locator('.course-note').textContent()).toContain('does not answer');
    expect(await runAxe(page)).toEqual([]);
    await doStep(page, withPointer(page), 'ask-danger', {});
    expect(errors).toEqual([]);
    await close();
  });
});
