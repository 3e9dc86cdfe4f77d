/** What hands do between two steps of the engine takes hold at once, whatever step it had already worked out. */
import { describe, expect, it } from 'vitest';
import { listSource, VOLUME } from '../../src/plant/index.ts';
import { readout, Unit } from '../../src/unit/index.ts';
import { first, floatsOfU1, HOUR, instants, setupOf, u1 } from './units.ts';

const floats = floatsOfU1();
const area_m2 = u1().plant.pump.area_m2;

/** A unit whose pump tank stands at a height above its floor, under a steady inflow, with nothing worked out ahead. */
function standing(height_m: number, flow_m3s: number): Unit {
  const unit = new Unit(setupOf(listSource([], flow_m3s)));
  unit.cutAt(10 * HOUR);
  unit.y[VOLUME.pump] = height_m * area_m2;
  unit.send('test.released');
  return unit;
}

describe('a hand on a float', () => {
  it('that holds it up while the water rises past it: let go, it floats and the pump runs on', () => {
    const { makes_m } = floats.overrideFloat;
    const unit = standing(makes_m - 0.001, 0);
    unit.send('pumpBreaker.off');
    unit.send('overrideFloat.lifted');
    unit.y[VOLUME.pump] = (makes_m + 0.001) * area_m2;
    unit.send('test.released');
    unit.send('pumpBreaker.on');
    unit.send('overrideFloat.released');
    unit.follow();
    expect(unit.control.regions.overrideFloat).toBe('up');
    expect(unit.control.outputs.pumpRuns).toBe(true);
    expect(readout(unit, unit.t).flows.discharge).toBeGreaterThan(5e-4);
    unit.advance(unit.t + 600);
    expect(first(unit, 'overrideFloat.falls')).toBeGreaterThan(10 * HOUR);
    expect(readout(unit, unit.t).pumpTank_m).toBeLessThan(floats.overrideFloat.breaks_m + 0.002);
  });

  it('lifted and let go with the water still low leaves everything as it was', () => {
    const unit = standing(0.6, 0);
    unit.send('overrideFloat.lifted');
    expect(unit.control.outputs.pumpRuns).toBe(true);
    unit.send('overrideFloat.released');
    unit.follow();
    expect(unit.control.regions.overrideFloat).toBe('down');
    expect(readout(unit, unit.t).flows.discharge).toBe(0);
  });
});

describe('a step worked out ahead', () => {
  it('is given up when something is done before its end', () => {
    const unit = standing(0.6, 0);
    unit.advance(unit.t + 1);
    expect(unit.horizon()).toBeGreaterThan(unit.t);
    const { t } = unit;
    unit.send('selector.hand');
    expect(unit.t).toBe(t);
    unit.advance(t + 60);
    expect(instants(unit, 'pumpRuns.on')).toEqual([t]);
    expect(readout(unit, t + 60).pumpTank_m).toBeLessThan(0.6 - 0.015);
  });
});
