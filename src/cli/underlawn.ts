#!/usr/bin/env node
/** The command line: the same engine without a page. Exit 0 good, 1 the thing checked is bad, 2 called wrongly. */
import { angoff } from './angoff.ts';
import { answers } from './answers.ts';
import { classOf } from './class.ts';
import { course } from './course.ts';
import { faults } from './faults.ts';
import { items } from './items.ts';
import { print, UsageError, WRONG_USE } from './output.ts';
import { pack } from './pack.ts';
import { play } from './play.ts';
import { prove } from './prove.ts';
import { replay } from './replay.ts';
import { review } from './review.ts';
import { round } from './round.ts';
import { run } from './run.ts';
import { series } from './series.ts';
import { packSet, share } from './share.ts';
import { solve } from './solve.ts';
import { statistics } from './statistics.ts';

const VERBS: Readonly<Record<string, (args: readonly string[]) => number | Promise<number>>> = {
  run,
  play,
  replay,
  prove,
  series,
  faults,
  solve,
  course,
  review,
  round,
  share,
  'pack-set': packSet,
  class: classOf,
  answers,
  statistics,
  angoff,
  pack,
  items,
};

const HELP = `underlawn VERB ...   (every verb takes --json)

  run CALL|UNIT [--household H] [--climate C] [--days N] [--every MIN] [--seed N] [--csv]
      live through days and print levels, air, what is in the water, lamp, pump; last line the balances
  play CALL --as expert|checklist|parts-swapper|reset-only|random|solution [--seed N] [--record FILE]
      a scripted person takes the call
  replay RECORD ... [--call FILE]
      does a record come out at its claims?
  prove CALL ...
      is a call file whole and correct?
  review CALL --as PLAYER | --record FILE
      a call looked back on step by step, as text
  course FOLDER [--out FILE]
      proves every call of a folder and lists them by difficulty
  solve FILE ...
      the expert takes the call; what it did is written into the file as the solution
  round [--as expert|parts-swapper|reset-only] [--lot N,...] [--seed N] [--judge] [--record FILE | --replay FILE]
      a scripted person takes every door of a year on twelve lots, each judged where asked; or a recorded year is lived again
  class RECORD|FOLDER ... [--call FILE ...] [--regret] [--csv]
      records of a class, each replayed, on one sheet; whose each is, is the name of its file. --regret adds what the steps of
      each cost over the best from the same facts: slow, seconds to a minute a record
  answers RECORD ... [--call FILE]
      what each record answered and did, as rows for a spreadsheet
  statistics ANSWERS|FOLDER ... [--csv]
      what a class answered in mock exams, question by question: difficulty, how well each tells people apart, reliability
  angoff --seed N [--exam FILE] [--unit U] [--language en|es] [--units us|si] [--csv] | SHEET.csv ... [--csv]
      a sheet for judges of a form of the exam, --csv to fill in; or the cut that filled sheets ask for
  pack CALL ... --as scorm12|scorm2004|cmi5 -o FILE.zip [--mode graded|practice] [--language en|es]
      calls as a package for a course platform, with the page that shows them
  items --as qti22|qti3 -o FILE.zip [--seed N] [--count N] [--skill S ...] [--language en|es] [--units us|si]
      drills as questions for a course platform
  share CALL|SET
      the end of an address that opens it on the page, and its length
  pack-set CALL ... --title TEXT --title-es TEXT --out FILE
      several calls as one file
  faults [--unit U,...] [--household H,...]
      what each fault shows to whom, by simulation
  series UNIT --load design|wash-day|working-parent|power-failure|vacation|full-26-weeks [--fault F]
      on the test stand: daily samples, and whether they make it class I

The page prints two sheets of a call: #/sheet/CALL/trainee, and #/sheet/CALL/trainer, which gives the cause away.`;

try {
  const [verb, ...args] = process.argv.slice(2);
  if (verb === undefined || verb === '--help' || verb === 'help') print(HELP);
  else {
    const act = VERBS[verb];
    if (!act) throw new UsageError(`no verb "${verb}"; write one of ${Object.keys(VERBS).join(', ')}`);
    process.exitCode = await act(args);
  }
} catch (error) {
  const reason = usage(error);
  if (reason === undefined) throw error;
  process.stderr.write(`underlawn: ${reason}\n`);
  process.exitCode = WRONG_USE;
}

/** A wrong call's reason: ours, or the argument parser's first sentence. */
function usage(error: unknown): string | undefined {
  if (error instanceof UsageError) return error.message;
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  if (!(error instanceof Error) || !code?.startsWith('ERR_PARSE_ARGS')) return undefined;
  return `${error.message.split('. ')[0] ?? ''}; see underlawn help`;
}
