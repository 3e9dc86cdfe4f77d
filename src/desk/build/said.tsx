import { lengthAt, valueAt } from '../../build/draft.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Problems, StepTitle, TextField, Tick, useList } from './fields.tsx';
import { NumberField } from './number-field.tsx';
import { useBuild } from './state.ts';

const MOST_SAID = 6;

/** What the household says, in its own words, and what of it is so. */
export function SaidStep() {
  const { t } = useDesk();
  const build = useBuild();
  const said = lengthAt(build.draft, 'report.said');
  const noticed = useList('report.noticed');
  const so = build.looked?.preview?.symptoms;
  return (
    <section class="card step" aria-labelledby="step-title">
      <StepTitle id="build.step.said" />
      <p class="small">{t('build.said.help')}</p>
      {Array.from({ length: said }, (_, i) => (
        <div key={i} class="said-row">
          <TextField path={`report.said[${i}]`} label={t('build.said', { n: i + 1 })} rows={2} />
          {said > 1 && (
            <button type="button" class="secondary" onClick={() => build.set(`report.said[${i}]`, undefined)}>
              <Icon name="cross" /> {t('build.said.out', { n: i + 1 })}
            </button>
          )}
        </div>
      ))}
      {said < MOST_SAID && (
        <button type="button" class="secondary" onClick={() => build.set(`report.said[${said}]`, { en: '', es: '' })}>
          <Icon name="plus" /> {t('build.said.add')}
        </button>
      )}
      <fieldset class="field">
        <legend>{t('build.noticed')}</legend>
        <p class="small">{t('build.noticed.help')}</p>
        <div class="options">
          {(build.looked?.offered.symptoms ?? []).map((id) => (
            <Tick
              key={id}
              label={t(`symptom.${id}`)}
              checked={noticed.has(id)}
              onChange={(on) => noticed.put(id, on)}
              note={so === undefined ? undefined : t(so.includes(id) ? 'build.noticed.so' : 'build.noticed.not')}
            />
          ))}
        </div>
        <Problems path="report.noticed" own={false} />
      </fieldset>
      <TextField path="report.history" label={t('build.asked.history')} help={t('build.asked.history.help')} rows={3} />
      <TextField path="report.use" label={t('build.asked.use')} help={t('build.asked.use.help')} rows={2} />
      <div class="fields">
        <Tick
          label={t('build.silenced')}
          checked={valueAt(build.draft, 'report.silenced') === true}
          onChange={(on) => build.set('report.silenced', on)}
        />
        <NumberField
          path="report.earlier_trips"
          label={t('build.trips')}
          help={t('build.trips.help')}
          least={0}
          most={30}
          step={1}
          otherwise={0}
        />
      </div>
      <TextField path="story" label={t('build.story')} help={t('build.story.help')} rows={3} />
    </section>
  );
}
