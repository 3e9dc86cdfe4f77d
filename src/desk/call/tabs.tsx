import { useDesk } from '../desk.ts';
import { Icon, type IconName } from '../icons.tsx';

export type Tab = 'sheet' | 'hand' | 'notes';

const TABS: readonly { readonly id: Tab; readonly icon: IconName }[] = [
  { id: 'sheet', icon: 'sheet' },
  { id: 'hand', icon: 'mend' },
  { id: 'notes', icon: 'notebook' },
];

/** On a narrow screen the three cards share one place; these choose which is on top. */
export function Tabs({ tab, onTab, notes }: { tab: Tab; onTab: (tab: Tab) => void; notes: number }) {
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
    </nav>
  );
}
