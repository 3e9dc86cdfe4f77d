import type { BrowserContext, Page } from 'playwright-core';
import { draw } from '../../src/plant/index.ts';
import { openApp } from './page.ts';

/** Asked by phone as often as one likes, each with a line in the notebook. */
const ASKED = ['ask-danger', 'ask-lamp', 'ask-breakers', 'ask-hum', 'ask-smell', 'ask-use'];
const CALL = '#/call/storm-light';
/** Longest wait before the page is killed, after the last press: by then the line stands, as a rule. */
const LONGEST_ms = 30;

/** Tells each line of the notebook as soon as it stands there. Runs in the page. */
function tellLines(): void {
  let told = 0;
  const told_ = window as unknown as { stood(lines: readonly string[]): void };
  new MutationObserver(() => {
    const rows = [...document.querySelectorAll('.notebook tbody tr')];
    if (rows.length === told) return;
    told = rows.length;
    told_.stood(rows.map((row) => row.textContent ?? '').reverse());
  }).observe(document, { childList: true, subtree: true });
}

export interface Killed {
  /** Lines that stood there and did not come back. */
  readonly lost: readonly string[];
  readonly lines: number;
}

/**
 * Takes a call and kills its page in the middle of it, so many times: at a random moment after an action was pressed, or
 * the moment its line stands in the notebook. Each time the call must come back with every line that stood there.
 */
export async function killInCall(times: number, seed: number): Promise<Killed> {
  const app = await openApp({ width: 800, height: 600 });
  const context = app.page.context();
  let stood: readonly string[] = [];
  let onLine = () => {};
  await context.exposeBinding('stood', (_source, lines: readonly string[]) => {
    stood = lines;
    onLine();
  });
  await context.addInitScript(tellLines);
  await app.page.close();
  const lost: string[] = [];
  for (let i = 0; i < times; i++) {
    const before = stood;
    const page = await context.newPage();
    await page.goto(app.url + CALL);
    await page.waitForSelector(before.length > 0 ? '.notebook tbody tr' : '[data-action="ask-danger"]', {
      state: 'attached',
    });
    const back = await linesOf(page);
    for (const [n, line] of before.entries()) if (back[n] !== line) lost.push(`kill ${i}, line ${n}: ${line}`);
    const kill = await killer(context, page);
    const presses = 1 + Math.floor(draw(seed, 'presses', i) * 3);
    for (let p = 0; p < presses; p++) {
      const line = new Promise<void>((resolve) => {
        onLine = resolve;
      });
      await press(page, ASKED[Math.floor(draw(seed, 'asked', i * 3 + p) * ASKED.length)] ?? 'ask-danger');
      if (p < presses - 1 || draw(seed, 'how', i) < 0.5) await line;
      else await new Promise((over) => setTimeout(over, draw(seed, 'wait', i) * LONGEST_ms));
    }
    await kill();
  }
  await app.close();
  return { lost, lines: stood.length };
}

function linesOf(page: Page): Promise<string[]> {
  return page.locator('.notebook tbody tr').evaluateAll((rows) => rows.map((row) => row.textContent ?? '').reverse());
}

async function press(page: Page, id: string): Promise<void> {
  const button = page.locator(
    `[data-action="${id}"][aria-disabled="false"], [data-action="${id}"]:not([aria-disabled])`,
  );
  await button.evaluate((one) => (one as HTMLElement).click());
}

/** Gets ready to end the process that the page runs in, with whatever it is doing. */
async function killer(context: BrowserContext, page: Page): Promise<() => Promise<void>> {
  const devtools = await context.newCDPSession(page);
  return async () => {
    const crashed = page.waitForEvent('crash');
    devtools.send('Page.crash').catch(() => {});
    await crashed;
    await page.close();
  };
}
