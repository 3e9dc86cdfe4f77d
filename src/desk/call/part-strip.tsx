import { useEffect, useRef } from 'preact/hooks';
import type { CallView, PartView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import { PartStateWords } from './part-state-words.tsx';
import { flowNumber } from './parts.ts';

/** Every part in the order the water takes: the same choice as in the picture, in words. Arrow keys walk along it. */
export function PartStrip({ view, onGo }: { view: CallView; onGo: () => void }) {
  const desk = useDesk();
  const { session } = desk;
  const chosen = session.part.value;
  const strip = useRef<HTMLElement>(null);
  // Brings the chosen part's chip into the strip's sight, without moving the page.
  useEffect(() => {
    const box = strip.current;
    const chip = document.getElementById(`part-${chosen}`);
    if (box === null || chip === null) return;
    const left = chip.offsetLeft - box.offsetLeft;
    if (left < box.scrollLeft || left + chip.offsetWidth > box.scrollLeft + box.clientWidth) {
      box.scrollLeft = left - (box.clientWidth - chip.offsetWidth) / 2;
    }
  }, [chosen]);
  const go = (part: PartView) => {
    session.select(part.id);
    onGo();
  };
  const walk = (event: KeyboardEvent, index: number) => {
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    const next = view.parts[(index + by + view.parts.length) % view.parts.length];
    if (next === undefined) return;
    go(next);
    document.getElementById(`part-${next.id}`)?.focus();
  };
  return (
    <nav ref={strip} class="part-strip" aria-label={desk.t('call.parts')}>
      {view.parts.map((part, index) => {
        const number = flowNumber(part.id);
        return (
          <button
            key={part.id}
            id={`part-${part.id}`}
            type="button"
            class="part-chip"
            aria-current={part.id === chosen}
            tabIndex={part.id === chosen ? 0 : -1}
            onClick={() => go(part)}
            onKeyDown={(event) => walk(event, index)}
          >
            {number === null ? part.id === 'phone' && <Icon name="phone" /> : <span class="number">{number}</span>}
            <Said message={part.name} />
            {part.id !== 'phone' && (
              <span class="vh">
                {', '}
                <PartStateWords view={view} part={part.id} />
              </span>
            )}
            {part.here && <span class="here">{desk.t('call.here')}</span>}
          </button>
        );
      })}
    </nav>
  );
}
