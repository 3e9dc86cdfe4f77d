import type { Cell, Row } from '../../records/class-sheet.ts';
import { inMinutes } from '../debrief/step.tsx';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { writeRoute } from '../routes.ts';
import type { HeldSheet } from './held.ts';
import { Name, titleOf } from './names.tsx';
import { RegretSoFar } from './regret.tsx';
import { regretOf } from './reviews.ts';
import type { Regret } from './use-regret.ts';

interface Props {
  readonly sheet: HeldSheet;
  readonly regret: Regret;
}

/** People by calls; how many passed at the end of each row and column. */
export function Sheet({ sheet, regret }: Props) {
  const desk = useDesk();
  const { t } = desk;
  return (
    <section class="card" aria-labelledby="class-sheet-title">
      <h2 id="class-sheet-title">{t('class.sheet')}</h2>
      <p class="small">{t('class.cells')}</p>
      <RegretSoFar regret={regret} />
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
                  <Result key={call} sheet={sheet} row={row} call={call} follows={regret.state === 'running'} />
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
  /** Whether the regret of those that have none yet is to come. */
  readonly follows: boolean;
}

function Result({ sheet, row: { who, cells }, call, follows }: ResultProps) {
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
  const regret = regretOf(best);
  const spent = [
    t('call.minutes', { m: { measure: 'duration_min', value: best.minutes } }),
    ...(regret === undefined ? [] : [t('steps.regret.of', { m: inMinutes(regret) })]),
    ...(regret === undefined && follows ? [t('class.regret.waits')] : []),
  ];
  const more = [
    ...(best.flags.length > 0 ? [t('class.flags', { n: best.flags.length })] : []),
    ...(tries > 1 ? [t('class.tries', { n: tries })] : []),
    ...(best.helped ? [t('class.helped')] : []),
    ...(best.taught ? [t('class.taught')] : []),
  ];
  return (
    <td>
      <span class="class-outcome">
        <Verdict passed={best.passed} at={sheet.all.indexOf(best)} who={who} call={titleOf(desk, call)} />
        <strong>
          {Math.round(best.score)}
          <span class="vh"> {t('debrief.tag.score')}</span>
        </strong>
      </span>
      <Bits of={spent} />
      <Bits of={more} />
    </td>
  );
}

/** Short texts in a row, which goes on in the next line where a column is narrow. */
function Bits({ of }: { readonly of: readonly string[] }) {
  return (
    <span class="class-bits">
      {of.map((one, at) => (
        <span key={one}>
          {one}
          {at < of.length - 1 && ' · '}
        </span>
      ))}
    </span>
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
