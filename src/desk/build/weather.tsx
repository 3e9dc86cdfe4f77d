import { lengthAt, valueAt } from '../../build/draft.ts';
import { windSaid } from '../../yard/skySaid.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { InstantField, SliderField, StepTitle, Tick } from './fields.tsx';
import { NumberField } from './number-field.tsx';
import { useBuild } from './state.ts';

const MOST_STORMS = 20;
/** The strongest wind that can be set here, m/s: near gale (Beaufort, from memory). */
const MOST_WIND_ms = 15;

/** Sky, ground and storms; what the household uses follows from the property and from faults of use. */
export function WeatherStep() {
  const desk = useDesk();
  const build = useBuild();
  const { t } = desk;
  const share = (value: number) =>
    desk.speak.value({ id: 'word.quantity', values: { q: { measure: 'share', value } } });
  const storms = lengthAt(build.draft, 'storms');
  const add = () => {
    const start = valueAt(build.draft, 'start');
    build.set(`storms[${storms}]`, { start: start ?? '', hours: 3, depth_mm: 25 });
  };
  return (
    <section class="card step" aria-labelledby="step-title">
      <StepTitle id="build.step.weather" />
      <div class="fields">
        <NumberField path="temperature_C" label={t('build.temperature')} measure="temperature_C" least={2} most={30} />
        <SliderField path="weather.cloud" label={t('build.cloud')} otherwise={0} step={0.1} tell={share} />
        <SliderField path="weather.rain" label={t('build.rain')} otherwise={0} step={0.1} tell={share} />
      </div>
      <p class="small">{t('build.rain.help')}</p>
      <Wind />
      <h3>{t('build.storms')}</h3>
      <ul class="rows">
        {Array.from({ length: storms }, (_, i) => (
          <li key={i} class="fields">
            <InstantField path={`storms[${i}].start`} label={t('build.storm.start')} />
            <NumberField
              path={`storms[${i}].hours`}
              label={t('build.storm.hours')}
              measure="duration_h"
              least={0}
              most={72}
            />
            <NumberField path={`storms[${i}].depth_mm`} label={t('build.storm.depth')} rain least={0} most={1800} />
            <button
              type="button"
              class="secondary"
              onClick={() => build.set(storms === 1 ? 'storms' : `storms[${i}]`, undefined)}
            >
              <Icon name="cross" /> {t('build.storm.out', { n: i + 1 })}
            </button>
          </li>
        ))}
      </ul>
      {storms < MOST_STORMS && (
        <button type="button" class="secondary" onClick={add}>
          <Icon name="plus" /> {t('build.storm.add')}
        </button>
      )}
      <p class="small">{t('build.use.help')}</p>
    </section>
  );
}

/** Left to the day and the weather, or set: from the west on the left of the slider, from the east on its right. */
function Wind() {
  const { t, speak } = useDesk();
  const build = useBuild();
  const set = valueAt(build.draft, 'weather.wind_ms') !== undefined;
  return (
    <>
      <Tick
        label={t('build.wind.own')}
        checked={!set}
        onChange={(own) => build.set('weather.wind_ms', own ? undefined : 0)}
      />
      {set && (
        <div class="fields">
          <SliderField
            path="weather.wind_ms"
            label={t('build.wind')}
            otherwise={0}
            least={-MOST_WIND_ms}
            most={MOST_WIND_ms}
            step={0.5}
            tell={(value) => speak.value(windSaid(value))}
          />
        </div>
      )}
    </>
  );
}
