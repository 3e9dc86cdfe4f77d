import type { Skill } from '../../quiz/drill.ts';
import { type Count, proposed } from '../../quiz/round.ts';
import { skillsOf, TOPICS } from '../../quiz/topics.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { Switch } from '../switch.tsx';
import { TopicSketch } from './sketch.tsx';

interface Props {
  readonly counts: readonly Count[];
  readonly clockOn: boolean;
  readonly onClock: (on: boolean) => void;
  readonly onBegin: (skill: Skill) => void;
}

/** The skills by topic, how each went last, and the clock. */
export function Choose({ counts, clockOn, onClock, onBegin }: Props) {
  const { t } = useDesk();
  const next = counts.length > 0 ? proposed(counts).skill : undefined;
  return (
    <main class="drills-choose">
      <ScreenTitle>{t('start.drills')}</ScreenTitle>
      <p>{t('drills.lead')}</p>
      <div class="card clock-card">
        <Switch label={t('drills.clock')} on={clockOn} onFlip={onClock} />
        <p class="small">{t('drills.clock.hint')}</p>
      </div>
      {TOPICS.map((topic) => (
        <section key={topic} class="card topic" aria-labelledby={`topic-${topic}`}>
          <div class="topic-head">
            <TopicSketch topic={topic} />
            <h2 id={`topic-${topic}`}>{t(`drills.topic.${topic}`)}</h2>
          </div>
          <ul class="skill-cards">
            {skillsOf(topic).map((skill) => (
              <SkillCard
                key={skill}
                skill={skill}
                last={counts.findLast((one) => one.skill === skill)}
                isNext={skill === next}
                onBegin={onBegin}
              />
            ))}
          </ul>
        </section>
      ))}
    </main>
  );
}

interface CardProps {
  readonly skill: Skill;
  readonly last: Count | undefined;
  readonly isNext: boolean;
  readonly onBegin: (skill: Skill) => void;
}

function SkillCard({ skill, last, isNext, onBegin }: CardProps) {
  const { t } = useDesk();
  return (
    <li class="skill-card" aria-labelledby={`skill-${skill}`}>
      <div>
        <h3 id={`skill-${skill}`}>{t(`drills.skill.${skill}`)}</h3>
        <p>{t(`drills.about.${skill}`)}</p>
        {(last || isNext) && (
          <p class="skill-last">
            {last && t('drills.last', { right: last.right, asked: last.asked })}
            {isNext && (
              <span class="skill-next">
                <Icon name="arrow" /> {t('drills.proposed')}
              </span>
            )}
          </p>
        )}
      </div>
      <button type="button" class={isNext ? 'primary' : 'secondary'} data-skill={skill} onClick={() => onBegin(skill)}>
        {t('drills.begin')}
        <span class="vh">: {t(`drills.skill.${skill}`)}</span>
      </button>
    </li>
  );
}
