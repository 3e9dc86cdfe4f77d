import type { FaultPlace } from '../../../faults/entry.ts';
import type { Answer, Pointing } from '../../../quiz/drill.ts';
import type { PlanFigure } from '../../../quiz/figure.ts';

export interface Pointed {
  readonly ask: Pointing;
  readonly answer: Answer | null;
  readonly judged: boolean;
  readonly onAnswer: (id: string) => void;
}

/** Where each part's mark stands, in percent of the plan. */
const AT: Readonly<Record<FaultPlace, readonly [x: number, y: number]>> = {
  house: [9, 22],
  'clean-out': [21.5, 50],
  'trash-tank': [31, 72],
  aeration: [46, 78],
  clarifier: [54, 63],
  disinfection: [63, 56],
  'pump-tank': [74, 76],
  'disc-filter': [82, 47],
  'spray-field': [93, 38],
  compressor: [44, 29],
  panel: [70, 24],
};

/**
 * The works from the house to the field, in section. Its marks are for a finger or a mouse; the list of answers beside it
 * is the same for the keyboard and for who does not see them.
 */
export function PlanView({ figure, pointing }: { figure: PlanFigure; pointing: Pointed | undefined }) {
  return (
    <figure class="fig fig-plan">
      <div class="plan">
        <svg viewBox="0 0 480 270" aria-hidden="true" focusable="false">
          <path class="sky" d="M0 0H480V120H0Z" />
          <path class="soil" d="M0 120H480V270H0Z" />
          <path class="lawn" d="M0 118q60 -4 120 0t120 0t120 0t120 0v8H0Z" />
          <path class="wall" d="M14 118V60L46 34L78 60V118Z" />
          <path class="door" d="M38 118V88h16v30z" />
          <path class="pipe" d="M62 118v26h64M102 144V112" />
          <path class="tank" d="M122 136h62v108h-62zM190 140h92v112h-92zM296 136h20v50h-20zM326 140h66v112h-66z" />
          <path class="water" d="M126 158h54v82h-54zM194 162h84v86h-84zM299 166h14v17h-14zM330 196h58v52h-58z" />
          <path class="scum" d="M126 158h54v8h-54z" />
          <path class="sludge" d="M126 222q14 -6 27 0t27 0v18h-54z" />
          <path class="clear" d="M240 162h34v20l-14 28l-20 -28z" />
          <path class="pipe" d="M180 150h14M278 154h18M316 176h14M356 236V132h60" />
          <path class="air" d="M214 92V236M204 236h20" />
          <path class="bubbles" d="M208 224v-1M216 210v-1M210 196v-1M220 184v-1M212 172v-1" />
          <path class="machine" d="M196 82h36v22h-36z" />
          <path class="machine" d="M320 52h34v42h-34zM337 94v26" />
          <path class="machine" d="M384 122h20v18h-20z" />
          <path class="machine" d="M346 228h20v16h-20z" />
          <path
            class="spray"
            d="M444 132V112M444 112q-20 -18 -30 2M444 112q14 -20 28 0M444 110q-4 -20 -12 -24M444 110q6 -18 14 -22"
          />
          <path class="pipe" d="M416 132h28" />
        </svg>
        {figure.parts.map((part, i) => (
          <Mark key={part} part={part} n={i + 1} pointing={pointing} />
        ))}
      </div>
    </figure>
  );
}

interface MarkProps {
  readonly part: FaultPlace;
  readonly n: number;
  readonly pointing: Pointed | undefined;
}

function Mark({ part, n, pointing }: MarkProps) {
  const [x, y] = AT[part];
  return (
    <button
      type="button"
      class={`plan-mark ${stateOf(part, pointing)}`}
      style={{ left: `${x}%`, top: `${y}%` }}
      tabIndex={-1}
      aria-hidden="true"
      data-part={part}
      onClick={() => {
        if (pointing && !pointing.judged) pointing.onAnswer(part);
      }}
    >
      {n}
    </button>
  );
}

function stateOf(part: FaultPlace, pointing: Pointed | undefined): string {
  if (pointing === undefined) return '';
  const { ask, answer, judged } = pointing;
  if (judged && part === ask.right) return 'right';
  if (part !== answer) return '';
  return judged ? 'wrong' : 'chosen';
}
