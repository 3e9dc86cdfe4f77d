import { formatMoment } from '../../words/calendar.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { LotView } from '../protocol.ts';
import { Said } from '../screen.tsx';

/** One door: its house, whether its phone rings, and what its book says. */
export function LotCard({ lot }: { lot: LotView }) {
  const desk = useDesk();
  const { t, local } = desk;
  const titleId = `lot-${lot.lot}`;
  return (
    <li class={lot.state === 'rings' ? 'card lot rings' : 'card lot'} aria-labelledby={titleId}>
      <House />
      <div class="lot-words">
        <h3 id={titleId}>{t('round.lot', { lot: lot.lot })}</h3>
        <p>
          <State lot={lot} />
        </p>
        {lot.at !== undefined && <p class="small">{formatMoment(desk.words.value, lot.at)}</p>}
        {lot.callId !== undefined && <TakeButton callId={lot.callId} titleId={titleId} />}
      </div>
      <details>
        <summary>
          <Icon name="notebook" /> {t('round.book', { lot: lot.lot })}
        </summary>
        {lot.book.length === 0 && <p>{t('round.book.empty')}</p>}
        <ol class="lot-book">
          {lot.book.map((entry) => (
            <li key={`${entry.at.year}-${entry.at.month}-${entry.at.day}`}>
              <p class="strong">
                {formatMoment(desk.words.value, entry.at)} · {local(entry.why)}
              </p>
              {entry.lines.map((line) => (
                <p key={line.id}>
                  <Said message={line} />
                </p>
              ))}
            </li>
          ))}
        </ol>
      </details>
    </li>
  );
}

function State({ lot }: { lot: LotView }) {
  const { t, local } = useDesk();
  if (lot.why !== undefined) {
    return (
      <>
        <Icon name="phone" /> {t('round.rings', { why: local(lot.why) })}
      </>
    );
  }
  return <>{t(lot.state === 'living' ? 'round.passing' : 'round.quiet')}</>;
}

function TakeButton({ callId, titleId }: { callId: string; titleId: string }) {
  const desk = useDesk();
  return (
    <button
      type="button"
      class="primary"
      id={`take-${callId}`}
      data-call={callId}
      aria-labelledby={`take-${callId} ${titleId}`}
      onClick={() => desk.go({ screen: 'call', callId })}
    >
      {desk.t('round.take')}
    </button>
  );
}

function House() {
  return (
    <svg class="lot-house" viewBox="0 0 64 48" aria-hidden="true" focusable="false">
      <path class="lawn" d="M0 42c12-4 20-4 32-2s22 2 32-1v9H0z" />
      <path class="wall" d="M14 22h30v19H14z" />
      <path class="roof" d="M10 24L29 8l19 16" />
      <path class="window" d="M19 27h7v6h-7zM33 28h6v13h-6z" />
      <path class="post" d="M54 28v13" />
      <circle class="lamp" cx="54" cy="26" r="3" />
    </svg>
  );
}
