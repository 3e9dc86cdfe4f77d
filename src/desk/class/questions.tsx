import '../css/questions.css';
import { useMemo } from 'preact/hooks';
import type { AnswersFile } from '../../quiz/answers.ts';
import type { Drill } from '../../quiz/drill.ts';
import type { Item } from '../../quiz/exam.ts';
import { drill } from '../../quiz/index.ts';
import { type FormStatistics, formStatistics, type ItemStatistics, LEAST_ANSWERS } from '../../quiz/item-statistics.ts';
import { angoffSheet } from '../../records/angoff-sheet.ts';
import { questionOf as inWords } from '../../records/qti/question.ts';
import { statisticsCsv } from '../../records/statistics-csv.ts';
import type { Message } from '../../service/message.ts';
import { formatNumber } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { UNITS } from '../drills/units.ts';
import { handOverText } from '../hand-over.ts';
import { Icon } from '../icons.tsx';

/** Spreadsheets take a text for UTF-8 where it begins with this. */
const UTF8_MARK = '\uFEFF';

/** On which unit of the works a form was asked, and in which system of units. */
type AskedOf = Pick<FormStatistics, 'unit' | 'units'>;

/** What a class's answers tell of the questions of its mock exams. */
export function Questions({ answers }: { readonly answers: readonly AnswersFile[] }) {
  const { t } = useDesk();
  const forms = useMemo(() => formStatistics(answers), [answers]);
  return (
    <section class="card class-questions" aria-labelledby="class-questions">
      <h2 id="class-questions">{t('stats.title')}</h2>
      <p>{t('stats.about')}</p>
      <p class="strong">{t('stats.licence')}</p>
      {forms.map((form, i) => (
        <Form key={i} form={form} />
      ))}
      {forms.some(({ found }) => found !== null) && (
        <>
          <p class="small">{t('stats.note')}</p>
          <button
            type="button"
            class="secondary"
            data-statistics-csv
            onClick={() => handOverText('questions.csv', UTF8_MARK + statisticsCsv(forms), 'text/csv')}
          >
            <Icon name="save" /> {t('stats.csv')}
          </button>
        </>
      )}
    </section>
  );
}

function Form({ form: { form, unit, units, n, items, found } }: { readonly form: FormStatistics }) {
  const { t } = useDesk();
  const digits = useDigits();
  const title = t('stats.form', { form: String(form), unit, units: t(`bar.units.${units}`), n });
  return (
    <>
      <h3>{title}</h3>
      {found === null ? (
        <p>{t('stats.few', { n, least: LEAST_ANSWERS })}</p>
      ) : (
        <>
          <ul class="form-facts">
            <li>{t('stats.mean', { mean: digits(found.whole.mean), m: items.length })}</li>
            <li>{t('stats.sd', { sd: digits(found.whole.sd) })}</li>
            <li>{t('stats.sem', { sem: digits(found.whole.sem) })}</li>
            <li>{t('stats.kr20', { r: digits(found.whole.kr20) })}</li>
            <li>{t('stats.kr21', { r: digits(found.whole.kr21) })}</li>
          </ul>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach */}
          <section class="class-scroll" aria-label={title} tabIndex={0}>
            <table class="class-list question-list">
              <caption class="vh">{title}</caption>
              <thead>
                <tr>
                  {(['place', 'question', 'n', 'p', 'r', 'answers', 'flags'] as const).map((column) => (
                    <th key={column} scope="col">
                      {t(`stats.${column}`)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {found.items.map((item) => (
                  <Row key={item.place} item={item} n={n} of={{ unit, units }} />
                ))}
              </tbody>
            </table>
          </section>
        </>
      )}
      <JudgesSheet form={form} of={{ unit, units }} items={items} />
    </>
  );
}

/** Its questions on a sheet for judges, who say of each how likely somebody who is just good enough gets it right. */
function JudgesSheet({ form, of, items }: Pick<FormStatistics, 'form' | 'items'> & { readonly of: AskedOf }) {
  const { t, speak, words } = useDesk();
  const sheet = () => {
    const questions = items.flatMap((item) => {
      const asked = questionOf(item, of);
      return asked === undefined ? [] : inWords(asked, words.value.language, speak.value);
    });
    handOverText(`judges-${form}.csv`, UTF8_MARK + angoffSheet(items, questions), 'text/csv');
  };
  return (
    <div class="judges">
      <button type="button" class="secondary" data-judges={form} onClick={sheet}>
        <Icon name="sheet" /> {t('stats.judges')}
        <span class="vh">: {t('stats.formNumber', { form: String(form) })}</span>
      </button>
      <p class="small">{t('stats.judges.about')}</p>
    </div>
  );
}

/** Answers of one question that are listed; beyond these are single slips. */
const MOST_ANSWERS = 5;

interface RowProps {
  readonly item: ItemStatistics;
  readonly n: number;
  readonly of: AskedOf;
}

function Row({ item, n, of }: RowProps) {
  const { t, speak } = useDesk();
  const digits = useDigits();
  const { place, skill, seed, p, r, chosen, flags } = item;
  const asked = useMemo(() => questionOf(item, of), [skill, seed, of.unit, of.units]);
  return (
    <tr class={flags.length > 0 ? 'flagged' : undefined}>
      <td>{place}</td>
      <th scope="row">
        {asked === undefined ? t(`drills.skill.${skill}`) : speak.value(asked.prompt)}
        <p class="small">
          {t(`drills.skill.${skill}`)} {seed}
        </p>
      </th>
      <td>{n}</td>
      <td>{digits(p)}</td>
      <td>{digits(r)}</td>
      <td>
        <ul class="given-list">
          {chosen.slice(0, MOST_ANSWERS).map(({ answer, right, times }) => (
            <li key={answer} class={right ? 'strong' : undefined}>
              {right && <Icon name="check" />} {answerOf(asked, answer, speak.value, digits)}: {times}
            </li>
          ))}
        </ul>
      </td>
      <td>
        {flags.map((flag) => (
          <p key={flag} class="flag-line">
            <Icon name="flag" /> {t(`stats.flag.${flag}`)}
          </p>
        ))}
      </td>
    </tr>
  );
}

function questionOf({ skill, seed }: Item, { unit, units }: AskedOf): Drill | undefined {
  const spec = UNITS.find(({ id }) => id === unit);
  return spec && drill(skill, seed, spec, units);
}

/** An answer as it was offered, or as it was written. */
function answerOf(
  asked: Drill | undefined,
  answer: string,
  speak: (message: Message) => string,
  digits: (value: number) => string,
): string {
  if (asked === undefined) return answer;
  const { ask } = asked;
  if (ask.kind === 'number') return digits(Number(answer));
  const items = ask.kind === 'order' ? ask.items : ask.options;
  const labels = answer.split(',').map((id) => items.find((item) => item.id === id)?.label);
  return labels.map((label) => (label === undefined ? answer : speak(label))).join(' → ');
}

/** Numbers to two digits, in the reader's own marks. */
function useDigits() {
  const { t, words } = useDesk();
  return (value: number | undefined) => (value === undefined ? t('stats.none') : formatNumber(words.value, value, 2));
}
