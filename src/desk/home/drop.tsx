import { useState } from 'preact/hooks';
import { DIRT_IDS, type DirtId, DROP_PLACES, type Drop, type DropPlace } from '../../home/drop.ts';
import { countsOf } from '../../home/hundred.ts';
import { lasting } from '../../home/lasting.ts';
import { SEASON_IDS, type SeasonId } from '../../home/seasons.ts';
import { type Message, say } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { useHome } from './ask.ts';
import { AskForm } from './asking.tsx';
import { Choice, Choices, type HomeChoices } from './choices.tsx';
import { DropPicture } from './drop-picture.tsx';
import { PageHands, usePages } from './pages.tsx';
import type { HomeRequest } from './protocol.ts';

/** A step of the play, ms; by then the drops of the step before have come to rest. */
const BEAT_ms = 500;
/** Looks that a step of the play goes on: an hour each but on the first day. */
const BY = 6;

/** One flush on its way: asked for, then played hour by hour, with how long each chamber holds it and what is left of its dirt. */
export function DropPart(choices: HomeChoices) {
  const desk = useDesk();
  const { t } = desk;
  const [season, setSeason] = useState<SeasonId>('mild');
  const drop = useHome<Extract<HomeRequest, { kind: 'drop' }>>(desk);
  return (
    <section class="card home-drop" aria-labelledby="home-drop">
      <h2 id="home-drop">{t('home.drop')}</h2>
      <p>{t('home.drop.lead')}</p>
      <AskForm
        asking={drop}
        id="drop"
        begin={t('home.drop.run')}
        onBegin={() => drop.ask({ kind: 'drop', home: choices.home, season })}
      >
        <Choices {...choices} />
        <Choice
          label={t('home.whatif.season')}
          value={season}
          options={SEASON_IDS.map((id) => ({ id, name: t(`home.season.${id}`) }))}
          onChange={setSeason}
        />
      </AskForm>
      {drop.reply !== undefined && <Followed drop={drop.reply.drop} />}
    </section>
  );
}

function Followed({ drop }: { drop: Drop }) {
  const desk = useDesk();
  const { t } = desk;
  const { looks } = drop;
  const pages = usePages(looks.length, BEAT_ms, BY);
  const still = desk.stillWanted.value;
  const look = looks[pages.at] ?? looks[0];
  if (look === undefined) return null;
  const { astray: _, ...counts } = countsOf(look.share);
  const since = t('home.drop.since', { d: stayed(look.since_s) });
  const where = t('home.drop.where', counts);
  return (
    <div class="home-followed" data-followed>
      <DropPicture share={look.share} still={still} label={`${since} ${where}`} />
      <PageHands pages={pages} name={t('home.drop.time')} says={`${since} ${where}`} />
      <p class="home-drop-now">
        <strong>{since}</strong> {where}
      </p>
      <ul class="home-effects">
        {(['first', 'half', 'most'] as const).map((which) => {
          const s = drop.reached_s[which];
          return (
            <li key={which}>
              {s === undefined ? t(`home.drop.${which}.not`) : t(`home.drop.${which}`, { d: stayed(s) })}
            </li>
          );
        })}
      </ul>
      <LeftTable drop={drop} />
      <p class="home-advice">{t('home.drop.caution')}</p>
    </div>
  );
}

const PART = {
  trash: 'trash-tank',
  aeration: 'aeration',
  clarifier: 'clarifier',
  riser: 'disinfection',
  pump: 'pump-tank',
} as const satisfies Record<DropPlace, string>;

/** How long each place holds the water, and what is left of the dirt when it leaves; the air tank is where the rest is made. */
function LeftTable({ drop }: { drop: Drop }) {
  const { t, speak } = useDesk();
  const left = (id: DirtId, place: Exclude<DropPlace, 'aeration'>): string =>
    speak.value(percent(drop.dirt[place][id], drop.dirt.house[id]));
  return (
    <div class="home-table">
      <table>
        <caption>{t('home.drop.table')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('home.drop.step')}</th>
            <th scope="col">{t('home.drop.stays')}</th>
            {DIRT_IDS.map((id) => (
              <th key={id} scope="col">
                {t(`home.dirt.${id}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {DROP_PLACES.map((place) => (
            <tr key={place}>
              <th scope="row">{t(`home.part.${PART[place]}`)}</th>
              <td>{speak.value(stayed(drop.stay_s[place]))}</td>
              {place === 'aeration' ? (
                <td colSpan={DIRT_IDS.length}>{t('home.drop.at-work')}</td>
              ) : (
                DIRT_IDS.map((id) => <td key={id}>{left(id, place)}</td>)
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const HOUR_s = 3600;

function stayed(s: number): Message {
  return s < HOUR_s ? say('home.minutes', { n: Math.max(1, Math.round(s / 60)) }) : lasting(s);
}

/** Under a hundredth only that it is so: more figures would be those of the model, not of a yard. */
function percent(left: number, came: number): Message {
  const share = (100 * left) / came;
  return share < 1 ? say('home.drop.trace') : say('home.drop.percent', { n: Math.round(share) });
}
