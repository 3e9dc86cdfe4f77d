/** How long six months of a home and of its untouched twin take, of one core. */

import { drained } from '../../src/calls/drained.ts';
import { shippedLibrary } from '../../src/calls/index.ts';
import { SCENARIO_IDS } from '../../src/home/scenarios.ts';
import { whatIf } from '../../src/home/what-if.ts';

const SPAN_d = 182;
const LEAST_OF = 2;

export function run(print: (line: string) => void): void {
  const { units, households } = shippedLibrary();
  const [spec, household] = [units.get('u1'), households.get('family-3')];
  if (!spec || !household) throw new Error('the unit or the household does not ship');
  for (const scenario of SCENARIO_IDS) {
    const times = Array.from({ length: LEAST_OF }, () => {
      const before = process.cpuUsage();
      drained(whatIf({ scenario, spec, household, span_d: SPAN_d, season: 'mild', seed: 1 }));
      const { user, system } = process.cpuUsage(before);
      return (user + system) / 1e6;
    });
    print(
      JSON.stringify({ bench: 'what-if', scenario, days: SPAN_d, cpu_s: Math.round(Math.min(...times) * 100) / 100 }),
    );
  }
}
