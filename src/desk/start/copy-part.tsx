import { useRef, useState } from 'preact/hooks';
import type { Message } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

type Copying = typeof import('../copy/copy.ts');

/** All that is kept as a file, and back from one. */
export function CopyPart() {
  const desk = useDesk();
  const { t } = desk;
  const choice = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState<readonly Message[]>([]);
  const copying = async (work: (parts: Copying) => Promise<readonly Message[]>) => {
    setSaid([]);
    try {
      setSaid(await work(await import('../copy/copy.ts')));
    } catch {
      desk.fail({ id: 'trouble.notLoaded' });
    }
  };
  return (
    <div class="copy-part">
      <p class="small">{t('set.kept')}</p>
      <div class="buttons">
        <button type="button" class="secondary" onClick={() => void copying(({ keepCopy }) => keepCopy(desk))}>
          <Icon name="save" /> {t('set.copy.keep')}
        </button>
        <button type="button" class="secondary" onClick={() => choice.current?.click()}>
          {t('set.copy.back')}
        </button>
      </div>
      <input
        ref={choice}
        type="file"
        accept=".json,application/json"
        hidden
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file !== undefined) void copying(({ bringBack }) => bringBack(desk, file));
          // The same file can be chosen again.
          currentTarget.value = '';
        }}
      />
      <div role="status" class="small">
        {said.map((one, i) => (
          <p key={i}>
            <Said message={one} />
          </p>
        ))}
      </div>
    </div>
  );
}
