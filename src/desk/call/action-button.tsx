import type { ActionView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly action: ActionView;
  /** The reason why not stands above already and needs no line under the button. */
  readonly whySaid?: boolean;
  readonly onPressed?: () => void;
}

/** One thing to do, with its minutes and money. One that cannot be done now stays in reach and says why. */
export function ActionButton({ action, whySaid = false, onPressed }: Props) {
  const desk = useDesk();
  const { available, why } = action;
  const busy = desk.session.busy.value !== null;
  const whyId = `why-${action.action.id}-${action.part}`;
  return (
    <li class="action-item">
      <button
        type="button"
        class="action"
        data-action={action.action.id}
        aria-disabled={!available || busy}
        aria-describedby={available ? undefined : whyId}
        onClick={() => {
          if (!available || busy) return;
          onPressed?.();
          desk.session.press(action);
        }}
      >
        <span class="action-label">
          {!available && <Icon name="lock" />}
          <Said message={action.label} />
        </span>
        <ActionCost action={action} />
      </button>
      {!available && (
        <p class={whySaid ? 'vh' : 'why'} id={whyId}>
          {why === undefined ? desk.t('call.notNow') : <Said message={why} />}
        </p>
      )}
    </li>
  );
}

/** "15 min · $6". */
export function ActionCost({ action }: { action: ActionView }) {
  const { t } = useDesk();
  const m = { measure: 'duration_min', value: action.minutes, resolution: action.minutes % 1 === 0 ? 1 : 0.1 } as const;
  const c = { measure: 'money_usd', value: action.cost_usd } as const;
  return (
    <span class="cost">{action.cost_usd > 0 ? t('call.minutesAndMoney', { m, c }) : t('call.minutes', { m })}</span>
  );
}
