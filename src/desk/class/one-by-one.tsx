import { useState } from 'preact/hooks';
import { inMinutes } from '../debrief/step.tsx';
import { useDesk } from '../desk.ts';
import { type Held, held } from './held.ts';
import { Name, titleOf } from './names.tsx';
import { regretOf } from './reviews.ts';
import { Verdict } from './sheet.tsx';

/** Every record by itself: for names that fell together and should not have, and for tries that were not the best. */
export function OneByOne() {
  const { t } = useDesk();
  // With hundreds of records their rows are made only for who looks.
  const [open, setOpen] = useState(false);
  return (
    <section class="card">
      <details class="class-records" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>
          <h2>{t('class.records')}</h2>
        </summary>
        <p class="small">{t('class.records.about')}</p>
        {open && (
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach
          <section class="class-scroll" aria-label={t('class.records')} tabIndex={0}>
            <table class="class-list">
              <caption class="vh">{t('class.records')}</caption>
              <thead>
                <tr>
                  <th scope="col">{t('class.file')}</th>
                  <th scope="col">{t('class.person')}</th>
                  <th scope="col">{t('class.call')}</th>
                  <th scope="col">{t('class.outcome')}</th>
                </tr>
              </thead>
              <tbody>
                {held.value.map((one, at) => (
                  <One key={at} held={one} at={at} />
                ))}
              </tbody>
            </table>
          </section>
        )}
      </details>
    </section>
  );
}

function One({ held: { file, who, marked }, at }: { readonly held: Held; readonly at: number }) {
  const desk = useDesk();
  const regret = marked.state === 'counts' ? regretOf(marked) : undefined;
  const call = marked.call === undefined ? '' : titleOf(desk, marked.call);
  return (
    <tr>
      <th scope="row">{file}</th>
      <td>
        <Name who={who} of={(_, place) => place === at} />
      </td>
      <td>{call}</td>
      <td>
        {marked.state === 'counts' ? (
          <span class="class-outcome">
            <Verdict passed={marked.passed} at={at} who={who} call={call} />
            <span>{desk.t('class.score', { n: Math.round(marked.score) })}</span>
            {regret !== undefined && <span>{desk.t('steps.regret.of', { m: inMinutes(regret) })}</span>}
          </span>
        ) : (
          desk.t('class.refused.short')
        )}
      </td>
    </tr>
  );
}
