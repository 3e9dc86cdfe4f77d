/** One scripted person on one call over some seeds: what a worker of the deep run answers. */
import { judged, type PlayerId, play, prepareCall, shippedCalls } from '../../src/calls/index.ts';

export interface Question {
  readonly call: string;
  readonly player: PlayerId;
  readonly seeds: readonly number[];
}

export interface Fared {
  readonly call: string;
  readonly player: PlayerId;
  readonly seed: number;
  readonly passed: boolean;
  readonly score: number;
}

export function answer({ call: id, player, seeds }: Question): readonly Fared[] {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  return seeds.map((seed) => {
    const { passed, score } = judged(play(prepareCall({ ...call, seed }), player));
    return { call: id, player, seed, passed, score };
  });
}
