import { textAt, valueAt } from '../../build/draft.ts';
import { idFrom } from '../../build/new-draft.ts';
import { useDesk } from '../desk.ts';
import { ChoiceField, InstantField, PlainField, StepTitle, TextField } from './fields.tsx';
import { NumberField } from './number-field.tsx';
import { OFFERED_NUMBERS } from './numbers.ts';
import { useBuild } from './state.ts';

/** Where the call is, on which unit, and when the phone rings. */
export function PropertyStep() {
  const desk = useDesk();
  const build = useBuild();
  const { t, local } = desk;
  const { units = [], households = [] } = build.looked?.offered ?? {};
  const title = textAt(build.draft, 'title', 'en');
  // A routine visit is written as a file; one that is opened here stays one.
  const kinds = build.draft.kind === 'visit' ? (['visit'] as const) : (['alarm', 'complaint'] as const);
  return (
    <section class="card step" aria-labelledby="step-title">
      <StepTitle id="build.step.property" />
      <TextField path="title" label={t('build.title')} help={t('build.title.help')} />
      <TextField path="summary" label={t('build.summary')} help={t('build.summary.help')} rows={2} />
      <TextField path="lot" label={t('build.lot')} help={t('build.lot.help')} />
      <div class="fields">
        <PlainField path="id" label={t('build.id')} help={t('build.id.help')} />
        {build.draft.id === '' && title !== '' && (
          <button type="button" class="secondary" onClick={() => build.set('id', idFrom(title))}>
            {t('build.id.from', { id: idFrom(title) })}
          </button>
        )}
        <ChoiceField
          path="kind"
          label={t('build.kind')}
          options={kinds.map((id) => ({ id, name: t(`build.kind.${id}`) }))}
        />
        <ChoiceField
          path="unit"
          label={t('build.unit')}
          options={units.map(({ id, name }) => ({ id, name: local(name) }))}
        />
        <ChoiceField
          path="household"
          label={t('build.household')}
          options={households.map(({ id, name }) => ({ id, name: local(name) }))}
        />
        <InstantField path="start" label={t('build.start')} />
        <NumberField
          path="history_days"
          label={t('build.history')}
          help={t('build.history.help')}
          least={1}
          most={60}
          step={1}
        />
        <NumberField path="seed" label={t('build.seed')} help={t('build.seed.help')} least={0} step={1} />
      </div>
      <Numbers />
    </section>
  );
}

/** Numbers of the unit that are otherwise in this call. */
function Numbers() {
  const desk = useDesk();
  const build = useBuild();
  const { t, speak } = desk;
  const asBuilt = build.looked?.offered.numbers ?? {};
  const changed = valueAt(build.draft, 'changed') as Readonly<Record<string, number>> | undefined;
  const offered = OFFERED_NUMBERS.filter(({ path }) => asBuilt[path] !== undefined);
  const set = (path: string, value: number | undefined) => {
    const { [path]: _before, ...others } = changed ?? {};
    const next = value === undefined ? others : { ...others, [path]: value };
    build.set('changed', Object.keys(next).length === 0 ? undefined : next, true);
  };
  return (
    <details class="numbers">
      <summary>{t('build.numbers', { n: Object.keys(changed ?? {}).length })}</summary>
      <p class="small">{t('build.numbers.help')}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{t('build.numbers.what')}</th>
            <th scope="col">{t('build.numbers.built')}</th>
            <th scope="col">{t('build.numbers.here')}</th>
          </tr>
        </thead>
        <tbody>
          {offered.map(({ path, measure, part, kind }) => {
            const name = `${part === undefined ? '' : `${speak.value({ id: `part.${part}` })}: `}${t(`build.number.${kind}`)}`;
            const built = asBuilt[path] ?? 0;
            return (
              <tr key={path}>
                <th scope="row">{name}</th>
                <td>{speak.value({ id: 'word.quantity', values: { q: { measure, value: built } } })}</td>
                <td>
                  <NumberCell name={name} value={changed?.[path]} built={built} onSet={(value) => set(path, value)} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}

interface CellProps {
  readonly name: string;
  readonly value: number | undefined;
  readonly built: number;
  readonly onSet: (value: number | undefined) => void;
}

/** In the file's own unit, metres and kilopascals: a builder of units reads these. Emptied, it is as built. */
function NumberCell({ name, value, built, onSet }: CellProps) {
  return (
    <input
      type="number"
      step="any"
      aria-label={name}
      placeholder={String(built)}
      value={value ?? ''}
      onInput={(event) => {
        const { value: typed, valueAsNumber } = event.currentTarget;
        onSet(typed === '' || Number.isNaN(valueAsNumber) ? undefined : valueAsNumber);
      }}
    />
  );
}
