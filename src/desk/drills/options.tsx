import type { Choice } from '../../quiz/drill.ts';
import type { Answer } from '../../quiz/right.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly ask: Choice;
  readonly answer: Answer | null;
  readonly judged: boolean;
  readonly onAnswer: (id: string) => void;
}

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
          const mark = judged ? markOf(option.id, ask.right, answer) : option.id === answer ? 'chosen' : '';
          return (
            <li key={option.id}>
              <button
                type="button"
                class={`drill-option ${mark}`}
                data-option={option.id}
                aria-disabled={judged}
                aria-pressed={answer === null || judged ? undefined : option.id === answer}
                onClick={() => onAnswer(option.id)}
              >
                <span class="number" aria-hidden="true">
                  {i + 1}
                </span>
                <span class="option-text">
                  <Said message={option.label} />
                </span>
                {mark !== '' && mark !== 'other' && (
                  <span class="option-mark">
                    <Icon name={mark === 'wrong' ? 'cross' : 'check'} />
                    {t(mark === 'right' ? 'drills.wanted' : 'drills.yours')}
                  </span>
                )}
              </button>
            </li>
          );
        })}
      </ol>
      {!judged && <p class="small drill-keys">{t('drills.keys', { n: ask.options.length })}</p>}
    </>
  );
}

function markOf(id: string, right: string, answer: Answer | null): 'right' | 'wrong' | 'other' {
  if (id === right) return 'right';
  return id === answer ? 'wrong' : 'other';
}
