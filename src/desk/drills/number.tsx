import { useState } from 'preact/hooks';
import type { NumberAsked } from '../../quiz/drill.ts';
import { formatNumber } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { Given } from './use-round.ts';

interface Props {
  readonly ask: NumberAsked;
  readonly given: Given | null;
  readonly onAnswer: (value: number) => void;
  /** In an exam, where nothing is told yet: the number so far, taken as it is typed. */
  readonly chosen?: number | null;
  readonly onTyped?: (value: number | null) => void;
}

/** A number to type, with either decimal mark. */
export function NumberAnswer({ ask, given, onAnswer, chosen = null, onTyped }: Props) {
  const desk = useDesk();
  const [typed, setTyped] = useState(chosen === null ? '' : String(chosen));
  const [wanting, setWanting] = useState(false);
  const check = () => {
    const value = numberIn(typed);
    setWanting(value === null);
    if (value !== null) onAnswer(value);
  };
  const type = (text: string) => {
    setTyped(text);
    onTyped?.(numberIn(text));
  };
  return (
    <form
      class="number-answer"
      onSubmit={(event) => {
        event.preventDefault();
        if (given === null && onTyped === undefined) check();
      }}
    >
      <label>
        <span>{desk.t('drills.number', { unit: ask.unit })}</span>
        <input
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={typed}
          readOnly={given !== null}
          aria-invalid={wanting}
          aria-describedby={wanting ? 'number-missing' : undefined}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </label>
      {given === null && onTyped === undefined && (
        <button type="submit" class="primary">
          {desk.t('drills.check')}
        </button>
      )}
      {given !== null && (
        <p class="option-mark right">
          <Icon name="check" /> {desk.t('drills.wanted')}: {formatNumber(desk.words.value, ask.value, 0)}{' '}
          {desk.speak.value(ask.unit)}
        </p>
      )}
      {wanting && (
        <p id="number-missing" class="error" role="alert">
          {desk.t('drills.number.missing')}
        </p>
      )}
    </form>
  );
}

/** What was typed as a number, with either decimal mark. */
function numberIn(typed: string): number | null {
  const value = Number(typed.trim().replace(',', '.'));
  return typed.trim() !== '' && Number.isFinite(value) ? value : null;
}
