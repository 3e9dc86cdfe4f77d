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
}

/** A number to type, with either decimal mark. */
export function NumberAnswer({ ask, given, onAnswer }: Props) {
  const desk = useDesk();
  const [typed, setTyped] = useState('');
  const [wanting, setWanting] = useState(false);
  const value = Number(typed.trim().replace(',', '.'));
  const check = () => {
    const isNumber = typed.trim() !== '' && Number.isFinite(value);
    setWanting(!isNumber);
    if (isNumber) onAnswer(value);
  };
  return (
    <form
      class="number-answer"
      onSubmit={(event) => {
        event.preventDefault();
        if (given === null) check();
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
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      {given === null ? (
        <button type="submit" class="primary">
          {desk.t('drills.check')}
        </button>
      ) : (
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
