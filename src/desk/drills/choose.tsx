import { SKILLS, type Skill } from '../../quiz/drill.ts';
import { proposed } from '../../quiz/round.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import type { DrillCount } from '../stored.ts';
import { Switch } from '../switch.tsx';
import { SkillSketch } from './sketch.tsx';

interface Props {
  readonly counts: readonly DrillCount[];
  readonly clockOn: boolean;
  readonly onClock: (on: boolean) => void;
  readonly onBegin: (skill: Skill) => void;
}

/** The five skills, how each went last, and the clock. */
export function Choose({ counts, clockOn, onClock, onBegin }: Props) {
  const { t } = useDesk();
  const next = proposed(counts).skill;
  return (
    <main class="drills-choose">
      <ScreenTitle>{t('start.drills')}</ScreenTitle>
      <p>{t('drills.lead')}</p>
      <ul class="skill-cards">
        {SKILLS.map((skill) => {
          const last = counts.findLast((one) => one.skill === skill);
          return (
            <li key={skill} class="card skill-card" aria-labelledby={`skill-${skill}`}>
              <SkillSketch skill={skill} />
              <h2 id={`skill-${skill}`}>{t(`drills.skill.${skill}`)}</h2>
              <p>{t(`drills.about.${skill}`)}</p>
              <p class="skill-last">
                {last ? t('drills.last', { right: last.right, asked: last.asked }) : t('drills.never')}
                {counts.length > 0 && skill === next && (
                  <span class="skill-next">
                    <Icon name="arrow" /> {t('drills.proposed')}
                  </span>
                )}
              </p>
              <button
                type="button"
                class={skill === next ? 'primary' : 'secondary'}
                data-skill={skill}
                onClick={() => onBegin(skill)}
              >
                {t('drills.begin')}
                <span class="vh">: {t(`drills.skill.${skill}`)}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <div class="card clock-card">
        <Switch label={t('drills.clock')} on={clockOn} onFlip={onClock} />
        <p class="small">{t('drills.clock.hint')}</p>
      </div>
    </main>
  );
}
