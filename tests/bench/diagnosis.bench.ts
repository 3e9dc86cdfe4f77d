/**
 * How long a diagnosis of a call takes: living every hypothesis up to the report, the belief after a reading, and the
 * worth of every check, in seconds and as a share of a year of one unit; and the cache of signatures.
 */

import { diagnosisOf, seenOf } from '../../src/calls/expertise.ts';
import { CallSession, prepareCall, shippedCalls, shippedLibrary } from '../../src/calls/index.ts';
import { signatureSet } from '../../src/cli/faults.ts';
import { outlookOf, probesOf } from '../../src/diagnosis/index.ts';
import { householdSource, steadyWeather } from '../../src/plant/index.ts';
import { Unit } from '../../src/unit/index.ts';

const CALLS = ['sunny-line', 'wash-day-light', 'hummer'];

export async function run(print: (line: string) => void): Promise<void> {
  const year_s = yearOfAUnit();
  const show = (part: string, seconds: readonly number[], more: object = {}) => {
    const sorted = [...seconds].sort((a, b) => a - b);
    const worst_s = sorted.at(-1) ?? 0;
    const median_s = sorted[sorted.length >> 1] ?? 0;
    const line = { bench: 'diagnosis', part, median_s: round(median_s), worst_s: round(worst_s) };
    print(JSON.stringify({ ...line, worstToYear: round(worst_s / year_s), ...more }));
  };
  for (const id of CALLS) {
    const call = shippedCalls().find((c) => c.id === id);
    if (!call) throw new Error(`${id} does not ship`);
    const prepared = prepareCall(call);
    const session = new CallSession(prepared, 'practice');
    const [set, diagnosis] = timed(() => diagnosisOf(prepared));
    const probes = probesOf(prepared.spec);
    const beliefs: number[] = [];
    const outlooks: number[] = [];
    for (const step of call.solution) {
      session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) });
      const done = session.done.at(-1);
      if (!done || session.ended) break;
      beliefs.push(timed(() => diagnosis.observe(seenOf(session, done)))[0]);
      if (done.def.group === 'look' || done.def.group === 'measure') {
        outlooks.push(timed(() => outlookOf(diagnosis, probes))[0]);
      }
    }
    show('hypotheses', [set], { call: id, hypotheses: diagnosis.suspects.length });
    show('posterior', beliefs, { call: id, limit_s: 1 });
    show('every check', outlooks, { call: id });
  }
  const began = performance.now();
  const signatures = await signatureSet('u1', 'family-3');
  const build_s = (performance.now() - began) / 1000;
  const { cached, bytes } = signatures;
  const size = { forms: signatures.signatures.length, size_MB: round(bytes / 1e6) };
  print(
    JSON.stringify({
      bench: 'diagnosis',
      part: 'signatures of u1, one household',
      cached,
      build_s: round(build_s),
      ...size,
    }),
  );
}

function yearOfAUnit(): number {
  const library = shippedLibrary();
  const spec = library.units.get('u1');
  const household = library.households.get('family-3');
  if (!spec || !household) throw new Error('u1 or family-3 is missing');
  const source = householdSource(household, 1);
  return timed(() =>
    new Unit({ spec, source, faults: [], seed: 1, weather: steadyWeather(18) }).advance(365 * 86_400),
  )[0];
}

function timed<T>(work: () => T): readonly [number, T] {
  const began = performance.now();
  const result = work();
  return [(performance.now() - began) / 1000, result];
}

function round(x: number): number {
  return Math.round(x * 1000) / 1000;
}
