/** Every row of the published table of symptoms, causes and tests, with what is found when its cause is put into a unit. */
import { AIR } from './symptoms/air.ts';
import { DISINFECTION } from './symptoms/disinfection.ts';
import { FIELD } from './symptoms/field.ts';
import type { Cause, Finding, Heading, Line, Row, Setting } from './symptoms/kind.ts';
import { type Life, lived } from './symptoms/life.ts';
import { ODOUR } from './symptoms/odour.ts';
import { PUMP } from './symptoms/pump.ts';
import { TREATMENT } from './symptoms/treatment.ts';
import { WATER } from './symptoms/water.ts';

export const HEADINGS: readonly Heading[] = [WATER, AIR, ODOUR, TREATMENT, DISINFECTION, PUMP, FIELD];

/** An ordinary property (convention). */
const ORDINARY = { household: 'family-4', temperature_C: 18, years: 0.5, also: [] } as const;

export interface Outcome {
  readonly row: Row;
  readonly line: Line;
  /** The first line of its row. */
  readonly counts: boolean;
  readonly symptom: boolean;
  readonly test: boolean;
  readonly agrees: boolean;
  /** Findings of symptom and test that were not made. */
  readonly missing: readonly string[];
  readonly said: { readonly symptom: string; readonly test: string };
}

export function outcomes(): readonly Outcome[] {
  return HEADINGS.flatMap(({ rows }) => rows.flatMap((row) => row.lines.map((line, i) => outcome(row, line, i === 0))));
}

export function outcome(row: Row, line: Line, counts: boolean): Outcome {
  const setting: Setting = {
    unit: line.unit,
    household: line.household ?? ORDINARY.household,
    temperature_C: line.temperature_C ?? ORDINARY.temperature_C,
    years: line.years ?? ORDINARY.years,
    also: line.also ?? ORDINARY.also,
  };
  const life = (cause: Cause) => lived(setting, cause, line.after_h);
  const here = life(line.put);
  const all = (findings: readonly Finding[], on: Life) => findings.every((f) => f.holds(on));
  const symptom = all(line.symptom, here) && !all(line.symptom, life({}));
  const test = all(line.test, here) && !(line.from ?? [{}]).some((cause) => all(line.test, life(cause)));
  const say = (f: Finding) => (typeof f.says === 'string' ? f.says : f.says(here));
  return {
    row,
    line,
    counts,
    symptom,
    test,
    agrees: symptom && test,
    missing: [...line.symptom, ...line.test].filter((f) => !f.holds(here)).map(say),
    said: { symptom: line.symptom.map(say).join('; '), test: line.test.map(say).join('; ') },
  };
}
