/** What a drill shows, told in words: the twin of its drawing. */
import { type Message, quantity, say } from '../service/message.ts';
import type { Figure, FloatsFigure, JarFigure, LineFigure, LinePart, MeterFigure, PanelFigure } from './figure.ts';

export function figureWords(figure: Figure): readonly Message[] {
  switch (figure.kind) {
    case 'floats':
      return floatsWords(figure);
    case 'line':
      return lineWords(figure);
    case 'jar':
      return jarWords(figure);
    case 'panel':
      return [...panelWords(figure), ...figure.notes];
    case 'meter':
      return meterWords(figure);
    case 'sheet':
      return figure.rows;
    case 'plan':
      return figure.parts.map((part) => say('drill.option', { label: say(`part.${part}`) }));
  }
}

const height = (m: number) => quantity('length_m', m, 0.01);

/** The water, the inlet, then float by float, the lowest first. */
export function floatsWords({ level_m, rising, inlet_m, floats }: FloatsFigure): readonly Message[] {
  const way = say(rising ? 'drill.floats.rising' : 'drill.floats.falling');
  return [
    say('drills.fig.water', { level: height(level_m), way }),
    say('drills.fig.inlet', { h: height(inlet_m) }),
    ...floats.map(({ id, makes_m, breaks_m, position, made }) =>
      say('drills.fig.float', {
        float: say(`float.${id}`),
        high: height(makes_m),
        low: height(breaks_m),
        position: say(`drills.fig.${position}`),
        contact: say(`drills.fig.${made ? 'made' : 'open'}`),
      }),
    ),
  ];
}

/** From the compressor to the diffusers, with what has been read where. */
function lineWords({ parts, readings }: LineFigure): readonly Message[] {
  const state = ({ left, weight }: LinePart) =>
    left ? say('drills.fig.weight', { n: weight }) : say('drills.fig.ruledOut');
  const after = (point: number): readonly Message[] => {
    if (point >= parts.length) return [];
    const read = readings.find((one) => one.point === point);
    return [read ? shut(read) : say('drills.fig.point', { n: point })];
  };
  return [
    say('drills.fig.compressor'),
    ...parts.flatMap((part, i) => [
      say('drills.fig.part', { part: say(`drill.part.${part.id}`), state: state(part) }),
      ...after(i + 1),
    ]),
    say('drills.fig.diffusers'),
    say('drills.fig.weights'),
  ];
}

function shut({ point, pressure_kPa, leak }: LineFigure['readings'][number]): Message {
  const values = { n: point, p: quantity('pressure_kPa', pressure_kPa, 0.5) };
  return say(leak === 'beyond' ? 'drills.fig.shutHolds' : 'drills.fig.shutFalls', values);
}

/** The line first, then what else was noted. */
export function jarWords(figure: JarFigure): readonly Message[] {
  const { settled_mLL, solids_mgL, minutes, floats, colour, above, foam } = figure;
  return [
    floats ? say('drills.fig.noLine') : say('drills.fig.line', { n: settled_mLL }),
    say('drills.fig.stood', { minutes: quantity('duration_min', minutes) }),
    say('drills.fig.solids', { c: quantity('concentration_mgL', solids_mgL, 1) }),
    say('drills.fig.liquor', { colour: say(`word.${colour}`) }),
    say(floats ? 'drills.fig.below' : 'drills.fig.above', { colour: say(`word.${above}`) }),
    say('drills.fig.foam', { kind: say(`drills.fig.foam.${foam}`) }),
  ];
}

/** The panel in the order in which it is read, without what is known from elsewhere. */
export function panelWords(figure: PanelFigure): readonly Message[] {
  const state = (on: boolean, yes: string, no: string) => say(`drills.fig.${on ? yes : no}`);
  const { lamps, buzzer, levers, selector, timer, gauge_kPa, hours, cycles, testHeld } = figure;
  return [
    ...lamps.map(({ id, lit }) =>
      say('drills.fig.lamp', { lamp: say(`part.${id}`), state: state(lit, 'lit', 'dark') }),
    ),
    say('drills.fig.buzzer', { state: state(buzzer, 'sounds', 'mute') }),
    ...(['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const).map((id) =>
      say('drills.fig.lever', { circuit: say(`circuit.${id}`), stand: say(`lever.${levers[id]}`) }),
    ),
    say('drills.fig.selector', { stand: say(SELECTOR_WORD[selector]) }),
    ...(timer === null
      ? []
      : [timer.keeps ? say('drills.fig.clock', { t: quantity('clock_s', timer.clock_s) }) : say('drills.fig.blinks')]),
    say('drills.fig.gauge', { p: quantity('pressure_kPa', gauge_kPa, 0.5) }),
    say('drills.fig.counters', { hours: quantity('count', hours, 0.1), cycles: quantity('count', cycles, 1) }),
    ...(testHeld ? [say('drills.fig.testHeld')] : []),
  ];
}

/** The way from the line to neutral, where the probes are, what the meter shows, and how things stand. */
function meterWords({ chain, red, black, reading, mode, notes }: MeterFigure): readonly Message[] {
  const nameAt = (i: number) => chain.nodes[i]?.name ?? say('meter.none');
  return [
    ...chain.nodes.flatMap((node, i) => {
      const part = chain.parts[i];
      return [say('drills.fig.screw', { name: node.name }), ...(part ? [say('drills.fig.between', { part })] : [])];
    }),
    say('drills.fig.probe', { red: nameAt(red), black: nameAt(black) }),
    reading === undefined ? say('drills.fig.asked') : say('drills.fig.shows', { r: readingWords(mode, reading) }),
    ...notes,
  ];
}

/** What a meter shows, null over its range. */
export function readingWords(mode: MeterFigure['mode'], reading: number | null): Message {
  if (reading === null) return say('drill.meter.over-range');
  const r = quantity(mode === 'volts' ? 'voltage_V' : 'resistance_ohm', reading, 0.1);
  return say('drill.meter.reading', { r });
}

/** The stands of the pump's selector by name. */
export const SELECTOR_WORD = {
  hand: 'yard.panel.hand',
  off: 'yard.panel.selectorOff',
  auto: 'yard.panel.auto',
} as const;
