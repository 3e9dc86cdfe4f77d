/** The few building blocks our recordings are made of. Signals are samples at `RATE`, about -1 to 1. */

export const RATE = 22_050;
export type Signal = Float64Array;

const TURN = 2 * Math.PI;

/** A signal of `n` samples; `f` gets the time in seconds. */
export function signal(n: number, f: (t: number) => number): Signal {
  return Float64Array.from({ length: n }, (_, i) => f(i / RATE));
}

/** A stream of numbers in [0, 1), the same for the same seed on every machine. */
export function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let x = Math.imul(state ^ (state >>> 15), 1 | state);
    x = (x + Math.imul(x ^ (x >>> 7), 61 | x)) ^ x;
    return ((x ^ (x >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function noise(n: number, seed: number): Signal {
  const roll = dice(seed);
  return signal(n, () => 2 * roll() - 1);
}

/** Sum of overtones of `hz`, `strengths[k]` for overtone k + 1. Phases are spread, so that peaks do not pile up. */
export function tone(n: number, hz: number, strengths: readonly number[]): Signal {
  return signal(n, (t) =>
    strengths.reduce((sum, strength, k) => sum + strength * Math.sin(TURN * hz * (k + 1) * t + 2.4 * k * k), 0),
  );
}

export function mix(...signals: readonly Signal[]): Signal {
  const [first = new Float64Array(0)] = signals;
  return first.map((_, i) => signals.reduce((sum, it) => sum + (it[i] ?? 0), 0));
}

/** Multiplies by a number or by a function of the time. */
export function scale(input: Signal, by: number | ((t: number) => number)): Signal {
  return input.map((x, i) => x * (typeof by === 'number' ? by : by(i / RATE)));
}

export type FilterKind = 'low' | 'high' | 'band';

/** A second-order filter at `hz` with quality `q`. */
export function filter(input: Signal, kind: FilterKind, hz: number, q = 0.7): Signal {
  const w = (TURN * hz) / RATE;
  const alpha = Math.sin(w) / (2 * q);
  const cos = Math.cos(w);
  const [b0, b1, b2] = {
    low: [(1 - cos) / 2, 1 - cos, (1 - cos) / 2] as const,
    high: [(1 + cos) / 2, -(1 + cos), (1 + cos) / 2] as const,
    band: [alpha, 0, -alpha] as const,
  }[kind];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return input.map((x) => {
    const y = (b0 * x + b1 * x1 + b2 * x2 + 2 * cos * y1 - (1 - alpha) * y2) / (1 + alpha);
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  });
}

/** `n` samples that repeat without a seam, cut from a longer signal: its end is faded into its beginning. */
export function seamless(n: number, make: (length: number) => Signal): Signal {
  const settle = Math.round(0.05 * RATE);
  const fade = Math.round(0.08 * RATE);
  const long = make(settle + n + fade).subarray(settle);
  return signal(n, () => 0).map((_, i) => {
    const here = long[i] ?? 0;
    if (i >= fade) return here;
    // Sine and cosine keep the loudness of unrelated noise steady through the fade.
    const turn = (Math.PI / 2) * (i / fade);
    return here * Math.sin(turn) + (long[n + i] ?? 0) * Math.cos(turn);
  });
}

/** Adds `sound` at time `at` (s), wrapping round the end, so that what rings on is heard when the loop begins again. */
export function addRound(into: Signal, at: number, sound: Signal): void {
  const start = Math.round(at * RATE);
  for (const [i, x] of sound.entries()) {
    const k = (start + i) % into.length;
    into[k] = (into[k] ?? 0) + x;
  }
}

/** A struck thing: partials [Hz, strength, seconds to fall to a third], all starting softly within `attack` seconds. */
export function struck(
  seconds: number,
  partials: readonly (readonly [number, number, number])[],
  attack = 0.002,
): Signal {
  return signal(Math.round(seconds * RATE), (t) => {
    const rise = Math.min(1, t / attack) * Math.min(1, (seconds - t) / 0.01);
    return (
      rise *
      partials.reduce((sum, [hz, strength, fall]) => sum + strength * Math.sin(TURN * hz * t) * Math.exp(-t / fall), 0)
    );
  });
}

/** Brings the highest peak to `peak`. */
export function level(input: Signal, peak: number): Signal {
  const highest = input.reduce((max, x) => Math.max(max, Math.abs(x)), 0);
  return scale(input, peak / highest);
}
