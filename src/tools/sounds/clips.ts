/** Our recordings, one function each: what is heard at a treatment unit, made from sums of sines and shaped noise. */
import {
  addRound,
  dice,
  filter,
  level,
  mix,
  noise,
  RATE,
  type Signal,
  scale,
  seamless,
  signal,
  struck,
  tone,
} from './synth.ts';

export interface Clip {
  readonly id: string;
  readonly seconds: number;
  readonly loop: boolean;
  readonly make: (samples: number) => Signal;
}

const TURN = 2 * Math.PI;

/**
 * Compressor at its design point: mains hum at 60 and 120 Hz with a breath of air over it. The overtones are strong,
 * because a telephone's loudspeaker gives nothing below 200 Hz; the ear adds the missing ground.
 */
function hum(n: number): Signal {
  const mains = tone(n, 60, [0.3, 0.7, 0.25, 0.6, 0.15, 0.4, 0.1, 0.28, 0.05, 0.16, 0.03, 0.1]);
  const breath = seamless(n, (length) => filter(noise(length, 11), 'band', 900, 0.6));
  return level(
    mix(
      scale(mains, (t) => 1 + 0.03 * Math.sin(TURN * 4 * t)),
      scale(breath, 0.12),
    ),
    0.7,
  );
}

/** A torn diaphragm slaps once a stroke, every second slap harder, over a thin hum. */
function rattle(n: number): Signal {
  const out = scale(tone(n, 60, [0.1, 0.25, 0.1, 0.12]), 0.5);
  const roll = dice(23);
  for (let stroke = 0; stroke < 36; stroke++) {
    const hard = (stroke % 2 === 0 ? 1 : 0.45) * (0.75 + 0.5 * roll());
    const pitch = 1 + 0.06 * (roll() - 0.5);
    const partials = [
      [310, 0.8, 0.006],
      [870, 0.6, 0.004],
      [1640, 0.4, 0.003],
      [2700, 0.2, 0.002],
    ] as const;
    const slap = struck(
      0.05,
      partials.map(([hz, strength, fall]) => [hz * pitch, strength * hard, fall] as const),
      0.0008,
    );
    addRound(out, (stroke + 0.12 * roll()) / 60, slap);
  }
  return level(out, 0.75);
}

/** Air through a split: a narrow, high rush that trembles a little. */
function hiss(n: number): Signal {
  const rush = seamless(n, (length) => filter(filter(noise(length, 31), 'high', 2600), 'low', 7500));
  const body = seamless(n, (length) => filter(noise(length, 32), 'band', 3900, 3));
  return level(
    mix(
      scale(rush, (t) => 1 + 0.12 * Math.sin(TURN * 7.5 * t)),
      scale(body, 0.8),
    ),
    0.6,
  );
}

/** The panel's buzzer: two reeds a little apart, rounded, in half-second calls. */
function buzzer(n: number): Signal {
  const reed = [1, 0.55, 0.5, 0.28, 0.22, 0.12, 0.08];
  const both = mix(tone(n, 330, reed), scale(tone(n, 336, reed), 0.7));
  const call = (t: number) => {
    const edge = Math.min(1, t / 0.02, Math.max(0, (0.36 - t) / 0.03));
    return 0.5 - 0.5 * Math.cos(Math.PI * edge);
  };
  return level(scale(both, call), 0.7);
}

/** A submersible pump, heard through lid and water: shaft and mains, and the rush in the riser pipe. */
function pump(n: number): Signal {
  const shaft = tone(n, 175 / 3, [0.3, 0.45, 0.3, 0.25, 0.2, 0.14, 0.1, 0.08]);
  const mains = tone(n, 120, [0.45, 0.3, 0.2, 0.15, 0.1, 0.06]);
  const rush = seamless(n, (length) => filter(filter(noise(length, 41), 'band', 520, 0.5), 'low', 1800));
  return level(mix(shaft, mains, scale(rush, 0.9)), 0.7);
}

/** Spray heads: drops through air and on grass, swinging as the heads turn. */
function spray(n: number): Signal {
  const fan = seamless(n, (length) => filter(filter(noise(length, 51), 'high', 1100), 'low', 6500));
  const grass = seamless(n, (length) => filter(noise(length, 52), 'band', 1500, 0.8));
  const out = mix(
    scale(fan, (t) => 0.75 + 0.25 * Math.sin(TURN * 3 * t)),
    scale(grass, 0.5),
  );
  const roll = dice(53);
  for (let drop = 0; drop < 40; drop++) {
    addRound(out, roll(), struck(0.02, [[1800 + 2600 * roll(), 0.5 * roll(), 0.003]], 0.0005));
  }
  return level(out, 0.6);
}

/** One bubble: it rings higher as it shrinks towards the surface. */
function bubble(hz: number, strength: number, seconds: number): Signal {
  let phase = 0;
  return signal(Math.round(seconds * RATE), (t) => {
    phase += (TURN * hz * (1 + (0.5 * t) / seconds)) / RATE;
    return (
      strength *
      Math.min(1, t / 0.002) *
      Math.exp((-5 * t) / seconds) *
      Math.min(1, (seconds - t) / 0.003) *
      Math.sin(phase)
    );
  });
}

