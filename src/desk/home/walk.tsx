import { useState } from 'preact/hooks';
import type { PartId, Scene } from '../../scene/types.ts';
import { useDesk } from '../desk.ts';
import { CautionSign, Icon } from '../icons.tsx';
import { XrayPicture } from '../picture/xray-picture.tsx';
import { STOPS, type Stop } from './stops.ts';

/** A walk through the chambers: the picture, the parts in order, and what there is to know of the one that is looked at. */
export function WalkPart({ scene }: { scene: Scene | undefined }) {
  const desk = useDesk();
  const { t } = desk;
  const [stop, setStop] = useState<Stop>('house');
  const [select] = useState(() => (part: PartId) => {
    const found = STOPS.find((one) => one === part);
    if (found !== undefined) setStop(found);
  });
  const at = STOPS.indexOf(stop);
  const go = (by: number) => setStop(STOPS[at + by] ?? stop);
  return (
    <section class="card home-walk" aria-labelledby="home-walk">
      <h2 id="home-walk">{t('home.walk')}</h2>
      <p>{t('home.walk.lead')}</p>
      {desk.openPicture !== undefined && (
        <section class="stage home-stage" aria-label={t('home.walk.picture')}>
          {scene === undefined ? (
            <p class="picture-wait">{t('call.picture.loading')}</p>
          ) : (
            <XrayPicture scene={scene} part={stop} onSelect={select} />
          )}
        </section>
      )}
      <div class="home-tour">
        <nav aria-label={t('home.walk.list')}>
          <ol class="home-stops">
            {STOPS.map((one) => (
              <li key={one}>
                <button type="button" aria-current={one === stop ? 'step' : undefined} onClick={() => setStop(one)}>
                  {t(`home.part.${one}`)}
                </button>
              </li>
            ))}
          </ol>
        </nav>
        <article class="home-stop">
          <div aria-live="polite">
            <p class="small">{t('home.walk.step', { n: at + 1, all: STOPS.length })}</p>
            <h3>{t(`home.part.${stop}`)}</h3>
            <p class="small">{t('home.walk.trade', { name: t(`part.${stop}`) })}</p>
            <dl>
              <dt>{t('home.walk.does')}</dt>
              <dd>{t(`home.part.${stop}.does`)}</dd>
              <dt>{t('home.walk.notice')}</dt>
              <dd>{t(`home.part.${stop}.notice`)}</dd>
              <dt class="home-never">
                <CautionSign /> {t('home.walk.never')}
              </dt>
              <dd>{t(`home.part.${stop}.never`)}</dd>
            </dl>
          </div>
          <div class="buttons">
            <button type="button" class="secondary" aria-disabled={at === 0} onClick={() => go(-1)}>
              {t('home.walk.back')}
            </button>
            <button type="button" class="primary" aria-disabled={at === STOPS.length - 1} onClick={() => go(1)}>
              {t('home.walk.next')} <Icon name="arrow" />
            </button>
          </div>
        </article>
      </div>
    </section>
  );
}
