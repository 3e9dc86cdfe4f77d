import { useMemo, useState } from 'preact/hooks';
import { checked } from '../../quiz/drill.ts';
import { scoreOf } from '../../quiz/exam.ts';
import { rightAnswer } from '../../quiz/right.ts';
import { quantity } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { Item } from '../drills/item.tsx';
import { Verdict } from '../drills/verdict.tsx';
import { handOver } from '../hand-over.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { NoLicence } from './no-licence.tsx';
import { promptId } from './prompt-id.ts';
import { answersOf, judged, type Sitting } from './sitting.ts';
import { TopicBars } from './topic-bars.tsx';

interface Props {
  readonly sitting: Sitting;
  readonly onLeave: () => void;
}

/** What came out of an exam: the score by topic, and every question once more with what there is to say of it. */
export function Result({ sitting, onLeave }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const items = useMemo(() => judged(sitting), [sitting]);
  const { right, of, passed, topics } = scoreOf(items, sitting.pass);
  const save = () =>
    handOver(`${sitting.exam}-${sitting.form}.answers.json`, answersOf(sitting, desk.words.value.language));
  const minutes = (value: number) => quantity('duration_min', value, 1);
  return (
    <main class="quiz-result">
      <section class="card quiz-score">
        <p class={passed ? 'strong good' : 'strong bad'}>
          <Icon name={passed ? 'check' : 'flag'} /> {t('quiz.exam')}
        </p>
        <ScreenTitle>{t(passed ? 'quiz.result.passed' : 'quiz.result.failed', { n: right, m: of })}</ScreenTitle>
        <p>
          {t('quiz.result.needs', {
            pass: Math.round(100 * sitting.pass),
            least: Math.ceil(sitting.pass * of - 1e-9),
            m: of,
          })}
        </p>
        <p>
          {sitting.minutes === null
            ? t('quiz.result.noClock', { used: minutes(sitting.used_s / 60) })
            : t('quiz.result.time', { used: minutes(sitting.used_s / 60), given: minutes(sitting.minutes) })}
        </p>
        <div class="buttons">
          <button type="button" class="primary" data-save-answers onClick={save}>
            <Icon name="save" /> {t('quiz.result.save')}
          </button>
          <button type="button" class="secondary" data-leave onClick={onLeave}>
            {t('quiz.back')}
          </button>
        </div>
        <p class="small">{t('quiz.result.save.hint')}</p>
      </section>
      <section class="card" aria-labelledby="result-topics">
        <h2 id="result-topics">{t('quiz.result.topics')}</h2>
        <TopicBars
          caption={t('drills.count', { right, asked: of })}
          line={sitting.pass}
          lineSays={t('quiz.pass', { n: Math.round(100 * sitting.pass) })}
          bars={topics.map((one) => ({
            topic: one.topic,
            share: one.right / one.of,
            more: t('quiz.result.of', { n: one.right, m: one.of }),
          }))}
        />
      </section>
      <NoLicence />
      <section class="quiz-review" aria-labelledby="result-review">
        <h2 id="result-review">{t('quiz.result.review')}</h2>
        <ol>
          {items.map((item, i) => (
            <Reviewed key={i} place={i + 1} item={item} />
          ))}
        </ol>
      </section>
    </main>
  );
}

interface ReviewedProps {
  readonly place: number;
  readonly item: ReturnType<typeof judged>[number];
}

/** A question looked at again; drawn only for who opens it. */
function Reviewed({ place, item }: ReviewedProps) {
  const { t } = useDesk();
  const [open, setOpen] = useState(false);
  const { drill, given, right } = item;
  const state = given === null ? 'blank' : right ? 'right' : 'wrong';
  return (
    <li class={`card reviewed ${state}`}>
      <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>
          <h3>
            <Icon name={right ? 'check' : given === null ? 'minus' : 'cross'} />{' '}
            {t('quiz.result.item', {
              n: place,
              skill: t(`drills.skill.${drill.skill}`),
              state: t(`quiz.result.${state}`),
            })}
          </h3>
        </summary>
        {open && <Again item={item} />}
      </details>
    </li>
  );
}

function Again({ item: { drill, given } }: Pick<ReviewedProps, 'item'>) {
  // Of what was left out the right answer is explained.
  const told = checked(drill, given ?? rightAnswer(drill));
  return (
    <Item drill={drill} answer={given} judged onAnswer={() => {}} promptId={promptId(drill)} level="h4">
      <Verdict drill={drill} checked={told} blank={given === null} />
    </Item>
  );
}
