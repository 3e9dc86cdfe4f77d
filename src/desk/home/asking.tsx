import type { ComponentChildren } from 'preact';
import { useDesk } from '../desk.ts';
import type { Asking } from './ask.ts';
import type { HomeRequest } from './protocol.ts';

interface Props<R extends HomeRequest> {
  readonly asking: Asking<R>;
  /** Names the button that begins, for who looks for it. */
  readonly id: string;
  readonly begin: string;
  readonly onBegin: () => void;
  readonly children: ComponentChildren;
}

/** What is asked of the household's worker: its choices, the way to begin and to stop, and how far it has come. */
export function AskForm<R extends HomeRequest>({ asking, id, begin, onBegin, children }: Props<R>) {
  const { t } = useDesk();
  const busy = asking.share !== undefined;
  return (
    <>
      <form
        class="home-fields"
        onSubmit={(event) => {
          event.preventDefault();
          onBegin();
        }}
      >
        {children}
        <p class="buttons">
          <button type="submit" class="primary" data-begin={id} disabled={busy}>
            {begin}
          </button>
          {busy && (
            <button type="button" class="secondary" data-stop onClick={asking.stop}>
              {t('home.whatif.cancel')}
            </button>
          )}
        </p>
      </form>
      {busy && (
        <p class="home-progress">
          <progress max={1} value={asking.share} aria-label={t('home.whatif.progress')} />
        </p>
      )}
      <div aria-live="polite">{asking.stopped && <p>{t('home.whatif.stopped')}</p>}</div>
    </>
  );
}
