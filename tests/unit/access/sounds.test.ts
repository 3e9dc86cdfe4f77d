/** Whoever hears nothing misses nothing: each recording has its words, and the picture is given what is to be seen of it. */
import { describe, expect, it } from 'vitest';
import { CallSession, liveFacts, prepareCall, shippedCalls, shippedVisits } from '../../../src/calls/index.ts';
import { asAction } from '../../../src/calls/solution.ts';
import { soundsOf } from '../../../src/calls/sounds.ts';
import type { SoundCue } from '../../../src/calls/view.ts';
import { handSound } from '../../../src/desk/call/hand-sounds.ts';
import type { Scene } from '../../../src/scene/types.ts';
import type { EffectId } from '../../../src/sound/voices.ts';
import { makeSprite } from '../../../src/tools/sounds/sprite.ts';
import { ENGLISH, SPANISH } from '../spoken.ts';
import { sceneOf } from './scene-of.ts';

/** What a sound goes with in the Scene, which is all that the picture draws. */
const SEEN: Readonly<Record<SoundCue['id'], ((scene: Scene) => boolean) | 'never played'>> = {
  buzzer: ({ panel }) => panel.buzzer === true,
  hum: ({ compressor }) => compressor.running === true,
  rattle: ({ compressor }) => compressor.rattle,
  hiss: ({ compressor }) => compressor.load !== null && compressor.load < 0.2,
  pump: ({ pump }) => pump.running === true,
  spray: ({ field }) => (field.headPressure_kPa ?? 0) > 1,
  bubbles: ({ chambers }) => (chambers.aeration.bubbles_Lmin ?? 0) > 1,
  click: 'never played',
  ring: 'never played',
};

/** Sounds of a hand; what the hand did is told in the same moment. */
const BY_HAND: Readonly<Record<EffectId, true>> = { click: true, clack: true, scrape: true, trickle: true };

const everyCall = [...shippedCalls(), ...shippedVisits()];

/** Does each call's own solution and looks at it after every step. */
function* solved(calls: typeof everyCall): Generator<{ session: CallSession; done: string }> {
  for (const call of calls) {
    const session = new CallSession(prepareCall(call), 'practice');
    yield { session, done: '' };
    for (const step of call.solution) {
      session.act(asAction(session, step));
      yield { session, done: step.do };
    }
  }
}

describe('the recordings', () => {
  it.each(makeSprite().clips)('$id has a caption in both languages, or is of a hand', ({ id }) => {
    if (id in BY_HAND) return;
    expect(Object.keys(SEEN)).toContain(id);
    for (const { texts } of [ENGLISH, SPANISH]) expect(texts[`sound.${id}`]).toMatch(/\S/);
  });

  it('are seen in the picture whenever they are heard, under their own captions', () => {
    const heard = new Set<string>();
    for (const { session } of solved(everyCall.filter(({ id }) => id === 'sunny-line'))) {
      const { person } = session.service;
      // What a person could hear from there, all at once: more than any one fault makes.
      const all = { buzzer: true, compressorRuns: true, rattle: true, pumpRuns: true } as const;
      const some = { ...all, compressorLoad: 0.1, headPressure_kPa: 200, bubbles_Lmin: 40 };
      for (const live of [liveFacts(session), { ...liveFacts(session), ...some }]) {
        const scene = sceneOf(session, live);
        for (const { id, caption } of soundsOf(person, live)) {
          heard.add(id);
          const seen = SEEN[id];
          expect([id, caption.id, seen !== 'never played' && seen(scene)]).toEqual([id, `sound.${id}`, true]);
        }
      }
    }
    const played = Object.entries(SEEN).flatMap(([id, seen]) => (seen === 'never played' ? [] : [id]));
    expect([...heard].sort()).toEqual(played.sort());
  });

  it('of a hand come with a line that says what it did', () => {
    const heard = new Set<string>();
    for (const { session, done } of solved(everyCall.slice(0, 12))) {
      const sound = handSound(done);
      if (sound === undefined) continue;
      heard.add(sound);
      expect([done, session.changes.length]).not.toEqual([done, 0]);
    }
    expect([...heard].sort()).toEqual(Object.keys(BY_HAND).sort());
  });
});
