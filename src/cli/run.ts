/** `run`: lives through days of a unit or a call and prints what its instruments would show. */
import { parseArgs } from 'node:util';
import { shippedClimates } from '../calls/climates.ts';
import { prepareCall, shippedLibrary, unitSetup } from '../calls/index.ts';
import { balance } from '../plant/balance.ts';
import { householdSource, steadyWeather, type Weather, weatherOf } from '../plant/index.ts';
import { calendarDay, dayNumber, type Happening, readout, Unit, type UnitSetup } from '../unit/index.ts';
import { number } from './args.ts';
import { findCall } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

const START_DAY = { year: 2031, month: 5, day: 1 };

interface Plan {
  readonly setup: UnitSetup;
  readonly firstDay: number;
  readonly days: number;
}

export function run(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      household: { type: 'string', default: 'family-3' },
      climate: { type: 'string' },
      days: { type: 'string' },
      every: { type: 'string', default: '60' },
      seed: { type: 'string', default: '1' },
      json: { type: 'boolean', default: false },
      csv: { type: 'boolean', default: false },
    },
  });
  const [name] = positionals;
  if (!name) throw new UsageError('run needs a CALL or a UNIT; try: run u1 --days 3');
  const planned = plan(name, values.household, values.climate, number('seed', values.seed, 0), values.days);
  if (!planned) return BAD;
  const every_s = number('every', values.every, 1) * 60;
  const unit = new Unit(planned.setup);
  const start = unit.y.slice();
  const rows = values.json ? undefined : columns(values.csv);
  if (rows) print(rows.head);
  let told = 0;
  for (let t = every_s; t <= planned.days * 86_400; t += every_s) {
    unit.advance(t);
    const events = unit.log.slice(told);
    told = unit.log.length;
    const line = lineOf(unit, t, planned.firstDay, events);
    if (rows) print(rows.row(line));
    else printJson(line);
  }
  unit.cutAt(planned.days * 86_400);
  printJson({ balance: balance(start, unit.y) });
  return GOOD;
}

function plan(
  name: string,
  householdId: string,
  climateId: string | undefined,
  seed: number,
  days: string | undefined,
): Plan | undefined {
  const library = shippedLibrary();
  const spec = library.units.get(name);
  if (!spec) {
    const call = findCall(name);
    if (!call.ok) {
      for (const p of call.problems) process.stderr.write(`${name} at ${p.path}: ${p.message}; ${p.mend}\n`);
      return undefined;
    }
    const prepared = prepareCall(call.value);
    const toReport = Math.ceil(prepared.report_s / 86_400);
    return {
      setup: unitSetup(prepared),
      firstDay: prepared.firstDay,
      days: number('days', days ?? String(toReport), 1),
    };
  }
  const household = library.households.get(householdId);
  if (!household) {
    throw new UsageError(`no household "${householdId}"; take one of ${[...library.households.keys()].join(', ')}`);
  }
  return {
    setup: { spec, source: householdSource(household, seed), faults: [], seed, weather: weatherIn(climateId, seed) },
    firstDay: dayNumber(START_DAY),
    days: number('days', days ?? '1', 1),
  };
}

/** Weather of a climate from the first day on; 20 degC and no rain where none is asked for. */
function weatherIn(climateId: string | undefined, seed: number): Weather {
  if (climateId === undefined) return steadyWeather(20);
  const climates = shippedClimates();
  const climate = climates.get(climateId);
  if (!climate) throw new UsageError(`no climate "${climateId}"; take one of ${[...climates.keys()].join(', ')}`);
  const newYear = dayNumber({ year: START_DAY.year, month: 1, day: 1 });
  return weatherOf(climate, seed, dayNumber(START_DAY) - newYear + 1);
}

function lineOf(unit: Unit, t: number, firstDay: number, events: readonly Happening[]) {
  const now = readout(unit, t);
  const out = now.control.outputs;
  return {
    t_s: t,
    clock: clockText(firstDay, t),
    levels_m: {
      trash: round(now.flows.trash_m, 4),
      aeration: round(now.flows.aeration_m, 4),
      pump: round(now.flows.pump_m, 4),
    },
    airPressure_kPa: round(now.airPressure_kPa, 3),
    airFlow_Lmin: round(now.flows.air.diffuser_Lmin, 2),
    dissolvedOxygen_mgL: round(now.oxygen_mgL, 3),
    mixedLiquor_mgL: round(now.water.aeration.solids_mgL, 1),
    effluent: {
      cbod5_mgL: round(now.water.pump.cbod5_mgL, 2),
      tss_mgL: round(now.water.pump.solids_mgL, 2),
      nh4_mgL: round(now.water.pump.ammonia_mgL, 3),
      no3_mgL: round(now.water.pump.nitrate_mgL, 2),
    },
    chlorine_mgL: round(now.water.pump.residual_mgL, 3),
    freeChlorine_mgL: round(now.water.pump.freeChlorine_mgL, 3),
    coliform_per100mL: round(now.water.pump.coliform_per100mL, 1),
    temperature_C: round(unit.driveAt(t).temperature_C, 1),
    volumeIndex_mLg: round(now.liquor.index_mLg, 0),
    sediment_m: Object.fromEntries(Object.entries(now.sediment_m).map(([spot, depth]) => [spot, round(depth, 3)])),
    blanket_m: round(now.blanket_m, 3),
    trash_m: { sludge: round(now.trashSludge_m, 3), scum: round(now.trashScum_m, 3) },
    sensed: {
      liquor: now.sensed.liquor,
      effluent: now.sensed.effluent,
      clarity_m: round(now.sensed.clarity_m, 2),
      foam: now.sensed.foam.kind,
      outdoors: now.sensed.outdoors.kind,
      indoors: now.sensed.indoors.kind,
    },
    lamp: out.lamp,
    buzzer: out.buzzer,
    pump: out.pumpRuns,
    compressor: out.compressorRuns,
    events: events.map((e) => ({ t_s: round(e.t, 3), what: e.what })),
  };
}

type Line = ReturnType<typeof lineOf>;

function columns(csv: boolean): { head: string; row: (line: Line) => string } {
  const cells = (l: Line): (string | number)[] => [
    l.clock,
    l.levels_m.trash,
    l.levels_m.aeration,
    l.levels_m.pump,
    l.airPressure_kPa,
    l.airFlow_Lmin,
    l.dissolvedOxygen_mgL,
    l.lamp ? 1 : 0,
    l.buzzer ? 1 : 0,
    l.pump ? 1 : 0,
    l.compressor ? 1 : 0,
    l.events.map((e) => e.what).join(' '),
  ];
  const names = [
    'clock',
    'trash_m',
    'aeration_m',
    'pump_m',
    'air_kPa',
    'air_Lmin',
    'oxygen_mgL',
    'lamp',
    'buzzer',
    'pump',
    'compressor',
    'events',
  ];
  const join = (row: (string | number)[]) =>
    csv
      ? row.join(',')
      : row
          .map((c, i) => String(c).padEnd(i === 0 ? 17 : 10))
          .join(' ')
          .trimEnd();
  return { head: join(names), row: (line) => join(cells(line)) };
}

/** Local instant as in a call file, with the minute. */
function clockText(firstDay: number, t_s: number): string {
  const { year, month, day } = calendarDay(firstDay + Math.floor(t_s / 86_400));
  const minute = Math.floor((t_s % 86_400) / 60);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}T${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

function round(x: number, digits: number): number {
  const scale = 10 ** digits;
  return Math.round(x * scale) / scale;
}
