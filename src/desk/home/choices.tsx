import { useId } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import type { Home, Named } from './protocol.ts';

export interface HomeChoices {
  readonly home: Home;
  readonly units: readonly Named[];
  readonly households: readonly Named[];
  readonly onChange: (home: Home) => void;
}

/** Which home is looked at. */
export function Choices({ home, units, households, onChange }: HomeChoices) {
  const { t, local } = useDesk();
  const options = (all: readonly Named[]) => all.map(({ id, name }) => ({ id, name: local(name) }));
  return (
    <>
      <Choice
        label={t('home.whatif.unit')}
        value={home.unit}
        options={options(units)}
        onChange={(unit) => onChange({ ...home, unit })}
      />
      <Choice
        label={t('home.whatif.household')}
        value={home.household}
        options={options(households)}
        onChange={(household) => onChange({ ...home, household })}
      />
    </>
  );
}

interface ChoiceProps<Id extends string> {
  readonly label: string;
  readonly value: Id;
  readonly options: readonly { readonly id: Id; readonly name: string }[];
  readonly onChange: (id: Id) => void;
}

export function Choice<Id extends string>({ label, value, options, onChange }: ChoiceProps<Id>) {
  const id = useId();
  return (
    <p class="home-field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.currentTarget.value as Id)}>
        {options.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
    </p>
  );
}
