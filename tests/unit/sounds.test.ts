import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeSprite } from '../../src/tools/sounds/sprite.ts';

const { clips, wav, json } = makeSprite();
const steps = (samples: Float64Array) => samples.map((x, i) => Math.abs(x - (samples[i - 1] ?? x)));
const largest = (samples: Float64Array) => samples.reduce((max, x) => Math.max(max, Math.abs(x)), 0);

describe('the recordings', () => {
  it('in assets are what the script makes', () => {
    expect(readFileSync('assets/sounds/sprite.wav').equals(wav), 'run: npm run sounds').toBe(true);
    expect(readFileSync('assets/sounds/sprite.json', 'utf8')).toBe(json);
  });

  it('stay below 400 kB', () => {
    expect(wav.length).toBeLessThan(400_000);
  });

  it.each(clips)('$id is neither clipped nor faint, and rests about zero', ({ samples }) => {
    expect(largest(samples)).toBeLessThan(0.9);
    expect(largest(samples)).toBeGreaterThan(0.4);
    expect(Math.abs(samples.reduce((sum, x) => sum + x, 0) / samples.length)).toBeLessThan(0.02);
  });

  it.each(clips.filter(({ loop }) => loop))('$id repeats without a click', ({ samples }) => {
    const seam = Math.abs((samples[0] ?? 0) - (samples.at(-1) ?? 0));
    expect(seam).toBeLessThanOrEqual(largest(steps(samples)));
  });

  it.each(clips.filter(({ loop }) => !loop))('$id begins and ends in silence', ({ samples }) => {
    expect(Math.abs(samples[0] ?? 1)).toBeLessThan(0.3);
    expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(0.01);
  });

  it('lie one after another in the file', () => {
    const places = Object.values(JSON.parse(json) as Record<string, [number, number, boolean]>);
    const length_ms = ((wav.length - 44) / 2 / 22_050) * 1000;
    for (const [i, [start, length]] of places.entries()) {
      expect(start + length).toBeLessThan(places[i + 1]?.[0] ?? length_ms);
    }
  });
});
