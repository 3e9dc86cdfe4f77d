import { useId, useState } from 'preact/hooks';
import type { Chlorine } from '../../home/month.ts';
import { type MessageValue, quantity } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { useHome } from './ask.ts';
import { Choices, type HomeChoices } from './choices.tsx';
import type { HomeRequest } from './protocol.ts';

const L_PER_GALLON = 3.785411784;

/** What a month of chlorine costs this home, with the working. */
export function CostPart(choices: HomeChoices) {
  const desk = useDesk();
  const { t } = desk;
  const [tablet, setTablet] = useState('');
  const [liquid, setLiquid] = useState('');
  const month = useHome<Extract<HomeRequest, { kind: 'month' }>>(desk);
  const gallons = desk.settings.value.units === 'us';
  const per = t(gallons ? 'home.cost.gallon' : 'home.cost.litre');
  return (
    <section class="card home-cost" aria-labelledby="home-cost">
      <h2 id="home-cost">{t('home.cost')}</h2>
      <p>{t('home.cost.lead')}</p>
      <form
        class="home-fields"
        onSubmit={(event) => {
          event.preventDefault();
          month.ask({ kind: 'month', home: choices.home });
        }}
      >
        <Choices {...choices} />
        <Price label={t('home.cost.tablet')} value={tablet} onInput={setTablet} />
        <Price label={t('home.cost.liquid', { per })} value={liquid} onInput={setLiquid} />
        <p class="buttons">
          <button type="submit" class="primary" data-cost disabled={month.share !== undefined}>
            {t('home.cost.run')}
          </button>
        </p>
      </form>
      <div aria-live="polite" class="home-working">
        {month.reply !== undefined && (
          <>
            <p>{t('home.cost.flow', { v: quantity('volume_m3', month.reply.water_m3) })}</p>
            {month.reply.chlorine === undefined ? (
              <p>{t('home.cost.light')}</p>
            ) : (
              <Working
                of={month.reply.chlorine}
                tablet={priceOf(tablet)}
                litre={priceOf(liquid) / (gallons ? L_PER_GALLON : 1)}
              />
            )}
          </>
        )}
      </div>
      <p class="small">{t('home.cost.source')}</p>
    </section>
  );
}

function Working({ of, tablet, litre }: { of: Chlorine; tablet: number; litre: number }) {
  const { t } = useDesk();
  const grams = (value: number) => quantity('count', value, 1);
  const dollars = (value: number): MessageValue => quantity('money_usd', value, 0.01);
  return (
    <>
      <p>{t('home.cost.dose', { c: quantity('concentration_mgL', of.dose_mgL), g: grams(of.chlorine_g) })}</p>
      <p>
        {t('home.cost.tablets', {
          g: grams(of.chlorine_g),
          whole: grams(of.tablet_g),
          n: quantity('count', of.tablets, 0.1),
        })}{' '}
        {tablet > 0 && t('home.cost.total', { usd: dollars(of.tablets * tablet) })}
      </p>
      <p>
        {t('home.cost.liquids', {
          g: grams(of.chlorine_g),
          s: grams(of.strength_gL),
          v: quantity('volume_m3', of.liquid_L / 1000, 0.0001),
        })}{' '}
        {litre > 0 && t('home.cost.total', { usd: dollars(of.liquid_L * litre) })}
      </p>
    </>
  );
}

function Price({ label, value, onInput }: { label: string; value: string; onInput: (value: string) => void }) {
  const id = useId();
  return (
    <p class="home-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="number"
        min={0}
        max={1000}
        step={0.01}
        inputMode="decimal"
        value={value}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
    </p>
  );
}

/** What was typed, or nothing. */
function priceOf(text: string): number {
  const price = Number(text);
  return Number.isFinite(price) && price > 0 ? price : 0;
}
