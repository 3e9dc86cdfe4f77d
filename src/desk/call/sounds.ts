import { effect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Desk } from '../desk.ts';

/** Plays what can be heard from where the person stands, for as long as the call is on screen. */
export function useSounds(desk: Desk): void {
  useEffect(() => {
    if (desk.openSounds === undefined) return;
    let stop = () => {};
    let gone = false;
    void desk.openSounds().then((sounds) => {
      if (gone) return;
      stop = effect(() => {
        const { rate, view } = desk.session;
        sounds.mute(!desk.settings.value.sound);
        // Fast or stopped time has no sound of its own.
        sounds.play(rate.value === 1 ? (view.value?.sounds ?? []) : []);
      });
      const unplay = stop;
      stop = () => {
        unplay();
        sounds.play([]);
      };
    });
    return () => {
      gone = true;
      stop();
    };
  }, [desk]);
}
