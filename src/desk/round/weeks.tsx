import { useDesk } from '../desk.ts';
import type { RoundView } from '../protocol.ts';

/** More doors in one week than these find no room over it. */
const MOST_MARKS = 6;

/** The year as a row of weeks: a mark for each door that was opened, and where one is now. */
export function Weeks({ weeks }: Pick<RoundView, 'weeks'>) {
  const desk = useDesk();
  const { t } = desk;
  const month = (number: number) => desk.words.value.texts[`month.${number}`] ?? '';
  return (
    <section class="round-weeks" aria-labelledby="weeks-title">
      <h2 id="weeks-title">{t('round.weeks')}</h2>
      <ol>
        {weeks.map(({ from, doors, now }, i) => (
          <li key={i} class={now ? 'week now' : 'week'} aria-current={now ? 'date' : undefined}>
            <span class="vh">{t('round.week', { day: from.day, month: month(from.month), n: doors })}</span>
            <span class="marks" aria-hidden="true">
              {Array.from({ length: Math.min(doors, MOST_MARKS) }, (_, mark) => (
                <i key={mark} />
              ))}
            </span>
            <span class="month" aria-hidden="true">
              {from.day <= 7 ? month(from.month) : ''}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
