/** A snapshot as JSON goes on to the same bits. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digest, restore, type Snapshot, snapshot, Unit } from '../../src/unit/index.ts';
import { bits, DAY, fault, HOUR, lived, made, NO_PUMP } from './units.ts';

const LEAK = fault('leak', { plant: { lineHole_m: 0.006 } }, { onset_s: 5 * HOUR, ramp_s: 40 * HOUR });
const LOOSE = fault(
  'loose',
  { control: { starts: ['compressor.stops'], ends: ['compressor.mended'] } },
  { present: { on_h: 2, off_h: 4 } },
);

const throughJson = (unit: Unit): Snapshot => JSON.parse(JSON.stringify(snapshot(unit))) as Snapshot;

describe('a snapshot', () => {
  it.each([
    ['sound', []],
    ['with a growing leak', [LEAK]],
    ['with a loose contact', [LOOSE]],
    ['with no pump and a loose contact', [NO_PUMP, LOOSE]],
  ])('goes on bit for bit at any instant: a unit %s', (_, faults) => {
    const setup = lived(4, 11, faults);
    const end = 3 * DAY;
    const whole = bits(made(setup, end));
    fc.assert(
      fc.property(fc.double({ min: 0, max: end, noNaN: true }), (t) => {
        const before = made(setup, t);
        const after = restore(setup, throughJson(before));
        expect(bits(after)).toBe(bits(before));
        after.advance(end);
        expect(bits(after)).toBe(whole);
      }),
      { numRuns: 8, seed: 13 },
    );
  });

  it('goes on bit for bit from the middle of a dose, a silence and a delay', () => {
    const setup = lived(4, 11, [LEAK]);
    const unit = new Unit(setup);
    unit.cutAt(2 * DAY + 1234.567);
    unit.send('silence.pressed');
    unit.send('selector.hand');
    unit.cutAt(2 * DAY + 1300);
    const twin = restore(setup, throughJson(unit));
    for (const u of [unit, twin]) {
      u.advance(2 * DAY + 2000);
      u.cutAt(2 * DAY + 2500.001);
      u.send('selector.auto');
      u.advance(4 * DAY);
    }
    expect(bits(twin)).toBe(bits(unit));
  });

  it('keeps what was mended', () => {
    const setup = lived(3, 4, [LOOSE]);
    const unit = made(setup, DAY);
    unit.cutAt(DAY);
    unit.mend('loose');
    const twin = restore(setup, throughJson(unit));
    for (const u of [unit, twin]) u.advance(3 * DAY);
    expect(bits(twin)).toBe(bits(unit));
    expect(twin.control.outputs.compressorRuns).toBe(true);
  });

  it('does not change with the unit it was taken of', () => {
    const unit = made(lived(3, 4), DAY);
    const taken = snapshot(unit);
    const before = digest(throughJson(unit) as never);
    unit.advance(2 * DAY);
    expect(digest(JSON.parse(JSON.stringify(taken)))).toBe(before);
  });

  it('is refused when it is of another version or another unit', () => {
    const setup = lived(3, 4);
    const taken = throughJson(new Unit(setup));
    expect(() => restore(setup, { ...taken, version: 3 as 5 })).toThrow(/version/);
    expect(() => restore(setup, { ...taken, y: taken.y.slice(1) })).toThrow(/another unit/);
    expect(() => restore(lived(3, 4, [LEAK]), taken)).toThrow(/another unit/);
    expect(() => restore(setup, { ...taken, control: '{}' })).toThrow();
  });
});
