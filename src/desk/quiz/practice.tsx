import type { UnitSpec } from '../../unit/spec.ts';
import { useDesk } from '../desk.ts';
import { Item } from '../drills/item.tsx';
import { useFocus } from '../drills/use-focus.ts';
import { Verdict } from '../drills/verdict.tsx';
import { Icon } from '../icons.tsx';
import { promptId } from './prompt-id.ts';
import { type Cards, PRACTICE_LENGTH, type Practice, usePractice } from './use-practice.ts';

interface Props {
  readonly spec: UnitSpec;
  readonly seed: number;
  readonly cards: Cards;
  readonly onCards: (cards: Cards) => void;
  readonly onEnd: (answers: Practice['answers']) => void;
}

/** Twelve questions, each told at once. */
export function PracticeScreen({ spec, seed, cards, onCards, onEnd }: Props) {
  const { t } = useDesk();
  const practice = usePractice(spec, seed, cards, onCards);
  const { drill, given, answers, number } = practice;
  const { prompt, next } = useFocus(number, given !== null);
  const right = answers.filter((one) => one.right).length;
  const last = number === PRACTICE_LENGTH;
  return (
    <main class="drill quiz-practice">
      <div class="drill-head">
        <h1>
          {t(`drills.skill.${drill.skill}`)}{' '}
          <span class="drill-number">{t('quiz.sit.question', { n: number, m: PRACTICE_LENGTH })}</span>
        </h1>
        <p class={answers.length === 0 ? 'vh' : ''}>{t('drills.count', { right, asked: answers.length })}</p>
        <button type="button" class="secondary end-drill" onClick={() => onEnd(answers)}>
          {t('drills.end')}
        </button>
      </div>
      <Item
        key={number}
        drill={drill}
        answer={given?.answer ?? null}
        judged={given !== null}
        onAnswer={(one) => void practice.answer(one)}
        prompt={prompt}
        promptId={promptId(drill)}
      >
        <Verdict drill={drill} checked={given} />
        {given !== null && (
          <button
            type="button"
            ref={next}
            class="primary next-question"
            onClick={() => (last ? onEnd(answers) : practice.next())}
          >
            {t(last ? 'drills.toEnd' : 'drills.next')} <Icon name="arrow" />
          </button>
        )}
      </Item>
    </main>
  );
}
