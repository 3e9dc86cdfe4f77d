import { expect, it } from 'vitest';
import { killInCall } from './killed.ts';
import { inBrowser } from './page.ts';

const TIMES = 50;

inBrowser('a page killed in the middle of a call', () => {
  it('loses nothing that stood in the notebook, fifty times over', async () => {
    const { lost, lines } = await killInCall(TIMES, 7);
    expect(lost).toEqual([]);
    expect(lines).toBeGreaterThan(TIMES);
  }, 300_000);
});
