import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Scene } from '../../scene/types.ts';
import type { Message } from '../../service/message.ts';
import type { Glass } from '../../yard/glass.ts';
import type { Yard } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import '../css/picture.css';

interface Props {
  readonly yard: Yard;
  readonly scene: Scene;
  readonly onAway: () => void;
}

type Point = readonly [x: number, y: number];

const SIDE = 204;
const STEP = 12;
/** A finger covers what it points at: the glass is held above it. */
const ABOVE_FINGER = 84;
/** Until the picture has glided to where it is sent, ms. */
const GLIDE_ms = 520;

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Whether a stop is far enough from an edge to be looked at. */
const inSight = (at: number, side: number): boolean => at > 40 && at < side - 40;

/** The glass over the picture: it lies over the buttons there until it is put away, and says in words what it shows. */
export function GlassOver({ yard, scene, onAway }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const layer = useRef<HTMLElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const stop = useRef(-1);
  const [glass, setGlass] = useState<Glass>();
  const [at, setAt] = useState<Point>();
  const [says, setSays] = useState<Message>();

  useEffect(() => {
    let gone = false;
    yard.glass().then(
      (made) => {
        if (gone) return;
        setGlass(made);
        const { clientWidth = 0, clientHeight = 0 } = layer.current ?? {};
        const stops = made.stops();
        stop.current = stops.findIndex(([x, y]) => inSight(x, clientWidth) && inSight(y, clientHeight));
        setAt(stops[stop.current] ?? [clientWidth / 2, clientHeight / 2]);
        layer.current?.focus();
      },
      () => {
        desk.fail({ id: 'trouble.notLoaded' });
        onAway();
      },
    );
    return () => {
      gone = true;
    };
  }, [yard]);
  useLayoutEffect(() => {
    if (glass !== undefined && at !== undefined && canvas.current !== null)
      setSays(glass.look(canvas.current, SIDE, ...at));
  }, [glass, at, scene]);

  const hold = ([x, y]: Point) => {
    const { clientWidth = 1, clientHeight = 1 } = layer.current ?? {};
    setAt([Math.max(0, Math.min(clientWidth, x)), Math.max(0, Math.min(clientHeight, y))]);
  };
  const follow = (event: PointerEvent) => {
    event.stopPropagation();
    const box = layer.current?.getBoundingClientRect();
    const finger = event.pointerType === 'touch' ? ABOVE_FINGER : 0;
    if (box !== undefined) hold([event.clientX - box.left, event.clientY - box.top - finger]);
  };
  /** On to the next thing along the water; where that is out of sight the picture goes there first. */
  const next = () => {
    const stops = glass?.stops() ?? [];
    stop.current = (stop.current + 1) % Math.max(1, stops.length);
    const to = stops[stop.current];
    const { clientWidth = 0, clientHeight = 0 } = layer.current ?? {};
    if (to === undefined) return;
    if (inSight(to[0], clientWidth) && inSight(to[1], clientHeight)) {
      hold(to);
      return;
    }
    yard.pan(to[0] - clientWidth / 2, to[1] - clientHeight / 2);
    setTimeout(() => hold(glass?.stops()[stop.current] ?? to), desk.stillWanted.value ? 50 : GLIDE_ms);
  };
  const key = (event: KeyboardEvent) => {
    const way = ARROWS[event.key];
    if (event.key === 'Escape') onAway();
    else if (event.key === 'Enter') next();
    else if (way !== undefined && at !== undefined) {
      const step = event.shiftKey ? STEP * 4 : STEP;
      hold([at[0] + way[0] * step, at[1] + way[1] * step]);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <>
      <section
        ref={layer}
        class="glass-layer"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the arrow keys move the glass
        tabIndex={0}
        role="application"
        aria-label={t('view.glass')}
        aria-describedby="glass-hint"
        onPointerDown={follow}
        onPointerMove={follow}
        onKeyDown={key}
      >
        {at !== undefined && (
          <canvas
            ref={canvas}
            class="glass"
            style={{
              left: `${at[0] - SIDE / 2}px`,
              top: `${at[1] - SIDE / 2}px`,
              width: `${SIDE}px`,
              height: `${SIDE}px`,
            }}
          />
        )}
      </section>
      <div class="glass-card card">
        <p role="status" class="glass-says">
          {says !== undefined && <Said message={says} />}
        </p>
        <p id="glass-hint" class="small">
          {t('glass.hint')}
        </p>
        <button type="button" class="round" onClick={onAway}>
          <Icon name="cross" />
          <span class="vh">{t('glass.away')}</span>
        </button>
      </div>
    </>
  );
}
