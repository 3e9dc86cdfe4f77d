import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { angoff } from '../../src/cli/angoff.ts';
import { classOf } from '../../src/cli/class.ts';
import { UsageError } from '../../src/cli/output.ts';
import { statistics } from '../../src/cli/statistics.ts';
import { sat } from './quiz/sat.ts';

const folder = mkdtempSync(join(tmpdir(), 'quiz-'));
const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

/** What a verb writes to its two ways out, and how it ends. */
async function said(verb: (args: readonly string[]) => number | Promise<number>, ...args: readonly string[]) {
  const out: string[] = [];
  const problems: string[] = [];
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => out.push(String(text)) > 0);
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => problems.push(String(text)) > 0);
  const code = await verb(args);
  return { code, out: out.join(''), problems: problems.join('') };
}

afterEach(() => void vi.restoreAllMocks());
afterAll(() => rmSync(folder, { recursive: true }));

describe('statistics', () => {
  const all = Array.from({ length: 30 }, (_, n) => file(`p${n}.json`, JSON.stringify(sat(5, (place) => place < n))));

  it('reads a folder, tells of each question with N beside it, and claims nothing of a licence', async () => {
    const { code, out } = await said(statistics, folder);
    expect(code).toBe(0);
    expect(out).toContain('exam mock, form 5, unit u1, units us: N = 30, 30 questions');
    expect(out).toMatch(/KR-20 0\.9\d, KR-21 0\.9\d, SEM \d\.\d\d/);
    expect(out.match(/: N = 30, p /g)).toHaveLength(30);
    expect(out).toContain('does not make the exam fit to license anybody');
    const csv = await said(statistics, folder, '--csv');
    expect(csv.out.trim().split('\r\n')).toHaveLength(31);
  });

  it('tells nothing of a question from too few, and says what is wrong with a file by path and mend', async () => {
    const broken = file('broken.txt', JSON.stringify({ ...sat(5, () => true), unit: 'u7' }));
    const { code, out, problems } = await said(statistics, all[0] ?? '', broken);
    expect(code).toBe(1);
    expect(out).toContain('fewer than 30 answers');
    expect(out).not.toContain(', p ');
    expect(problems).toBe(`${broken} at unit: no such unit; write the id of a unit that ships\n`);
  });

  it('is where the class sheet sends answers', async () => {
    const { code, out } = await said(classOf, all[0] ?? '');
    expect(code).toBe(1);
    expect(out).toContain('answers of a mock exam; have `statistics` read them');
  });
});

describe('angoff', () => {
  it('writes a sheet, and makes a cut of the filled ones with its error', async () => {
    const { out } = await said(angoff, '--seed', '5', '--csv', '--language', 'es');
    const filled = (chance: string) => out.replaceAll(/,(?=\r\n)/g, `,${chance}`);
    const judges = [file('ann.csv', filled('0.6')), file('ben.csv', filled('0.7'))];
    const cut = await said(angoff, ...judges);
    expect(cut.code).toBe(0);
    expect(cut.out).toContain('ann: 18.00 of 30\nben: 21.00 of 30\npanel: 19.50 of 30, 65.0 %\n');
    // By hand: the two differ by 3, so sd is 3 by the root of 2, and SE half of 3.
    expect(cut.out).toContain('sd of the judges 2.12, SE of the cut 1.50');
    expect((await said(angoff, ...judges, '--csv')).out).toContain('panel,19.5,30\r\n');
  });

  it('takes no sheets of different forms together, nor one that is not filled', async () => {
    const sheets = [await said(angoff, '--seed', '5', '--csv'), await said(angoff, '--seed', '6', '--csv')];
    const files = sheets.map(({ out }, i) => file(`j${i}.csv`, out.replaceAll(/,(?=\r\n)/g, ',0.5')));
    const mixed = await said(angoff, ...files);
    expect([mixed.code, mixed.out]).toEqual([1, '']);
    expect(mixed.problems).toContain('judges of one panel need sheets of one form');
    const blank = await said(angoff, file('blank.csv', sheets[0]?.out ?? ''));
    expect(blank.problems).toContain('line 2, chance: no chance is written; write a number from 0 to 1');
    await expect(said(angoff)).rejects.toThrow(UsageError);
    await expect(said(angoff, '--seed', '5', '--unit', 'u7')).rejects.toThrow(/write one of u1, u2, u3/);
  });
});
