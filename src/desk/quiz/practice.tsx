import { useLayoutEffect, useRef } from 'preact/hooks';
import type { UnitSpec } from '../../unit/spec.ts';
import { useDesk } from '../desk.ts';
import { Item } from '../drills/item.tsx';
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
  const prompt = useRef<HTMLHeadingElement>(null);
  const next = useRef<HTMLButtonElement>(null);
  // A new question is read first; once it is answered, the way on is at hand.
  useLayoutEffect(() => {
    prompt.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [number]);
  useLayoutEffect(() => {
    if (given === null) return;
    next.current?.focus({ preventScroll: true });
    next.current?.scrollIntoView({ block: 'nearest' });
  }, [given]);
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
