import type { CallView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

/** The person's own list of what it might be. Nobody but they ticks it. */
export function Suspects({ view }: { view: CallView }) {
  const desk = useDesk();
  const ticked = view.suspects.filter((one) => one.ticked);
  return (
    <section class="card suspects" aria-labelledby="suspects-title">
      <h2 id="suspects-title">{desk.t('suspects.title')}</h2>
      <ul class="ticked" aria-label={desk.t('suspects.ticked')}>
        {ticked.map((one) => (
          <li key={one.fault}>
            <Icon name="check" />
            <Said message={one.label} />
          </li>
        ))}
        {ticked.length === 0 && <li class="none">{desk.t('suspects.none')}</li>}
      </ul>
      <details>
        <summary>{desk.t('suspects.choose')}</summary>
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
      </details>
    </section>
  );
}
