import { useState } from 'preact/hooks';
import { inMinutes } from '../debrief/step.tsx';
import { type Desk, useDesk } from '../desk.ts';
import { type Held, held } from './held.ts';
import { Name, titleOf } from './names.tsx';
import type { MarkReply } from './protocol.ts';
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
  const call = whatOf(desk, marked);
  return (
    <tr>
      <th scope="row">{file}</th>
      <td>
        <Name who={who} of={(_, place) => place === at} />
      </td>
      <td>{call}</td>
      <td>
        <Outcome marked={marked} at={at} who={who} call={call} />
      </td>
    </tr>
  );
}

/** The call, or the form of a mock exam. */
function whatOf(desk: Desk, marked: MarkReply): string {
  if (marked.state === 'answers') return desk.t('class.answers', { form: String(marked.answers.form) });
  return marked.call === undefined ? '' : titleOf(desk, marked.call);
}

interface OutcomeProps {
  readonly marked: MarkReply;
  readonly at: number;
  readonly who: string;
  readonly call: string;
}

function Outcome({ marked, at, who, call }: OutcomeProps) {
  const { t } = useDesk();
  if (marked.state === 'refused') return <>{t('class.refused.short')}</>;
  if (marked.state === 'answers') {
    const { items } = marked.answers;
    return <>{t('class.answers.right', { n: items.filter(({ right }) => right).length, m: items.length })}</>;
  }
  const regret = regretOf(marked);
  return (
    <span class="class-outcome">
      <Verdict passed={marked.passed} at={at} who={who} call={call} />
      <span>{t('class.score', { n: Math.round(marked.score) })}</span>
      {regret !== undefined && <span>{t('steps.regret.of', { m: inMinutes(regret) })}</span>}
    </span>
  );
}
