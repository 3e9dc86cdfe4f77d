import type { Answer, Choice, Pointing } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly ask: Choice | Pointing;
  readonly answer: Answer | null;
  readonly judged: boolean;
  readonly onAnswer: (id: string) => void;
}

/** Keys from 1 on choose; there are no more of them. */
const KEYS = 9;

/**
 * The answers as buttons; while the focus is among them, their numbers choose too. Until it is judged, an answer that was
 * given shows only that it was, and may be changed.
 */
export function Options({ ask, answer, judged, onAnswer }: Props) {
  const { t } = useDesk();
  const byNumber = (event: KeyboardEvent) => {
    const option = event.ctrlKey || event.altKey || event.metaKey ? undefined : ask.options[Number(event.key) - 1];
    if (option && !judged) onAnswer(option.id);
  };
  return (
    <>
      <ol class="drill-options" aria-label={t('drills.answers')} onKeyDown={byNumber}>
        {ask.options.map((option, i) => {
          const mark = markOf(option.id, answer, judged ? ask.right : undefined);
          return (
            <li key={option.id}>
              <button
                type="button"
                class={`drill-option ${mark}`}
                data-option={option.id}
                aria-disabled={judged}
                aria-pressed={!judged && answer !== null ? option.id === answer : undefined}
                onClick={() => {
                  if (!judged) onAnswer(option.id);
                }}
              >
                <span class="number" aria-hidden="true">
                  {i + 1}
                </span>
                <span class="option-text">
                  <Said message={option.label} />
                </span>
                {mark === 'chosen' && <span class="option-mark">{t('drills.yours')}</span>}
                {(mark === 'right' || mark === 'wrong') && (
                  <span class="option-mark">
                    <Icon name={mark === 'right' ? 'check' : 'cross'} />
                    {t(mark === 'right' ? 'drills.wanted' : 'drills.yours')}
                  </span>
                )}
              </button>
            </li>
          );
        })}
      </ol>
      {!judged && <p class="small drill-keys">{t('drills.keys', { n: Math.min(KEYS, ask.options.length) })}</p>}
    </>
  );
}

type Mark = '' | 'chosen' | 'right' | 'wrong' | 'other';

/** How an option is marked; `right` is known once the answer is judged. */
function markOf(id: string, answer: Answer | null, right: string | undefined): Mark {
  if (right === undefined) return id === answer ? 'chosen' : '';
  if (id === right) return 'right';
  return id === answer ? 'wrong' : 'other';
}
