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
  return (
    <input
      class="class-name"
      value={who}
      maxLength={LONGEST}
      autocomplete="off"
      spellcheck={false}
      aria-label={t('class.rename', { who })}
      onChange={({ currentTarget }) => {
        held.value = renamed(held.value, of, currentTarget.value);
        if (currentTarget.value.trim() === '') currentTarget.value = who;
      }}
    />
  );
}

/** A call's title where it is on the list, otherwise its id. */
export function titleOf(desk: Desk, callId: string): string {
  const card = desk.calls.value.find(({ id }) => id === callId);
  const brought = desk.brought.value.find((one) => one.card.id === callId)?.card;
  const title = (card ?? brought)?.title;
  return title ? desk.local(title) : callId;
}
