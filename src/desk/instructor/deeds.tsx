import type { Deed } from '../../calls/hood.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';

interface Props {
  readonly call: OpenCall;
}

function timeOf(call: OpenCall, at_ms: number): string {
  return formatClock((at_ms - call.startOfDay_ms) / 1000);
}

/** What the trainee did last, and where the call stands: read out as it comes. */
export function LastDeed({ call }: Props) {
  const { t, speak } = useDesk();
  const last = call.deeds.findLast(({ by }) => by === 'trainee');
  return (
    <p class="last-deed">
      <span class="label">{t(`stage.${call.stage}`)}</span>{' '}
      <span role="status">
        {last === undefined
          ? t('instructor.deeds.none')
          : [`${timeOf(call, last.at_ms)} ${speak.value(last.label)}`, ...last.readings.map(speak.value)].join(' · ')}
      </span>
    </p>
  );
}

/** What was done, the last on top: by the trainee with its readings, and by a trainer. */
export function Deeds({ call }: Props) {
  const { t } = useDesk();
  const deeds = call.deeds.map((deed, place) => ({ deed, place })).reverse();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach
    <section class="card deeds" aria-labelledby="deeds" tabIndex={0}>
      <h2 id="deeds">{t('instructor.deeds')}</h2>
      {deeds.length === 0 && <p class="small">{t('instructor.deeds.none')}</p>}
      <ol reversed>
        {deeds.map(({ deed, place }) => (
          <Row key={place} deed={deed} time={timeOf(call, deed.at_ms)} />
        ))}
      </ol>
      <details>
        <summary>{t('instructor.notebook', { n: call.notebook.length })}</summary>
        <ul class="their-notes">
          {[...call.notebook].reverse().map((note, i) => (
            <li key={`${note.at_ms} ${note.what.id} ${i}`}>
              <span class="time">{timeOf(call, note.at_ms)}</span>
              <span>
                <Said message={note.where} />: <Said message={note.what} />{' '}
                <strong>
                  <Said message={note.reading} />
                </strong>
              </span>
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}

function Row({ deed: { by, label, readings, undone }, time }: { readonly deed: Deed; readonly time: string }) {
  const { t } = useDesk();
  return (
    <li class={`${by}${undone ? ' undone' : ''}`}>
      <span class="time">{time}</span>
      <span>
        {by === 'trainer' && <Icon name="operate" />}
        {undone ? (
          <s>
            <Said message={label} />
          </s>
        ) : (
          <Said message={label} />
        )}
        {undone && <span class="small"> {t('instructor.deeds.undone')}</span>}
        {readings.map((one, i) => (
          <strong key={`${one.id} ${i}`} class="deed-reading">
            <Said message={one} />
          </strong>
        ))}
      </span>
    </li>
  );
}
