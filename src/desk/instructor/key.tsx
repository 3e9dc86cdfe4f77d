import { useEffect, useState } from 'preact/hooks';
import type { CallView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { useLater } from '../use-later.ts';

/**
 * A trainer's hand on the trainee's screen, fetched once there is one: the word that the clock was stopped or a moment gone
 * back to, and the instructor's desk behind a key.
 */
export function useTrainerHere(view: CallView | null) {
  const { t } = useDesk();
  const [open, setOpen] = useState(false);
  useEffect(() => {
    const heard = (event: KeyboardEvent) => {
      if (!event.altKey || !event.shiftKey || event.code !== 'KeyI') return;
      event.preventDefault();
      setOpen((is) => !is);
    };
    addEventListener('keydown', heard);
    return () => removeEventListener('keydown', heard);
  }, []);
  const seen = view?.frozen || view?.backTo_ms !== undefined;
  const parts = useLater(open || seen === true, () => import('./here.tsx'), 'instructor');
  return {
    key: (
      <button
        type="button"
        class="pill icon-pill"
        title={t('call.trainer')}
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        <Icon name="look" />
        <span class="vh">{t('call.trainer')}</span>
      </button>
    ),
    here: parts && view && <parts.TrainerHere view={view} open={open} onClose={() => setOpen(false)} />,
  };
}
