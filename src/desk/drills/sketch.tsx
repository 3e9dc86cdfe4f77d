import type { Skill } from '../../quiz/drill.ts';

/** A small drawing for each skill, on its card. */
export function SkillSketch({ skill }: { skill: Skill }) {
  return (
    <svg class="skill-sketch" viewBox="0 0 160 72" aria-hidden="true" focusable="false">
      {SKETCHES[skill]}
    </svg>
  );
}

const FLOAT = 'M-7 5C-7 -3 -4 -9 0 -9S7 -3 7 5C7 9 4 11 0 11S-7 9 -7 5Z';

const SKETCHES = {
  floats: (
    <>
      <path class="wall" d="M36 4h88v64H36z" />
      <path class="air" d="M42 4h76v58H42z" />
      <path class="water" d="M42 34q19 -4 38 0t38 0v28H42z" />
      <path class="line" d="M80 6v56" />
      <path class="line" d="M80 18l11 12M80 54l-12 -10" />
      <path class="override" d={FLOAT} transform="translate(98 37) rotate(-42)" />
      <path class="stop" d={FLOAT} transform="translate(61 38) rotate(130)" />
    </>
  ),
  'air-line': (
    <>
      <path class="housing" d="M8 22h34v28H8z" />
      <path class="line thick" d="M42 36h104" />
      <path class="line" d="M70 24v24M100 24v24M130 24v24" />
      <path class="line gusts" d="M112 26l6 -10M118 29l10 -7M110 30l-2 -13" />
      <circle class="mark" cx="100" cy="58" r="8" />
    </>
  ),
  jar: (
    <>
      <path class="air" d="M60 4h40v62H60z" />
      <path class="clear" d="M60 14h40v24H60z" />
      <path class="sludge" d="M60 38h40v28H60z" />
      <path class="line" d="M58 4h44M60 4v62h40V4M90 14h10M90 26h10M90 38h10M90 50h10" />
    </>
  ),
  panel: (
    <>
      <path class="housing" d="M30 14h100v54H30z" />
      <path class="lever" d="M44 26h14v30H44zM68 26h14v30H68zM92 26h14v30H92z" />
      <path class="handle" d="M46 28h10v8H46zM70 37h10v8H70zM94 28h10v8H94z" />
      <path class="lamp" d="M74 14v-5a6 6 0 0 1 12 0v5z" />
      <circle class="dial" cx="118" cy="41" r="8" />
    </>
  ),
  meter: (
    <>
      <path class="meter" d="M52 6h56v60H52z" />
      <path class="lcd" d="M59 13h42v17H59z" />
      <circle class="dial" cx="80" cy="48" r="10" />
      <path class="line red" d="M52 58C30 60 34 36 14 40" />
      <path class="line" d="M108 58c22 2 18-22 38-18" />
    </>
  ),
} as const satisfies Record<Skill, preact.JSX.Element>;
