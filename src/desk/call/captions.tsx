import type { Message } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

/** What can be heard, in words, whether the sound is on or not. */
export function Captions({ captions }: { captions: readonly Message[] }) {
  const desk = useDesk();
  if (captions.length === 0) return null;
  return (
    <ul class="captions" aria-label={desk.t('call.heard')}>
      {captions.map((caption) => (
        <li key={caption.id}>
          <Icon name="ear" />
          <Said message={caption} />
        </li>
      ))}
    </ul>
  );
}
