import { useDesk } from '../desk.ts';
import type { CallCard } from '../protocol.ts';
import { SEASONS, seasonOf } from './searched.ts';

/** What the list is narrowed to; a blank is anything. */
export interface Narrowed {
  readonly kind: string;
  readonly unit: string;
  readonly season: string;
  readonly passed: string;
}

export const ANYTHING: Narrowed = { kind: '', unit: '', season: '', passed: '' };

/** Whether a call is among what the list is narrowed to. */
export function isWithin({ kind, unit, season, passed }: Narrowed, card: CallCard, hasPassed: boolean): boolean {
  return (
    (kind === '' || kind === card.kind) &&
    (unit === '' || unit === card.unit) &&
    (season === '' || season === seasonOf(card.starts.month)) &&
    (passed === '' || (passed === 'yes') === hasPassed)
  );
}

interface Props {
  readonly value: Narrowed;
  /** The units that there are calls on. */
  readonly units: readonly string[];
  readonly onChange: (value: Narrowed) => void;
}

/** Four questions by which a long list becomes a short one. */
export function Filters({ value, units, onChange }: Props) {
  const { t } = useDesk();
  const choices = {
    kind: (['alarm', 'complaint', 'visit'] as const).map((id) => [id, t(`find.kind.${id}`)] as const),
    unit: units.map((id) => [id, id.toUpperCase()] as const),
    season: SEASONS.map((id) => [id, t(`find.season.${id}`)] as const),
    passed: (['no', 'yes'] as const).map((id) => [id, t(`find.passed.${id}`)] as const),
  };
  return (
    <fieldset class="find-filters">
      <legend class="vh">{t('find.filters')}</legend>
      {(['kind', 'unit', 'season', 'passed'] as const).map((about) => (
        <label key={about}>
          <span>{t(`find.${about}`)}</span>
          <select
            name={about}
            value={value[about]}
            onChange={({ currentTarget }) => onChange({ ...value, [about]: currentTarget.value })}
          >
            <option value="">{t(`find.${about}.any`)}</option>
            {choices[about].map(([id, label]) => (
              <option key={id} value={id}>
                {label}
              </option>
            ))}
          </select>
        </label>
      ))}
    </fieldset>
  );
}
