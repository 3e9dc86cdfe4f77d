import { skillsOf, TOPICS } from '../../quiz/topics.ts';
import { useDesk } from '../desk.ts';
import { DUE_recall } from './spacing.ts';
import { type TopicBar, TopicBars } from './topic-bars.tsx';
import { type Cards, standingsOf } from './use-practice.ts';

interface Props {
  readonly cards: Cards;
  readonly unit: string;
}

const DAY_ms = 86_400_000;

/** How likely each topic is still known in a day (what was just told is not forgotten yet), and what of it is due now. */
export function PracticeTopics({ cards, unit }: Props) {
  const { t, wallClock } = useDesk();
  const now = wallClock();
  const standings = standingsOf(cards, unit, now + DAY_ms);
  const dueNow = new Set(standingsOf(cards, unit, now).flatMap(({ skill, due }) => (due ? skill : [])));
  const bars = TOPICS.flatMap((topic): TopicBar[] => {
    const skills = skillsOf(topic);
    const seen = standings.filter(({ skill, seen }) => seen && skills.includes(skill));
    if (skills.length === 0) return [];
    if (seen.length === 0) return [{ topic, share: undefined, more: t('quiz.never') }];
    const due = seen.filter(({ skill }) => dueNow.has(skill)).length;
    return [
      {
        topic,
        share: seen.reduce((sum, { recall }) => sum + recall, 0) / seen.length,
        more: due === 0 ? t('quiz.due.none') : t('quiz.due', { n: due }),
      },
    ];
  });
  const lineSays = t('quiz.dueUnder', { n: Math.round(100 * DUE_recall) });
  return <TopicBars caption={t('quiz.recall')} bars={bars} line={DUE_recall} lineSays={lineSays} />;
}
