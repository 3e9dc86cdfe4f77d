import type { ComponentChildren } from 'preact';
import { shownAt, textAt, valueAt } from '../../build/draft.ts';
import type { Problem } from '../../calls/problems.ts';
import type { Key } from '../../words/words.ts';
import { useDesk } from '../desk.ts';
import { CautionSign } from '../icons.tsx';
import { problemsAt, useBuild } from './state.ts';

export interface FieldProps {
  readonly path: string;
  readonly label: string;
  readonly help?: string;
}

/** An id for the field of a path, to be pointed at. */
export function idOf(path: string): string {
  return `at-${path.replace(/[^\w]+/g, '-')}`;
}

/** What is wrong at a path, each with its mend. The words are those of the file, whose keys are English. */
export function Problems({ path, own = true }: { path: string; own?: boolean }) {
  const { looked } = useBuild();
  const all = problemsAt(looked, path, own);
  return (
    <div id={`${idOf(path)}-wrong`} class="wrong">
      {all.map((one) => (
        <ProblemLine key={`${one.path} ${one.message}`} problem={one} />
      ))}
    </div>
  );
}

export function ProblemLine({
  problem: { path, message, mend },
  where = false,
}: {
  problem: Problem;
  where?: boolean;
}) {
  const { t } = useDesk();
  const unwritten = message === 'nothing is written here' || message === 'missing';
  return (
    <p class="problem">
      <CautionSign />
      {unwritten && !where ? (
        <span>{t('build.unwritten')}</span>
      ) : (
        <span lang="en">
          {where && path !== '' && <code>{path}</code>} {message}; {mend}
        </span>
      )}
    </p>
  );
}

/** What ties a field to what is wrong with it. */
export function described(path: string) {
  const { looked } = useBuild();
  const wrong = problemsAt(looked, path, true).length > 0;
  return { id: idOf(path), 'aria-describedby': `${idOf(path)}-wrong`, 'aria-invalid': wrong || undefined };
}

/** A text in both languages, side by side. */
export function TextField({ path, label, help, rows = 1 }: FieldProps & { readonly rows?: number }) {
  const { t } = useDesk();
  return (
    <fieldset class="field pair">
      <legend>{label}</legend>
      {help !== undefined && <p class="small">{help}</p>}
      <div class="languages">
        {(['en', 'es'] as const).map((language) => (
          <OneText key={language} path={path} language={language} rows={rows} name={t(`build.in.${language}`)} />
        ))}
      </div>
    </fieldset>
  );
}

interface OneTextProps {
  readonly path: string;
  readonly language: 'en' | 'es';
  readonly rows: number;
  readonly name: string;
}

function OneText({ path, language, rows, name }: OneTextProps) {
  const build = useBuild();
  const at = `${path}.${language}`;
  const shared = {
    ...described(at),
    lang: language,
    value: textAt(build.draft, path, language),
    onInput: (event: { currentTarget: { value: string } }) => build.set(at, event.currentTarget.value, true),
  };
  return (
    <div>
      <label for={idOf(at)} class="small">
        {name}
      </label>
      {rows === 1 ? (
        <input type="text" maxLength={2000} {...shared} />
      ) : (
        <textarea rows={rows} maxLength={2000} {...shared} />
      )}
      <Problems path={at} />
    </div>
  );
}

/** A text that is no words: an id. */
export function PlainField({ path, label, help }: FieldProps) {
  const build = useBuild();
  return (
    <div class="field">
      <label for={idOf(path)}>{label}</label>
      <input
        type="text"
        spellcheck={false}
        value={shownAt(build.draft, path)}
        onInput={(event) => build.set(path, event.currentTarget.value, true)}
        {...described(path)}
      />
      {help !== undefined && <p class="small">{help}</p>}
      <Problems path={path} />
    </div>
  );
}

export function InstantField({ path, label, note }: FieldProps & { readonly note?: string }) {
  const build = useBuild();
  return (
    <div class="field">
      <label for={idOf(path)}>{label}</label>
      <div class="beside">
        <input
          type="datetime-local"
          step={60}
          value={shownAt(build.draft, path)}
          onInput={(event) => {
            const { value } = event.currentTarget;
            if (value !== '') build.set(path, value.slice(0, 16), true);
          }}
          {...described(path)}
        />
        {note !== undefined && <span class="small">{note}</span>}
      </div>
      <Problems path={path} />
    </div>
  );
}

interface ChoiceProps extends FieldProps {
  readonly options: readonly { readonly id: string; readonly name: string }[];
}

export function ChoiceField({ path, label, help, options }: ChoiceProps) {
  const build = useBuild();
  const value = shownAt(build.draft, path);
  return (
    <div class="field">
      <label for={idOf(path)}>{label}</label>
      <select value={value} onChange={(event) => build.set(path, event.currentTarget.value)} {...described(path)}>
        {options.every(({ id }) => id !== value) && <option value={value}>{value}</option>}
        {options.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      {help !== undefined && <p class="small">{help}</p>}
      <Problems path={path} />
    </div>
  );
}

interface SliderProps extends FieldProps {
  readonly otherwise: number;
  readonly least?: number;
  readonly most?: number;
  readonly step?: number;
  readonly tell: (value: number) => string;
}

export function SliderField({ path, label, otherwise, least = 0, most = 1, step = 0.01, tell }: SliderProps) {
  const build = useBuild();
  const kept = valueAt(build.draft, path);
  const value = typeof kept === 'number' ? kept : otherwise;
  return (
    <div class="field slider">
      <label for={idOf(path)}>{label}</label>
      <div class="beside">
        <input
          type="range"
          min={least}
          max={most}
          step={step}
          value={value}
          aria-valuetext={tell(value)}
          onInput={(event) => build.set(path, event.currentTarget.valueAsNumber, true)}
          {...described(path)}
        />
        <output for={idOf(path)}>{tell(value)}</output>
      </div>
      <Problems path={path} />
    </div>
  );
}

interface TickProps {
  readonly label: ComponentChildren;
  readonly checked: boolean;
  readonly onChange: (on: boolean) => void;
  readonly note?: string | undefined;
}

export function Tick({ label, checked, onChange, note }: TickProps) {
  return (
    <label class="option">
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.currentTarget.checked)} />
      <span>
        {label}
        {note !== undefined && <span class="small note"> {note}</span>}
      </span>
    </label>
  );
}

/** Ids in a list of the draft, each of which can be ticked. */
export function useList(path: string): { has(id: string): boolean; put(id: string, on: boolean): void } {
  const build = useBuild();
  const value = valueAt(build.draft, path);
  const list = Array.isArray(value) ? value : [];
  return {
    has: (id) => list.includes(id),
    put: (id, on) => build.set(path, on ? [...list.filter((one) => one !== id), id] : list.filter((one) => one !== id)),
  };
}

/** The words of a step's heading. */
export function StepTitle({ id }: { id: Key }) {
  const { t } = useDesk();
  return (
    <h2 id="step-title" tabIndex={-1}>
      {t(id)}
    </h2>
  );
}
