import { useState } from 'preact/hooks';
import { shownAt } from '../../build/draft.ts';
import { useDesk } from '../desk.ts';
import { ChoiceField, Problems, StepTitle, Tick, useList } from './fields.tsx';
import { NumberField } from './number-field.tsx';
import { useBuild } from './state.ts';

/** What is allowed, what it may cost, and what passes. */
export function LimitsStep() {
  const { t } = useDesk();
  const build = useBuild();
  const urgency = useList('expected.urgency');
  const visit = shownAt(build.draft, 'expected.decision') === 'visit';
  return (
    <section class="card step" aria-labelledby="step-title">
      <StepTitle id="build.step.limits" />
      <div class="fields">
        <NumberField path="limits.minutes" label={t('build.limit.minutes')} measure="duration_min" least={1} />
        <NumberField path="limits.money_usd" label={t('build.limit.money')} least={0} />
        <NumberField path="pass" label={t('build.pass')} help={t('build.pass.help')} least={1} most={100} step={1} />
        <ChoiceField
          path="expected.decision"
          label={t('build.decision')}
          options={(['visit', 'close'] as const).map((id) => ({ id, name: t(`build.decision.${id}`) }))}
        />
      </div>
      {visit && (
        <fieldset class="field">
          <legend>{t('build.urgency')}</legend>
          <div class="options">
            {(['now', 'before-dosing', 'next-visit'] as const).map((id) => (
              <Tick
                key={id}
                label={t(`urgency.${id}`)}
                checked={urgency.has(id)}
                onChange={(on) => urgency.put(id, on)}
              />
            ))}
          </div>
          <Problems path="expected.urgency" own={false} />
        </fieldset>
      )}
      <Withheld />
    </section>
  );
}

function Withheld() {
  const desk = useDesk();
  const { t, speak } = desk;
  const build = useBuild();
  const [sought, setSought] = useState('');
  const withheld = useList('withheld');
  const checks = build.looked?.offered.checks ?? [];
  const named = checks.map(({ id, label, part }) => ({
    id,
    name: speak.value(label),
    part: speak.value(part),
  }));
  const like = sought.trim().toLowerCase();
  const shown = named.filter(
    ({ id, name, part }) => withheld.has(id) || (like !== '' && `${name} ${part}`.toLowerCase().includes(like)),
  );
  return (
    <fieldset class="field">
      <legend>{t('build.withheld')}</legend>
      <p class="small">{t('build.withheld.help', { n: checks.length })}</p>
      <label for="seek-action" class="small">
        {t('build.withheld.seek')}
      </label>
      <input id="seek-action" type="search" value={sought} onInput={(event) => setSought(event.currentTarget.value)} />
      <div class="options">
        {shown.map(({ id, name, part }) => (
          <Tick key={id} label={name} note={part} checked={withheld.has(id)} onChange={(on) => withheld.put(id, on)} />
        ))}
      </div>
      <Problems path="withheld" own={false} />
    </fieldset>
  );
}
