/** A cmi5 package launched in a real browser, by a platform at another address that refuses whatever breaks a rule. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { prepareCall } from '../../../src/calls/index.ts';
import { activityOf } from '../../../src/records/package/course.ts';
import { doStep, withPointer } from '../../../src/tools/people.ts';
import { inBrowser } from '../page.ts';
import { shipped, stepsIn, unpacked } from './packages.ts';
import { RecordStore } from './record-store.ts';
import { serve } from './serve.ts';
import { stand } from './stand.ts';

const call = shipped('storm-light');
const { uuid, entry } = activityOf(prepareCall(call));
/** A machine may be busy. */
const WAIT = { timeout: 20_000 };
/** Steps done in the first of two sessions. */
const HALF = 3;

inBrowser('a cmi5 package', () => {
  const { machine, served } = stand();

  /** A fresh machine, launched by the platform. */
  async function launched(address: string) {
    // A document that is not there yet is no error, but the browser notes it.
    const one = await machine((text) => text.includes('404'));
    await one.page.goto(address);
    await one.page.waitForSelector('.part-chip');
    return one;
  }

  async function steps(page: Page, from: number, to?: number) {
    for (const { do: id, fill = {} } of call.solution.slice(from, to)) await doStep(page, withPointer(page), id, fill);
  }

  it('tells its platform of a call in two sessions, passed in the second, and nothing more in a third', async () => {
    const files = unpacked([call], 'cmi5');
    const own = await serve(({ url }) => {
      if (url.pathname === '/course') return { status: 200, body: 'Course', type: 'text/html' };
      const body = files[url.pathname.slice(1)];
      return body && { status: 200, body };
    });
    const lms = new RecordStore({ languagePreference: 'es-MX,en', audioPreference: 'off' }, `${own.url}/course`);
    const theirs = await serve((asked) => lms.answer(asked));
    served.push(own, theirs);
    const address = () => `${own.url}/${entry}?${lms.launch(theirs.url, `urn:uuid:${uuid}`, call.pass / 100)}`;
    const order = () => lms.launches.at(-1)?.order ?? [];

    const first = await launched(address());
    expect(order()).toEqual(['token', 'LMS.LaunchData', 'preferences', 'underlawn', 'initialized']);
    expect(await first.page.locator('html').getAttribute('lang')).toBe('es');
    await steps(first.page, 0, HALF);
    await expect.poll(async () => stepsIn(JSON.parse(lms.kept('underlawn') ?? '{}').left), WAIT).toBe(HALF);
    await first.page.goto('about:blank');
    await expect.poll(() => order().at(-1), WAIT).toBe('terminated');
    expect(first.errors).toEqual([]);
    await first.close();

    const second = await launched(address());
    expect(await second.page.locator('.notebook tbody tr').count()).toBeGreaterThanOrEqual(HALF);
    await steps(second.page, HALF);
    const note = second.page.locator('dialog .course-note');
    await note.getByText(/Registrado en su curso: \d+ de 100, superado\./).waitFor();
    await expect.poll(() => order().at(-1), WAIT).toBe('answered');
    await note.getByRole('button').click();
    await second.page.waitForURL(`${own.url}/course`);
    await expect.poll(() => order().at(-1), WAIT).toBe('terminated');
    const told = lms.launches.at(-1)?.told.map(({ verb }) => verb.id.replace(/^.*\//, '')) ?? [];
    expect(told.filter((verb) => verb !== 'answered')).toEqual(['initialized', 'completed', 'passed', 'terminated']);
    expect(told.filter((verb) => verb === 'answered').length).toBe(8);
    expect(second.errors).toEqual([]);
    await second.close();

    const third = await launched(address());
    await third.page
      .locator('.course-note')
      .getByText(/ya tiene el resultado/)
      .waitFor();
    await third.page.goto('about:blank');
    await expect.poll(() => order().slice(-2), WAIT).toEqual(['initialized', 'terminated']);
    expect(lms.refused).toEqual([]);
    await third.close();
  });
});
