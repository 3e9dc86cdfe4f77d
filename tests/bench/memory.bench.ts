/**
 * What a year of a unit takes in memory with its hourly history (whole states, and the log), and what a snapshot of it
 * weighs, is taken in and comes back from.
 */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { shippedLibrary } from '../../src/calls/index.ts';
import { householdSource, STATE_SIZE, steadyWeather } from '../../src/plant/index.ts';
import { digest, restore, type Snapshot, snapshot, Unit, type UnitSetup } from '../../src/unit/index.ts';

const DAYS = 365;
const HOUR_s = 3600;
const REPEATS = 200;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

export function run(print: (line: string) => void): void {
  const library = shippedLibrary();
  const spec = library.units.get('u1');
  const household = library.households.get('family-3');
  if (!spec || !household) throw new Error('u1 or family-3 is missing');
  const setup: UnitSetup = {
    spec,
    source: householdSource(household, 42),
    faults: [],
    seed: 42,
    weather: steadyWeather(20),
  };

  collect();
  const before = held_MB();
  const unit = new Unit(setup);
  const hours: Float64Array[] = [];
  for (let hour = 1; hour <= DAYS * 24; hour++) {
    unit.advance(hour * HOUR_s);
    hours.push(unit.stateAt(hour * HOUR_s, new Float64Array(STATE_SIZE)));
  }
  collect();
  const withHistory_MB = held_MB() - before;
  const history_MB = (hours.length * STATE_SIZE * Float64Array.BYTES_PER_ELEMENT) / 1e6;

  const text = JSON.stringify(snapshot(unit));
  const take_us = each_us(() => JSON.stringify(snapshot(unit)));
  const back_us = each_us(() => restore(setup, JSON.parse(text) as Snapshot));
  const again = restore(setup, JSON.parse(text) as Snapshot);
  if (digest({ y: Array.from(again.y) }) !== digest({ y: Array.from(unit.y) })) throw new Error('it came back changed');
  print(
    JSON.stringify({
      bench: 'memory',
      days: DAYS,
      numbersInState: STATE_SIZE,
      events: unit.log.length,
      hoursKept: hours.length,
      withHistory_MB: round(withHistory_MB),
      historyAlone_MB: round(history_MB),
      snapshot_kB: round(text.length / 1000),
      snapshotGzip_kB: round(gzipSync(text).length / 1000),
      snapshot_us: round(take_us),
      restore_us: round(back_us),
    }),
  );
}

function held_MB(): number {
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
}

function each_us(work: () => void): number {
  const from = performance.now();
  for (let i = 0; i < REPEATS; i++) work();
  return ((performance.now() - from) * 1000) / REPEATS;
}

const round = (x: number): number => Math.round(x * 100) / 100;
