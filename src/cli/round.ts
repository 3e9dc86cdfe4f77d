/** `round`: a scripted person takes every door of a year; or a recorded year is lived again. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  type Judgement,
  judgedVisit,
  type Lot,
  type LotState,
  liveYearAs,
  loadYear,
  lotsOf,
  problemLine,
  ROUND_PLAYERS,
  replayYear,
  rowOf,
  rowWords,
  shippedRound,
  totalOf,
  type Visit,
  yearRecord,
} from '../calls/index.ts';
import { type Message, say } from '../service/index.ts';
import { calendarDay } from '../unit/index.ts';
import { number } from './args.ts';
import { english } from './english.ts';
import { readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export async function round(args: readonly string[]): Promise<number> {
  const { values } = parseArgs({
    args: [...args],
    options: {
      as: { type: 'string', default: 'expert' },
      lot: { type: 'string' },
      seed: { type: 'string', default: '0' },
      record: { type: 'string' },
      replay: { type: 'string' },
      judge: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
  });
  if (values.replay !== undefined) return replayed(values.replay, values.json);
  const as = ROUND_PLAYERS.find((p) => p === values.as);
  if (!as) throw new UsageError(`--as ${values.as}: write one of ${ROUND_PLAYERS.join(', ')}`);
  const seed = number('seed', values.seed, 0);
  const lots = chosen(lotsOf(shippedRound(), seed), values.lot);
  const lived = lots.map((lot) => [lot, liveYearAs(lot, as)] as const);
  if (values.record !== undefined) {
    writeFileSync(values.record, `${JSON.stringify(yearRecord(shippedRound(), lived, seed))}\n`);
  }
  const rows = lived.map(([lot, state]) => rowOf(lot, state));
  const doors = doorsOf(lived, values.judge);
  if (values.json)
    printJson({ round: shippedRound().id, as, seed, doors: doors.map(doorValue), rows, all: totalOf(rows) });
  else {
    const speak = await english();
    for (const door of doors) print(doorLine(door, speak));
    for (const row of rows) print(speak(say('round.sheet.lot', { lot: row.lot, row: rowWords(row) })));
    print(speak(say('round.sheet.all', { row: rowWords(totalOf(rows)) })));
  }
  return GOOD;
}

function chosen(lots: readonly Lot[], named: string | undefined): readonly Lot[] {
  if (named === undefined) return lots;
  const wanted = named.split(',');
  const missing = wanted.find((n) => lots.every((lot) => lot.file.lot !== n));
  if (missing !== undefined) {
    throw new UsageError(`no lot "${missing}"; write some of ${lots.map((l) => l.file.lot).join(',')}`);
  }
  return lots.filter((lot) => wanted.includes(lot.file.lot));
}

async function replayed(file: string, json: boolean): Promise<number> {
  const text = readText(file);
  const loaded = text.ok ? loadYear(text.value) : text;
  if (!loaded.ok) {
    for (const problem of loaded.problems) process.stderr.write(`${problemLine(file, problem)}\n`);
    return BAD;
  }
  const { seed, visits } = loaded.value;
  const lots = lotsOf(shippedRound(), seed).filter((lot) => visits.some((v) => v.lot === lot.file.lot));
  const difference = replayYear(lots, loaded.value);
  const words = difference && (await english())(difference);
  if (json) printJson({ file, ok: words === undefined, ...(words === undefined ? {} : { firstDifference: words }) });
  else print(words === undefined ? `${file}: replays` : `${file}: ${words}`);
  return words === undefined ? GOOD : BAD;
}

interface OpenedDoor {
  readonly lot: Lot;
  readonly visit: Visit;
  readonly judgement?: Judgement;
}

/** All doors in the order of their dates; judged where that is asked for, since each then wants the expert's visit too. */
function doorsOf(lived: readonly (readonly [Lot, LotState])[], judge: boolean): readonly OpenedDoor[] {
  return lived
    .flatMap(([lot, state]) =>
      state.visits.map((visit, i) => ({ lot, visit, ...(judge ? { judgement: judgedVisit(lot, state, i) } : {}) })),
    )
    .sort((a, b) => a.visit.ring.at_s - b.visit.ring.at_s);
}

function doorValue({ lot, visit, judgement }: OpenedDoor) {
  const { actions: _, state: _state, ...entry } = visit.entry;
  const { score, passed, flags } = judgement ?? {};
  const judged = judgement ? { score, passed, flags: flags?.map((f) => f.id) } : {};
  return { lot: lot.file.lot, date: dateOf(lot, visit), ...visit.ring, ...entry, ...judged };
}

function doorLine({ lot, visit, judgement }: OpenedDoor, speak: (message: Message) => string): string {
  const { ring, entry } = visit;
  const why = ring.symptoms.join(' ') || ring.kind;
  const stood = [...new Set(entry.stood.map((s) => s.key))].join(' ') || '-';
  const done = [...entry.mended, ...entry.cleaned].join(' ') || '-';
  const minutes = speak(say('word.quantity', { q: { measure: 'duration_min', value: entry.minutes, resolution: 1 } }));
  const cells = [dateOf(lot, visit), lot.file.lot.padStart(3), why.padEnd(26), stood.padEnd(34), done, minutes];
  const score = judgement ? `  ${judgement.score} of 100` : '';
  return `${cells.join('  ')}${score}${entry.lost ? '  (another firm)' : ''}`;
}

function dateOf(lot: Lot, { ring }: Visit): string {
  const { year, month, day } = calendarDay(lot.firstDay + Math.floor(ring.at_s / 86_400));
  const two = (n: number) => String(n).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)} ${two(Math.floor((ring.at_s % 86_400) / 3600))}:00`;
}
