/** `angoff`: a sheet for the judges of a form, or what the filled ones ask for. */
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import mock from '../../scenarios/exams/mock.json';
import { type Checked, problemLine, shippedLibrary } from '../calls/index.ts';
import { type Cuts, cuts } from '../quiz/angoff.ts';
import { formOf } from '../quiz/exam.ts';
import type { ExamFile } from '../quiz/exam-schema.ts';
import { drill } from '../quiz/index.ts';
import { checkExam, loadExam } from '../quiz/load-exam.ts';
import { angoffSheet, inWords, type Rated, readSheet } from '../records/angoff-sheet.ts';
import { csvOf, thousandths } from '../records/csv.ts';
import { questionOf } from '../records/qti/question.ts';
import { speak } from '../words/speak.ts';
import { loadWords } from '../words/words.ts';
import { oneOf, whole } from './args.ts';
import { readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

const NOTE = 'The cut is this panel’s judgement of these questions. It does not make the exam fit to license anybody.';

export async function angoff(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      seed: { type: 'string' },
      exam: { type: 'string' },
      unit: { type: 'string', default: 'u1' },
      language: { type: 'string', default: 'en' },
      units: { type: 'string', default: 'us' },
      csv: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
  });
  if (positionals.length > 0) return readSheets(positionals, values);
  if (values.seed === undefined) throw new UsageError('angoff needs --seed N for a sheet, or filled SHEETs to read');
  const exam = examIn(values.exam);
  const { units } = shippedLibrary();
  const spec = units.get(values.unit);
  if (!spec) throw new UsageError(`--unit ${values.unit}: write one of ${[...units.keys()].join(', ')}`);
  const language = oneOf('language', values.language, ['en', 'es']);
  const system = oneOf('units', values.units, ['us', 'si']);
  const say = speak(await loadWords(language, 'drills'), system, true);
  const form = formOf(exam, whole('seed', values.seed, 0));
  const questions = form.map(({ skill, seed }) => questionOf(drill(skill, seed, spec, system), language, say));
  if (values.csv) process.stdout.write(angoffSheet(form, questions));
  else if (values.json) printJson(questions);
  else {
    questions.forEach((question, i) => {
      const { answers, right } = inWords(question);
      print(`${i + 1}. ${question.prompt}\n   ${question.shown.join('; ')}\n   ${answers}\n   right: ${right}`);
      print('   chance of somebody who is just good enough, 0 to 1: ____');
    });
    print(NOTE);
  }
  return GOOD;
}

function examIn(file: string | undefined): ExamFile {
  const text = file === undefined ? undefined : readText(file);
  const exam = text === undefined ? checkExam(mock) : text.ok ? loadExam(text.value) : text;
  if (exam.ok) return exam.value;
  throw new UsageError(exam.problems.map((one) => problemLine(file ?? 'mock.json', one)).join('\n'));
}

interface How {
  readonly csv: boolean;
  readonly json: boolean;
}

function readSheets(files: readonly string[], { csv, json }: How): number {
  const read = files.map((file): Checked<Rated> => {
    const text = readText(file);
    return text.ok ? readSheet(text.value) : text;
  });
  const rated = read.flatMap((one) => (one.ok ? one.value : []));
  read.forEach((one, i) => {
    for (const problem of one.ok ? [] : one.problems) refuse(problemLine(files[i] ?? '', problem));
  });
  const [first] = rated;
  if (first === undefined || rated.length < files.length) return BAD;
  const other = rated.findIndex(({ items }) => items.join() !== first.items.join());
  if (other > 0) {
    refuse(`${files[other]}: not the questions of ${files[0]}; judges of one panel need sheets of one form`);
    return BAD;
  }
  const panel = cuts(rated.map(({ chances }) => chances));
  const judges = files.map((file) => basename(file).replace(/\.csv$/i, ''));
  if (json) printJson({ ...panel, named: judges, items: first.items });
  else if (csv) process.stdout.write(cutsCsv(judges, panel, first.items.length));
  else printCuts(judges, panel, first.items.length);
  return GOOD;
}

function refuse(line: string): void {
  process.stderr.write(`${line}\n`);
}

function printCuts(judges: readonly string[], { judges: each, panel, share, sd, se }: Cuts, size: number): void {
  judges.forEach((judge, i) => {
    print(`${judge}: ${each[i]?.toFixed(2)} of ${size}`);
  });
  print(`panel: ${panel.toFixed(2)} of ${size}, ${(100 * share).toFixed(1)} %`);
  if (sd !== undefined && se !== undefined) print(`sd of the judges ${sd.toFixed(2)}, SE of the cut ${se.toFixed(2)}`);
  else print('one judge alone: nothing tells how sure the cut is');
  print(NOTE);
}

function cutsCsv(judges: readonly string[], { judges: each, panel, sd, se }: Cuts, size: number): string {
  const named = judges.map((judge, i) => [judge, thousandths(each[i]), size]);
  return csvOf([
    ['judge', 'cut', 'of'],
    ...named,
    ['panel', thousandths(panel), size],
    ['sd', thousandths(sd), size],
    ['se', thousandths(se), size],
  ]);
}
