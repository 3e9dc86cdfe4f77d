/** No state without a way back: every fault of every unit, mended and set right by hand, leaves a sound unit. */

import { describe, expect, it } from 'vitest';
import { faultsOf } from '../../src/faults/index.ts';
import { Unit } from '../../src/unit/index.ts';
import { SPECS } from '../control/panels.ts';
import { heal, unhealthy } from './healing.ts';
import { type History, setupOfHistory, UNITS } from './histories.ts';
import { Invariants } from './invariants.ts';
import { DAY, HOUR, instants } from './units.ts';

const ONSET = 12 * HOUR;

describe.each(UNITS)('%s', (name) => {
  const spec = SPECS[name];

  it.each(faultsOf(spec).map(({ key, severity }) => [key, severity] as const))(
    'is sound again after %s, and doses',
    (fault, severity) => {
      const history: History = {
        unit: name,
        household: 'family-4',
        seed: 42,
        temperature_C: 20,
        end_s: ONSET + 30 * HOUR,
        faults: [{ fault, onset_s: ONSET, severity, ramp_s: 0, present: 'always' }],
        hands: [],
      };
      const unit = new Unit(setupOfHistory(history));
      const seen = new Invariants(unit);
      unit.advance(history.end_s);
      heal(unit, history.end_s);
      expect(unhealthy(unit)).toEqual([]);
      expect(seen.breaches).toEqual([]);
      expect(instants(unit, 'pumpRuns.on').filter((t) => t > unit.t - 2 * DAY)).not.toEqual([]);
    },
  );
});
