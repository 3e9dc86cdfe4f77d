import type { FloatShown, FloatsFigure } from '../../../quiz/figure.ts';
import { floatsWords } from '../../../quiz/figure-words.ts';
import { quantity } from '../../../service/message.ts';
import type { Key } from '../../../words/words.ts';
import { useDesk } from '../../desk.ts';

/** Sheet and what stands on it, in its own units. */
const WIDE = 360;
const HIGH = 420;
const TANK = { left: 16, right: 206, top: 20, floor: 398 } as const;
const TREE = 136;
const CARD = { left: 226, width: 132, high: 60, gap: 5 } as const;
const TETHER = 24;
/** Turned from hanging straight down, degrees: out of the water, and carried by it. */
const HANGS = 34;
const FLOATS_UP = 136;

const BODY = 'M-9 6C-9 -4 -5.5 -12 0 -12S9 -4 9 6C9 12 5 15 0 15S-9 12 -9 6Z';

const read = (m: number) => quantity('length_m', m, 0.01);

/** The pump tank in section: level, floats as they lie, set heights, and what a meter finds at each contact. */
export function FloatsView({ figure }: { figure: FloatsFigure }) {
  const desk = useDesk();
  const { ceiling_m, level_m, inlet_m, floats, rising } = figure;
  const y = (m: number) => TANK.floor - (m / ceiling_m) * (TANK.floor - TANK.top);
  return (
    <figure class="fig fig-floats">
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true" focusable="false">
        <rect class="soil" width="222" height={HIGH} rx="8" />
        <path class="wall" d="M6 10H216V410H6Z" />
        <path class="air" d={`M${TANK.left} ${TANK.top}H${TANK.right}V${TANK.floor}H${TANK.left}Z`} />
        <path class="water" d={water(y(level_m))} />
        <Inlet y={y(inlet_m)} text={desk.t('drills.fig.inlet', { h: read(inlet_m) })} />
        <path class="pole" d={`M${TREE} ${TANK.top}V${TANK.floor}`} />
        {floats.map((float, i) => (
          <FloatDrawn key={float.id} float={float} y={y((float.makes_m + float.breaks_m) / 2)} side={i % 2 ? 1 : -1} />
        ))}
        <Cards floats={floats} y={y} />
        <Level
          y={y(level_m)}
          text={desk.speak.value({ id: 'drill.option', values: { label: read(level_m) } })}
          up={rising}
        />
      </svg>
      <ul class="vh" aria-label={desk.t('drills.textTwin')}>
        {floatsWords(figure).map((line) => {
          const said = desk.speak.value(line);
          return <li key={said}>{said}</li>;
        })}
      </ul>
    </figure>
  );
}

function water(y: number): string {
  const { left, right, floor } = TANK;
  const quarter = (right - left) / 4;
  return `M${left} ${y}q${quarter / 2} -4 ${quarter} 0t${quarter} 0t${quarter} 0t${quarter} 0V${floor}H${left}Z`;
}

function Inlet({ y, text }: { y: number; text: string }) {
  return (
    <>
      <path class="inlet" d={`M0 ${y - 16}H30V${y}H0`} />
      <text class="small-text" x={TANK.left + 4} y={y - 22}>
        {text}
      </text>
    </>
  );
}

/** The level on a chip, with an arrow the way it goes. */
function Level({ y, text, up }: { y: number; text: string; up: boolean }) {
  const wide = 24 + text.length * 7.4;
  return (
    <g transform={`translate(${TANK.left + 4} ${Math.min(y + 8, TANK.floor - 30)})`}>
      <rect class="chip" width={wide} height="24" rx="5" />
      <text class="chip-text" x="7" y="17">
        {text}
      </text>
      <path class="chip-arrow" d={up ? `M${wide - 10} 18V6m-4 4l4 -4 4 4` : `M${wide - 10} 6v12m-4 -4l4 4 4 -4`} />
    </g>
  );
}

function FloatDrawn({ float, y, side }: { float: FloatShown; y: number; side: 1 | -1 }) {
  const turn = float.position === 'up' ? FLOATS_UP : HANGS;
  return (
    <g transform={`translate(${TREE} ${y}) scale(${side} 1) rotate(${-turn})`}>
      <path class="cord" d={`M0 0V${TETHER}`} />
      <g transform={`translate(0 ${TETHER + 15}) scale(1.35)`}>
        <path class={`body ${float.id}`} d={BODY} />
        <path class="shine" d="M-5 2C-5 -4 -3 -8 -1 -9" />
      </g>
      <rect class="tie" x="-4" y="-4" width="8" height="8" rx="1.5" />
    </g>
  );
}

/** Name, set height and contact of each float, each card as near to its float as the one below lets it. */
function Cards({ floats, y }: { floats: readonly FloatShown[]; y: (m: number) => number }) {
  const desk = useDesk();
  let free = TANK.floor + 10;
  return (
    <>
      {floats.map((float) => {
        const at = y(float.makes_m);
        const top = Math.min(free - CARD.high, at - CARD.high / 2);
        free = top - CARD.gap;
        const middle = top + CARD.high / 2;
        return (
          <g key={float.id}>
            <path class="leader" d={`M${TREE + 8} ${at}H${TANK.right + 2}L${CARD.left} ${middle}`} />
            <rect class="tag" x={CARD.left} y={top} width={CARD.width} height={CARD.high} rx="6" />
            <rect class={`band ${float.id}`} x={CARD.left + 1} y={top + 1} width="7" height={CARD.high - 2} rx="3" />
            <text class="tag-name" x={CARD.left + 14} y={top + 17}>
              {desk.t(nameOf(float))}
            </text>
            <text class="tag-text" x={CARD.left + 14} y={top + 34}>
              {desk.speak.value({ id: 'drill.option', values: { label: read(float.makes_m) } })}
            </text>
            <ContactSign x={CARD.left + 14} y={top + 49} made={float.made} />
            <text class="tag-text" x={CARD.left + 48} y={top + 52}>
              {desk.t(float.made ? 'drills.fig.made' : 'drills.fig.open')}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** Short name on the sheet: `highWaterFloat` is "High water". */
function nameOf({ id }: FloatShown): Key {
  const short = id.replace('Float', '').replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  return `yard.float.${short}` as Key;
}

/** Two screws and the blade between them, down or lifted. */
function ContactSign({ x, y, made }: { x: number; y: number; made: boolean }) {
  return (
    <g transform={`translate(${x} ${y})`} class="contact">
      <path d={made ? 'M3 0H22' : 'M3 0L19 -10'} />
      <circle cx="2" cy="0" r="2.6" />
      <circle cx="24" cy="0" r="2.6" />
    </g>
  );
}
