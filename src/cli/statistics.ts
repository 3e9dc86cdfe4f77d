/** `statistics`: answers that were collected, question by question: how hard it is, how well it tells people apart. */
import { parseArgs } from 'node:util';
import { problemLine, shippedLibrary } from '../calls/index.ts';
import { type AnswersFile, loadAnswers } from '../quiz/answers.ts';
import {
  type FormStatistics,
  formStatistics,
  type ItemStatistics,
  LEAST_ANSWERS,
  type Whole,
} from '../quiz/item-statistics.ts';
import { statisticsCsv } from '../records/statistics-csv.ts';
import { filesIn, readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export function statistics(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { csv: { type: 'boolean', default: false }, json: { type: 'boolean', default: false } },
  });
  const files = positionals.flatMap(filesIn);
  if (files.length === 0) throw new UsageError('statistics needs ANSWERS, or folders of them');
  const { units } = shippedLibrary();
  const all: AnswersFile[] = [];
  for (const file of files) {
    const text = readText(file);
    const answers = text.ok ? loadAnswers(text.value, (id) => units.get(id)) : text;
    if (answers.ok) all.push(answers.value);
    else for (const problem of answers.problems) process.stderr.write(`${problemLine(file, problem)}\n`);
  }
  const forms = formStatistics(all);
  if (values.json) printJson(forms);
  else if (values.csv) process.stdout.write(statisticsCsv(forms));
  else printForms(forms);
  return all.length < files.length ? BAD : GOOD;
}

function printForms(forms: readonly FormStatistics[]): void {
  for (const { exam, form, unit, units, n, items, found } of forms) {
    print(`exam ${exam}, form ${form}, unit ${unit}, units ${units}: N = ${n}, ${items.length} questions`);
    if (found) {
      printWhole(found.whole, items.length);
      for (const item of found.items) printItem(item, n);
    } else print(`  nothing is told of a question from fewer than ${LEAST_ANSWERS} answers`);
  }
  print(
    'p: share right. r: with the right answers to all other questions. Unanswered is wrong. A file is one sitting.',
  );
  print('This tells of these questions and these people. It does not make the exam fit to license anybody.');
}

function printWhole({ mean, sd, kr20, kr21, sem }: Whole, size: number): void {
  const lines = [
    `mean ${mean.toFixed(2)} of ${size}`,
    `sd ${sd.toFixed(2)}`,
    `KR-20 ${shown(kr20)}`,
    `KR-21 ${shown(kr21)}`,
    `SEM ${shown(sem)}`,
  ];
  print(`  ${lines.join(', ')}`);
}

function printItem({ place, skill, seed, omitted, p, r, chosen, flags }: ItemStatistics, n: number): void {
  const left = omitted > 0 ? `, ${omitted} left out` : '';
  const marks = flags.length > 0 ? `  look again: ${flags.join(', ')}` : '';
  print(`  ${place}. ${skill} ${seed}: N = ${n}${left}, p ${p.toFixed(2)}, r ${shown(r)}${marks}`);
  print(`     ${chosen.map(({ answer, right, times }) => `${answer}${right ? '*' : ''} ${times}`).join(', ')}`);
}

function shown(value: number | undefined): string {
  return value === undefined ? 'none' : value.toFixed(2);
}
