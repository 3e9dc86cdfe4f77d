import { useDesk } from '../desk.ts';
import { ScreenTitle } from '../screen.tsx';
import type { Sitting } from './sitting.ts';
import { Open } from './sure.tsx';
import { withMore, withoutClock } from './time.ts';

interface Props {
  readonly sitting: Sitting;
  readonly change: (how: (sitting: Sitting) => Sitting) => void;
  readonly onHandIn: () => void;
}

/** The time is up: nothing happens by itself, and more can be had as often as it is wanted. */
export function TimeUp({ sitting, change, onHandIn }: Props) {
  const { t } = useDesk();
  return (
    <main class="quiz-sure">
      <section class="card">
        <ScreenTitle>{t('quiz.up')}</ScreenTitle>
        <p>{t('quiz.up.about')}</p>
        <Open sitting={sitting} />
        <div class="buttons">
          <button type="button" class="primary" data-hand-in onClick={onHandIn}>
            {t('quiz.sure.yes')}
          </button>
          <button type="button" class="secondary more-time" onClick={() => change(withMore)}>
            {t('quiz.sit.more')}
          </button>
          <button type="button" class="secondary" onClick={() => change(withoutClock)}>
            {t('quiz.up.off')}
          </button>
        </div>
      </section>
    </main>
  );
}
