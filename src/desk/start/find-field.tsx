import { useEffect, useRef } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';

interface Props {
  readonly query: string;
  /** Somebody may be about to search. */
  readonly onNear: () => void;
  readonly onQuery: (query: string) => void;
}

/** Where one types what is looked for. The key / leads here from anywhere but a field, Escape clears it and leaves. */
export function FindField({ query, onNear, onQuery }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const field = useRef<HTMLInputElement>(null);
  const bySlash = desk.settings.value.slash !== false;
  useEffect(() => {
    if (!bySlash) return;
    const heard = (event: KeyboardEvent) => {
      const { key, ctrlKey, metaKey, altKey, target } = event;
      if (key !== '/' || ctrlKey || metaKey || altKey) return;
      if (target instanceof Element && target.closest('input, textarea, select, dialog')) return;
      event.preventDefault();
      field.current?.focus();
    };
    addEventListener('keydown', heard);
    return () => removeEventListener('keydown', heard);
  }, [bySlash]);
  const clear = () => {
    onQuery('');
    field.current?.focus();
  };
  return (
    <search>
      <form
        class="find"
        onSubmit={(event) => {
          event.preventDefault();
          document.getElementById('found-title')?.focus();
        }}
      >
        <Icon name="find" />
        <input
          ref={field}
          type="text"
          enterKeyHint="search"
          autoComplete="off"
          spellcheck={false}
          aria-label={t('start.find')}
          aria-keyshortcuts={bySlash ? '/' : undefined}
          placeholder={t('start.find')}
          value={query}
          onFocus={onNear}
          onInput={({ currentTarget }) => onQuery(currentTarget.value)}
          onKeyDown={({ key, currentTarget }) => {
            if (key !== 'Escape') return;
            if (query === '') currentTarget.blur();
            else onQuery('');
          }}
        />
        {query !== '' ? (
          <button type="button" class="quiet" onClick={clear}>
            <Icon name="cross" />
            <span class="vh">{t('start.find.clear')}</span>
          </button>
        ) : (
          bySlash && (
            <span class="find-key" aria-hidden="true">
              /
            </span>
          )
        )}
      </form>
    </search>
  );
}
