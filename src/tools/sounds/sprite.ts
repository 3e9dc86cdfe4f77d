import { CLIPS } from './clips.ts';
import { RATE, type Signal } from './synth.ts';

/** Where a clip lies in the sprite: start and length in ms, and whether it repeats. The player's own format. */
export type Place = readonly [start_ms: number, length_ms: number, loop: boolean];

export interface Sprite {
  /** Every clip with its samples, at `RATE`. */
  readonly clips: readonly { readonly id: string; readonly loop: boolean; readonly samples: Signal }[];
  /** The recording, a WAV file. */
  readonly wav: Buffer;
  /** The places, as the text of a JSON file. */
  readonly json: string;
}

/** Silence, or the loop's own continuation, on both sides of each clip: players resample across its edges. */
const MARGIN = 256;

/** Makes the whole sprite; the same bytes every time. */
export function makeSprite(): Sprite {
  const clips = CLIPS.map(({ id, seconds, loop, make }) => ({ id, loop, samples: make(Math.round(seconds * RATE)) }));
  const places: Record<string, Place> = {};
  const pcm: number[] = [];
  for (const { id, loop, samples } of clips) {
    const n = samples.length;
    places[id] = [ms(pcm.length + MARGIN), ms(n), loop];
    for (let i = -MARGIN; i < n + MARGIN; i++) {
      const x = loop || (i >= 0 && i < n) ? (samples[(i + n) % n] ?? 0) : 0;
      pcm.push(Math.round(x * 32_767));
    }
  }
  return { clips, wav: wavOf(pcm), json: `${JSON.stringify(places, null, 2)}\n` };
}

/** To a thousandth of a millisecond, a fiftieth of a sample. */
function ms(samples: number): number {
  return Math.round((samples / RATE) * 1e6) / 1e3;
}

/** Mono, 16 bit. */
function wavOf(pcm: readonly number[]): Buffer {
  const file = Buffer.alloc(44 + 2 * pcm.length);
  file.write('RIFF', 0);
  file.writeUInt32LE(36 + 2 * pcm.length, 4);
  file.write('WAVEfmt ', 8);
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(RATE, 24);
  file.writeUInt32LE(2 * RATE, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36);
  file.writeUInt32LE(2 * pcm.length, 40);
  for (const [i, x] of pcm.entries()) file.writeInt16LE(x, 44 + 2 * i);
  return file;
}
