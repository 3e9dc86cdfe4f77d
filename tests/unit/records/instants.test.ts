import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isoDuration, timespan, utc } from '../../../src/records/instants.ts';

describe('an instant in UTC', () => {
  it('is what the machine’s own calendar says, from 1970 on', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4_102_444_800_000 }), (ms) => {
        expect(utc(ms)).toBe(new Date(ms).toISOString());
      }),
    );
    expect(utc(951_782_400_000)).toBe('2000-02-29T00:00:00.000Z');
  });
});

describe('a length of time', () => {
  // ISO 8601, hours, minutes and seconds; xAPI 1.0.3, Data, 4.6: at most hundredths.
  it.each([
    [0, 'PT0S', '0000:00:00.00'],
    [0.004, 'PT0S', '0000:00:00.00'],
    [0.05, 'PT0.05S', '0000:00:00.05'],
    [59.999, 'PT1M', '0000:01:00.00'],
    [61.5, 'PT1M1.5S', '0000:01:01.50'],
    [3600, 'PT1H', '0001:00:00.00'],
    [-5, 'PT0S', '0000:00:00.00'],
    [9999 * 3600 + 3599.99, 'PT9999H59M59.99S', '9999:59:59.99'],
    [10_000 * 3600, 'PT10000H', '9999:59:59.99'],
  ])('of %d s is %s, in SCORM 1.2 %s', (seconds, iso, cmi) => {
    expect(isoDuration(seconds)).toBe(iso);
    expect(timespan(seconds)).toBe(cmi);
  });
});
