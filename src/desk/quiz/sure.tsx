import { useDesk } from '../desk.ts';
import { ScreenTitle } from '../screen.tsx';
import type { Sitting } from './sitting.ts';

interface Props {
  readonly sitting: Sitting;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

/** Before an exam is handed in: what is still open. */
export function Sure({ sitting, onYes, onNo }: Props) {
  const { t } = useDesk();
  return (
    <main class="quiz-sure">
      <section class="card">
        <ScreenTitle>{t('quiz.sure')}</ScreenTitle>
        <Open sitting={sitting} />
        <div class="buttons">
          <button type="button" class="primary" data-hand-in onClick={onYes}>
            {t('quiz.sure.yes')}
          </button>
          <button type="button" class="secondary" onClick={onNo}>
            {t('quiz.sure.no')}
          </button>
        </div>
      </section>
    </main>
  );
}

export function Open({ sitting: { items } }: { readonly sitting: Sitting }) {
  const { t } = useDesk();
  const blank = items.filter(({ given }) => given === null).length;
  const marked = items.filter((one) => one.marked).length;
  return (
    <>
      <p>
        {blank === 0 ? t('quiz.sure.all', { m: items.length }) : t('quiz.sure.blank', { n: blank, m: items.length })}
      </p>
      {marked > 0 && <p>{t('quiz.sure.marked', { n: marked })}</p>}
    </>
  );
}
