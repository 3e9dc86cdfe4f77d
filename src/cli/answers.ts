/** `answers`: what each record answered and did, as rows for a spreadsheet. */
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { allShipped, loadRecord, prepareCall, problemLine, replay } from '../calls/index.ts';
import type { Learnt } from '../records/learnt/learnt.ts';
import { learntCsv } from '../records/learnt/learnt-csv.ts';
import { learntOfCall } from '../records/learnt/of-call.ts';
import { english } from './english.ts';
import { findCall, readText } from './files.ts';
import { BAD, GOOD, printJson, UsageError } from './output.ts';

/** A record does not tell when it was made: its clock is the call's own. */
const NO_WALL = { started_ms: 0, ended_ms: 0 };

export async function answers(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { call: { type: 'string' }, json: { type: 'boolean', default: false } },
  });
  if (positionals.length === 0) throw new UsageError('answers needs RECORDs');
  const all: (readonly [string, Learnt])[] = [];
  const say = await english();
  const refuse = (file: string, why: string) => process.stderr.write(`${file}: ${why}\n`);
  for (const file of positionals) {
    const text = readText(file);
    const record = text.ok ? loadRecord(text.value) : text;
    if (!record.ok) {
      for (const problem of record.problems) process.stderr.write(`${problemLine(file, problem)}\n`);
      continue;
    }
    const name = values.call ?? record.value.call;
    if (values.call === undefined && allShipped().every(({ id }) => id !== name)) {
      refuse(file, `call "${name}" does not ship; name its file with --call FILE`);
      continue;
    }
    const call = findCall(name);
    if (!call.ok) throw new UsageError(call.problems.map((problem) => problemLine(name, problem)).join('\n'));
    const { session, firstDifference } = replay(prepareCall(call.value), record.value);
    if (firstDifference) refuse(file, say(firstDifference));
    else all.push([basename(file).replace(/\.json$/, ''), learntOfCall(session, NO_WALL)]);
  }
  if (values.json) printJson(all.map(([who, learnt]) => ({ who, ...learnt })));
  else process.stdout.write(learntCsv(all));
  return all.length < positionals.length ? BAD : GOOD;
}
