/** What random lives once got wrong of faults and of the dial at midnight; each is one sentence. */
import { describe, expect, it } from 'vitest';
import { placedFault } from '../../src/faults/index.ts';
import { listSource, steadyWeather } from '../../src/plant/index.ts';
import { Unit, type UnitFault } from '../../src/unit/index.ts';
import { nextStart } from '../../src/unit/timer.ts';
import { SPECS } from '../control/panels.ts';
import { DAY, HOUR } from './units.ts';

function living(...faults: readonly (readonly [string, Partial<UnitFault>])[]): Unit {
  const made = faults.map(
    ([key, more]): UnitFault => ({
      id: key,
      effect: placedFault(key).effect,
      onset_s: 0,
      severity: 1,
      ramp_s: 0,
      present: 'always',
      ...more,
    }),
  );
  return new Unit({ spec: SPECS.u1, source: listSource([]), faults: made, seed: 1, weather: steadyWeather(20) });
}

describe('a fault that is there from the first instant', () => {
  it('drives the works from the first instant: a welded relay pumps', () => {
    expect(living(['relay-welded', {}]).driveAt(0).pumpRuns).toBe(true);
  });
});

describe('the dial of the night timer', () => {
  it('goes on from midnight to the next start, also when rounding has it a hair before midnight', () => {
    expect(nextStart([0], DAY - 1e-11)).toBe(2 * DAY);
  });

  it('does not stand still at midnight while its clock is running away', () => {
    const unit = living(['timer-misset', { onset_s: 59_009.163, ramp_s: 36_616.601 }]);
    unit.advance(2 * DAY);
    expect(unit.t).toBeGreaterThan(DAY);
  });
});

describe('of two faults of one part', () => {
  it('the one that lasts is there when the other is over: low voltage after an outage', () => {
    const unit = living(['low-voltage', {}], ['outage', { onset_s: 200, present: { on_h: 1, off_h: 1 } }]);
    unit.advance(8 * HOUR);
    while (unit.has('outage')) unit.advance(unit.t + HOUR);
    expect(unit.control.regions.supply).toBe('low');
  });

  it('the one that lasts is there when the other is mended: a stuck float after its tethers were untangled', () => {
    const unit = living(['stuck-down:highWaterFloat', {}], ['tethers-tangled:overrideFloat', { onset_s: 200 }]);
    unit.cutAt(300);
    unit.mend('tethers-tangled:overrideFloat');
    expect(unit.control.regions.highWaterFloat).toBe('heldDown');
  });

  it('the later waits for the earlier: no supply sags in an outage', () => {
    const unit = living(['outage', { onset_s: 100 }], ['low-voltage', { onset_s: 200 }]);
    unit.cutAt(300);
    expect(unit.control.regions.supply).toBe('off');
    unit.mend('outage');
    expect(unit.control.regions.supply).toBe('low');
  });

  it('the later waits for the earlier: a switch stuck closed is not opened by what gets into it', () => {
    const unit = living(['air-switch-stuck:sticksClosed', { onset_s: 100 }], ['insects-in-contacts', { onset_s: 200 }]);
    unit.cutAt(300);
    expect(unit.control.regions.airContact).toBe('stuckClosed');
    unit.mend('air-switch-stuck:sticksClosed');
    expect(unit.control.regions.airContact).toBe('stuckOpen');
  });
});
