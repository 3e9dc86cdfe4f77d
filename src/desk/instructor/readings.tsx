import type { Measure } from '../../service/message.ts';
import { valueAt } from '../debrief/series.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';

/** What the balances close to, relative to what came in; held by the tests. */
const CLOSED = 1e-9;

/** The curves as numbers, what else is worth one, and whether all of it adds up. */
export function Readings({ call, at_ms }: { readonly call: OpenCall; readonly at_ms: number | null }) {
  const { t } = useDesk();
  const said = (measure: Measure, value: number) => t('debrief.value', { v: { measure, value } });
  return (
    <section class="card readings" aria-labelledby="readings">
      <h2 id="readings">{t('instructor.readings')}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{t('instructor.readings.what')}</th>
            <th scope="col">{t(at_ms === null ? 'instructor.readings.now' : 'instructor.readings.then')}</th>
            <th scope="col">{t('instructor.readings.least')}</th>
            <th scope="col">{t('instructor.readings.most')}</th>
          </tr>
        </thead>
        <tbody>
          {call.curves.map((curve) => {
            const values = curve.points.map(([, value]) => value);
            const value = valueAt(curve, at_ms ?? call.now_ms);
            return (
              <tr key={curve.id}>
                <th scope="row">
                  <Said message={curve.label} />
                </th>
                <td>{value !== null && said(curve.measure, value)}</td>
                <td>{said(curve.measure, Math.min(...values))}</td>
                <td>{said(curve.measure, Math.max(...values))}</td>
              </tr>
            );
          })}
          {at_ms === null &&
            call.readings.map(({ label, value }) => (
              <tr key={label.id}>
                <th scope="row">
                  <Said message={label} />
                </th>
                <td>{t('debrief.value', { v: value })}</td>
                <td />
                <td />
              </tr>
            ))}
        </tbody>
      </table>
      <ul class="balances" aria-label={t('instructor.balances')}>
        {(['water', 'cod', 'nitrogen', 'chlorine'] as const).map((id) => {
          const closed = call.balance[id] < CLOSED;
          return (
            <li key={id} class={closed ? 'good' : 'bad'}>
              <Icon name={closed ? 'check' : 'flag'} />
              {t(`instructor.balance.${id}`)}
              <span class="vh">: {t(closed ? 'instructor.balance.closed' : 'instructor.balance.open')}</span>
            </li>
          );
        })}
      </ul>
      <p class="small">{t('instructor.balances.about')}</p>
    </section>
  );
}
