import type { Choice } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import type { Given } from './use-round.ts';

interface Props {
  readonly ask: Choice;
  readonly given: Given | null;
  readonly onAnswer: (id: string) => void;
  /** In an exam, where nothing is told yet: what is chosen so far, and can be changed. */
  readonly chosen?: string | null;
}

/** The answers as buttons; while the focus is among them, their numbers choose too. */
export function Options({ ask, given, onAnswer, chosen }: Props) {
  const { t } = useDesk();
  const byNumber = (event: KeyboardEvent) => {
    const option = event.ctrlKey || event.altKey || event.metaKey ? undefined : ask.options[Number(event.key) - 1];
    if (option && given === null) onAnswer(option.id);
  };
  return (
    <>
      <ol class="drill-options" aria-label={t('drills.answers')} onKeyDown={byNumber}>
        {ask.options.map((option, i) => {
          const mark =
            given !== null ? markOf(option.id, ask.right, given.answer) : option.id === chosen ? 'chosen' : '';
          return (
            <li key={option.id}>
              <button
                type="button"
                class={`drill-option ${mark}`}
                data-option={option.id}
                aria-disabled={given !== null}
                aria-pressed={chosen === undefined || given !== null ? undefined : option.id === chosen}
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
      {given === null && <p class="small drill-keys">{t('drills.keys', { n: ask.options.length })}</p>}
    </>
  );
}

function markOf(id: string, right: string, answer: string | number): 'right' | 'wrong' | 'other' {
  if (id === right) return 'right';
  return id === answer ? 'wrong' : 'other';
}
