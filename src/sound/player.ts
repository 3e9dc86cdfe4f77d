/** The loudspeaker: our recordings through the browser's Web Audio. Each sound has a gain of its own, all share one. */
import places from '../../assets/sounds/sprite.json' with { type: 'json' };
import { onGesture } from './gesture.ts';
import type { CueId, EffectId, Step, Voice } from './voices.ts';

export interface Player {
  apply(step: Step): void;
  /** Of everything, 0 to 1. */
  setVolume(volume: number): void;
  setMuted(muted: boolean): void;
  dispose(): void;
}

/** Named by what is in it, as the list of places is, so that a page of any version gets the recordings it knows. */
const SPRITE = new URL('../../assets/sounds/sprite.wav', import.meta.url).href;

interface Sounding {
  readonly source: AudioBufferSourceNode;
  readonly gain: GainNode;
}

/** Heard as neither a jump nor a wait (common practice, no source). */
const FADE_s = 0.12;
/** A fade nears its end exponentially; five time constants leave less than 1 % of the way. */
const TIME_CONSTANT_s = FADE_s / 5;

/**
 * Loads our one sprite; fails if it is not to be had, or nothing here can play it. Silent until
 * told its volume.
 */
export async function openPlayer(): Promise<Player> {
  const context = new AudioContext();
  const sprite = await recordings(context, SPRITE).catch((error) => {
    void context.close();
    throw error;
  });
  const master = new GainNode(context, { gain: 0 });
  master.connect(context.destination);
  const sounding = new Map<CueId, Sounding>();
  let volume = 0;
  let muted = false;

  // A context may be born suspended, and a phone call may interrupt it; some browsers resume it in a gesture only.
  const wake = () => {
    if (context.state !== 'running') context.resume().catch(() => {});
  };
  wake();
  const stopWaking = onGesture(wake);

  /** From whatever loudness has been reached, also in the middle of another fade. */
  const fade = ({ gain }: GainNode, to: number) => gain.setTargetAtTime(to, context.currentTime, TIME_CONSTANT_s);
  const play = (id: CueId | EffectId, loudness: number, pitch = 1): Sounding => {
    const [start_s, length_s, loop] = placeOf(id);
    const gain = new GainNode(context, { gain: loudness });
    const ends = { loopStart: start_s, loopEnd: start_s + length_s };
    const source = new AudioBufferSourceNode(context, { buffer: sprite, playbackRate: pitch, loop, ...ends });
    source.connect(gain).connect(master);
    source.start(0, start_s, loop ? undefined : length_s);
    return { source, gain };
  };

  const start = (id: CueId, { loudness, pitch }: Voice) => {
    const sound = play(id, 0, pitch);
    fade(sound.gain, loudness);
    sounding.set(id, sound);
  };
  const change = (id: CueId, { loudness, pitch }: Voice) => {
    const sound = sounding.get(id);
    if (sound === undefined) return;
    sound.source.playbackRate.value = pitch;
    fade(sound.gain, loudness);
  };
  const stop = (id: CueId) => {
    const sound = sounding.get(id);
    if (sound === undefined) return;
    sounding.delete(id);
    fade(sound.gain, 0);
    sound.source.stop(context.currentTime + FADE_s);
  };
  /** What is over at once is not saved up for when a suspended context resumes: it would all sound together. */
  const once = (id: CueId | EffectId, loudness: number) => {
    if (context.state === 'running') play(id, loudness);
  };
  const setMaster = () => fade(master, muted ? 0 : volume);

  return {
    apply(step) {
      if (step.kind === 'start') start(step.id, step);
      else if (step.kind === 'change') change(step.id, step);
      else if (step.kind === 'stop') stop(step.id);
      else once(step.id, step.loudness);
    },
    setVolume(next) {
      volume = next;
      setMaster();
    },
    setMuted(next) {
      muted = next;
      setMaster();
    },
    dispose() {
      stopWaking();
      void context.close();
    },
  };
}

async function recordings(context: AudioContext, address: string): Promise<AudioBuffer> {
  const response = await fetch(address);
  if (!response.ok) throw new Error('no sounds');
  return context.decodeAudioData(await response.arrayBuffer());
}

/** Where a recording starts, how long it is, and whether it goes round. */
function placeOf(id: CueId | EffectId): readonly [start_s: number, length_s: number, loop: boolean] {
  const [start_ms, length_ms, loop] = places[id] as [number, number, boolean];
  return [start_ms / 1000, length_ms / 1000, loop];
}
