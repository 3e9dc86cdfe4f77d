import type { Topic } from '../../quiz/topics.ts';

/** A small drawing for each topic. */
export function TopicSketch({ topic }: { topic: Topic }) {
  return (
    <svg class="skill-sketch" viewBox="0 0 160 72" aria-hidden="true" focusable="false">
      {SKETCHES[topic]}
    </svg>
  );
}

const FLOAT = 'M-7 5C-7 -3 -4 -9 0 -9S7 -3 7 5C7 9 4 11 0 11S-7 9 -7 5Z';

const SKETCHES = {
  hydraulics: (
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
  air: (
    <>
      <path class="housing" d="M8 22h34v28H8z" />
      <path class="line thick" d="M42 36h104" />
      <path class="line" d="M70 24v24M100 24v24M130 24v24" />
      <path class="line gusts" d="M112 26l6 -10M118 29l10 -7M110 30l-2 -13" />
      <circle class="mark" cx="100" cy="58" r="8" />
    </>
  ),
  solids: (
    <>
      <path class="air" d="M60 4h40v62H60z" />
      <path class="clear" d="M60 14h40v24H60z" />
      <path class="sludge" d="M60 38h40v28H60z" />
      <path class="line" d="M58 4h44M60 4v62h40V4M90 14h10M90 26h10M90 38h10M90 50h10" />
    </>
  ),
  electrical: (
    <>
      <path class="housing" d="M30 14h100v54H30z" />
      <path class="lever" d="M44 26h14v30H44zM68 26h14v30H68zM92 26h14v30H92z" />
      <path class="handle" d="M46 28h10v8H46zM70 37h10v8H70zM94 28h10v8H94z" />
      <path class="lamp" d="M74 14v-5a6 6 0 0 1 12 0v5z" />
      <circle class="dial" cx="118" cy="41" r="8" />
    </>
  ),
  disinfection: (
    <>
      <path class="air" d="M56 6h26v60H56z" />
      <path class="water" d="M56 48h26v18H56z" />
      <path class="mark" d="M60 20h18v10H60zM60 33h18v10H60zM60 46h18v10H60z" />
      <path class="clear" d="M108 20q14 18 14 26a14 14 0 0 1 -28 0q0 -8 14 -26z" />
    </>
  ),
  diagnosis: (
    <>
      <path class="line" d="M22 36h34M56 36q14 0 18 -18h24M56 36q14 0 18 18h24" />
      <circle class="housing" cx="22" cy="36" r="7" />
      <circle class="mark" cx="102" cy="18" r="8" />
      <circle class="air" cx="102" cy="54" r="8" />
      <circle class="clear" cx="130" cy="30" r="13" />
      <path class="line thick" d="M139 40l11 12" />
    </>
  ),
  safety: (
    <>
      <path class="line thick" d="M66 34V22a14 14 0 0 1 28 0v12" />
      <path class="mark" d="M58 34h44v30H58z" />
      <path class="line" d="M80 46v8" />
      <path class="air" d="M112 42l22 -8 8 22 -22 8z" />
    </>
  ),
  records: (
    <>
      <path class="air" d="M50 8h60v58H50z" />
      <path class="housing" d="M68 4h24v8H68z" />
      <path class="line" d="M58 24h30M58 36h44M58 48h36" />
      <path class="line thick" d="M96 22l4 4 8 -9" />
    </>
  ),
} as const satisfies Record<Topic, preact.JSX.Element>;
