/** Scripted people on one call with one seed: what a worker of the deep run answers. */
import { judged, type PlayerId, type Prepared, play, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { symptomsMissing } from '../../src/calls/prove/promises.ts';

export interface Question {
  readonly call: string;
  readonly players: readonly PlayerId[];
  /** Of the seeds from 1 on with which the call is itself, the how manieth, from 1. */
  readonly nth: number;
}

export interface Fared {
  readonly call: string;
  readonly player: PlayerId;
  readonly nth: number;
  readonly seed: number;
  readonly passed: boolean;
  readonly score: number;
}

export function answer({ call, players, nth }: Question): readonly Fared[] {
  const seed = seedOf(call, nth);
  const prepared = withSeed(call, seed);
  return players.map((player) => {
    const { passed, score } = judged(play(prepared, player));
    return { call, player, nth, seed, passed, score };
  });
}

function withSeed(id: string, seed: number): Prepared {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  return prepareCall({ ...call, seed });
}

const found = new Map<string, number[]>();

/** With another seed a household draws otherwise, and may have nothing to call about: then it is not this call. */
function seedOf(id: string, nth: number): number {
  const seeds = found.get(id) ?? [];
  found.set(id, seeds);
  for (let seed = (seeds.at(-1) ?? 0) + 1; seeds.length < nth; seed++) {
    if (symptomsMissing(withSeed(id, seed)).length === 0) seeds.push(seed);
  }
  return seeds[nth - 1] ?? 0;
}
