/** `play`: a scripted person takes a call; its record can be kept. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  type CallSession,
  type Judgement,
  judged,
  makeRecord,
  PLAYERS,
  type PlayerId,
  prepareCall,
  problemLine,
  play as takeAs,
} from '../calls/index.ts';
import { number } from './args.ts';
import { english } from './english.ts';
import { findCall } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export async function play(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      as: { type: 'string' },
      seed: { type: 'string' },
      record: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  const [name] = positionals;
  if (!name) throw new UsageError('play needs a CALL; try: play sunny-line --as expert');
  const as = PLAYERS.find((p) => p === values.as);
  if (!as) throw new UsageError(`--as ${values.as ?? ''}: write one of ${PLAYERS.join(', ')}`);
  const call = findCall(name);
  if (!call.ok) {
    for (const problem of call.problems) process.stderr.write(`${problemLine(name, problem)}\n`);
    return BAD;
  }
  const seed = values.seed === undefined ? call.value.seed : number('seed', values.seed, 0);
  const session = takeAs(prepareCall({ ...call.value, seed }), as);
  const verdict = judged(session);
  if (values.record) writeFileSync(values.record, `${JSON.stringify(makeRecord(session), null, 2)}\n`);
  const result = resultOf(call.value.id, as, session, verdict);
  if (values.json) printJson(result);
  else {
    const say = await english();
    print(`${result.call} as ${as}: ${result.passed ? 'passed' : 'not passed'}, ${result.score} of 100`);
    for (const line of verdict.lines)
      print(`  ${line.id.padEnd(10)} ${line.points} of ${line.of}  ${say(line.reason)}`);
    for (const flag of verdict.flags) print(`  flag       ${say({ id: `flag.${flag.id}` })}`);
    print(`  ${result.minutes} min, ${result.cost} USD`);
  }
  return verdict.passed ? GOOD : BAD;
}

function resultOf(call: string, as: PlayerId, session: CallSession, verdict: Judgement) {
  return {
    call,
    as,
    seed: session.prepared.call.seed,
    passed: verdict.passed,
    score: verdict.score,
    parts: Object.fromEntries(verdict.lines.map((l) => [l.id, l.points])),
    flags: verdict.flags.map((f) => f.id),
    minutes: verdict.spent.minutes,
    cost: verdict.spent.money_usd,
  };
}
