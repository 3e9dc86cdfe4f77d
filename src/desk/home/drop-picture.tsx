import type { DropLook } from '../../home/drop.ts';
import { placesOf } from '../../home/hundred.ts';
import type { MarkPlace } from '../../plant/tracer.ts';
import { useDesk } from '../desk.ts';

interface Room {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** The water of each place in the drawing; what went astray is drawn with the first tank, where it left. */
const ROOM: Readonly<Record<Exclude<MarkPlace, 'astray'>, Room>> = {
  trash: { x: 102, y: 96, w: 116, h: 116 },
  aeration: { x: 270, y: 98, w: 68, h: 112 },
  clarifier: { x: 354, y: 98, w: 40, h: 66 },
  riser: { x: 440, y: 104, w: 26, h: 44 },
  pump: { x: 510, y: 118, w: 92, h: 100 },
  field: { x: 636, y: 74, w: 116, h: 40 },
};
/** Steps across and down that spread evenly and look like chance: powers of the root of x^3 = x + 1. */
const ACROSS = 0.754_877_67;
const DOWN = 0.569_840_29;
const DROP_r = 4.6;
/** Names over their tanks, in two rows so that they have room in any language. */
const NAMES = [
  ['trash-tank', 160, 57],
  ['aeration', 303, 36],
  ['clarifier', 374, 57],
  ['disinfection', 453, 36],
  ['pump-tank', 556, 57],
  ['spray-field', 694, 57],
] as const;

/** A hundred drops where they are now. Which drop is where is computed; where in its tank is only drawn. */
export function DropPicture({ share, still, label }: { share: DropLook['share']; still: boolean; label: string }) {
  const { t } = useDesk();
  const places = placesOf(share);
  return (
    <svg class={still ? 'drop-picture' : 'drop-picture moving'} viewBox="0 0 768 250" role="img" aria-label={label}>
      <rect class="sky" width="768" height="64" />
      <rect class="ground" y="64" width="768" height="186" />
      <path class="lawn" d="M0 64h768v7H0z" />
      <path class="house" d="M10 64V30L44 8l34 22v34z" />
      <path class="roof" d="M4 33L44 6l40 27" />
      <path class="pipe" d="M58 64v34h44M218 104h42M396 104h44M466 118h40M560 150V84h208" />
      <g class="tank">
        <rect x="96" y="78" width="128" height="140" rx="4" />
        <rect x="260" y="78" width="142" height="140" rx="4" />
        <rect x="436" y="72" width="34" height="82" rx="3" />
        <rect x="504" y="78" width="104" height="146" rx="4" />
      </g>
      <path class="water raw" d="M98 92h124v122a2 2 0 0 1-2 2H100a2 2 0 0 1-2-2z" />
      <path class="water liquor" d="M262 92h138v122a2 2 0 0 1-2 2H264a2 2 0 0 1-2-2z" />
      <path class="water settled" d="M346 92h54v56l-16 50h-12l-26-50z" />
      <path
        class="water clear"
        d="M438 100h30v50a2 2 0 0 1-2 2h-26a2 2 0 0 1-2-2zM506 112h100v108a2 2 0 0 1-2 2h-96a2 2 0 0 1-2-2z"
      />
      <path class="wall" d="M346 84v64l26 50h12l16-50" />
      <path class="heads" d="M660 84V62M700 84V62M740 84V62" />
      {places.map((place, i) => {
        const { x, y, w, h } = ROOM[place === 'astray' ? 'trash' : place];
        const across = ((i + 1) * ACROSS) % 1;
        const down = ((i + 1) * DOWN) % 1;
        return <circle key={i} class="drop" cx={x + across * w} cy={y + down * h} r={DROP_r} />;
      })}
      <g class="names">
        {NAMES.map(([part, x, row]) => (
          <text key={part} x={x} y={row}>
            {t(`home.part.${part}`)}
          </text>
        ))}
        <path d="M303 42V76M453 42V70" />
      </g>
    </svg>
  );
}
