/** `review`: a call looked back on as text: verdict, flags, and every weighed step with what it told and what it cost. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  type CallFile,
  type CallSession,
  judged,
  loadRecord,
  PLAYERS,
  play,
  prepareCall,
  problemLine,
  replay,
  reviewAll,
  stepReviewView,
  togetherView,
} from '../calls/index.ts';
import { type Message, quantity, say } from '../service/index.ts';
import { english } from './english.ts';
import { findCall } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export async function review(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { as: { type: 'string' }, record: { type: 'string' }, json: { type: 'boolean', default: false } },
  });
  const [name] = positionals;
  if (!name) throw new UsageError('review needs a CALL; try: review sunny-line --as parts-swapper');
  const call = findCall(name);
  if (!call.ok) {
    for (const problem of call.problems) process.stderr.write(`${problemLine(name, problem)}\n`);
    return BAD;
  }
  const speak = await english();
  const session = taken(call.value, values.as, values.record, speak);
  if (values.json) printAsJson(session);
  else printReview(session, values.as ?? 'record', speak);
  return GOOD;
}

/** The call as it is looked back on: by a scripted person, or from a record. */
function taken(
  call: CallFile,
  as: string | undefined,
  record: string | undefined,
  speak: (message: Message) => string,
): CallSession {
  if (record !== undefined) {
    const loaded = loadRecord(readFileSync(record, 'utf8'));
    if (!loaded.ok) throw new UsageError(`${record} is no record; ${loaded.problems[0]?.mend ?? ''}`);
    // `play --seed` makes records of another day of the same call.
    const { session, ok, firstDifference } = replay(prepareCall({ ...call, seed: loaded.value.seed }), loaded.value);
    if (!ok)
      throw new UsageError(
        `${record} does not replay on ${call.id}${firstDifference ? `: ${speak(firstDifference)}` : ''}`,
      );
    return session;
  }
  const player = PLAYERS.find((p) => p === as);
  if (!player) throw new UsageError(`--as ${as ?? ''}: write one of ${PLAYERS.join(', ')}, or give --record FILE`);
  return play(prepareCall(call), player);
}

/** A line for each step, and one for what the readings make together. */
function printAsJson(session: CallSession): void {
  const sifting = reviewAll(session, (step) => printJson(stepReviewView(session, step)));
  printJson(togetherView(session, sifting));
}

function printReview(session: CallSession, who: string, speak: (message: Message) => string): void {
  const { call } = session.prepared;
  const verdict = judged(session);
  print(`## ${call.title.en} (${call.id}), taken by: ${who}`);
  print('');
  print(
    `${verdict.passed ? 'Passed' : 'Not passed'}, ${verdict.score} of 100; ${verdict.spent.minutes} min, ${verdict.spent.money_usd} USD.`,
  );
  print('');
  for (const line of verdict.lines) print(`- ${line.points} of ${line.of}: ${speak(line.reason)}`);
  for (const flag of verdict.flags) print(`- Flag: ${speak(say(`flag.${flag.id}`))}`);
  let regret = 0;
  const sifting = reviewAll(session, (step) => {
    const view = stepReviewView(session, step);
    regret += view.regret_min ?? 0;
    if (!view.weighed) return;
    print('');
    print(`**${speak(view.label)}.** ${view.seen.map((m) => sentence(speak(m))).join(' ')}`);
    print(`${view.lesson.map(speak).join(' ')}`);
    if (view.regret_min !== undefined) {
      print(
        `(${speak(say('word.quantity', { q: quantity('duration_min', view.regret_min, 0.1) }))} over the best from the same facts.)`,
      );
    }
  });
  const { of, readings, end } = togetherView(session, sifting);
  print('');
  print(`**Put together.** Of ${of} single faults, those that show every one of these readings:`);
  print('');
  for (const { seen, left } of readings) print(`- ${speak(seen)}: ${left} left`);
  print('');
  print(speak(end));
  print('');
  print(`In all ${Math.round(regret)} min over the best choices from the same facts.`);
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
