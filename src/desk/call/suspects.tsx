import { useState } from 'preact/hooks';
import type { CallView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

/** The person's own list of what it might be. Nobody but they ticks it. */
export function Suspects({ view }: { view: CallView }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const ticked = view.suspects.filter((one) => one.ticked);
  return (
    <section class="card suspects" aria-labelledby="suspects-title">
      <header>
        <h2 id="suspects-title">{desk.t('suspects.title')}</h2>
        <button type="button" class="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
          <i class="twist" />
          {desk.t('suspects.choose')}
        </button>
      </header>
      <ul class="ticked" aria-label={desk.t('suspects.ticked')}>
        {ticked.map((one) => (
          <li key={one.fault}>
            <Icon name="check" />
            <Said message={one.label} />
          </li>
        ))}
        {ticked.length === 0 && <li class="none">{desk.t('suspects.none')}</li>}
      </ul>
      {open && (
        <div class="options">
          {view.suspects.map((one) => (
            <label key={one.fault} class="option">
              <input
                type="checkbox"
                checked={one.ticked}
                onChange={(event) => void desk.session.tick(one.fault, event.currentTarget.checked)}
              />
              <span>
                <Said message={one.label} />
              </span>
            </label>
          ))}
        </div>
      )}
    </section>
  );
}
