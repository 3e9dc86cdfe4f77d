/** `class`: records replayed and put on one sheet, as a table or as CSV. */
import { readdirSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { type CallFile, COURSE, prepareCall, problemLine, shippedCalls } from '../calls/index.ts';
import { type ClassSheet, classCsv, classSheet, type Marked, marked, type Refused } from '../records/index.ts';
import type { Message } from '../service/index.ts';
import { english } from './english.ts';
import { findCall, readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export async function classOf(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      call: { type: 'string', multiple: true, default: [] },
      csv: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
  });
  const files = positionals.flatMap(filesIn);
  if (files.length === 0) throw new UsageError('class needs RECORDs, or folders of them');
  const calls = new Map([...shippedCalls(), ...values.call.map(callIn)].map((call) => [call.id, prepareCall(call)]));
  const all = files.map((file): Marked => {
    const who = basename(file).replace(/\.json$/, '');
    const text = readText(file);
    if (!text.ok) return { state: 'refused', who, otherEngine: false, problems: text.problems };
    return marked({ who, text: text.value }, (id) => calls.get(id));
  });
  const sheet = classSheet(
    all,
    COURSE.map(({ call }) => call),
  );
  const speak = await english();
  if (values.json) printJson({ ...sheet, rows: sheet.rows.map((row) => ({ ...row, cells: [...row.cells] })) });
  else if (values.csv) process.stdout.write(classCsv(sheet, (one) => wordsOf(one, speak)));
  else printSheet(sheet, speak);
  return sheet.refused.length > 0 ? BAD : GOOD;
}

function filesIn(path: string): readonly string[] {
  try {
    if (!statSync(path).isDirectory()) return [path];
  } catch {
    throw new UsageError(`${path} cannot be read; check the path`);
  }
  return readdirSync(path)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(path, name));
}

function callIn(file: string): CallFile {
  const call = findCall(file);
  if (call.ok) return call.value;
  throw new UsageError(call.problems.map((problem) => problemLine(file, problem)).join('\n'));
}

function printSheet({ calls, rows, counted, refused, flags }: ClassSheet, speak: (message: Message) => string): void {
  for (const { who, cells, passed } of rows) {
    print(`${who}: ${passed} of ${cells.size} passed`);
    for (const call of calls) {
      const cell = cells.get(call);
      if (!cell) continue;
      const { best, tries } = cell;
      const more = [tries > 1 ? `best of ${tries}` : '', best.helped ? 'with help' : '', ...best.flags];
      print(
        `  ${call}: ${best.passed ? 'passed' : 'not passed'}, ${best.score}, ${best.minutes} min${more.map((one) => (one ? `, ${one}` : '')).join('')}`,
      );
    }
  }
  if (flags.length > 0) print(`missed most, of ${counted} records:`);
  for (const { id, records } of flags) print(`  ${records}  ${id}`);
  if (refused.length > 0) print('does not count:');
  for (const one of refused) print(`  ${one.who}: ${wordsOf(one, speak)}`);
}

function wordsOf({ who, why, problems }: Refused, speak: (message: Message) => string): string {
  return why ? speak(why) : problems.map((problem) => problemLine(who, problem)).join(' | ');
}
