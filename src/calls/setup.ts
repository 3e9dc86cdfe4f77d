/** Builds the property of a call and lives through its history up to the report. */
import { faultOn } from '../faults/index.ts';
import {
  type Absence,
  type Draw,
  type DrawSource,
  type HouseholdSpec,
  householdSource,
  type Storm,
  steadyWeather,
  useOf,
} from '../plant/index.ts';
import type { Door, LoadId, SymptomId } from '../service/index.ts';
import {
  parseInstant,
  restore,
  type Snapshot,
  Unit,
  type UnitFault,
  type UnitSetup,
  type UnitSpec,
  withNumbers,
} from '../unit/index.ts';
import type { CallFile } from './schema.ts';

/** A property that lived before the call: the call begins on it, and not with a history of its own. */
export interface Lived {
  readonly setup: UnitSetup;
  /** Its state shortly before the phone rang. */
  readonly from: Snapshot;
  /** What a technician would mend now, by key. */
  readonly causes: readonly string[];
  /** What has only begun to wear: right to name where a check shows it, right to clean and leave unnamed. */
  readonly wearing: readonly string[];
  /** As it was left at the last visit, were everything sound; at the beginning there is none. */
  readonly left?: Snapshot;
}

/** A call joined with the unit and the household it names. */
export interface Prepared {
  readonly call: CallFile;
  readonly spec: UnitSpec;
  readonly household: HouseholdSpec;
  /** Day number of engine time 0, and the engine second of the report. */
  readonly firstDay: number;
  readonly report_s: number;
  readonly lived?: Lived;
}

export function prepare(call: CallFile, spec: UnitSpec, household: HouseholdSpec): Prepared {
  const start = instantOf(call.start);
  return {
    call,
    spec: call.changed ? withNumbers(spec, call.changed) : spec,
    household,
    firstDay: start.day - call.history_days,
    report_s: call.history_days * 86_400 + start.secondOfDay,
  };
}

function instantOf(text: string): { day: number; secondOfDay: number } {
  const instant = parseInstant(text);
  if (!instant) throw new Error(`"${text}" is no instant`);
  return instant;
}

/** Engine second of a local instant of the call. */
function engineSecond(prepared: Prepared, text: string): number {
  const { day, secondOfDay } = instantOf(text);
  return (day - prepared.firstDay) * 86_400 + secondOfDay;
}

export function unitFaults(prepared: Prepared): UnitFault[] {
  return prepared.call.faults.map((f) => {
    const placed = faultOn(prepared.spec, f.fault, f.part);
    if (!placed) throw new Error(`no fault "${f.fault}" on this unit`);
    return {
      id: placed.key,
      effect: placed.effect,
      onset_s: engineSecond(prepared, f.onset),
      severity: f.severity ?? placed.severity,
      ramp_s: (f.ramp_h ?? placed.ramp_h ?? 0) * 3600,
      present: f.present ?? placed.spells ?? 'always',
    };
  });
}

/** What a household draws, with what faults of use bring (a wash day) and without the days they take it away. */
export function sourceOf(household: HouseholdSpec, seed: number, faults: readonly UnitFault[]): DrawSource {
  return householdSource(household, seed, extraDraws(household, faults), absences(faults));
}

function extraDraws(household: HouseholdSpec, faults: readonly UnitFault[]): Draw[] {
  return faults.flatMap((fault) => {
    const uses = fault.effect.uses;
    const fixture = uses && household.fixtures.find((f) => f.id === uses.fixture);
    if (!uses || !fixture) return [];
    return Array.from({ length: uses.times }, (_, i) =>
      useOf(fixture, fault.onset_s + Math.round(i * uses.every_min * 60)),
    ).flat();
  });
}

/** When nobody is at home. */
function absences(faults: readonly UnitFault[]): Absence[] {
  return faults.flatMap(({ effect: { away_d }, onset_s }) =>
    away_d === undefined ? [] : [{ from_s: onset_s, to_s: onset_s + away_d * 86_400 }],
  );
}

function stormsOf(prepared: Prepared): Storm[] {
  return (prepared.call.storms ?? []).map(({ start, hours, depth_mm }) => {
    const start_s = engineSecond(prepared, start);
    return { start_s, end_s: start_s + Math.round(hours * 3600), rain_mmh: depth_mm / hours };
  });
}

export function unitSetup(prepared: Prepared): UnitSetup {
  const { household, call, lived } = prepared;
  if (lived) return lived.setup;
  const faults = unitFaults(prepared);
  return {
    spec: prepared.spec,
    source: sourceOf(household, call.seed, faults),
    faults,
    seed: call.seed,
    weather: steadyWeather(call.temperature_C, stormsOf(prepared)),
  };
}

/** What the household had noticed when it called; an alarm is a lit lamp at least. */
export function noticedOf(call: CallFile): readonly SymptomId[] {
  return call.report.noticed ?? (call.kind === 'alarm' ? ['lamp-lit'] : []);
}

/** What is loaded for a routine visit (common practice, no source). */
const ROUTINE_LOAD = ['chlorine', 'filter-discs', 'float', 'panel-parts', 'tubing'] as const satisfies LoadId[];

/** How a routine visit begins; of other calls nothing. */
export function doorOf({ call: { visit }, firstDay }: Prepared): Door | undefined {
  if (!visit) return undefined;
  return {
    load: ROUTINE_LOAD,
    ...(visit.buried ? { buried: visit.buried } : {}),
    label: { signed_day: instantOf(`${visit.last}T00:00`).day, first_day: firstDay },
  };
}

/** The property at the moment the phone rings. */
export function unitAtReport(prepared: Prepared, observer?: (unit: Unit) => void): Unit {
  const { lived } = prepared;
  const unit = lived ? restore(lived.setup, lived.from) : new Unit(unitSetup(prepared));
  unit.observer = observer;
  unit.cutAt(prepared.report_s);
  if (prepared.call.report.silenced) unit.send('silence.pressed');
  return unit;
}
