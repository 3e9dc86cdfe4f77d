import { useState } from 'preact/hooks';
import type { NumberAsked } from '../../quiz/drill.ts';
import type { Answer } from '../../quiz/right.ts';
import { formatNumber } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';

interface Props {
  readonly ask: NumberAsked;
  readonly answer: Answer | null;
  readonly judged: boolean;
  /** What the button says that gives the answer. */
  readonly confirm: string;
  readonly onAnswer: (value: number) => void;
  /** Where there is no such button: what is typed counts at once, and where that is no number this is called. */
  readonly onBlank?: (() => void) | undefined;
}

/** A number to type, with either decimal mark. */
export function NumberAnswer({ ask, answer, judged, confirm, onAnswer, onBlank }: Props) {
  const desk = useDesk();
  const [typed, setTyped] = useState(answer === null ? '' : String(answer));
  const [wanting, setWanting] = useState(false);
  const check = () => {
    const value = numberIn(typed);
    setWanting(value === null);
    if (value !== null) onAnswer(value);
  };
  const type = (text: string) => {
    setTyped(text);
    if (onBlank === undefined) return;
    const value = numberIn(text);
    if (value === null) onBlank();
    else onAnswer(value);
  };
  return (
    <form
      class="number-answer"
      onSubmit={(event) => {
        event.preventDefault();
        if (!judged && onBlank === undefined) check();
      }}
    >
      <label>
        <span>{desk.t('drills.number', { unit: ask.unit })}</span>
        <input
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={typed}
          readOnly={judged}
          aria-invalid={wanting}
          aria-describedby={wanting ? 'number-missing' : undefined}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </label>
      {!judged && onBlank === undefined && (
        <button type="submit" class="primary">
          {confirm}
        </button>
      )}
      {judged && (
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
