/**
 * Random lives of a unit, as plain data: who lives there, what breaks and when, what hands do, at whole milliseconds.
 * The same data gives the same bits wherever it is played.
 */
import { shippedLibrary } from '../../src/calls/index.ts';
import type { ControlEventName, FloatName } from '../../src/control/index.ts';
import { faultsOf, type PlacedFault, placedFault } from '../../src/faults/index.ts';
import { type DrawSource, householdSource, steadyWeather, useOf } from '../../src/plant/index.ts';
import {
  digest,
  floatsOf,
  type Json,
  snapshot,
  Unit,
  type UnitFault,
  type UnitSetup,
  type UnitSpec,
} from '../../src/unit/index.ts';
import { type PanelName, SPECS } from '../control/panels.ts';

export const UNITS: readonly PanelName[] = ['u1', 'mechanical', 'u2', 'u3'];

export interface Befalls {
  readonly fault: string;
  readonly onset_s: number;
  readonly severity: number;
  readonly ramp_s: number;
  readonly present: UnitFault['present'];
}

/** Something a person does there. */
export type Does =
  | { readonly kind: 'send'; readonly event: ControlEventName }
  | { readonly kind: 'release'; readonly float: FloatName }
  | { readonly kind: 'setClock'; readonly ahead_s: number }
  /** Mends the n-th fault of the history. */
  | { readonly kind: 'mend'; readonly nth: number };

export interface Hand {
  readonly at_s: number;
  readonly does: Does;
}

export interface History {
  readonly unit: PanelName;
  readonly household: string;
  readonly seed: number;
  readonly temperature_C: number;
  readonly end_s: number;
  readonly faults: readonly Befalls[];
  readonly hands: readonly Hand[];
}

/** Everything that hands can do to a panel and what hangs on it. */
export function handEvents(spec: UnitSpec): readonly ControlEventName[] {
  const breakers = ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const;
  return [
    ...breakers.flatMap((b): ControlEventName[] => [`${b}.off`, `${b}.on`]),
    'selector.hand',
    'selector.off',
    'selector.auto',
    'silence.pressed',
    'test.pressed',
    'test.released',
    'compressorCord.pulled',
    'compressorCord.plugged',
    ...floatsOf(spec.panel).map((f): ControlEventName => `${f}.lifted`),
    ...(spec.panel.dosing.kind === 'demand' ? [] : ['timer.start' as const]),
    ...(spec.panel.gfci ? ['gfci.trips' as const, 'gfci.reset' as const] : []),
  ];
}

export function faultNames(spec: UnitSpec): readonly PlacedFault[] {
  return faultsOf(spec);
}

export function faultOf({ fault, ...when }: Befalls): UnitFault {
  const { key, effect } = placedFault(fault);
  return { id: key, effect, ...when };
}

/** The household's water, with what faults of use add to it. */
function sourceOf(history: History, faults: readonly UnitFault[]): DrawSource {
  const household = shippedLibrary().households.get(history.household);
  if (!household) throw new Error(`no household ${history.household}`);
  const extra = faults.flatMap(({ effect: { uses }, onset_s }) => {
    const fixture = household.fixtures.find((f) => f.id === uses?.fixture);
    if (!uses || !fixture) return [];
    const start = (i: number) => Math.round(onset_s + i * uses.every_min * 60);
    return Array.from({ length: uses.times }, (_, i) => useOf(fixture, start(i))).flat();
  });
  return householdSource(household, history.seed, extra);
}

export function setupOfHistory(history: History): UnitSetup {
  const { seed, temperature_C } = history;
  const faults = history.faults.map(faultOf);
  const weather = steadyWeather(temperature_C);
  return { spec: SPECS[history.unit], source: sourceOf(history, faults), faults, seed, weather };
}

export function act(unit: Unit, history: History, does: Does): void {
  switch (does.kind) {
    case 'send':
      unit.send(does.event);
      break;
    case 'release':
      unit.send(`${does.float}.released`);
      unit.follow();
      break;
    case 'setClock':
      unit.setClock(does.ahead_s);
      break;
    case 'mend': {
      const fault = history.faults[does.nth];
      if (fault) unit.mend(fault.fault);
    }
  }
}

/** Plays a history from where the unit stands to its end, with time asked for in slices. */
export function play(unit: Unit, history: History, slices: readonly number[] = []): Unit {
  const wait = slices.filter((s) => s > unit.t);
  const seeUntil = (t: number) => {
    while ((wait[0] ?? t) < t) unit.advance(wait.shift() ?? t);
  };
  for (const { at_s, does } of history.hands) {
    if (at_s < unit.t || at_s > history.end_s) continue;
    seeUntil(at_s);
    unit.cutAt(at_s);
    act(unit, history, does);
  }
  seeUntil(history.end_s);
  unit.advance(history.end_s);
  return unit;
}

/** One word for a unit's whole state and what it wrote down from an entry of its log on. */
export function wordOf(unit: Unit, from = 0): string {
  return digest([snapshot(unit), unit.log.slice(from)] as unknown as Json);
}

/** One word for a whole history. */
export function digestOf(history: History): string {
  return wordOf(play(new Unit(setupOfHistory(history)), history));
}
