interface Props {
  readonly secondOfDay: number;
  readonly month: number;
  /** Only the panel, drawn larger, where there is little room. */
  readonly at?: 'panel';
}

/** A strip of sky and hill that tells at a glance what hour and season a call comes in. */
export function SkyBand({ secondOfDay, month, at }: Props) {
  const hour = secondOfDay / 3600;
  const night = hour < 6 || hour > 20.5;
  const dusk = !night && (hour < 7.5 || hour > 18.5);
  const season = month >= 6 && month <= 9 ? 'dry' : month === 12 || month <= 2 ? 'cold' : 'green';
  // The sun crosses from left to right between six and twenty; the moon hangs still.
  const along = night ? 0.78 : Math.min(1, Math.max(0, (hour - 6) / 14.5));
  const x = 24 + along * 272;
  const y = night ? 18 : 40 - 26 * (1 - (2 * along - 1) * (2 * along - 1));
  return (
    <svg
      class={`sky-band ${night ? 'night' : dusk ? 'dusk' : 'day'} ${season}`}
      viewBox={at ? '202 6 72 58' : '0 0 320 64'}
      preserveAspectRatio="xMidYMax slice"
      aria-hidden="true"
      focusable="false"
    >
      <rect class="sky" width="320" height="64" />
      {night ? (
        <>
          <path class="moon" d={`M${x + 4} ${y - 10}a11 11 0 1 0 6 18a9 9 0 0 1-6-18z`} />
          <path class="stars" d="M40 14h.1M92 24h.1M130 10h.1M176 20h.1M216 9h.1M300 26h.1M64 34h.1" />
        </>
      ) : (
        <circle class="sun" cx={x} cy={y} r="10" />
      )}
      <path class="hill far" d="M0 46C50 26 92 40 148 34S246 50 320 32V64H0z" />
      <path class="hill near" d="M0 54C70 42 118 54 190 48S280 56 320 47V64H0z" />
      <path class="house" d="M52 54V40L68 29l16 11v14z" />
      <path class="roof" d="M48 42L68 28l20 14" />
      <rect class="window" x="63" y="42" width="9" height="8" />
      <path class="panel" d="M232 54V40h12v14M238 40v-4" />
      <circle class="lamp" cx="238" cy="34" r="3" />
    </svg>
  );
}
