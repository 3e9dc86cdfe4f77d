import type { ComponentChildren } from 'preact';
import { useDesk } from '../desk.ts';
import { Icon, type IconName } from '../icons.tsx';

export type Tab = 'sheet' | 'hand' | 'notes' | 'coach';

const TABS: readonly { readonly id: Exclude<Tab, 'coach'>; readonly icon: IconName }[] = [
  { id: 'sheet', icon: 'sheet' },
  { id: 'hand', icon: 'mend' },
  { id: 'notes', icon: 'notebook' },
];

interface Props {
  readonly tab: Tab;
  readonly onTab: (tab: Tab) => void;
  readonly notes: number;
  /** A further tab. */
  readonly children: ComponentChildren;
}

/** On a narrow screen the cards share one place; these choose which is on top. */
export function Tabs({ tab, onTab, notes, children }: Props) {
  const desk = useDesk();
  return (
    <nav class="tabs" aria-label={desk.t('call.cards')}>
      {TABS.map((one) => (
        <button key={one.id} type="button" aria-current={one.id === tab} onClick={() => onTab(one.id)}>
          <Icon name={one.icon} />
          <span>{desk.t(`tab.${one.id}`)}</span>
          {one.id === 'notes' && notes > 0 && (
            <span class="badge">
              {notes}
              <span class="vh"> {desk.t('tab.entries')}</span>
            </span>
          )}
        </button>
      ))}
      {children}
    </nav>
  );
}
