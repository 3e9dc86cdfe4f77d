import { Howl, Howler } from 'howler';
import places from '../../assets/sounds/sprite.json' with { type: 'json' };
import type { CueId, Step, Voice } from './voices.ts';

export interface Player {
  apply(step: Step): void;
  /** Of everything, 0 to 1. */
  setVolume(volume: number): void;
  setMuted(muted: boolean): void;
  dispose(): void;
}

const FADE_MS = 120;

/** Loads our one sprite from the folder `base`; fails if it is not to be had. */
export async function openPlayer(base: string): Promise<Player> {
  const howl = new Howl({
    src: [`${base}sprite.wav`],
    sprite: Object.fromEntries(Object.entries(places).map(([id, place]) => [id, place as [number, number, boolean]])),
  });
  await new Promise<void>((resolve, reject) => {
    howl.once('load', () => resolve());
    howl.once('loaderror', () => reject(new Error('no sounds')));
  });
  const sounding = new Map<CueId, number>();

  /** A fade to the loudness a sound has already would never end in Howler. */
  const fade = (sound: number, to: number): boolean => {
    const from = Number(howl.volume(sound));
    if (from === to) return false;
    howl.fade(from, to, FADE_MS, sound);
    return true;
  };
  const start = (id: CueId, { loudness, pitch }: Voice) => {
    const sound = howl.play(id);
    howl.volume(0, sound);
    howl.rate(playable(pitch), sound);
    fade(sound, loudness);
    sounding.set(id, sound);
  };
  const change = (id: CueId, { loudness, pitch }: Voice) => {
    const sound = sounding.get(id);
    if (sound === undefined) return;
    howl.rate(playable(pitch), sound);
    fade(sound, loudness);
  };
  const stop = (id: CueId) => {
    const sound = sounding.get(id);
    if (sound === undefined) return;
    sounding.delete(id);
    if (fade(sound, 0)) howl.once('fade', () => howl.stop(sound), sound);
    else howl.stop(sound);
  };

  return {
    apply(step) {
      if (step.kind === 'start') start(step.id, step);
      else if (step.kind === 'change') change(step.id, step);
      else if (step.kind === 'stop') stop(step.id);
      else howl.volume(step.loudness, howl.play(step.id));
    },
    setVolume: (volume) => Howler.volume(volume),
    setMuted: (muted) => Howler.mute(muted),
    dispose: () => howl.unload(),
  };
}

/** The player takes rates from 0.5 to 4 only. */
function playable(pitch: number): number {
  return Math.min(4, Math.max(0.5, pitch));
}
