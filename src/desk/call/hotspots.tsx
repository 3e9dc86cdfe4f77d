import { useLayoutEffect, useRef, useState } from 'preact/hooks';
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

/** Which way an arrow key goes along the spots. */
const WAYS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/**
 * Real buttons over the drawing, in the order the water takes: parts to go to, or controls to work by hand. Tab comes to one
 * of them, arrow keys go on along them.
 */
export function Hotspots({ spots, view, menu, onMenu }: Props) {
  const desk = useDesk();
  const { session } = desk;
  const opener = useRef<HTMLElement | null>(null);
  const ordered = [...spots].sort((a, b) => rank(a.id) - rank(b.id));
  const group = useRef<HTMLFieldSetElement>(null);
  const [at, setAt] = useState<string | null>(null);
  const isThere = (id: string | null) => ordered.some((spot) => spot.id === id);
  const stop = [at, session.part.value].find(isThere) ?? ordered[0]?.id;
  const walk = (event: KeyboardEvent) => {
    const by = WAYS[event.key];
    if (by === undefined || menu.length > 0) return;
    const next = ordered[(ordered.findIndex(({ id }) => id === stop) + by + ordered.length) % ordered.length];
    if (next === undefined) return;
    event.preventDefault();
    setAt(next.id);
    group.current?.querySelector<HTMLElement>(`[data-spot="${next.id}"]`)?.focus();
  };
  const close = () => {
    onMenu([]);
    opener.current?.focus();
  };
  return (
    <fieldset ref={group} class="hotspots" onKeyDown={walk}>
      <legend class="vh">{desk.t('call.spots')}</legend>
      {ordered.map(({ id, label, ...where }) => {
        const shared = {
          type: 'button',
          style: place(where),
          tabIndex: id === stop ? 0 : -1,
          'data-spot': id,
          onFocus: () => setAt(id),
          children: <span class="vh">{desk.speak.value(label)}</span>,
        } as const;
        if (isPart(id)) {
          const chosen = session.part.value === id;
          return (
            <button key={id} class="hotspot" aria-pressed={chosen} onClick={() => session.select(id)} {...shared} />
          );
        }
        const actions = actionsFor(view, id);
        return (
          <button
            key={id}
            class="hotspot control"
            aria-disabled={actions.length === 0}
            aria-haspopup={actions.length > 1 ? 'dialog' : undefined}
            onClick={(event) => {
              const [only] = actions;
              opener.current = event.currentTarget;
              if (actions.length === 1 && only?.available === true) session.press(only);
              else onMenu(actions);
            }}
            {...shared}
          />
        );
      })}
      {menu.length > 0 && <ControlMenu actions={menu} onDone={close} />}
    </fieldset>
  );
}

/** What can be done with one control: takes the focus, and gives it back when it goes. */
function ControlMenu({ actions, onDone }: { actions: readonly ActionView[]; onDone: () => void }) {
  const desk = useDesk();
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => box.current?.querySelector('button')?.focus(), []);
  return (
    <div
      ref={box}
      role="dialog"
      class="card control-menu"
      aria-label={desk.t('call.choose')}
      onKeyDown={(event) => event.key === 'Escape' && onDone()}
    >
      <ul>
        {actions.map((one) => (
          <ActionButton key={one.action.id} action={one} onPressed={onDone} />
        ))}
      </ul>
      <button type="button" class="secondary" onClick={onDone}>
        <Icon name="cross" /> {desk.t('form.back')}
      </button>
    </div>
  );
}

function place(spot: Omit<Hotspot, 'id' | 'label'>) {
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
