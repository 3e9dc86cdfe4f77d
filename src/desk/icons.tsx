/** Small line drawings beside words. Each is hidden from screen readers: the word carries the meaning. */
const PATHS = {
  check: 'M5 12.5l4.5 4.5L19 7.5',
  cross: 'M6 6l12 12M18 6L6 18',
  play: 'M8 5.5v13l11-6.5z',
  pause: 'M8 5v14M16 5v14',
  next: 'M5 5.5v13l9-6.5zM18 5v14',
  back: 'M19 5.5v13l-9-6.5zM6 5v14',
  flag: 'M6 21V4M6 4.5h12l-3 4 3 4H6',
  menu: 'M4 7h16M4 12h16M4 17h16',
  bellOff: 'M6 16h12l-1.6-2.6V10a4.4 4.4 0 0 0-8.8 0v3.4zM10.4 18.5a1.7 1.7 0 0 0 3.2 0M4 4l16 16',
  lamp: 'M8 17v-5a4 4 0 0 1 8 0v5M6 17h12v3H6zM12 4V2.5M5.5 7L4 5.8M18.5 7L20 5.8M4 12H2.5M20 12h1.5',
  look: 'M2.5 12S6 5.5 12 5.5 21.5 12 21.5 12 18 18.5 12 18.5 2.5 12 2.5 12zM12 9a3 3 0 1 0 0 6 3 3 0 0 0 0-6z',
  measure: 'M4 17a8.5 8.5 0 1 1 16 0zM12 15l4-5.5M7 13l-1-.4M12 8.5V7.3',
  operate: 'M7 4.5h10v15H7zM12 8v4M10 8h4v5h-4zM10 16.5h4',
  mend: 'M14.5 6.5a4.5 4.5 0 0 1 5.6-1.6l-3 3 1.2 1.8 1.9.3 2-2a4.5 4.5 0 0 1-6.6 4.8L8 20.4 4.6 17l7.5-7.6a4.4 4.4 0 0 1 2.4-2.9z',
  say: 'M4 5h16v10.5h-8.5L7 19.5v-4H4zM8 9h8M8 12h5',
  sheet: 'M7 4.5h10V20H7zM10 3h4v3h-4zM9.5 10h5M9.5 13h5M9.5 16h3',
  notebook: 'M6 4h12v16H6zM9 4v16M11.5 8h4M11.5 11h4',
  phone:
    'M6 4h3.5l1.6 4-2.1 1.6a11 11 0 0 0 5.4 5.4l1.6-2.1 4 1.6V18a2 2 0 0 1-2.2 2A15.6 15.6 0 0 1 4 6.2A2 2 0 0 1 6 4z',
  list: 'M9 7h11M9 12h11M9 17h11M4.5 7h.1M4.5 12h.1M4.5 17h.1',
  lock: 'M7 11h10v8.5H7zM9 11V8a3 3 0 0 1 6 0v3',
  sound: 'M4 9.5h3.5L12 6v12l-4.5-3.5H4zM15 9.5a3.5 3.5 0 0 1 0 5M17.5 7a7 7 0 0 1 0 10',
  soundOff: 'M4 9.5h3.5L12 6v12l-4.5-3.5H4zM16 9.5l5 5M21 9.5l-5 5',
  save: 'M12 4v11M7.5 11l4.5 4.5 4.5-4.5M5 19.5h14',
  again: 'M19 12a7 7 0 1 1-2.2-5.1M19 4v4.5h-4.5',
  zoom: 'M10.5 4.5a6 6 0 1 0 0 12 6 6 0 0 0 0-12zM15 15l5 5M10.5 8v5M8 10.5h5',
  find: 'M10.5 4.5a6 6 0 1 0 0 12 6 6 0 0 0 0-12zM15 15l5 5',
  ear: 'M7 10a5 5 0 0 1 10 0c0 3.5-3 4-3.5 7-.3 2-1.5 3-3 3a3 3 0 0 1-3-2.5M9.5 10a2.5 2.5 0 0 1 5 0c0 1.8-2 2-2.5 4',
  plus: 'M12 5v14M5 12h14',
  minus: 'M5 12h14',
  arrow: 'M5 12h13M13 6.5l5.5 5.5-5.5 5.5',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon({ name }: { name: IconName }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={PATHS[name]} />
    </svg>
  );
}

/** The caution triangle: filled, so that it stands out without its colour too. */
export function CautionSign() {
  return (
    <svg class="caution-sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d="M12 3L22.5 21H1.5z" />
      <path class="mark" d="M12 9.5v5.5M12 17.8v.2" />
    </svg>
  );
}

/** Underlawn's mark: a spray head over the lawn. */
export function Mark() {
  return (
    <svg class="mark" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d="M4 20c4.5-9 11.5-9 16 0M6 10h12M12 4v11" />
    </svg>
  );
}
