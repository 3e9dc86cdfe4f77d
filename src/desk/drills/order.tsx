import { useState } from 'preact/hooks';
import type { Answer, Option, Ordering } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly ask: Ordering;
  readonly answer: Answer | null;
  readonly judged: boolean;
  /** What the button says that gives the answer. */
  readonly confirm: string;
  readonly onAnswer: (ids: readonly string[]) => void;
  /** Where there is no such button: each move counts at once. */
  readonly onBlank?: (() => void) | undefined;
}

/** Things to be put in sequence: each goes up or down by a button, and where it stands then is told. */
export function OrderAnswer({ ask, answer, judged, confirm, onAnswer, onBlank }: Props) {
  const { t, speak } = useDesk();
  const [ids, setIds] = useState<readonly string[]>(Array.isArray(answer) ? answer : ask.items.map(({ id }) => id));
  const [moved, setMoved] = useState('');
  const items = ids.flatMap((id) => ask.items.filter((item) => item.id === id));
  const move = ({ id, label }: Option, by: -1 | 1) => {
    const from = ids.indexOf(id);
    const to = from + by;
    const other = ids[to];
    if (judged || other === undefined) return;
    const now = ids.map((one, i) => (i === to ? id : i === from ? other : one));
    setIds(now);
    if (onBlank !== undefined) onAnswer(now);
    setMoved(t('drills.order.moved', { what: label, n: to + 1, of: ids.length }));
  };
  return (
    <div class="order-answer">
      <ol class="drill-options" aria-label={t('drills.answers')}>
        {items.map((item, i) => {
          const place = ask.right.indexOf(item.id);
          const name = speak.value(item.label);
          return (
            <li key={item.id} class={judged ? (place === i ? 'order-item right' : 'order-item wrong') : 'order-item'}>
              <span class="number" aria-hidden="true">
                {i + 1}
              </span>
              <span class="option-text">
                <Said message={item.label} />
              </span>
              {judged ? (
                <span class="option-mark">
                  <Icon name={place === i ? 'check' : 'cross'} /> {t('drills.order.place', { n: place + 1 })}
                </span>
              ) : (
                <span class="order-moves">
                  <Move way="up" item={item.id} name={name} off={i === 0} onMove={() => move(item, -1)} />
                  <Move
                    way="down"
                    item={item.id}
                    name={name}
                    off={i === items.length - 1}
                    onMove={() => move(item, 1)}
                  />
                </span>
              )}
            </li>
          );
        })}
      </ol>
      <p class="vh" role="status">
        {moved}
      </p>
      {!judged && onBlank === undefined && (
        <button type="button" class="primary confirm-order" onClick={() => onAnswer(ids)}>
          {confirm}
        </button>
      )}
    </div>
  );
}

interface MoveProps {
  readonly way: 'up' | 'down';
  readonly item: string;
  readonly name: string;
  /** At the end of the list: the button stays, so that the focus does. */
  readonly off: boolean;
  readonly onMove: () => void;
}

function Move({ way, item, name, off, onMove }: MoveProps) {
  const { t } = useDesk();
  return (
    <button type="button" class={`quiet move-${way}`} data-move={`${way} ${item}`} aria-disabled={off} onClick={onMove}>
      <Icon name="arrow" />
      <span class="vh">{t(`drills.order.${way}`, { what: name })}</span>
    </button>
  );
}
