import type { Missed as Line } from '../../records/class-sheet.ts';
import { dearest } from '../../records/regret.ts';
import { inMinutes } from '../debrief/step.tsx';
import { useDesk } from '../desk.ts';
import type { HeldSheet } from './held.ts';
import { reviews } from './reviews.ts';

/** Beyond these hardly anybody missed it. */
const MOST = 6;

/** What the class missed most, in the debrief's words: what to talk about together. */
export function Missed({ sheet }: { readonly sheet: HeldSheet }) {
  const { t, speak } = useDesk();
  const { flags, short, counted } = sheet;
  const times = (lines: readonly Line[], of: 'score' | 'flag') =>
    lines.map(({ id, records }) => ({
      key: id,
      much: t('class.missed.times', { n: records, m: counted }),
      what: speak.value({ id: `${of}.${id}` }),
    }));
  return (
    <section class="card" aria-labelledby="class-missed-title">
      <h2 id="class-missed-title">{t('class.missed')}</h2>
      {flags.length + short.length === 0 ? (
        <p>{t('class.missed.none')}</p>
      ) : (
        <p class="small">{t('class.missed.about', { n: counted })}</p>
      )}
      <List title={t('class.missed.short')} lines={times(short, 'score')} />
      <List title={t('class.missed.flags')} lines={times(flags, 'flag')} />
      <MostRegret sheet={sheet} />
    </section>
  );
}

/** The steps that cost the class most over the best, of the records whose regret is known. */
function MostRegret({ sheet: { all, counted } }: { readonly sheet: HeldSheet }) {
  const { t, speak } = useDesk();
  const known = all.flatMap((one) => (one.state === 'counts' ? (reviews.value.get(one.deeds) ?? []) : []));
  const lines = dearest(known.map(({ steps }) => steps)).map(({ label, minutes }) => ({
    key: JSON.stringify(label),
    much: t('call.minutes', { m: inMinutes(minutes) }),
    what: speak.value(label),
  }));
  const whole = known.length === counted;
  return (
    <List
      title={t('class.missed.regret')}
      about={t(whole ? 'class.missed.regret.all' : 'class.missed.regret.of', { n: known.length, m: counted })}
      lines={lines}
    />
  );
}

interface ListProps {
  readonly title: string;
  readonly about?: string;
  readonly lines: readonly { readonly key: string; readonly much: string; readonly what: string }[];
}

function List({ title, about, lines }: ListProps) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      {about !== undefined && <p class="small">{about}</p>}
      <ul class="class-missed">
        {lines.slice(0, MOST).map(({ key, much, what }) => (
          <li key={key}>
            <span class="class-times">{much}</span>
            <span>{what}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
