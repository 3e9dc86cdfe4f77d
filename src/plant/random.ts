/**
 * Counter-based random numbers: the n-th number of a stream depends on (seed, stream, n) alone, so an extra reading
 * or action never shifts what the household does, and a fork of a unit stays its twin.
 *
 * Philox4x32-10. Source: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel random numbers: as easy as
 * 1, 2, 3", SC11 (2011); known answers in tests/published/random.test.ts.
 */
import { exp, log } from './num.ts';

/** High and low 32 bits of the product of two unsigned 32-bit integers, in exact double arithmetic. */
function multiplyHigh(a: number, b: number): number {
  const aHigh = a >>> 16;
  const aLow = a & 0xffff;
  const bHigh = b >>> 16;
  const bLow = b & 0xffff;
  const middle = aHigh * bLow + Math.floor((aLow * bLow) / 65536);
  const cross = aLow * bHigh + (middle % 65536);
  return (aHigh * bHigh + Math.floor(middle / 65536) + Math.floor(cross / 65536)) >>> 0;
}

/** Ten Philox rounds on a 128-bit counter with a 64-bit key; four unsigned 32-bit words out. */
export function philox(counter: readonly number[], key: readonly number[]): [number, number, number, number] {
  let [c0 = 0, c1 = 0, c2 = 0, c3 = 0] = counter;
  let [k0 = 0, k1 = 0] = key;
  for (let round = 0; round < 10; round++) {
    const high0 = multiplyHigh(0xd2511f53, c0);
    const low0 = Math.imul(0xd2511f53, c0) >>> 0;
    const high1 = multiplyHigh(0xcd9e8d57, c2);
    const low1 = Math.imul(0xcd9e8d57, c2) >>> 0;
    c0 = (high1 ^ c1 ^ k0) >>> 0;
    c1 = low1;
    c2 = (high0 ^ c3 ^ k1) >>> 0;
    c3 = low0;
    k0 = (k0 + 0x9e3779b9) >>> 0;
    k1 = (k1 + 0xbb67ae85) >>> 0;
  }
  return [c0, c1, c2, c3];
}

/** A stream's name as 32 bits (FNV-1a). */
function streamNumber(stream: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < stream.length; i++) hash = Math.imul(hash ^ stream.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/** The index-th uniform number of a stream, strictly between 0 and 1, 53 bits. */
export function draw(seed: number, stream: string, index: number): number {
  const low = index >>> 0;
  const high = Math.floor(index / 4294967296) >>> 0;
  const [a, b] = philox([low, high, streamNumber(stream), 0], [seed >>> 0, Math.floor(seed / 4294967296) >>> 0]);
  return ((a >>> 5) * 67108864 + (b >>> 6) + 0.5) / 9007199254740992;
}

/** Poisson count with the given mean, by inversion of one uniform number (mean below about 100). */
export function poisson(mean: number, u: number): number {
  let probability = exp(-mean);
  let sum = probability;
  let n = 0;
  while (u > sum && n < 1000) {
    n += 1;
    probability *= mean / n;
    sum += probability;
  }
  return n;
}

/** Nearly normal number (mean 0, deviation 1, never beyond 6): the sum of 12 uniforms of a stream, minus 6. */
export function gaussian(seed: number, stream: string, index: number): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += draw(seed, stream, index * 12 + i);
  return sum;
}

/** Exponential waiting time with the given mean, from one uniform. */
export function exponential(mean: number, u: number): number {
  return -mean * log(u);
}
