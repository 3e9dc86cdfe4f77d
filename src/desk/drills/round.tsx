import type { Skill } from '../../quiz/drill.ts';
import type { Answered } from '../../quiz/round.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Switch } from '../switch.tsx';
import { TimeLeft } from './clock.tsx';
import { Item } from './item.tsx';
import { useFocus } from './use-focus.ts';
import { useRound } from './use-round.ts';
import { Verdict } from './verdict.tsx';

interface Props {
  readonly skill: Skill;
  readonly seed: number;
  readonly clockOn: boolean;
  readonly onClock: (on: boolean) => void;
  readonly onEnd: (answers: readonly Answered[]) => void;
}

/** One question with its figure, its answers and, once answered, why. */
export function RoundScreen({ skill, seed, clockOn, onClock, onEnd }: Props) {
  const { t, settings } = useDesk();
  const round = useRound(skill, seed, clockOn, settings.value.units);
  const { drill, given, answers, up } = round;
  const { prompt, next } = useFocus(round.number, given !== null);
  const goOn = () => (up ? onEnd(answers) : round.next());
  return (
    <main class="drill">
      <div class="drill-head">
        <h1>
          {t(`drills.skill.${skill}`)} <span class="drill-number">{t('drills.question', { n: round.number })}</span>
        </h1>
        <Dots answers={answers} />
        <div class="drill-clock">
          {clockOn ? <TimeLeft left_s={round.left_s} /> : <p class="small">{t('drills.noClock')}</p>}
          <Switch label={t('bar.clock')} on={clockOn} onFlip={onClock} />
        </div>
        <button type="button" class="secondary end-drill" onClick={() => onEnd(answers)}>
          {t('drills.end')}
        </button>
      </div>
      <Item
        key={round.number}
        drill={drill}
        answer={given?.answer ?? null}
        judged={given !== null}
        onAnswer={round.answer}
        prompt={prompt}
        status={
          <p class="up" role="status">
            {up && given === null ? t('drills.up') : ''}
          </p>
        }
      >
        <Verdict drill={drill} checked={given} />
        {given !== null && (
          <button type="button" ref={next} class="primary next-question" onClick={goOn}>
            {t(up ? 'drills.toEnd' : 'drills.next')} <Icon name="arrow" />
          </button>
        )}
      </Item>
    </main>
  );
}

/** How it went so far: a filled mark for each answer. */
function Dots({ answers }: { answers: readonly Answered[] }) {
  const { t } = useDesk();
  const right = answers.filter((one) => one.right).length;
  return (
    <p class="drill-dots">
      <span class="dots" aria-hidden="true">
        {answers.slice(-12).map((one, i) => (
          <span key={i} class={one.right ? 'dot right' : 'dot wrong'}>
            <Icon name={one.right ? 'check' : 'cross'} />
          </span>
        ))}
      </span>
      <span class={answers.length === 0 ? 'vh' : ''}>{t('drills.count', { right, asked: answers.length })}</span>
    </p>
  );
}
