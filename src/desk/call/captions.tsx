import type { SoundCue } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

/** What can be heard, in words, whether the sound is on or not. */
export function Captions({ cues }: { cues: readonly SoundCue[] }) {
  const desk = useDesk();
  if (cues.length === 0) return null;
  return (
    <ul class="captions" aria-label={desk.t('call.heard')}>
      {cues.map((cue) => (
        <li key={cue.id}>
          <Icon name="ear" />
          <Said message={cue.caption} />
        </li>
      ))}
    </ul>
  );
}
