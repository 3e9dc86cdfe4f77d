import { useDesk } from '../desk.ts';
import { Switch } from '../switch.tsx';
import { CopyPart } from './copy-part.tsx';

/** Language, units, light or dark, sound and motion, and copies of what is kept in this browser. */
export function SettingsCard() {
  const desk = useDesk();
  const { t } = desk;
  const { language, units, sound, still, slash, theme = 'auto' } = desk.settings.value;
  const Offline = desk.offline.value;
  return (
    <section class="card settings-card" aria-labelledby="settings-title">
      <h2 id="settings-title">{t('set.title')}</h2>
      <Choice
        legend={t('set.language')}
        name="language"
        value={language}
        options={[
          ['en', 'English'],
          ['es', 'Español'],
        ]}
        onChoose={(value) => void desk.change({ language: value })}
      />
      <Choice
        legend={t('set.units')}
        name="units"
        value={units}
        options={[
          ['us', t('set.units.us')],
          ['si', t('set.units.si')],
        ]}
        onChoose={(value) => void desk.change({ units: value })}
      />
      <Choice
        legend={t('set.theme')}
        name="theme"
        value={theme}
        options={[
          ['auto', t('set.theme.auto')],
          ['light', t('set.theme.light')],
          ['dark', t('set.theme.dark')],
        ]}
        onChoose={(value) => void desk.change({ theme: value })}
      />
      {desk.openSounds !== undefined && (
        <Switch label={t('set.sound')} on={sound} onFlip={(on) => void desk.change({ sound: on })} />
      )}
      <Switch label={t('set.still')} on={still} onFlip={(on) => void desk.change({ still: on })} />
      <Switch label={t('set.slash')} on={slash !== false} onFlip={(on) => void desk.change({ slash: on })} />
      <p class="small">{t('start.how.keys')}</p>
      <CopyPart />
      {Offline && <Offline.Copy />}
      <a class="link" href="#/access">
        {t('start.access')}
      </a>
    </section>
  );
}

interface ChoiceProps<V extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: V;
  readonly options: readonly (readonly [V, string])[];
  readonly onChoose: (value: V) => void;
}

function Choice<V extends string>({ legend, name, value, options, onChoose }: ChoiceProps<V>) {
  return (
    <fieldset class="choice">
      <legend class="vh">{legend}</legend>
      {options.map(([id, label]) => (
        <label key={id} lang={name === 'language' ? id : undefined}>
          <input type="radio" name={name} value={id} checked={id === value} onChange={() => onChoose(id)} />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
