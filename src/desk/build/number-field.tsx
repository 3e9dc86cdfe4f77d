import { shownAt, valueAt } from '../../build/draft.ts';
import type { Measure } from '../../service/message.ts';
import { shown } from '../../words/units.ts';
import { useDesk } from '../desk.ts';
import { described, type FieldProps, idOf, Problems } from './fields.tsx';
import { useBuild } from './state.ts';

interface NumberProps extends FieldProps {
  readonly measure?: Measure;
  /** Rain, which the file has in mm. */
  readonly rain?: boolean;
  readonly least?: number;
  readonly most?: number;
  readonly step?: number;
  /** Stands where the draft has none. */
  readonly otherwise?: number;
}

/** A number in the reader's units; the file keeps its own. */
export function NumberField({ path, label, help, least, most, step, otherwise, ...of }: NumberProps) {
  const build = useBuild();
  const kept = valueAt(build.draft, path) ?? otherwise;
  const value = typeof kept === 'number' ? kept : undefined;
  const { per, from, unit } = useWay(value ?? 0, of);
  const limit = (one: number | undefined) => (one === undefined ? undefined : rounded(one * per + from, 6));
  return (
    <div class="field">
      <label for={idOf(path)}>{label}</label>
      <div class="beside">
        <input
          type="number"
          inputMode="decimal"
          min={limit(least)}
          max={limit(most)}
          step={step ?? 'any'}
          value={value === undefined ? shownAt(build.draft, path) : rounded(value * per + from, 3)}
          onInput={(event) => {
            const typed = event.currentTarget.valueAsNumber;
            if (!Number.isNaN(typed)) build.set(path, rounded((typed - from) / per, 4), true);
          }}
          {...described(path)}
        />
        {unit !== '' && <span>{unit}</span>}
      </div>
      {help !== undefined && <p class="small">{help}</p>}
      <Problems path={path} />
    </div>
  );
}

interface Way {
  /** So many of the shown unit to one of the file's, from where. */
  readonly per: number;
  readonly from: number;
  readonly unit: string;
}

const MM_PER_INCH = 25.4;

/** How a number of the file is shown. */
function useWay(near: number, { measure, rain = false }: Pick<NumberProps, 'measure' | 'rain'>): Way {
  const { settings, speak, t } = useDesk();
  const { units } = settings.value;
  if (rain) {
    const us = units === 'us';
    return { per: us ? 1 / MM_PER_INCH : 1, from: 0, unit: t(us ? 'unit.in' : 'unit.mm', { n: '' }).trim() };
  }
  if (measure === undefined) return { per: 1, from: 0, unit: '' };
  const at = near === 0 ? 1 : near;
  const [one, two] = [shown({ measure, value: at }, units), shown({ measure, value: at * 1.0001 }, units)];
  const per = (two.value - one.value) / (at * 0.0001);
  // Many minutes are said in hours; the field has them in minutes.
  const said = { measure, value: measure === 'duration_min' ? 1 : near };
  const unit = unitWord(speak.value({ id: 'word.quantity', values: { q: said } }));
  return { per, from: rounded(one.value - per * at, 6), unit };
}

function unitWord(spoken: string): string {
  return spoken.replace(/^[\d.,\s\u2212-]+/, '');
}

function rounded(value: number, decimals: number): number {
  const by = 10 ** decimals;
  return Math.round(value * by) / by;
}
