/**
 * For browser tests. One server and one browser serve a test file; each test opens its own fresh page, with its own
 * empty storage:
 *
 *     inBrowser('the call list', () => {
 *       it('…', async () => {
 *         const { page, errors, close } = await openApp({ width: 1280, height: 800 });
 */
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, describe } from 'vitest';
import { findBrowser, howToGetBrowser } from '../../src/tools/browser.ts';
import { type AppOptions, type OpenApp, openStage, type Stage } from '../../src/tools/stage.ts';

const found = findBrowser() !== undefined;
if (!found && process.env.REQUIRE_BROWSER) throw new Error(howToGetBrowser());

/** `describe`, skipped where there is no browser. */
export const inBrowser = describe.skipIf(!found);

let stage: Promise<Stage> | undefined;

afterAll(async () => {
  await (await stage)?.close();
  stage = undefined;
});

/** A new page on the built app, with what went wrong in it so far. */
export async function openApp(options: AppOptions): Promise<OpenApp> {
  stage ??= openStage();
  return (await stage).openApp(options);
}

/** Accessibility faults that axe finds on the page as it stands, by all its rules or some: one line each, empty when all is well. */
export async function runAxe(page: Page, rules?: readonly string[]): Promise<string[]> {
  await page.evaluate(readFileSync('node_modules/axe-core/axe.min.js', 'utf8'));
  const results = await page.evaluate(
    (rules) =>
      (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run(
        rules ? { runOnly: { type: 'rule', values: rules } } : {},
      ),
    rules,
  );
  return results.violations.flatMap(({ id, impact, help, nodes }) =>
    nodes.map((node) => `${impact ?? 'minor'} ${id}: ${help} (${node.target.join(' ')})`),
  );
}
