/** What stands between the terminals, drawn as on a wiring diagram: at rest, whatever its state. */

/** Width of each drawing; all are 30 high, the wire runs through the middle. Contacts are drawn open, as they hang. */
const DRAWN = {
  breaker: [
    62,
    [
      'M0 15h11',
      'M33 15h13',
      'M51 9.5v11h7',
      'M11 15L31 6',
      'M9 15a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
      'M31 15a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
      'M21 10.5V4h4',
    ],
  ],
  contact: [36, ['M0 15h12', 'M24 15h12', 'M12 8v14', 'M24 8v14']],
  relay: [40, ['M0 15h14', 'M26 15h14', 'M14 7v16', 'M26 7v16', 'M20 4v4M20 11v4M20 18v4']],
  timerContact: [40, ['M0 15h14', 'M26 15h14', 'M14 8v14', 'M26 8v14', 'M15 3.5a5 5 0 1 0 10 0', 'M20 3V0']],
  float: [40, ['M0 15h9', 'M31 15h9', 'M9 15l20-7', 'M20 11.5v5', 'M15 22a5 5 0 1 0 10 0a5 5 0 1 0-10 0']],
  floatOrTimer: [
    40,
    [
      'M0 15h9',
      'M31 15h9',
      'M9 15l20-7',
      'M20 11.5v5',
      'M15 22a5 5 0 1 0 10 0a5 5 0 1 0-10 0',
      'M2 15V2h11',
      'M27 2h11v13',
      'M13 0v4',
      'M27 0v4',
    ],
  ],
  pressure: [40, ['M0 15h9', 'M31 15h9', 'M9 15l20-7', 'M20 11.5v4', 'M12 28a8 8 0 0 1 16 0', 'M20 26l4-4']],
  delay: [36, ['M0 15h6', 'M30 15h6', 'M6 5h24v20H6z', 'M18 9v6l4 3']],
  lamp: [36, ['M0 15h7', 'M29 15h7', 'M7 15a11 11 0 1 0 22 0a11 11 0 1 0-22 0', 'M10 7l16 16', 'M26 7L10 23']],
  buzzer: [36, ['M0 15h8', 'M28 15h8', 'M8 26a10 10 0 0 1 20 0z', 'M18 16V9', 'M12 9l2 3M24 9l-2 3']],
  outlet: [48, ['M0 15h8', 'M40 15h8', 'M8 3h32v24H8z', 'M18 10v8', 'M30 9v10', 'M21 23a3 2.5 0 0 1 6 0']],
  motor: [40, ['M0 15h7', 'M33 15h7', 'M7 15a13 13 0 1 0 26 0a13 13 0 1 0-26 0', 'M14 21V9.5l6 7 6-7V21']],
  selector: [
    44,
    [
      'M0 15h12',
      'M32 15h12',
      'M12 15l18-8',
      'M10 15a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
      'M30 15a2 2 0 1 0 4 0a2 2 0 1 0-4 0',
      'M22 0v5',
    ],
  ],
  coil: [36, ['M0 15h6', 'M30 15h6', 'M6 6h24v18H6z', 'M6 24L30 6']],
  timer: [36, ['M0 15h7', 'M29 15h7', 'M7 15a11 11 0 1 0 22 0a11 11 0 1 0-22 0', 'M18 8v7l5 3']],
  fuse: [44, ['M0 15h44', 'M8 8h28v14H8z']],
} as const satisfies Record<string, readonly [number, readonly string[]]>;

export type GlyphName = keyof typeof DRAWN;

export function Glyph({ name }: { name: GlyphName }) {
  const [width, paths] = DRAWN[name];
  return (
    <svg class="glyph" width={width} height="30" viewBox={`0 0 ${width} 30`} aria-hidden="true" focusable="false">
      <rect class="ground" width={width} height="30" />
      <Paths of={paths} />
    </svg>
  );
}

/** On a terminal and on a clamp's button: the sign of ground, and jaws round a wire. */
const SIGNS = {
  ground: ['M10 3v6', 'M3 9h14', 'M6 13h8', 'M8.5 17h3'],
  clamp: ['M12.5 8.5a8 8 0 0 1 0 15', 'M7.5 23.5a8 8 0 0 1 0-15', 'M10 8v-2', 'M6.5 1.5h7v4h-7z'],
} as const;

export function Sign({ name }: { name: keyof typeof SIGNS }) {
  return (
    <svg
      class={`sign-${name}`}
      viewBox={name === 'clamp' ? '0 0 20 26' : '0 0 20 20'}
      aria-hidden="true"
      focusable="false"
    >
      <Paths of={SIGNS[name]} />
    </svg>
  );
}

function Paths({ of }: { of: readonly string[] }) {
  return (
    <>
      {of.map((d) => (
        <path key={d} d={d} />
      ))}
    </>
  );
}
