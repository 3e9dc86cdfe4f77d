import type { SoundCue } from '../calls/view.ts';
import type { CueId } from './voices.ts';

/**
 * The order captions are shown in: newest first, and the buzzer before all else for as long as it sounds. `order` is
 * the order so far, by id.
 */
export function orderCaptions(order: readonly CueId[], cues: readonly SoundCue[]): readonly CueId[] {
  const audible = [...new Set(cues.filter(({ loudness }) => loudness > 0).map(({ id }) => id))];
  const fresh = audible.filter((id) => !order.includes(id)).reverse();
  const all = [...fresh, ...order.filter((id) => audible.includes(id))];
  return [...all.filter((id) => id === 'buzzer'), ...all.filter((id) => id !== 'buzzer')];
}
