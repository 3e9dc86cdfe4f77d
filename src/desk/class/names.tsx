import { useState } from 'preact/hooks';
import type { Desk } from '../desk.ts';
import { useDesk } from '../desk.ts';
import { type Held, held, renamed } from './held.ts';

const LONGEST = 60;

interface NameProps {
  readonly who: string;
  /** Whose name is written anew with it. */
  readonly of: (one: Held, at: number) => boolean;
}

/** A name that is written in place, and taken when one leaves the field or presses Enter. */
export function Name({ who, of }: NameProps) {
  const { t } = useDesk();
  const [draft, setDraft] = useState<string | null>(null);
  const take = (name: string) => {
    held.value = renamed(held.value, of, name);
    setDraft(null);
    requestAnimationFrame(() => keepFocus(name.trim()));
  };
  return (
    <input
      class="class-name"
      value={draft ?? who}
      maxLength={LONGEST}
      autocomplete="off"
      spellcheck={false}
      aria-label={t('class.rename', { who })}
      onInput={({ currentTarget }) => setDraft(currentTarget.value)}
      onChange={({ currentTarget }) => take(currentTarget.value)}
    />
  );
}

/** A row that got another name has another place, and may have lost the focus on its way there. */
function keepFocus(name: string): void {
  if (document.activeElement !== document.body) return;
  const names = [...document.querySelectorAll<HTMLInputElement>('.class-name')];
  names.find(({ value }) => value === name)?.focus();
}

/** A call's title where it is on the list, otherwise its id. */
export function titleOf(desk: Desk, callId: string): string {
  const card = desk.calls.value.find(({ id }) => id === callId);
  const brought = desk.brought.value.find((one) => one.card.id === callId)?.card;
  const title = (card ?? brought)?.title;
  return title ? desk.local(title) : callId;
}
