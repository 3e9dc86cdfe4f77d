import { useState } from 'preact/hooks';
import { NEGLECT_IDS, type NeglectId, type Year, type YearPage, type YearWeek } from '../../home/year.ts';
import type { PartId, Scene } from '../../scene/types.ts';
import { type Measure, quantity, say } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { PictureHost } from '../picture-host.tsx';
import { useHome } from './ask.ts';
import { AskForm } from './asking.tsx';
import { Choice, Choices, type HomeChoices } from './choices.tsx';
import { PageHands, usePages } from './pages.tsx';
import type { HomeRequest } from './protocol.ts';

/** A page of the book, ms: the year takes a minute. */
const PAGE_ms = 1150;
const noPart = () => {};
/** Where to look first. */
const WHERE: Readonly<Record<NeglectId, PartId>> = {
  'never-pumped': 'trash-tank',
  'no-refill': 'disinfection',
  'dirty-filter': 'aeration',
  'air-off': 'aeration',
  wipes: 'trash-tank',
};

/** A year of a neglected unit as a flip-book, beside the same home with one that is looked after. */
export function YearPart(choices: HomeChoices) {
  const desk = useDesk();
  const { t } = desk;
  const [neglect, setNeglect] = useState<NeglectId>('never-pumped');
  const year = useHome<Extract<HomeRequest, { kind: 'year' }>>(desk);
  return (
    <section class="card home-year" aria-labelledby="home-year">
      <h2 id="home-year">{t('home.year')}</h2>
      <p>{t('home.year.lead')}</p>
      <AskForm
        asking={year}
        id="year"
        begin={t('home.year.run')}
        onBegin={() => year.ask({ kind: 'year', home: choices.home, neglect })}
      >
        <Choice
          label={t('home.year.neglect')}
          value={neglect}
          options={NEGLECT_IDS.map((id) => ({ id, name: t(`home.neglect.${id}`) }))}
          onChange={setNeglect}
        />
        <Choices {...choices} />
      </AskForm>
      {year.reply !== undefined && <Book year={year.reply.year} />}
    </section>
  );
}

function Book({ year }: { year: Year<Scene> }) {
  const { t, speak } = useDesk();
  const { weeks } = year;
  const pages = usePages(weeks.length, PAGE_ms);
  const week = weeks[pages.at];
  const part = WHERE[year.neglect];
  if (week === undefined) return null;
  const page = t('home.year.page', {
    n: pages.at + 1,
    month: speak.value(monthOf(week)),
    t: quantity('temperature_C', week.water_C),
  });
  return (
    <div class="home-book" data-book>
      <PageHands pages={pages} name={t('home.year.week')} says={page} />
      <p class="home-drop-now">
        <strong>{page}</strong>
      </p>
      <div class="home-pages">
        <Page id="touched" title={t(`home.neglect.${year.neglect}`)} part={part} page={week.touched} />
        <Page id="twin" title={t('home.year.twin')} part={part} page={week.twin} />
      </div>
      <Months weeks={weeks} />
      <p class="home-advice">{t('home.year.caution')}</p>
    </div>
  );
}

const monthOf = ({ date }: YearWeek<Scene>) => say(`month.${date.month}`);

interface PageProps {
  readonly id: string;
  readonly title: string;
  readonly part: PartId;
  readonly page: YearPage<Scene>;
}

function Page({ id, title, part, page }: PageProps) {
  const desk = useDesk();
  const { t } = desk;
  return (
    <section class="home-page" aria-labelledby={`home-page-${id}`} data-page={id}>
      <h3 id={`home-page-${id}`}>{title}</h3>
      {desk.openPicture !== undefined && (
        <div class="home-page-picture">
          <PictureHost bare scene={page.seen} part={part} view="yard" onSelect={noPart} />
        </div>
      )}
      <p>
        {t('home.year.depths', {
          sludge: quantity('length_m', page.sludge_m),
          scum: quantity('length_m', page.scum_m),
        })}
      </p>
      <p class={page.signs.length > 0 ? 'home-signs' : 'small'}>
        {page.signs.length > 0
          ? t('home.year.signs', { signs: page.signs.map((sign) => t(`home.sign.${sign}`)).join(', ') })
          : t('home.year.no-signs')}
      </p>
    </section>
  );
}

/** The year once more, in figures: the last page of each month. */
function Months({ weeks }: { weeks: Year<Scene>['weeks'] }) {
  const { t, speak } = useDesk();
  const months = weeks.filter((week, i) => {
    const next = weeks[i + 1];
    return next?.date.month !== week.date.month;
  });
  const two = (measure: Measure, of: (page: YearPage<Scene>) => number, { touched, twin }: YearWeek<Scene>) =>
    t('home.year.two', { a: quantity(measure, of(touched)), b: quantity(measure, of(twin)) });
  return (
    <details>
      <summary>{t('home.year.table')}</summary>
      <div class="home-table">
        <table>
          <thead>
            <tr>
              <th scope="col">{t('home.year.month')}</th>
              <th scope="col">{t('home.year.sludge')}</th>
              <th scope="col">{t('home.year.scum')}</th>
              <th scope="col">{t('home.year.oxygen')}</th>
              <th scope="col">{t('home.year.solids')}</th>
            </tr>
          </thead>
          <tbody>
            {months.map((week) => (
              <tr key={week.date.month}>
                <th scope="row">{speak.value(monthOf(week))}</th>
                <td>{two('length_m', (page) => page.sludge_m, week)}</td>
                <td>{two('length_m', (page) => page.scum_m, week)}</td>
                <td>{two('concentration_mgL', (page) => page.oxygen_mgL, week)}</td>
                <td>{two('concentration_mgL', (page) => page.solids_mgL, week)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
