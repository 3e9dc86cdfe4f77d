/** `class`: records replayed and put on one sheet, as a table or as CSV. */
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { allShipped, type CallFile, COURSE, type Problem, prepareCall, problemLine } from '../calls/index.ts';
import { isAnswers } from '../quiz/answers.ts';
import {
  type Cell,
  type ClassSheet,
  classCsv,
  classSheet,
  type Marked,
  marked,
  type Refused,
} from '../records/index.ts';
import type { Message } from '../service/index.ts';
import { type Counted, type Regrets, regretsOf } from './class-regret.ts';
import { english } from './english.ts';
import { filesIn, findCall, readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

/** Why the answers of a mock exam are not on the sheet. */
const ANSWERS: Problem = { path: 'kind', message: 'answers of a mock exam', mend: 'have `statistics` read them' };

/** Steps with most regret that the text names. */
const MOST_DEAR = 10;

export async function classOf(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      call: { type: 'string', multiple: true, default: [] },
      regret: { type: 'boolean', default: false },
      csv: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
  });
  const files = positionals.flatMap(filesIn);
  if (files.length === 0) throw new UsageError('class needs RECORDs, or folders of them');
  const calls = new Map([...allShipped(), ...values.call.map(callIn)].map((call) => [call.id, prepareCall(call)]));
  const counted: Counted[] = [];
  const all = files.map((file): Marked => {
    const who = basename(file).replace(/\.json$/, '');
    const text = readText(file);
    const refused = (problems: readonly Problem[]): Marked => ({ state: 'refused', who, otherEngine: false, problems });
    if (!text.ok) return refused(text.problems);
    if (isAnswers(text.value)) return refused([ANSWERS]);
    const one = marked({ who, text: text.value }, (id) => calls.get(id));
    if (one.state === 'counts') counted.push({ marked: one, text: text.value });
    return one;
  });
  const sheet = classSheet(
    all,
    COURSE.map(({ call }) => call),
  );
  const speak = await english();
  const regrets = values.regret ? regretsOf(counted, calls, (done) => tellOf(done, counted.length)) : undefined;
  if (values.json) printJson(asJson(sheet, regrets));
  else if (values.csv)
    process.stdout.write(classCsv(sheet, { why: (one) => wordsOf(one, speak), regret: regrets?.of }));
  else printSheet(sheet, speak, regrets);
  return sheet.refused.length > 0 ? BAD : GOOD;
}

/** To somebody who watches: it takes long. */
function tellOf(done: number, of: number): void {
  if (process.stderr.isTTY) process.stderr.write(`\rregret of ${done} of ${of}${done === of ? '\n' : ''}`);
}

function asJson(sheet: ClassSheet, regrets: Regrets | undefined): object {
  const cellOf = (cell: Cell) => (regrets ? { ...cell, regret_min: regrets.of(cell.best) } : cell);
  const rows = sheet.rows.map((row) => ({
    ...row,
    cells: [...row.cells].map(([call, cell]) => [call, cellOf(cell)]),
  }));
  return { ...sheet, rows, ...(regrets ? { regret: regrets.dearest } : {}) };
}

function callIn(file: string): CallFile {
  const call = findCall(file);
  if (call.ok) return call.value;
  throw new UsageError(call.problems.map((problem) => problemLine(file, problem)).join('\n'));
}

function printSheet(sheet: ClassSheet, speak: (message: Message) => string, regrets: Regrets | undefined): void {
  const { calls, rows, counted, refused, flags } = sheet;
  for (const { who, cells, passed } of rows) {
    print(`${who}: ${passed} of ${cells.size} passed`);
    for (const call of calls) {
      const cell = cells.get(call);
      if (!cell) continue;
      const { best, tries } = cell;
      const words = [
        best.passed ? 'passed' : 'not passed',
        best.score,
        `${best.minutes} min`,
        ...(regrets ? [`regret ${Math.round(regrets.of(best))} min`] : []),
        ...(tries > 1 ? [`best of ${tries}`] : []),
        ...(best.helped ? ['with help'] : []),
        ...(best.taught ? ['with a trainer’s hand'] : []),
        ...best.flags,
      ];
      print(`  ${call}: ${words.join(', ')}`);
    }
  }
  if (flags.length > 0) print(`missed most, of ${counted} records:`);
  for (const { id, records } of flags) print(`  ${records}  ${id}`);
  const dear = regrets?.dearest.slice(0, MOST_DEAR) ?? [];
  if (dear.length > 0) print('most regret, all records together:');
  for (const { label, minutes } of dear) print(`  ${Math.round(minutes)} min  ${speak(label)}`);
  if (refused.length > 0) print('does not count:');
  for (const one of refused) print(`  ${one.who}: ${wordsOf(one, speak)}`);
}

function wordsOf({ who, why, problems }: Refused, speak: (message: Message) => string): string {
  return why ? speak(why) : problems.map((problem) => problemLine(who, problem)).join(' | ');
}
