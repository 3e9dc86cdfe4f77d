import type { JarFigure } from '../../../quiz/figure.ts';
import { jarWords } from '../../../quiz/figure-words.ts';
import { useDesk } from '../../desk.ts';

const JAR = { left: 46, right: 166, top: 34, foot: 394 } as const;
const MARKS = [0, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000];

/** Litre cylinder with its marks, the sludge where it lies, and what else was noted. */
export function JarView({ figure }: { figure: JarFigure }) {
  const { t, speak } = useDesk();
  const { settled_mLL, floats, colour, above, foam } = figure;
  const [first = '', ...facts] = jarWords(figure).map(speak.value);
  const y = (mL: number) => JAR.foot - (mL / 1000) * (JAR.foot - JAR.top);
  const line = y(floats ? 1000 - settled_mLL : settled_mLL);
  const [top, foot] = floats ? [JAR.top, line] : [line, JAR.foot];
  return (
    <figure class="fig fig-jar">
      <svg viewBox="0 0 210 420" aria-hidden="true" focusable="false">
        <path class={`over ${above}`} d={`M${JAR.left} ${JAR.top}H${JAR.right}V${JAR.foot}H${JAR.left}Z`} />
        <path class={`sludge ${colour}`} d={sludge(top, foot)} />
        <path class="flecks" d={flecks(top, foot)} />
        <path class="glass" d={`M${JAR.left - 6} 22H${JAR.right + 14}L${JAR.right} 34V394H${JAR.left}V34Z`} />
        <path class="foot" d={`M${JAR.left - 16} 410q0 -16 22 -16H${JAR.right - 6}q22 0 22 16Z`} />
        {MARKS.map((mL) => (
          <g key={mL}>
            <path class="graduation" d={`M${JAR.right} ${y(mL)}h${mL % 500 === 0 ? -30 : -20}`} />
            <text class="small-text" x={JAR.right + 8} y={y(mL) + 5}>
              {mL === 0 ? '' : mL}
            </text>
            {mL < 1000 && <path class="graduation fine" d={`M${JAR.right} ${y(mL + 50)}h-10`} />}
          </g>
        ))}
        <path class="glint" d={`M${JAR.left + 12} ${JAR.top + 20}V${JAR.foot - 40}`} />
      </svg>
      <ul class="fig-facts" aria-label={t('drills.textTwin')}>
        <li class="strong">{first}</li>
        {facts.map((fact) => (
          <li key={fact}>{fact}</li>
        ))}
        <li class={`foam-lens ${foam}`} aria-hidden="true">
          <svg viewBox="0 0 120 60" aria-hidden="true" focusable="false">
            <path class={colour} d="M0 30H120V60H0Z" />
            <path
              class="froth"
              d="M0 32q6 -14 14 -6q6 -12 16 -4q8 -14 18 -2q8 -12 18 0q8 -12 18 0q10 -10 16 2q12 -8 20 8v4H0Z"
            />
          </svg>
        </li>
      </ul>
    </figure>
  );
}

function sludge(top: number, foot: number): string {
  const quarter = (JAR.right - JAR.left) / 4;
  return `M${JAR.left} ${top}q${quarter / 2} -3 ${quarter} 0t${quarter} 0t${quarter} 0t${quarter} 0V${foot}H${JAR.left}Z`;
}

/** Short strokes that make a body of sludge of a flat colour. */
function flecks(top: number, foot: number): string {
  const rows = Math.floor((foot - top) / 16);
  return Array.from({ length: Math.max(0, rows) }, (_, row) =>
    Array.from({ length: 6 }, (_, i) => {
      const x = JAR.left + 8 + i * 19 + ((row * 7 + i * 5) % 11);
      return `M${x} ${top + 10 + row * 16 + ((i * 3) % 7)}h5`;
    }).join(''),
  ).join('');
}
