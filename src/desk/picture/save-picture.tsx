import { useEffect, useRef, useState } from 'preact/hooks';
import type { Scene } from '../../scene/types.ts';
import { formatClock } from '../../words/measure.ts';
import type { ViewName, Yard } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { handOverFile } from '../hand-over.ts';
import { Icon } from '../icons.tsx';
import { posterWords } from './poster-words.ts';
import '../css/picture.css';

interface Props {
  readonly yard: Yard;
  readonly scene: Scene;
  readonly view: ViewName;
  readonly onAway: () => void;
}

type Kind = 'png' | 'svg';
type Doing = { readonly share: number } | { readonly saved: string } | 'failed';

/** A picture that takes longer than this shows how far it is, ms. */
const LONG_ms = 500;

/** Keeps what is drawn, the whole works or a close-up, as a file, painted or written. */
export function SavePicture({ yard, scene, view, onAway }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const [doing, setDoing] = useState<Doing>();
  const card = useRef<HTMLDivElement>(null);
  useEffect(() => card.current?.querySelector('button')?.focus(), []);
  const busy = typeof doing === 'object' && 'share' in doing;

  const save = async (kind: Kind) => {
    if (busy) return;
    const began = performance.now();
    const title = view === 'yard' ? undefined : t(`plate.title.${view}`);
    setDoing({ share: 0 });
    try {
      const progress = (share: number) => performance.now() - began > LONG_ms && setDoing({ share });
      const picture = await yard.poster({ kind, progress, ...posterWords(desk, scene, title) });
      const file = `underlawn-${nameOf(scene)}.${kind}`;
      handOverFile(file, picture);
      setDoing({ saved: file });
    } catch (error) {
      console.error(error);
      setDoing('failed');
    }
  };

  return (
    <div
      ref={card}
      class="save-picture card"
      role="dialog"
      aria-label={t('view.save')}
      onKeyDown={(event) => event.key === 'Escape' && onAway()}
    >
      <p>{t('picture.about')}</p>
      {(['png', 'svg'] as const).map((kind) => (
        <button
          key={kind}
          type="button"
          class="secondary"
          data-kind={kind}
          aria-disabled={busy}
          onClick={() => save(kind)}
        >
          <Icon name="save" /> {t(`picture.${kind}`)}
        </button>
      ))}
      {busy && doing.share > 0 && <progress value={doing.share} aria-label={t('picture.painting')} />}
      <p role="status">
        {doing === 'failed' && t('picture.failed')}
        {typeof doing === 'object' && 'saved' in doing && t('picture.saved', { file: doing.saved })}
      </p>
      <button type="button" class="round" onClick={onAway}>
        <Icon name="cross" />
        <span class="vh">{t('form.back')}</span>
      </button>
    </div>
  );
}

function nameOf({ sky, clock_s }: Scene): string {
  const two = (n: number) => String(n).padStart(2, '0');
  const { year, month, day } = sky.date;
  return `${year}-${two(month)}-${two(day)}-${formatClock(clock_s).replace(':', '')}`;
}
