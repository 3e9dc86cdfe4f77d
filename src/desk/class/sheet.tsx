import type { Cell, Row } from '../../records/class-sheet.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { writeRoute } from '../routes.ts';
import type { HeldSheet } from './held.ts';
import { Name, titleOf } from './names.tsx';

/** People by calls; how many passed at the end of each row and column. */
export function Sheet({ sheet }: { readonly sheet: HeldSheet }) {
  const desk = useDesk();
  const { t } = desk;
  return (
    <section class="card" aria-labelledby="class-sheet-title">
      <h2 id="class-sheet-title">{t('class.sheet')}</h2>
      <p class="small">{t('class.cells')}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach */}
      <section class="class-scroll" aria-label={t('class.caption')} tabIndex={0}>
        <table class="class-sheet">
          <caption class="vh">{t('class.caption')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('class.person')}</th>
              {sheet.calls.map((call) => (
                <th key={call} scope="col">
                  {titleOf(desk, call)}
                </th>
              ))}
              <th scope="col">{t('class.sum')}</th>
            </tr>
          </thead>
          <tbody>
            {sheet.rows.map((row) => (
              <tr key={row.who}>
                <th scope="row">
                  <Name who={row.who} of={({ who }) => who === row.who} />
                </th>
                {sheet.calls.map((call) => (
                  <Result key={call} sheet={sheet} row={row} call={call} />
                ))}
                <td class="class-sum">{t('class.sum.of', { n: row.passed, m: row.cells.size })}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{t('class.all')}</th>
              {sheet.calls.map((call) => (
                <td key={call}>
                  {t('class.sum.of', passedOf(sheet.rows.flatMap(({ cells }) => cells.get(call) ?? [])))}
                </td>
              ))}
              <td class="class-sum">
                {t('class.sum.of', passedOf(sheet.rows.flatMap(({ cells }) => [...cells.values()])))}
              </td>
            </tr>
          </tfoot>
        </table>
      </section>
    </section>
  );
}

function passedOf(cells: readonly Cell[]) {
  return { n: cells.filter(({ best }) => best.passed).length, m: cells.length };
}

interface ResultProps {
  readonly sheet: HeldSheet;
  readonly row: Row;
  readonly call: string;
}

function Result({ sheet, row: { who, cells }, call }: ResultProps) {
  const desk = useDesk();
  const { t } = desk;
  const cell = cells.get(call);
  if (cell === undefined) {
    return (
      <td class="class-none">
        <span aria-hidden="true">–</span>
        <span class="vh">{t('class.none')}</span>
      </td>
    );
  }
  const { best, tries } = cell;
  const more = [
    ...(best.flags.length > 0 ? [t('class.flags', { n: best.flags.length })] : []),
    ...(tries > 1 ? [t('class.tries', { n: tries })] : []),
    ...(best.helped ? [t('class.helped')] : []),
  ];
  return (
    <td>
      <Verdict passed={best.passed} at={sheet.all.indexOf(best)} who={who} call={titleOf(desk, call)} />
      <span class="class-figures">
        <strong>
          {Math.round(best.score)}
          <span class="vh"> {t('debrief.tag.score')}</span>
        </strong>
        <span>{t('call.minutes', { m: { measure: 'duration_min', value: best.minutes } })}</span>
      </span>
      {more.length > 0 && (
        <span class="class-more">
          {more.map((one, at) => (
            <span key={one}>
              {at > 0 && '· '}
              {one}{' '}
            </span>
          ))}
        </span>
      )}
    </td>
  );
}

interface VerdictProps {
  readonly passed: boolean;
  /** Place of the record among those held. */
  readonly at: number;
  readonly who: string;
  readonly call: string;
}

/** Passed or not, by sign and word, and the way to that record's debrief. */
export function Verdict({ passed, at, who, call }: VerdictProps) {
  const { t } = useDesk();
  return (
    <a class={`class-verdict ${passed ? 'good' : 'bad'}`} href={writeRoute({ screen: 'class', record: at })}>
      <Icon name={passed ? 'check' : 'cross'} />
      <span>
        {t(passed ? 'class.passed' : 'class.failed')}
        <span class="vh">: {t('class.debrief', { who, call })}</span>
      </span>
    </a>
  );
}
