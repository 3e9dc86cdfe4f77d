import { effect, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Message } from '../../service/message.ts';
import type { Desk } from '../desk.ts';
import { handSound } from './hand-sounds.ts';

const VOLUME = 0.7;

/**
 * Plays what can be heard from where the person stands, and what their hands make heard, for as long as the call is on
 * screen. Gives the captions of the former, which show whether the sound is on or not.
 */
export function useSounds(desk: Desk): readonly Message[] {
  const captions = useSignal<readonly Message[]>([]);
  useEffect(() => {
    if (desk.openSounds === undefined) return;
    const sound = desk.openSounds({
      muted: !desk.settings.peek().sound,
      volume: VOLUME,
      onCaption: (next) => {
        captions.value = next;
      },
    });
    const stopMuting = effect(() => sound.setMuted(!desk.settings.value.sound || desk.session.rate.value !== 1));
    const stopPlaying = effect(() => sound.play(desk.session.view.value?.sounds ?? []));
    const stopHand = effect(() => {
      const made = handSound(desk.session.handled.value?.id ?? '');
      if (made !== undefined) sound.effect(made);
    });
    return () => {
      stopMuting();
      stopPlaying();
      stopHand();
      sound.dispose();
    };
  }, [desk, captions]);
  return captions.value;
}
