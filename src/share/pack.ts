/** Bytes made short for a link, and made whole again up to a limit: a small link can unpack into gigabytes. */
import { packing, type Through, unpacking } from './platform.ts';

/** Bytes that were taken apart by a stream. */
export class TooLarge extends Error {}

/** Unpacked bytes come a thousand times the packed ones at most, so a piece this short never fills the memory. */
const PIECE_bytes = 1024;

export function packed(bytes: Uint8Array): Promise<Uint8Array> {
  return through(packing(), bytes, Number.POSITIVE_INFINITY);
}

/** Throws `TooLarge` as soon as there are more than `most_bytes`, and whatever the machine throws where they do not unpack. */
export function unpacked(bytes: Uint8Array, most_bytes: number): Promise<Uint8Array> {
  return through(unpacking(), bytes, most_bytes);
}

async function through(stream: Through, bytes: Uint8Array, most_bytes: number): Promise<Uint8Array> {
  const reader = stream.readable.getReader();
  const fed = feed(stream, bytes);
  // Whoever reads is told as well; here it is only kept from being nobody's.
  fed.catch(() => {});
  const pieces: Uint8Array[] = [];
  let size = 0;
  for (let next = await reader.read(); next.value !== undefined; next = await reader.read()) {
    size += next.value.length;
    if (size > most_bytes) {
      await reader.cancel();
      throw new TooLarge();
    }
    pieces.push(next.value);
  }
  await fed;
  return joined(pieces, size);
}

async function feed({ writable }: Through, bytes: Uint8Array): Promise<void> {
  const writer = writable.getWriter();
  for (let at = 0; at < bytes.length; at += PIECE_bytes) await writer.write(bytes.slice(at, at + PIECE_bytes));
  await writer.close();
}

export function joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
