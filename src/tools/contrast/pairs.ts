/** What stands on what: every pair of colours that the page uses, and how far apart its two have to be. */

/**
 * Least ratios of WCAG 2.2. Text: success criterion 1.4.3, large from 24 px, or from 18.66 px in bold. Part: 1.4.11, what is
 * needed to tell a control, its state or what a drawing says; and a focus ring.
 */
export const LEAST = { text: 4.5, large: 3, part: 3 } as const;
export type Kind = keyof typeof LEAST;

export interface Pair {
  readonly front: string;
  readonly ground: string;
  readonly kind: Kind;
  readonly where: string;
}

const GROUNDS = ['paper', 'card', 'field', 'button'] as const;

function pairs(kind: Kind, fronts: readonly string[], grounds: readonly string[], where: string): readonly Pair[] {
  return grounds.flatMap((ground) => fronts.map((front) => ({ front, ground, kind, where })));
}

export const PAIRS: readonly Pair[] = [
  ...pairs('text', ['ink', 'soft'], GROUNDS, 'running text'),
  ...pairs('text', ['ink'], ['raised', 'button-hover', 'm-sky', 'm-horizon', 'm-hill-far'], 'running text'),
  ...pairs('text', ['on-sheet', 'on-sheet-soft'], ['sheet'], 'what is printed, on the screen'),
  ...pairs('text', ['ink', 'soft'], ['band', 'band-deep', 'plate', 'plot', 'idle'], 'strips, tabs, heads, charts'),
  ...pairs('text', ['action', 'action-text'], ['paper', 'card', 'field'], 'labels, links, second buttons'),
  ...pairs('text', ['action-text'], ['button', 'action-wash', 'plot'], 'labels in buttons and charts'),
  ...pairs('text', ['ink', 'soft'], ['action-wash', 'good-wash', 'caution-wash', 'alarm-wash'], 'boxes'),
  ...pairs('text', ['on-action'], ['action', 'action-text'], 'first buttons, what is chosen'),
  ...pairs('text', ['good', 'alarm-text', 'caution-text'], ['paper', 'card', 'field'], 'verdicts and remarks'),
  ...pairs('text', ['good', 'alarm-text'], ['m-sky', 'm-horizon', 'm-hill-far'], 'the verdict over its hills'),
  ...pairs('text', ['good'], ['good-wash', 'plot', 'plate'], 'right answers, the reference'),
  ...pairs('text', ['alarm-text'], ['alarm-wash', 'caution-wash', 'plot'], 'wrong answers, broken rules'),
  ...pairs('text', ['caution-text'], ['caution-wash'], 'cautions'),
  ...pairs('text', ['on-good'], ['good'], 'ticks'),
  ...pairs('text', ['on-alarm'], ['alarm-fill'], 'the alarm’s band, pins'),
  ...pairs('text', ['alarm-fill'], ['on-alarm'], 'Silence in the alarm’s band'),
  ...pairs('text', ['on-caution'], ['caution'], 'here, the rate that runs'),
  ...pairs('text', ['bar-text', 'bar-soft'], ['bar'], 'the bar'),
  ...pairs('text', ['bar-text'], ['bar-pill', 'bar-pill-hover', 'over-picture'], 'buttons of the bar'),
  ...pairs('text', ['on-picture'], ['over-picture'], 'captions over the yard'),
  ...pairs('text', ['on-soil'], ['m-soil-1', 'm-soil-2', 'm-soil-3'], 'headings over the list of calls'),
  ...pairs('text', ['on-lcd'], ['lcd'], 'displays'),
  ...pairs('text', ['lcd-lost'], ['lcd'], 'a display that lost its clock'),
  ...pairs('text', ['on-meter'], ['meter-body'], 'the meter'),
  ...pairs('text', ['on-meter-face'], ['meter-face'], 'its dial'),
  ...pairs('text', ['on-probe'], ['probe-red', 'probe-black'], 'probes'),
  ...pairs('text', ['series-air', 'series-oxygen-text', 'series-pump-text'], ['card'], 'names of curves'),
  ...pairs('text', ['ink', 'soft'], ['m-plate', 'm-concrete'], 'words on the drawn panel'),
  ...pairs('text', ['m-ivory'], ['m-iron'], 'counters'),
  ...pairs('part', ['line-strong'], ['paper', 'card', 'field'], 'edges of fields and choices'),
  ...pairs('part', ['pencil'], ['paper', 'card', 'plot'], 'what is not known, faint lines'),
  ...pairs('part', ['focus'], [...GROUNDS, 'raised', 'band', 'band-deep', 'plate', 'action-wash'], 'focus ring'),
  ...pairs('part', ['caution'], ['bar'], 'focus ring in the bar'),
  ...pairs('part', ['picture-ring'], ['picture-halo'], 'focus ring over the yard'),
  ...pairs('part', ['on-alarm'], ['alarm-fill'], 'focus ring in the alarm’s band'),
  ...pairs('part', ['action', 'good', 'alarm', 'caution-line'], ['paper', 'card', 'field'], 'marks, rings, edges'),
  ...pairs('part', ['action'], ['band', 'button', 'action-wash'], 'what is chosen'),
  ...pairs('part', ['on-knob'], ['knob-off'], 'a switch that is off'),
  ...pairs('part', ['on-action'], ['action'], 'a switch that is on'),
  ...pairs('part', ['knob-off'], ['card'], 'a switch that is off'),
  ...pairs('part', ['on-caution'], ['caution'], 'the sign of caution'),
  ...pairs('part', ['alarm'], ['plot'], 'limits and faults in charts'),
  ...pairs(
    'part',
    ['series-air', 'series-oxygen', 'series-pump', 'series-residual', 'series-blanket', 'series-sludge', 'series-scum'],
    ['plot'],
    'curves',
  ),
  ...pairs('part', ['storm'], ['plot'], 'rain'),
  ...pairs('part', ['alarm-text', 'action'], ['field'], 'curves of a home'),
  ...pairs(
    'part',
    ['wire-alarm', 'wire-compressor', 'wire-pump', 'wire-control', 'wire-neutral', 'clamp'],
    ['paper'],
    'wires of the board',
  ),
  ...pairs('part', ['ink'], ['m-terminal', 'm-concrete', 'm-plate', 'm-water', 'm-soil'], 'outlines'),
  ...pairs(
    'part',
    ['ink'],
    ['m-float-redundant', 'm-float-stop', 'm-float-dose', 'm-float-high'],
    'outlines of floats',
  ),
  ...pairs('part', ['m-ivory'], ['m-iron'], 'levers, the selector'),
  ...pairs('part', ['ink'], ['m-raw', 'm-clear'], 'outlines of drops in their tanks'),
  ...pairs('part', ['picture-frame'], ['paper'], 'the frame of the yard'),
];
