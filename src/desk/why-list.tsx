import './css/whys.css';
import type { Why, WhyPart } from '../scene/why.ts';
import { useDesk } from './desk.ts';
import { Said } from './screen.tsx';

/** The numbers of an instant; each opens on what it is made of, the equation and the source. */
export function WhyList({ whys }: { whys: readonly Why[] }) {
  const { t } = useDesk();
  return (
    <section class="whys" aria-labelledby="whys-title">
      <h3 id="whys-title">{t('because.title')}</h3>
      <p class="small">{t('because.lead')}</p>
      <div class="whys-all">
        {whys.map((why) => (
          <details key={why.id} data-why={why.id}>
            <summary>
              <span>{t(`because.${why.id}`)}</span> <strong>{t('debrief.value', { v: why.value })}</strong>
            </summary>
            {why.parts.length > 0 && <Sum why={why} />}
            <p>
              <Said message={why.how} />
            </p>
            <p class="small">{t('because.source', { s: t(`because.source.${why.id}`) })}</p>
          </details>
        ))}
      </div>
    </section>
  );
}

function Sum({ why }: { why: Why }) {
  const { t } = useDesk();
  return (
    <table>
      <caption class="vh">{t('because.sum')}</caption>
      <tbody>
        {why.parts.map((part, i) => (
          <Row key={part.label.id} part={part} first={i === 0} />
        ))}
        <tr class="whole">
          <th scope="row">{t(`because.${why.id}`)}</th>
          <td>{t('debrief.value', { v: why.value })}</td>
        </tr>
      </tbody>
    </table>
  );
}

function Row({ part, first }: { part: WhyPart; first: boolean }) {
  const { t } = useDesk();
  const sign = part.minus ? '−' : first ? '' : '+';
  return (
    <tr>
      <th scope="row">
        <span class="vh">{sign === '' ? '' : t(part.minus ? 'because.minus' : 'because.plus')} </span>
        <Said message={part.label} />
      </th>
      <td>
        <span aria-hidden="true">{sign} </span>
        {t('debrief.value', { v: part.value })}
      </td>
    </tr>
  );
}
