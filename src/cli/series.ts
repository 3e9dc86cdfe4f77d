/** `series`: a unit on the test stand, and whether it comes out class I. */
import { parseArgs } from 'node:util';
import { shippedLibrary } from '../calls/index.ts';
import { faultOn } from '../faults/index.ts';
import { ORDINARY_SEWAGE, programme, STRESSES } from '../plant/index.ts';
import { runSeries, type SeriesDay, type UnitSpec } from '../unit/index.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

const LOADS = ['design', ...STRESSES, 'full-26-weeks'] as const;

export function series(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      load: { type: 'string', default: 'design' },
      fault: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  const spec = shippedLibrary().units.get(positionals[0] ?? '');
  if (!spec) throw new UsageError('series needs a UNIT; try: series u1 --load full-26-weeks');
  const load = LOADS.find((l) => l === values.load);
  if (!load) throw new UsageError(`no load "${values.load}"; write one of ${LOADS.join(', ')}`);
  const began = performance.now();
  const { days, verdict, events, derivatives } = runSeries(
    spec,
    programme(load),
    ORDINARY_SEWAGE,
    values.fault === undefined ? [] : [fromTheStart(spec, values.fault)],
  );
  if (values.json) {
    const wall_s = (performance.now() - began) / 1000;
    printJson({ days: days.map(lineOf), verdict: rounded(verdict), wall_s, events, rhsCalls: derivatives });
  } else {
    for (const day of days) print(rowOf(day));
    const { worst30d, worst7d } = verdict;
    print(`${verdict.classI ? 'class I' : 'not class I'}: 30 days ${means(worst30d)}; 7 days ${means(worst7d)}`);
  }
  return verdict.classI ? GOOD : BAD;
}

function fromTheStart(spec: UnitSpec, name: string) {
  const [id = '', part] = name.split(':');
  const fault = faultOn(spec, id, part);
  if (!fault) throw new UsageError(`no fault "${name}" on ${spec.id}; write it as fault or fault:part`);
  return { id: fault.key, effect: fault.effect, onset_s: 0, severity: 1, ramp_s: 0, present: 'always' as const };
}

const round = (x: number): number => Math.round(x * 100) / 100;

function rounded(verdict: ReturnType<typeof runSeries>['verdict']) {
  const both = (m: { cbod5_mgL: number; solids_mgL: number }) => ({
    cbod5_mgL: round(m.cbod5_mgL),
    tss_mgL: round(m.solids_mgL),
  });
  return { classI: verdict.classI, worst30d: both(verdict.worst30d), worst7d: both(verdict.worst7d) };
}

function lineOf({ day, sampled, cbod5_mgL, solids_mgL, pH }: SeriesDay) {
  if (cbod5_mgL === undefined || solids_mgL === undefined || pH === undefined) return { day, sampled };
  return { day, sampled, cbod5_mgL: round(cbod5_mgL), tss_mgL: round(solids_mgL), ph: round(pH) };
}

function rowOf({ day, sampled, cbod5_mgL, solids_mgL, pH }: SeriesDay): string {
  if (cbod5_mgL === undefined || solids_mgL === undefined || pH === undefined) return `day ${day}: no effluent`;
  const values = `CBOD5 ${cbod5_mgL.toFixed(1)}, TSS ${solids_mgL.toFixed(1)} mg/L, pH ${pH.toFixed(1)}`;
  return `day ${day}: ${values}${sampled ? '' : ' (does not count)'}`;
}

function means(m: { cbod5_mgL: number; solids_mgL: number }): string {
  return `CBOD5 ${m.cbod5_mgL.toFixed(1)}, TSS ${m.solids_mgL.toFixed(1)} mg/L`;
}
