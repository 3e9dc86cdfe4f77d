import type { Missed as Line } from '../../records/class-sheet.ts';
import { useDesk } from '../desk.ts';
import type { HeldSheet } from './held.ts';

/** Beyond these hardly anybody missed it. */
const MOST = 6;

/** What the class missed most, in the debrief's words: what to talk about together. */
export function Missed({ sheet: { flags, short, counted } }: { readonly sheet: HeldSheet }) {
  const { t, speak } = useDesk();
  const list = (title: string, lines: readonly Line[], wordsOf: (id: string) => string) =>
    lines.length > 0 && (
      <>
        <h3>{title}</h3>
        <ul class="class-missed">
          {lines.slice(0, MOST).map(({ id, records }) => (
            <li key={id}>
              <span class="class-times">{t('class.missed.times', { n: records, m: counted })}</span>
              <span>{wordsOf(id)}</span>
            </li>
          ))}
        </ul>
      </>
    );
  return (
    <section class="card" aria-labelledby="class-missed-title">
      <h2 id="class-missed-title">{t('class.missed')}</h2>
      {flags.length + short.length === 0 ? (
        <p>{t('class.missed.none')}</p>
      ) : (
        <p class="small">{t('class.missed.about', { n: counted })}</p>
      )}
      {list(t('class.missed.short'), short, (id) => speak.value({ id: `score.${id}` }))}
      {list(t('class.missed.flags'), flags, (id) => speak.value({ id: `flag.${id}` }))}
    </section>
  );
}