/** Aerated water: many bubbles of all sizes over a low boil. */
function bubbles(n: number): Signal {
  const out = scale(
    seamless(n, (length) => filter(noise(length, 61), 'band', 320, 0.7)),
    0.5,
  );
  const roll = dice(62);
  for (let k = 0; k < 150; k++) {
    const size = roll();
    const hz = 320 + 1500 * size * size;
    addRound(out, (n / RATE) * roll(), bubble(hz, (0.15 + 0.35 * roll()) * (1.2 - size), 0.03 + 0.05 * (1 - size)));
  }
  return level(out, 0.65);
}

/** A cup of water poured back: a few small, clear bubbles over a thin stream. */
function trickle(n: number): Signal {
  const out = scale(
    seamless(n, (length) => filter(filter(noise(length, 71), 'band', 2400, 0.8), 'high', 900)),
    0.12,
  );
  const roll = dice(72);
  for (let k = 0; k < 46; k++) {
    addRound(out, (n / RATE) * roll(), bubble(900 + 1700 * roll(), 0.1 + 0.4 * roll() * roll(), 0.02 + 0.03 * roll()));
  }
  const seconds = n / RATE;
  const pour = (t: number) => Math.min(1, t / 0.05, (seconds - t) / 0.2);
  return level(scale(out, pour), 0.55);
}

/** A relay in the panel. */
function click(n: number): Signal {
  const tick = struck(
    n / RATE,
    [
      [2300, 0.7, 0.004],
      [3700, 0.5, 0.0025],
      [1150, 0.4, 0.007],
    ],
    0.0006,
  );
  return level(
    mix(
      tick,
      scale(noise(n, 81), (t) => 0.35 * Math.exp(-t / 0.002)),
    ),
    0.6,
  );
}

/** A breaker's lever: the spring goes over, then the lever meets its stop. */
function clack(n: number): Signal {
  const out = signal(n, () => 0);
  addRound(
    out,
    0.001,
    struck(
      0.06,
      [
        [1500, 0.5, 0.004],
        [2650, 0.3, 0.003],
      ],
      0.0006,
    ),
  );
  addRound(
    out,
    0.018,
    struck(
      0.11,
      [
        [420, 1, 0.014],
        [980, 0.7, 0.009],
        [1900, 0.4, 0.005],
      ],
      0.0008,
    ),
  );
  return level(
    mix(
      out,
      scale(noise(n, 91), (t) => (t < 0.018 ? 0 : 0.3 * Math.exp(-(t - 0.018) / 0.004))),
    ),
    0.75,
  );
}

/** A lid drawn over its rim: it sticks and slips some seventy times a second. */
function scrape(n: number): Signal {
  const seconds = n / RATE;
  const grain = filter(filter(noise(n, 101), 'band', 760, 0.8), 'low', 3200);
  const slip = (t: number) => 0.55 + 0.45 * Math.sin(TURN * (58 * t + 14 * t * t)) ** 3;
  const pull = (t: number) => Math.sin(Math.PI * (t / seconds)) ** 0.7 * (1 - 0.35 * Math.sin(TURN * 3.1 * t));
  return level(
    scale(grain, (t) => slip(t) * pull(t)),
    0.65,
  );
}

/** The telephone: three soft bars up, twice, then a rest. */
function ring(n: number): Signal {
  const out = signal(n, () => 0);
  const bars = [523.25, 659.25, 783.99, 523.25, 659.25, 783.99];
  for (const [k, hz] of bars.entries()) {
    const bar = struck(
      0.5,
      [
        [hz, 1, 0.13],
        [hz * 3.93, 0.16, 0.03],
        [hz * 9.2, 0.04, 0.01],
      ],
      0.004,
    );
    addRound(out, 0.01 + 0.11 * k + (k > 2 ? 0.09 : 0), bar);
  }
  return level(out, 0.6);
}

export const CLIPS: readonly Clip[] = [
  { id: 'hum', seconds: 0.5, loop: true, make: hum },
  { id: 'rattle', seconds: 0.6, loop: true, make: rattle },
  { id: 'hiss', seconds: 0.8, loop: true, make: hiss },
  { id: 'buzzer', seconds: 0.5, loop: true, make: buzzer },
  { id: 'pump', seconds: 0.6, loop: true, make: pump },
  { id: 'spray', seconds: 1, loop: true, make: spray },
  { id: 'bubbles', seconds: 1.4, loop: true, make: bubbles },
  { id: 'ring', seconds: 1.4, loop: true, make: ring },
  { id: 'trickle', seconds: 0.8, loop: false, make: trickle },
  { id: 'click', seconds: 0.06, loop: false, make: click },
  { id: 'clack', seconds: 0.14, loop: false, make: clack },
  { id: 'scrape', seconds: 0.5, loop: false, make: scrape },
];
