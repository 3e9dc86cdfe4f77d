/** `docs/symptoms.md`: the agreement table, and its sum. */
import { writeFileSync } from 'node:fs';
import { HEADINGS, type Outcome, outcomes } from '../symptoms.ts';
import { fault } from './english.ts';
import type { Cause, Line, Put } from './kind.ts';
import { SOURCES } from './sources.ts';

export const PAGE = 'docs/symptoms.md';

export interface Sum {
  readonly rows: number;
  readonly rowsAgree: number;
  /** Rows of which every line agrees. */
  readonly rowsWhole: number;
  readonly lines: number;
  readonly linesAgree: number;
}

export function sumOf(all: readonly Outcome[]): Sum {
  const rows = all.filter((o) => o.counts);
  const agreeing = (some: readonly Outcome[]) => some.filter((o) => o.agrees).length;
  const whole = rows.filter(({ row }) => all.every((o) => o.row !== row || o.agrees));
  return {
    rows: rows.length,
    rowsAgree: agreeing(rows),
    rowsWhole: whole.length,
    lines: all.length,
    linesAgree: agreeing(all),
  };
}

function percent(part: number, whole: number): string {
  return `${((100 * part) / whole).toFixed(1)} %`;
}

export function sumWords({ rows, rowsAgree, rowsWhole, lines, linesAgree }: Sum): string {
  const ofRows = `${rowsAgree} of ${rows} rows agree (${percent(rowsAgree, rows)}), ${rowsWhole} of them in every line`;
  return `${ofRows}; of all lines, ${linesAgree} of ${lines} do (${percent(linesAgree, lines)}).`;
}

/** What was put into which property. */
function putInto({ unit, household, temperature_C, years, also = [], put }: Line): string {
  const setting = [
    ...(household ? [household] : []),
    ...(temperature_C ? [`${temperature_C} degC`] : []),
    ...(years ? [`sludge of ${years} years`] : []),
    ...also.map(faultWords),
  ];
  const property = setting.length > 0 ? `${unit.toUpperCase()} (${setting.join(', ')})` : unit.toUpperCase();
  return `${property}: ${causeWords(put)}`;
}

function faultWords({ fault: key, called, severity }: Put): string {
  return called ?? (severity === undefined ? fault(key) : `${fault(key)} (${severity})`);
}

function causeWords({ faults = [], rain, hauled, years, load }: Cause): string {
  const all = [
    ...faults.map(faultWords),
    ...(rain ? [`${rain.depth_mm} mm of rain in ${rain.hours} h`] : []),
    ...(hauled ? ['aeration chamber pumped out and filled up'] : []),
    ...(years ? [`sludge of ${years} years`] : []),
    ...(load ? [`${load} times the load`] : []),
  ];
  return all.length > 0 ? all.join(' + ') : 'the sound property';
}

function noteOf({ from, note, miss }: Line): string {
  const told = from === undefined ? [] : [`Told from: ${from.map(causeWords).join('; ')}.`];
  return [...told, ...(note ? [note] : []), ...(miss ? [miss] : [])].join(' ');
}

function lineOf({ row, line, symptom, test, said }: Outcome): string {
  const cause = line.of === undefined ? row.cause : `${row.cause} (here: ${line.of})`;
  const yes = (holds: boolean, words: string) => `${holds ? 'yes' : '**no**'}: ${words}`;
  const cells = [row.no, cause, row.test, row.tag, putInto(line), yes(symptom, said.symptom), yes(test, said.test)];
  return `| ${[...cells, noteOf(line)].join(' | ')} |`;
}

const COLUMNS = '| Row | Cause | Named test | Source | Put in | Symptom as printed | Test as printed | Note |';

export function pageOf(all: readonly Outcome[]): string {
  const tables = HEADINGS.flatMap(({ name, rows }) => [
    `## ${name}`,
    '',
    COLUMNS,
    '|--:|---|---|---|---|---|---|---|',
    ...all.filter((o) => rows.includes(o.row)).map(lineOf),
    '',
  ]);
  return [
    '# Symptoms, causes and tests: how far the simulation bears out what is printed',
    '',
    'Made by `npm run symptoms`; `tests/published/symptoms.test.ts` makes it anew and holds it. Each row is one of a table of',
    'symptoms, causes and tests put together from public troubleshooting texts, by its number there and in our own words. Its',
    'cause is put into a unit of ours that lived sound for three days; some time later the symptom is looked for and the named',
    'test is made. Nothing is typed in but what is printed. "Yes" or "no" stands before what was looked for: the symptom must be',
    'there, and not on the sound property; the test must read so, and not on the sound property (or what else the note says it',
    'is told from).',
    '',
    'The first line of a row is the cause that its test is printed for, and counts. Other causes that the row names have lines',
    'of their own. Where a row is meant for another kind of unit than one of ours, its note says what was made of ours.',
    '',
    `**${sumWords(sumOf(all))}**`,
    '',
    ...tables,
    '## Sources',
    '',
    'Firms and products are left out. Numbers are those of our reading list.',
    '',
    ...Object.entries(SOURCES).map(([tag, words]) => `- ${tag}: ${words}`),
    '',
  ].join('\n');
}

export function writePage(): void {
  writeFileSync(PAGE, pageOf(outcomes()));
}
