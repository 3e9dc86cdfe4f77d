/** Scripted people on one call with one seed: what a worker of the deep run answers. */
import { judged, type PlayerId, play, prepareCall, shippedCalls } from '../../src/calls/index.ts';

export interface Question {
  readonly call: string;
  readonly players: readonly PlayerId[];
  readonly seed: number;
}

export interface Fared {
  readonly call: string;
  readonly player: PlayerId;
  readonly seed: number;
  readonly passed: boolean;
  readonly score: number;
}

export function answer({ call: id, players, seed }: Question): readonly Fared[] {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  const prepared = prepareCall({ ...call, seed });
  return players.map((player) => {
    const { passed, score } = judged(play(prepared, player));
    return { call: id, player, seed, passed, score };
  });
}
