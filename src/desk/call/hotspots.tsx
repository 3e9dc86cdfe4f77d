import type { ActionView, CallView } from '../../calls/view.ts';
import { PART_IDS, type PartId } from '../../scene/types.ts';
import type { Hotspot } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { ActionButton } from './action-button.tsx';

interface Props {
  readonly spots: readonly Hotspot[];
  readonly view: CallView;
  readonly menu: readonly ActionView[];
  readonly onMenu: (actions: readonly ActionView[]) => void;
}

/** Real buttons over the drawing, in the order the water takes: parts to go to, or controls to work by hand. */
export function Hotspots({ spots, view, menu, onMenu }: Props) {
  const desk = useDesk();
  const { session } = desk;
  const ordered = [...spots].sort((a, b) => rank(a.id) - rank(b.id));
  return (
    <div class="hotspots">
      {ordered.map((spot) => {
        const actions = actionsFor(view, spot.id);
        return isPart(spot.id) ? (
          <button
            key={spot.id}
            type="button"
            class="hotspot"
            style={place(spot)}
            aria-pressed={session.part.value === spot.id}
            onClick={() => isPart(spot.id) && session.select(spot.id)}
          >
            <span class="vh">{desk.speak.value(spot.label)}</span>
          </button>
        ) : (
          <button
            key={spot.id}
            type="button"
            class="hotspot control"
            style={place(spot)}
            aria-disabled={actions.length === 0}
            aria-haspopup={actions.length > 1 ? 'menu' : undefined}
            onClick={() => {
              const [only] = actions;
              if (actions.length === 1 && only?.available === true) session.press(only);
              else onMenu(actions);
            }}
          >
            <span class="vh">{desk.speak.value(spot.label)}</span>
          </button>
        );
      })}
      {menu.length > 0 && <ControlMenu actions={menu} onDone={() => onMenu([])} />}
    </div>
  );
}

function ControlMenu({ actions, onDone }: { actions: readonly ActionView[]; onDone: () => void }) {
  const desk = useDesk();
  return (
    <section class="card control-menu" aria-label={desk.t('call.choose')}>
      <ul>
        {actions.map((one) => (
          <ActionButton key={one.action.id} action={one} onPressed={onDone} />
        ))}
      </ul>
      <button type="button" class="secondary" onClick={onDone}>
        <Icon name="cross" /> {desk.t('form.back')}
      </button>
    </section>
  );
}

function place(spot: Hotspot) {
  return { left: `${spot.x}px`, top: `${spot.y}px`, width: `${spot.width}px`, height: `${spot.height}px` };
}

function isPart(id: string): id is PartId {
  return (PART_IDS as readonly string[]).includes(id);
}

function rank(id: string): number {
  const at = (PART_IDS as readonly string[]).indexOf(id);
  return at < 0 ? PART_IDS.length : at;
}

/** Every action that works this control, those that can be done now first. */
function actionsFor(view: CallView, control: string): ActionView[] {
  const all = view.parts.flatMap((part) => part.actions.filter((one) => one.control === control));
  const open = all.filter((one) => one.available);
  return open.length > 0 ? open : all;
}
