import { useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { UNITS } from '../drills/units.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { MOCK } from './mock.ts';
import { NoLicence } from './no-licence.tsx';
import { PracticeTopics } from './practice-topics.tsx';
import { type Chosen, judged, type Sitting } from './sitting.ts';
import type { Cards } from './use-practice.ts';

interface Props {
  readonly cards: Cards;
  readonly unit: string;
  readonly form: number;
  /** The exam that was sat last. */
  readonly sitting: Sitting | undefined;
  readonly onUnit: (unit: string) => void;
  readonly onPractise: () => void;
  readonly onBegin: (chosen: Chosen) => void;
  readonly onExam: () => void;
}

/** Practice by topic, and the mock exam. */
export function Choose(props: Props) {
  const { cards, unit, onUnit, onPractise } = props;
  const { t, local } = useDesk();
  return (
    <main class="quiz-choose">
      <ScreenTitle>{t('title.quiz')}</ScreenTitle>
      <p>{t('quiz.lead')}</p>
      <label class="quiz-field quiz-unit">
        <span>{t('quiz.unit')}</span>
        <select value={unit} data-unit onChange={({ currentTarget }) => onUnit(currentTarget.value)}>
          {UNITS.map(({ id, name }) => (
            <option key={id} value={id}>
              {local(name)}
            </option>
          ))}
        </select>
      </label>
      <div class="quiz-cards">
        <section class="card" aria-labelledby="quiz-practice">
          <h2 id="quiz-practice">{t('quiz.practice')}</h2>
          <PracticeTopics cards={cards} unit={unit} />
          <p>{t('quiz.practise.about')}</p>
          <button type="button" class="primary" data-practise onClick={onPractise}>
            {t('quiz.practise')} <Icon name="arrow" />
          </button>
          <p class="small">{t('quiz.estimate')}</p>
        </section>
        <Exam {...props} />
      </div>
      <NoLicence />
    </main>
  );
}

/** How much longer than usual one can have from the start. */
const TIMES = [1, 1.5, 2];
const LARGEST_FORM = 999_999_999;

function Exam({ unit, form, sitting, onBegin, onExam }: Props) {
  const { t, local, settings } = useDesk();
  const [number, setNumber] = useState(String(form));
  const [minutes, setMinutes] = useState<number | null>(MOCK.minutes);
  const [wrong, setWrong] = useState(false);
  const questions = Object.values(MOCK.topics).reduce((sum, n) => sum + n, 0);
  const begin = () => {
    const whole = /^\d{1,9}$/.test(number.trim()) && Number(number) <= LARGEST_FORM;
    setWrong(!whole);
    if (whole) onBegin({ form: Number(number), unit, units: settings.value.units, minutes });
  };
  return (
    <section class="card" aria-labelledby="quiz-exam">
      <h2 id="quiz-exam">{t('quiz.exam')}</h2>
      <p>{t('quiz.exam.about', { n: questions, pass: Math.round(100 * MOCK.pass) })}</p>
      {sitting !== undefined && <Last sitting={sitting} onExam={onExam} />}
      <form
        class="quiz-form"
        onSubmit={(event) => {
          event.preventDefault();
          begin();
        }}
      >
        <label class="quiz-field">
          <span>{t('quiz.exam.form')}</span>
          <input
            type="text"
            inputMode="numeric"
            autocomplete="off"
            value={number}
            aria-invalid={wrong}
            aria-describedby="form-hint"
            onInput={({ currentTarget }) => setNumber(currentTarget.value)}
          />
        </label>
        <label class="quiz-field">
          <span>{t('quiz.exam.time')}</span>
          <select
            value={minutes ?? ''}
            data-time
            onChange={({ currentTarget: { value } }) => setMinutes(value === '' ? null : Number(value))}
          >
            {TIMES.map((times) => (
              <option key={times} value={times * MOCK.minutes}>
                {t('quiz.exam.minutes', { n: times * MOCK.minutes })}
              </option>
            ))}
            <option value="">{t('quiz.exam.noClock')}</option>
          </select>
        </label>
        <p id="form-hint" class={wrong ? 'error' : 'small'} role={wrong ? 'alert' : undefined}>
          {t(wrong ? 'quiz.exam.formWrong' : 'quiz.exam.form.hint')}
        </p>
        <button type="submit" class={sitting?.handedIn === false ? 'secondary' : 'primary'} data-begin-exam>
          {t(sitting === undefined ? 'quiz.exam.begin' : 'quiz.exam.anew')}
        </button>
      </form>
      <p class="small">{local(MOCK.source)}</p>
    </section>
  );
}

/** The exam that was sat last, to go on with or to look at again. */
function Last({ sitting, onExam }: { readonly sitting: Sitting; readonly onExam: () => void }) {
  const { t } = useDesk();
  const { form, items, handedIn } = sitting;
  const n = handedIn
    ? judged(sitting).filter(({ right }) => right).length
    : items.filter(({ given }) => given !== null).length;
  return (
    <div class="quiz-last">
      <p>{t(handedIn ? 'quiz.exam.last' : 'quiz.exam.open', { form: String(form), n, m: items.length })}</p>
      <button type="button" class={handedIn ? 'secondary' : 'primary'} data-exam onClick={onExam}>
        {t(handedIn ? 'quiz.exam.look' : 'quiz.exam.goOn')}
      </button>
      <p class="small">{t('quiz.exam.anew.hint')}</p>
    </div>
  );
}
