import { effect, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Message } from '../../service/message.ts';
import type { Desk } from '../desk.ts';

const VOLUME = 0.7;

/**
 * Plays what can be heard from where the person stands, for as long as the call is on screen, and gives the captions
 * of it, which show whether the sound is on or not.
 */
export function useSounds(desk: Desk): readonly Message[] {
  const captions = useSignal<readonly Message[]>([]);
  useEffect(() => {
    if (desk.openSounds === undefined) return;
    const sound = desk.openSounds({
      base: `${document.baseURI.replace(/[^/]*([?#].*)?$/, '')}sounds/`,
      muted: !desk.settings.peek().sound,
      volume: VOLUME,
      onCaption: (next) => {
        captions.value = next;
      },
    });
    const stopMuting = effect(() => sound.setMuted(!desk.settings.value.sound || desk.session.rate.value !== 1));
    const stopPlaying = effect(() => sound.play(desk.session.view.value?.sounds ?? []));
    return () => {
      stopMuting();
      stopPlaying();
      sound.dispose();
    };
  }, [desk, captions]);
  return captions.value;
}
