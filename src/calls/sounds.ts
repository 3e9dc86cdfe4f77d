/** What is audible where the person stands, from what they perceive. */
import { type LiveFacts, type Person, say } from '../service/index.ts';
import type { SoundCue } from './view.ts';

export function soundsOf(person: Person, live: LiveFacts): SoundCue[] {
  const cues: SoundCue[] = [];
  const add = (id: SoundCue['id'], loudness: number, pitch = 1) =>
    cues.push({ id, caption: say(`sound.${id}`), loudness, pitch });
  if (live.buzzer) add('buzzer', person.onSite ? (person.place === 'panel' ? 1 : 0.6) : 0.3);
  if (live.compressorRuns) {
    // Under load the armature is held back: a laboured hum is lower, an unloaded one higher.
    add('hum', 0.6, 1.15 - 0.4 * (live.compressorLoad ?? 0.4));
    if (live.rattle) add('rattle', 0.6);
    if ((live.compressorLoad ?? 1) < 0.2) add('hiss', 0.4);
  }
  if (person.onSite && (live.headPressure_kPa ?? 0) > 1) {
    add('spray', person.place === 'spray-field' ? 0.8 : 0.3);
    if (live.pumpRuns) add('pump', 0.5);
  }
  if ((live.bubbles_Lmin ?? 0) > 1) add('bubbles', 0.5);
  return cues;
}
