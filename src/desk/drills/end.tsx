import type { Skill } from '../../quiz/drill.ts';
import { type Answered, type Count, countOf, proposed } from '../../quiz/round.ts';
import { TOPIC_OF } from '../../quiz/topics.ts';
import { formatNumber } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { TopicSketch } from './sketch.tsx';

interface Props {
  readonly skill: Skill;
  readonly answers: readonly Answered[];
  /** All that are kept, this round among them. */
  readonly counts: readonly Count[];
  readonly onBegin: (skill: Skill) => void;
  readonly onChoose: () => void;
}

/** The count of a round, and what comes next. */
export function End({ skill, answers, counts, onBegin, onChoose }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const { asked, right, median_s } = countOf(answers);
  const next = proposed(counts);
  return (
    <main class="drill-end">
      <section class="card end-count">
        <p class="label">{t(`drills.skill.${skill}`)}</p>
        <ScreenTitle>{asked === 0 ? t('drills.none') : t('drills.count', { right, asked })}</ScreenTitle>
        {asked > 0 && (
          <>
            <div class="tally" aria-hidden="true">
              {answers.map((one, i) => (
                <span key={i} class={one.right ? 'dot right' : 'dot wrong'}>
                  <Icon name={one.right ? 'check' : 'cross'} />
                </span>
              ))}
            </div>
            <p>{t('drills.median', { s: formatNumber(desk.words.value, median_s, median_s < 10 ? 1 : 0) })}</p>
          </>
        )}
        <div class="buttons">
          <button type="button" class="secondary" onClick={() => onBegin(skill)}>
            <Icon name="again" /> {t('drills.again')}
          </button>
          <button type="button" class="secondary" onClick={onChoose}>
            {t('drills.choose')}
          </button>
        </div>
      </section>
      <section class="card end-next" aria-labelledby="end-next">
        <TopicSketch topic={TOPIC_OF[next.skill]} />
        <div>
          <h2 id="end-next">{t('drills.try', { skill: t(`drills.skill.${next.skill}`) })}</h2>
          <p>
            {next.because === 'most-wrong'
              ? t('drills.mostWrong')
              : next.because === 'untried'
                ? t('drills.untried')
                : t(`drills.about.${next.skill}`)}
          </p>
          <button type="button" class="primary" data-skill={next.skill} onClick={() => onBegin(next.skill)}>
            {t('drills.begin')} <Icon name="arrow" />
          </button>
        </div>
      </section>
    </main>
  );
}
