import { describe, expect, it } from 'vitest';
import type { SoundCue } from '../../src/calls/view.ts';
import { orderCaptions } from '../../src/sound/captions.ts';
import { stepsBetween, voicesOf } from '../../src/sound/voices.ts';

const cue = (id: SoundCue['id'], loudness = 0.5, pitch = 1): SoundCue => ({ id, loudness, pitch, caption: { id } });
const steps = (now: readonly SoundCue[], asked: readonly SoundCue[]) => stepsBetween(voicesOf(now), voicesOf(asked));

describe('from what sounds to what is asked for', () => {
  it('starts what is new and stops what is gone, stops first', () => {
    expect(steps([cue('hum')], [cue('buzzer', 0.9)])).toEqual([
      { kind: 'stop', id: 'hum' },
      { kind: 'start', id: 'buzzer', loudness: 0.9, pitch: 1 },
    ]);
  });

  it('leaves alone what goes on as it was', () => {
    expect(steps([cue('hum'), cue('bubbles')], [cue('bubbles'), cue('hum', 0.501, 1.001)])).toEqual([]);
  });

  it('follows loudness and pitch', () => {
    expect(steps([cue('hum', 0.5, 1)], [cue('hum', 0.5, 0.92)])).toEqual([
      { kind: 'change', id: 'hum', loudness: 0.5, pitch: 0.92 },
    ]);
  });

  it('takes loudness zero for silence, and the louder of two', () => {
    expect(steps([cue('hum')], [cue('hum', 0)])).toEqual([{ kind: 'stop', id: 'hum' }]);
    expect(voicesOf([cue('hiss', 0.2), cue('hiss', 0.7), cue('hiss', 0.4)]).get('hiss')?.loudness).toBe(0.7);
  });

  it('plays a click once when it appears, and never stops it', () => {
    expect(steps([], [cue('click')])).toEqual([{ kind: 'once', id: 'click', loudness: 0.5 }]);
    expect(steps([cue('click')], [cue('click', 0.9)])).toEqual([]);
    expect(steps([cue('click')], [])).toEqual([]);
  });
});

describe('the order of captions', () => {
  it('is newest first', () => {
    const first = orderCaptions([], [cue('hum')]);
    expect(orderCaptions(first, [cue('hum'), cue('pump')])).toEqual(['pump', 'hum']);
  });

  it('keeps the buzzer first for as long as it sounds', () => {
    const alarm = orderCaptions(['hum'], [cue('hum'), cue('buzzer')]);
    expect(orderCaptions(alarm, [cue('hum'), cue('buzzer'), cue('pump')])).toEqual(['buzzer', 'pump', 'hum']);
    expect(orderCaptions(alarm, [cue('hum')])).toEqual(['hum']);
  });

  it('leaves out what nobody hears', () => {
    expect(orderCaptions(['hum'], [cue('hum', 0), cue('spray', 0.1)])).toEqual(['spray']);
  });
});
