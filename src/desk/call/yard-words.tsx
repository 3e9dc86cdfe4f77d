import '../css/yard-words.css';
import type { CallView, PartView } from '../../calls/view.ts';
import { formatClock } from '../../words/measure.ts';
import { skySaid } from '../../yard/skySaid.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import { drawnOf } from './drawn-of.ts';
import { PartStateWords } from './part-state-words.tsx';
import { flowNumber } from './parts.ts';
import { clockAt } from './time.ts';

/**
 * The picture as words, from the house to the field and then the dry parts: of each its name, how well it is known, all that
 * was read there and the way to what can be done. It says no more than the picture draws.
 */
export function YardWords({ view }: { view: CallView }) {
  const desk = useDesk();
  const parts = view.parts.filter(({ id }) => id !== 'phone');
  return (
    <div class="yard-words">
      <h2>{desk.t('access.yard')}</h2>
      <p class="small">{desk.t('access.yard.lead')}</p>
      <p class="yard-drawn">
        <Said message={skySaid(view.scene.sky)} />
      </p>
      <ol>
        {parts.map((part) => (
          <li key={part.id} data-part={part.id}>
            <PartInWords view={view} part={part} />
          </li>
        ))}
      </ol>
    </div>
  );
}

function PartInWords({ view, part }: { readonly view: CallView; readonly part: PartView }) {
  const desk = useDesk();
  const number = flowNumber(part.id);
  const notes = view.notebook.filter((note) => note.part === part.id);
  const drawn = drawnOf(view.scene, part.id);
  const open = part.actions.filter(({ available }) => available).length;
  const bringToHand = () => {
    desk.session.select(part.id);
    requestAnimationFrame(() => {
      const title = document.getElementById('hand-title');
      if (title === null) return;
      title.tabIndex = -1;
      title.focus();
    });
  };
  return (
    <>
      <h3>
        {number !== null && <span class="number">{number}</span>}
        <Said message={part.name} />
      </h3>
      <p class="yard-state">
        <PartStateWords view={view} part={part.id} />
        {part.here && `; ${desk.t('call.youAreHere')}`}
      </p>
      {drawn.length > 0 && (
        <p class="yard-drawn">
          {drawn.map((one, i) => (
            <span key={`${one.id}${i}`}>
              <Said message={one} />{' '}
            </span>
          ))}
        </p>
      )}
      {notes.length > 0 && (
        <ul class="yard-notes">
          {[...notes].reverse().map((note) => (
            <li key={note.id}>
              <span class="time">{formatClock(clockAt(view, note.at_s))}</span> <Said message={note.what} />:{' '}
              <Said message={note.reading} />
            </li>
          ))}
        </ul>
      )}
      <button type="button" class="secondary" onClick={bringToHand}>
        {desk.t('access.yard.go', { n: open })}
        <span class="vh">
          {': '}
          <Said message={part.name} />
        </span>
        <Icon name="arrow" />
      </button>
    </>
  );
}
