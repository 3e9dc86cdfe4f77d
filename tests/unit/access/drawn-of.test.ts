/** What the picture draws, in words: every part can be told in both languages, and pencil tells nothing. */
import { expect, it } from 'vitest';
import { CallSession, prepareCall, shippedCalls } from '../../../src/calls/index.ts';
import { asAction } from '../../../src/calls/solution.ts';
import { drawnOf } from '../../../src/desk/call/drawn-of.ts';
import type { Scene } from '../../../src/scene/types.ts';
import { PLACES } from '../../../src/service/index.ts';
import { access } from '../../../src/words/en/access.ts';
import { speakAll } from '../spoken.ts';
import { sceneOf } from './scene-of.ts';

const calls = shippedCalls();

it('says of what is in pencil nothing at all', () => {
  const call = calls.find(({ id }) => id === 'sunny-line');
  if (call === undefined) throw new Error('the call does not ship');
  const scene = sceneOf(new CallSession(prepareCall(call), 'practice'));
  expect(PLACES.map((place) => [place, drawnOf(scene, place).length])).toEqual(PLACES.map((place) => [place, 0]));
});

it('says all that is drawn, in each language and system of units, as calls are solved', () => {
  const spoken = new Set<string>();
  for (const call of calls) {
    const session = new CallSession(prepareCall(call), 'practice');
    for (const step of call.solution) {
      session.act(asAction(session, step));
      const scene = sceneOf(session);
      for (const place of PLACES) speakAll(drawnOf(scene, place), spoken);
    }
  }
  for (const scene of rarely(calls)) for (const place of PLACES) speakAll(drawnOf(scene, place), spoken);
  const never = Object.keys(access).filter((id) => id.startsWith('drawn.') && !spoken.has(id));
  expect(never).toEqual([]);
});

/** Pictures that no solution comes by: floats caught or in a hand, tanks that were cored, a lamp that burns. */
function rarely(all: typeof calls): readonly Scene[] {
  const [call] = all;
  if (call === undefined) throw new Error('no calls ship');
  const scene = sceneOf(new CallSession(prepareCall(call), 'practice'));
  const { aeration } = scene.chambers;
  const chambers = { ...scene.chambers, aeration: { ...aeration, scum_m: 0.05, sludge_m: 0.4, bubbles_Lmin: 0 } };
  const ultraviolet = { ...scene.ultraviolet, present: true, lit: true };
  return (['held-up', 'lifted'] as const).map((position) => {
    const floats = scene.floats.map((one) => ({ ...one, position, made: position === 'lifted' }));
    return { ...scene, chambers, ultraviolet, floats };
  });
}
