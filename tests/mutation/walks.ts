/**
 * Promises walked jointly, every sequence of events: all of them on sound units, and under those faults that touch each
 * kind of part once, on the unit where the walk is shortest. `npm test` walks the rest.
 */
import { describe, expect, it } from 'vitest';
import { tableOf } from '../control/panels.ts';
import { PROMISES } from '../control/spec/promises.ts';
import { type Promised, SOUND } from '../control/spec/vocabulary.ts';
import { shortestFailure, told } from '../control/spec/walk.ts';

const ALL_FAULTS: readonly string[] = [
  'compressor and cut-out of u1',
  'compressor and cut-out of u2',
  'dosing (demand) of u2',
];
const SOME_FAULTS: Readonly<Record<string, readonly string[]>> = {
  'reset of u1': ['surge on the latch'],
  'breakers and supply of u1': ['alarm breaker trips again', 'compressor breaker trips again'],
  'dosing (night) of u1': ['clock lost', 'dose and override leads swapped'],
  'dosing (night) of mechanical': ['clock lost', 'timer dead'],
  'motor and protector of u3': ['motor lead shorted', 'relay welded', 'rotor seized', 'protector failed'],
};

const nameOf = ({ name, unit }: Promised) => `${name} of ${unit}`;

function faultsOf(promised: Promised): readonly string[] {
  const name = nameOf(promised);
  return ALL_FAULTS.includes(name) ? Object.keys(promised.faults) : (SOME_FAULTS[name] ?? []);
}

function keeps(promised: Promised, fault: string): void {
  const failure = shortestFailure(promised, fault, tableOf(promised.unit));
  expect(failure && told(failure)).toBeUndefined();
}

const promises = PROMISES.map((p) => [nameOf(p), p] as const);

describe.each(promises)('%s', (_, promised) => {
  it('is kept by a sound unit', () => keeps(promised, SOUND));
});

const faulty = promises.flatMap(([name, p]) => faultsOf(p).map((fault) => [name, fault, p] as const));

describe.each(faulty)('%s', (_, fault, promised) => {
  it(`is kept under the fault: ${fault}`, () => keeps(promised, fault));
});

it('knows the promises that are named here', () => {
  const names = promises.map(([name]) => name);
  expect(names).toEqual(expect.arrayContaining([...ALL_FAULTS, ...Object.keys(SOME_FAULTS)]));
});
