/** `replay`: does a record come out at its claims? */
import { parseArgs } from 'node:util';
import { allShipped, loadRecord, prepareCall, problemLine, replay as replayRecord } from '../calls/index.ts';
import { english } from './english.ts';
import { findCall, readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export async function replay(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { call: { type: 'string' }, json: { type: 'boolean', default: false } },
  });
  if (positionals.length === 0)
    throw new UsageError('replay needs a RECORD; make one with: play CALL --as expert --record FILE');
  let bad = false;
  for (const file of positionals) {
    const result = await one(file, values.call);
    bad ||= !result.ok;
    if (values.json) printJson(result);
    else print(result.ok ? `${file}: replays, ${result.score} of 100` : `${file}: ${result.firstDifference}`);
  }
  return bad ? BAD : GOOD;
}

async function one(file: string, callName: string | undefined) {
  const refused = (firstDifference: string) => ({ file, ok: false, score: 0, claimed: 0, firstDifference });
  const text = readText(file);
  const record = text.ok ? loadRecord(text.value) : text;
  if (!record.ok) return refused(record.problems.map((p) => problemLine(file, p)).join(' | '));
  const name = callName ?? record.value.call;
  if (callName === undefined && !allShipped().some((c) => c.id === name)) {
    return refused(`call "${name}" does not ship; name its file with --call FILE`);
  }
  const call = findCall(name);
  if (!call.ok) return refused(call.problems.map((p) => problemLine(name, p)).join(' | '));
  const { ok, score, claimed, firstDifference } = replayRecord(prepareCall(call.value), record.value);
  const say = await english();
  return { file, ok, score, claimed, ...(firstDifference ? { firstDifference: say(firstDifference) } : {}) };
}
