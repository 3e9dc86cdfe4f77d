import { useState } from 'preact/hooks';
import type { Answer, NumberAsked } from '../../quiz/drill.ts';
import { quantity } from '../../service/message.ts';
import { formatNumber } from '../../words/measure.ts';
import { readNumber } from '../../words/typed.ts';
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
  const value = readNumber(desk.words.value, typed);
  const unit = desk.speak.value(ask.unit);
  const written = (n: number) => formatNumber(desk.words.value, n, ask.decimals);
  const type = (text: string) => {
    setTyped(text);
    if (onBlank === undefined) return;
    const typing = readNumber(desk.words.value, text);
    if (Number.isFinite(typing)) onAnswer(typing);
    else onBlank();
  };
  const check = () => {
    const isNumber = Number.isFinite(value);
    setWanting(!isNumber);
    if (isNumber) onAnswer(value);
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
          aria-describedby={wanting ? 'number-missing number-tolerance' : 'number-tolerance'}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </label>
      {judged ? (
        <p class="option-mark right">
          <Icon name="check" /> {desk.t('drills.wanted')}: {written(ask.value)} {unit}
        </p>
      ) : (
        onBlank === undefined && (
          <button type="submit" class="primary">
            {confirm}
          </button>
        )
      )}
      <p id="number-tolerance" class="small tolerance">
        {desk.t('drills.tolerance', { t: quantity('count', ask.tolerance, stepOf(ask.tolerance)), unit: ask.unit })}
      </p>
      {wanting && (
        <p id="number-missing" class="error" role="alert">
          {desk.t('drills.number.missing')}
        </p>
      )}
    </form>
  );
}

/** A tolerance has two figures at the most: this is the last of them. */
function stepOf(tolerance: number): number {
  if (Number.isInteger(tolerance)) return 1;
  return tolerance >= 1 ? 0.1 : tolerance >= 0.1 ? 0.01 : 0.001;
}
