/** Loads a round: schema first, then what only the catalogue, the calendar and the library can tell. */
import { FAULTS, faultOn, type PlacedFault } from '../../faults/index.ts';
import type { WeatherSpec } from '../../plant/index.ts';
import { parseInstant, type UnitSpec } from '../../unit/index.ts';
import type { Checked, Library } from '../check.ts';
import { type Problem, problemsOf } from '../problems.ts';
import { type LotFile, type RoundFile, roundSchema } from './schema.ts';

export function checkRound(
  value: unknown,
  library: Library,
  climates: ReadonlyMap<string, WeatherSpec>,
): Checked<RoundFile> {
  const result = roundSchema.safeParse(value, { reportInput: true });
  if (!result.success) return { ok: false, problems: problemsOf(result.error) };
  const round = result.data;
  const start = parseInstant(round.start);
  if (!start) return { ok: false, problems: [noSuchInstant('start')] };
  const midnight: readonly Problem[] =
    start.secondOfDay === 0
      ? []
      : [{ path: 'start', message: 'not at midnight', mend: 'end it with T00:00: a year begins with a day' }];
  const lots = round.lots.flatMap((lot, i) => checkLot(lot, `lots[${i}]`, round, start.day, library, climates));
  const problems = [...midnight, ...checkNumbers(round), ...lots];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: round };
}

function checkNumbers({ lots }: RoundFile): readonly Problem[] {
  return lots.flatMap(({ lot }, i) =>
    lots.findIndex((other) => other.lot === lot) < i
      ? [{ path: `lots[${i}].lot`, message: `a second lot ${lot}`, mend: 'give each lot its own number' }]
      : [],
  );
}

function checkLot(
  lot: LotFile,
  path: string,
  round: RoundFile,
  firstDay: number,
  library: Library,
  climates: ReadonlyMap<string, WeatherSpec>,
): readonly Problem[] {
  const unit = library.units.get(lot.unit);
  const inYear = (where: string, text: string): readonly Problem[] => {
    const at = parseInstant(text);
    if (!at) return [noSuchInstant(where)];
    const day = at.day - firstDay;
    return day >= 0 && day < round.days && day * 86_400 + at.secondOfDay > 0
      ? []
      : [{ path: where, message: 'outside of the year', mend: `move it within ${round.days} days of ${round.start}` }];
  };
  return [
    ...(unit ? [] : [unknown(`${path}.unit`, lot.unit, library.units)]),
    ...(library.households.has(lot.household) ? [] : [unknown(`${path}.household`, lot.household, library.households)]),
    ...(climates.has(lot.climate) ? [] : [unknown(`${path}.climate`, lot.climate, climates)]),
    ...lot.visits.flatMap((visit, i) => inYear(`${path}.visits[${i}]`, visit)),
    ...lot.happens.flatMap((h, i) => [
      ...inYear(`${path}.happens[${i}].onset`, h.onset),
      ...checkFault(`${path}.happens[${i}]`, h.fault, h.part, unit),
    ]),
    ...lot.wears.flatMap((w, i) => checkWear(`${path}.wears[${i}]`, w, unit)),
  ];
}

/** Only what is a matter of degree can wear: an event, or what has gathered, comes once. */
function checkWear(path: string, wear: LotFile['wears'][number], unit: UnitSpec | undefined): readonly Problem[] {
  const problems = checkFault(path, wear.fault, wear.part, unit);
  const placed = problems.length === 0 && unit ? faultOn(unit, wear.fault, wear.part) : undefined;
  if (!placed || isGradual(placed)) return problems;
  return [
    { path: `${path}.fault`, message: `"${wear.fault}" does not grow`, mend: 'write it under happens, with its onset' },
  ];
}

function isGradual({ effect }: PlacedFault): boolean {
  const { control, gathers, uses, away_d, clock_h } = effect;
  return [control, gathers, uses, away_d, clock_h].every((once) => once === undefined);
}

function checkFault(
  path: string,
  id: string,
  part: string | undefined,
  unit: UnitSpec | undefined,
): readonly Problem[] {
  if (!FAULTS.some((f) => f.id === id)) {
    return [{ path: `${path}.fault`, message: `no such id "${id}"`, mend: 'write the id of a fault of the catalogue' }];
  }
  if (!unit || faultOn(unit, id, part)) return [];
  return [
    {
      path: `${path}.fault`,
      message: `"${id}"${part === undefined ? '' : ` on "${part}"`} cannot be on ${unit.id}`,
      mend: 'name a part it sits on, or choose another fault or unit',
    },
  ];
}

function unknown(path: string, id: string, known: ReadonlyMap<string, unknown>): Problem {
  return { path, message: `no such id "${id}"`, mend: `write one of ${[...known.keys()].join(', ')}` };
}

function noSuchInstant(path: string): Problem {
  return { path, message: 'no such day or hour', mend: 'write a real local instant like 2031-05-14T16:42' };
}
