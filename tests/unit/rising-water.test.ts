/** Rising water in a sound unit with power lights the lamp before it stands at the inlet, whatever the flow. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GALLON_m3, listSource, steadyWeather } from '../../src/plant/index.ts';
import { Unit } from '../../src/unit/index.ts';
import { SPECS } from '../control/panels.ts';
import { UNITS } from './histories.ts';
import { first, HOUR, instants } from './units.ts';

const SEED = 20310514;
const GPM_m3s = GALLON_m3 / 60;
const LONGEST = 96 * HOUR;

describe.each(UNITS)('rising water in %s', (name) => {
  const spec = SPECS[name];

  function filling(gpm: number, pumps: boolean, start_s: number): Unit {
    const flow_m3s = gpm * GPM_m3s;
    const draws = [{ fixture: 'any', start_s, end_s: start_s + LONGEST, flow_m3s }];
    const unit = new Unit({ spec, source: listSource(draws), faults: [], seed: 1, weather: steadyWeather(20) });
    unit.cutAt(start_s);
    if (!pumps) unit.send('pumpBreaker.off');
    while (instants(unit, 'mark.inletReached').length === 0 && unit.t < start_s + LONGEST) unit.advance(unit.t + HOUR);
    return unit;
  }

  const start = fc.integer({ min: 1, max: 24 * 3600 });

  it('alarms before the inlet with the pump off, from a trickle to all taps', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), start, (gpm, start_s) => {
        const unit = filling(gpm / 2, false, start_s);
        expect(first(unit, 'lamp.on')).toBeLessThan(first(unit, 'mark.inletReached'));
      }),
      { numRuns: 15, seed: SEED },
    );
  });

  it('alarms before the inlet when more comes than the pump moves', () => {
    fc.assert(
      fc.property(fc.integer({ min: 15, max: 60 }), start, (gpm, start_s) => {
        const unit = filling(gpm, true, start_s);
        expect(first(unit, 'lamp.on')).toBeLessThan(first(unit, 'mark.inletReached'));
        expect(instants(unit, 'pumpRuns.on').length).toBeGreaterThan(0);
      }),
      { numRuns: 15, seed: SEED },
    );
  });
});
