import '../css/brought.css';
import { useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { writeRoute } from '../routes.ts';
import { CallCardView } from '../start/call-card.tsx';
import type { Brought } from '../stored.ts';

/** The calls that came by link or file, the newest first. One whose id ships by now gives way to it. */
export function BroughtCalls() {
  const desk = useDesk();
  const shipped = new Set(desk.calls.value.map(({ id }) => id));
  const calls = desk.brought.value
    .filter(({ card }) => !shipped.has(card.id))
    .sort((a, b) => b.broughtAt - a.broughtAt);
  if (calls.length === 0) return null;
  return (
    <section class="calls brought-calls" aria-labelledby="brought-list">
      <h2 id="brought-list">{desk.t('brought.list')}</h2>
      <ul class="call-cards">
        {calls.map((one) => (
          <CallCardView key={one.card.id} card={{ ...one.card, brought: one.text }} next={null}>
            <Foot brought={one} />
          </CallCardView>
        ))}
      </ul>
    </section>
  );
}

/** Where it came from, its sheets, and how to be rid of it. */
function Foot({ brought: { card, from, set } }: { brought: Brought }) {
  const desk = useDesk();
  const [asked, setAsked] = useState(false);
  const { t, local } = desk;
  const name = <span class="vh">: {local(card.title)}</span>;
  const drop = async () => {
    await desk.store.dropBrought(card.id);
    await desk.refreshShelves();
    document.querySelector<HTMLElement>('h1')?.focus();
  };
  return (
    <div class="brought-foot">
      <p class="small">
        {t(`brought.from.${from}`)}
        {set !== undefined && ` · ${local(set)}`}
      </p>
      <ul class="brought-ways">
        {(['trainee', 'trainer'] as const).map((who) => (
          <li key={who}>
            <a href={writeRoute({ screen: 'sheet', callId: card.id, who })}>
              <Icon name="sheet" /> {t(`brought.sheet.${who}`)}
              {name}
            </a>
          </li>
        ))}
      </ul>
      <button type="button" class="quiet" aria-expanded={asked} onClick={() => setAsked(!asked)}>
        <Icon name="cross" /> {t('brought.drop')}
        {name}
      </button>
      {asked && (
        <button type="button" class="secondary" data-drop={card.id} onClick={() => void drop()}>
          {t('brought.drop.sure')}
          {name}
        </button>
      )}
    </div>
  );
}
