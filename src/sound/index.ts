/**
 * What one hears. Captions follow what the simulation asks for, never what the loudspeaker does, so they are right
 * without sound, before the first click, and when muted. The player is loaded when there is first something to hear.
 */
import type { SoundCue } from '../calls/view.ts';
import type { Message } from '../service/message.ts';
import { orderCaptions } from './captions.ts';
import { afterGesture } from './gesture.ts';
import type { Player } from './player.ts';
import { type CueId, type EffectId, type Step, stepsBetween, voicesOf } from './voices.ts';

export interface SoundOptions {
  readonly muted: boolean;
  /** Of everything, 0 to 1. */
  readonly volume: number;
  /** Gets what sounds now, the newest first and the buzzer before all, whenever that changes. */
  readonly onCaption: (captions: readonly Message[]) => void;
}

export interface Sound {
  /** All that is audible now; what was asked before and is not here stops. */
  play(cues: readonly SoundCue[]): void;
  /** A sound of the hand, once. */
  effect(id: EffectId): void;
  setMuted(muted: boolean): void;
  setVolume(volume: number): void;
  dispose(): void;
  /** The latest steps asked for, oldest first, whether or not anything could be heard. */
  readonly requests: readonly Step[];
}

const LOG_LENGTH = 200;
const EFFECT_LOUDNESS = 0.6;

export function openSound({ muted, volume, onCaption }: SoundOptions): Sound {
  let cues: readonly SoundCue[] = [];
  let order: readonly CueId[] = [];
  let captions: readonly Message[] = [];
  let player: Player | undefined;
  let loading = false;
  let wanted = false;
  let mayPlay = false;
  let disposed = false;
  const requests: Step[] = [];

  const loadPlayer = async () => {
    const { openPlayer } = await import('./player.ts');
    const opened = await openPlayer();
    if (disposed) {
      opened.dispose();
      return;
    }
    player = opened;
    player.setVolume(volume);
    player.setMuted(muted);
    // What began before the player was there goes on from here; what was over by then stays unheard.
    for (const step of stepsBetween(new Map(), voicesOf(cues))) if (step.kind === 'start') player.apply(step);
  };

  const load = () => {
    if (loading || muted || !mayPlay || !wanted) return;
    loading = true;
    loadPlayer().catch(() => {
      // Not to be had, perhaps offline: silence until something is asked for again.
      loading = false;
    });
  };

  const ask = (steps: readonly Step[]) => {
    requests.push(...steps);
    requests.splice(0, requests.length - LOG_LENGTH);
    for (const step of steps) player?.apply(step);
    wanted ||= steps.length > 0;
    load();
  };

  const stopWaiting = afterGesture(() => {
    mayPlay = true;
    load();
  });

  const caption = () => {
    order = orderCaptions(order, cues);
    const next = order.flatMap((id) => cues.find((cue) => cue.id === id && cue.loudness > 0)?.caption ?? []);
    const changed = next.length !== captions.length || next.some(({ id }, i) => id !== captions[i]?.id);
    captions = next;
    if (changed) onCaption(captions);
  };

  return {
    requests,
    play(next) {
      const steps = stepsBetween(voicesOf(cues), voicesOf(next));
      cues = next;
      caption();
      ask(steps);
    },
    effect: (id) => ask([{ kind: 'once', id, loudness: EFFECT_LOUDNESS }]),
    setMuted(next) {
      muted = next;
      player?.setMuted(muted);
      load();
    },
    setVolume(next) {
      volume = next;
      player?.setVolume(volume);
    },
    dispose() {
      disposed = true;
      stopWaiting();
      player?.dispose();
      player = undefined;
    },
  };
}
