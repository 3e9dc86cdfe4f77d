import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { PracticeTopics } from './practice-topics.tsx';
import type { Cards, Practice } from './use-practice.ts';

interface Props {
  readonly answers: Practice['answers'];
  readonly cards: Cards;
  readonly unit: string;
  readonly onAgain: () => void;
  readonly onLeave: () => void;
}

/** The count of a practice, and how the topics stand now. */
export function PracticeEnd({ answers, cards, unit, onAgain, onLeave }: Props) {
  const { t } = useDesk();
  const right = answers.filter((one) => one.right).length;
  return (
    <main class="quiz-end">
      <section class="card">
        <ScreenTitle>
          {answers.length === 0 ? t('drills.none') : t('drills.count', { right, asked: answers.length })}
        </ScreenTitle>
        {right < answers.length && <p>{t('quiz.end.next')}</p>}
        <PracticeTopics cards={cards} unit={unit} />
        <div class="buttons">
          <button type="button" class="primary" onClick={onAgain}>
            <Icon name="again" /> {t('quiz.again')}
          </button>
          <button type="button" class="secondary" data-leave onClick={onLeave}>
            {t('quiz.back')}
          </button>
        </div>
      </section>
    </main>
  );
}
