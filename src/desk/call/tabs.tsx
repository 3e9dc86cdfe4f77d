import { useDesk } from '../desk.ts';
import { Icon, type IconName } from '../icons.tsx';

export type Tab = 'sheet' | 'hand' | 'notes' | 'coach';

const TABS: readonly { readonly id: Tab; readonly icon: IconName }[] = [
  { id: 'sheet', icon: 'sheet' },
  { id: 'hand', icon: 'mend' },
  { id: 'notes', icon: 'notebook' },
];

const COACH = { id: 'coach', icon: 'coach' } as const;

interface Props {
  readonly tab: Tab;
  readonly onTab: (tab: Tab) => void;
  readonly notes: number;
  readonly coached: boolean;
}

/** On a narrow screen the cards share one place; these choose which is on top. */
export function Tabs({ tab, onTab, notes, coached }: Props) {
  const desk = useDesk();
  return (
    <nav class="tabs" aria-label={desk.t('call.cards')}>
      {(coached ? [...TABS, COACH] : TABS).map((one) => (
        <button key={one.id} type="button" aria-current={one.id === tab} onClick={() => onTab(one.id)}>
          <Icon name={one.icon} />
          <span>{desk.t(`tab.${one.id}`)}</span>
          {one.id === 'notes' && notes > 0 && (
            <span class="badge">
              {notes}
              <span class="vh"> {desk.t('tab.entries')}</span>
            </span>
          )}
          {one.id === 'coach' && desk.session.coachWord.value !== null && (
            <span class="badge">
              ! <span class="vh">{desk.t('tab.coach.calls')}</span>
            </span>
          )}
        </button>
      ))}
    </nav>
  );
}
