/** Source: Random123 known-answer vectors of Philox4x32-10 (Salmon et al., SC11). Exact. */
import { describe, expect, it } from 'vitest';
import { draw, philox } from '../../src/plant/index.ts';

const ones = 0xffffffff;

describe('Philox4x32-10', () => {
  it.each([
    [[0, 0, 0, 0], [0, 0], '6627e8d5 e169c58d bc57ac4c 9b00dbd8'],
    [[ones, ones, ones, ones], [ones, ones], '408f276d 41c83b0e a20bc7c6 6d5451fd'],
    [[0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344], [0xa4093822, 0x299f31d0], 'd16cfe09 94fdcceb 5001e420 24126ea1'],
  ])('counter %j, key %j', (counter, key, words) => {
    const out = philox(counter, key).map((w) => w.toString(16).padStart(8, '0'));
    expect(out.join(' ')).toBe(words);
  });

  it('gives numbers strictly between 0 and 1 with mean a half (20,000 draws: 0.5 +- 0.01)', () => {
    let sum = 0;
    for (let i = 0; i < 20_000; i++) {
      const u = draw(1, 'mean', i);
      expect(u > 0 && u < 1).toBe(true);
      sum += u;
    }
    expect(Math.abs(sum / 20_000 - 0.5)).toBeLessThan(0.01);
  });
});
