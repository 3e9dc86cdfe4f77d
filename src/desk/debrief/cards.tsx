import { ACCOUNT } from '../../calls/account.ts';
import type { Assistance, DebriefView } from '../../calls/view.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly debrief: DebriefView;
}

/** What was wrong all along, and the short account that goes with it. */
export function Truth({ debrief }: Props) {
  const desk = useDesk();
  return (
    <section class="card truth" aria-labelledby="truth-title">
      <h2 id="truth-title">{desk.t('debrief.truth')}</h2>
      {debrief.truth.map((one, index) => (
        <p key={`${one.id}${index}`} class="fact">
          <Said message={one} />
        </p>
      ))}
      <p class="story">{desk.local(debrief.story)}</p>
      {debrief.accounts.map(({ fault, account }) => (
        <details key={fault.id} class="account">
          <summary>
            {desk.t('account.of')} <Said message={fault} />
          </summary>
          <dl>
            {ACCOUNT.map((one) => (
              <div key={one}>
                <dt>{desk.t(`account.${one}`)}</dt>
                <dd>{desk.local(account[one])}</dd>
              </div>
            ))}
          </dl>
        </details>
      ))}
    </section>
  );
}

/** The score, line by line, each with its reason. */
export function Score({ debrief, assistance }: Props & { readonly assistance: Assistance | undefined }) {
  const desk = useDesk();
  return (
    <section class="card score" aria-labelledby="score-title">
      <h2 id="score-title">{desk.t('debrief.score')}</h2>
      <table>
        <thead class="vh">
          <tr>
            <th scope="col">{desk.t('debrief.score.line')}</th>
            <th scope="col">{desk.t('debrief.score.points')}</th>
          </tr>
        </thead>
        <tbody>
          {debrief.lines.map((line) => (
            <tr key={line.id}>
              <th scope="row">
                {desk.t(`score.${line.id}`)}
                <span class="reason">
                  <Said message={line.reason} />
                </span>
              </th>
              <td class={line.points >= line.of ? 'good' : line.points <= 0 ? 'bad' : ''}>
                {line.id === 'safety' ? (
                  desk.t(line.points >= line.of ? 'debrief.tag.kept' : 'debrief.tag.broken')
                ) : (
                  <>
                    <strong>{Math.round(line.points)}</strong>
                    <span class="of"> / {line.of}</span>
                  </>
                )}
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{desk.t('debrief.score.whole')}</th>
            <td>
              <strong>{Math.round(debrief.score)}</strong>
              <span class="of"> / 100</span>
            </td>
          </tr>
        </tfoot>
      </table>
      {assistance !== undefined && <Help assistance={assistance} />}
    </section>
  );
}

/** The help that was taken: shown, not counted. */
function Help({ assistance: { led, hints, likely } }: { assistance: Assistance }) {
  const { t } = useDesk();
  const taken = [
    ...(led === undefined ? [] : [t(`assist.led.${led}`)]),
    ...(hints === 0 ? [] : [t('assist.hints', { level: { id: `assist.level.${hints}` } })]),
    ...(likely ? [t('assist.likely')] : []),
  ];
  return (
    <p class="assistance">
      <strong>{t('assist.title')}</strong>
      <span>{taken.length === 0 ? t('assist.none') : taken.join(' · ')}</span>
      <span class="small">{t('assist.note')}</span>
    </p>
  );
}

/** What it cost in time, money and harm, beside the reference from the same facts. */
export function Costs({ debrief }: Props) {
  const desk = useDesk();
  return (
    <section class="card costs" aria-labelledby="costs-title">
      <h2 id="costs-title">{desk.t('debrief.costs')}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">
              <span class="vh">{desk.t('debrief.costs.what')}</span>
            </th>
            <th scope="col">{desk.t('debrief.costs.done')}</th>
            <th scope="col">{desk.t('debrief.costs.reference')}</th>
          </tr>
        </thead>
        <tbody>
          {debrief.costs.map((line, index) => (
            <tr key={`${line.label.id}${index}`}>
              <th scope="row">
                <Said message={line.label} />
              </th>
              <td>
                <strong>
                  <Said message={line.done} />
                </strong>
              </td>
              <td>
                <Said message={line.reference} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Where to look again: each flag with its moment. */
export function Flags({ debrief }: Props) {
  const desk = useDesk();
  return (
    <section class="card flags" aria-labelledby="flags-title">
      <h2 id="flags-title">{desk.t('debrief.flags')}</h2>
      {debrief.flags.length === 0 && (
        <p class="good">
          <Icon name="check" /> {desk.t('debrief.flags.none')}
        </p>
      )}
      <ul>
        {debrief.flags.map((flag, index) => (
          <li key={`${flag.id}${index}`}>
            <Icon name="flag" />
            <p>
              <Said message={flag.text} />
            </p>
            <span class="time">{formatClock((flag.at_ms - debrief.startOfDay_ms) / 1000)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What a trainer did while the call was taken, where one had a hand in it. */
export function Taught({ debrief }: Props) {
  const desk = useDesk();
  if (debrief.taught.length === 0) return null;
  return (
    <section class="card taught" aria-labelledby="taught-title">
      <h2 id="taught-title">{desk.t('debrief.taught')}</h2>
      <p class="small">{desk.t('debrief.taught.about')}</p>
      <ol>
        {debrief.taught.map((one, index) => (
          <li key={`${one.at_ms} ${index}`}>
            <span class="time">{formatClock((one.at_ms - debrief.startOfDay_ms) / 1000)}</span>
            <Said message={one.label} />
          </li>
        ))}
      </ol>
    </section>
  );
}
