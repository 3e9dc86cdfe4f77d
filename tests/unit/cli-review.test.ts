/** `review`: a record is looked back on as it was made, or refused. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { makeRecord, play, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { UsageError } from '../../src/cli/output.ts';
import { review } from '../../src/cli/review.ts';

const folder = mkdtempSync(join(tmpdir(), 'review-'));
afterEach(() => void vi.restoreAllMocks());
afterAll(() => rmSync(folder, { recursive: true }));

/** A record of a call on another day than the one it ships with. */
function recordOf(id: string): { readonly path: string; readonly minutes: number } {
  const call = shippedCalls().find((one) => one.id === id);
  if (call === undefined) throw new Error(`no call ${id}`);
  const record = makeRecord(play(prepareCall({ ...call, seed: 7 }), 'reset-only'));
  const path = join(folder, `${id}.json`);
  writeFileSync(path, JSON.stringify(record));
  return { path, minutes: record.claims.minutes };
}

describe('a record', () => {
  it('is looked back on with the seed it was made with', async () => {
    const { path, minutes } = recordOf('wash-day-light');
    const out: string[] = [];
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => out.push(String(text)) > 0);
    expect(await review(['wash-day-light', '--record', path])).toBe(0);
    expect(minutes).toBeGreaterThan(0);
    expect(out.join('')).toContain(`${minutes} min`);
  });

  it('of another call is refused, and says why', async () => {
    const { path } = recordOf('sunny-line');
    await expect(review(['wash-day-light', '--record', path])).rejects.toThrow(UsageError);
    await expect(review(['wash-day-light', '--record', path])).rejects.toThrow(/sunny-line is not the one/);
  });
});
