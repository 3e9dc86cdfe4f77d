/** One meter reading: which part it shows, or what it should show. Volts on a live panel, ohms on a locked-out one. */
import { BREAKERS, type ControlState } from '../control/index.ts';
import { INSTRUMENTS, showing } from '../service/instruments.ts';
import { type Message, type Quantity, quantity, say } from '../service/message.ts';
import { terminalWords } from '../service/terminalWords.ts';
import { circuitOf } from '../unit/circuit.ts';
import { ohmsBetween, voltsBetween } from '../unit/probes.ts';
import { floatHeights_m, kindOf, type UnitSpec } from '../unit/spec.ts';
import type { TerminalId } from '../unit/terminals.ts';
import { Bench } from './bench.ts';
import { type Failure, type Way, waysOf } from './chains.ts';
import { Draws, untilFair } from './draws.ts';
import type { Made, Option } from './drill.ts';
import type { MeterFigure } from './figure.ts';

type Mode = MeterFigure['mode'];

/** Where the water stands: over every float, or under all. */
type Stand = 'high' | 'low';

interface Probed {
  readonly mode: Mode;
  readonly stand: Stand;
  readonly way: Way;
  readonly red: number;
  readonly black: number;
}

/** Volts that far apart are told apart on any meter; ohms by a factor, or by being over the range (conventions). */
const APART_V = 20;
const APART_times = 1.8;
/** Over its range it shows no number, ohm (convention; an open contact is over 10 kohm). */
const OVER_RANGE_ohm = 10_000;
const EXPECTS = 0.25;
const WRONG = { least: 2, most: 3 } as const;
const SOUND_SHARE = 0.15;
/** Volts that still count as the expected ones (sag and meter together, convention). */
const TOLERANCE_V = 8;
const CLEAR_m = 0.05;

export function meterDrill(seed: number, spec: UnitSpec): Made {
  const draws = new Draws(seed, 'meter');
  const asked = draws.chance(EXPECTS) ? whatToExpect : whichPart;
  return untilFair(() => asked(draws, seed, spec));
}

function probesSet(draws: Draws, spec: UnitSpec, mode: Mode): Probed {
  const way = draws.one(waysOf(spec));
  // With the levers off, ohms are asked for behind them.
  const first = mode === 'ohms' ? 1 : 0;
  const red = draws.whole(first, way.nodes.length - 2);
  const black = draws.whole(red + 1, way.nodes.length - 1);
  return { mode, stand: mode === 'volts' || draws.chance(0.5) ? 'high' : 'low', way, red, black };
}

/** The panel as it is found, with one part failed or none, and ready for the meter. */
function found(spec: UnitSpec, { mode, stand }: Probed, failure: Failure | undefined): ControlState {
  const bench = new Bench(spec);
  // A part that fails while the pump is called for is found so, however the water stands then.
  if (failure) bench.send(failure.event);
  if (stand === 'high') bench.rise(floatHeights_m(spec.panel, 'highWaterFloat').makes_m + CLEAR_m);
  // By night the override calls for the pump; a timer of small doses has to come round.
  if (spec.panel.dosing.kind === 'timed') bench.send('timer.start');
  bench.wait(60);
  if (mode === 'ohms') bench.send(...BREAKERS.map((b) => `${b}.off` as const));
  return bench.state;
}

/** What the meter shows there, V or ohm; infinite over its range. */
function shownAt(spec: UnitSpec, probed: Probed, failure: Failure | undefined): number {
  const state = found(spec, probed, failure);
  const amps = state.outputs.pumpRuns ? spec.plant.effluentPump.ratedCurrent_A : 0;
  const circuit = circuitOf(kindOf(spec.panel), state, amps);
  const [red, black] = ends(probed);
  if (probed.mode === 'volts') return voltsBetween(circuit, red, black);
  const ohm = ohmsBetween(circuit, red, black);
  return ohm > OVER_RANGE_ohm ? Number.POSITIVE_INFINITY : ohm;
}

/** The screws that the probes are on. */
function ends({ way, red, black }: Probed): readonly [TerminalId, TerminalId] {
  const [from, to] = [way.nodes[red], way.nodes[black]];
  if (from === undefined || to === undefined) throw new Error('a probe hangs in the air');
  return [from, to];
}

function apart(mode: Mode, a: number, b: number): boolean {
  if (mode === 'volts') return Math.abs(a - b) > APART_V;
  if (a === b) return false;
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  return high === Number.POSITIVE_INFINITY || high > APART_times * low + 0.5;
}

/** A failure of the chain, or none, with what the meter shows at it. */
interface Case {
  readonly id: string;
  readonly name: Message;
  readonly reading: number;
}

const SOUND_CASE = { id: 'sound', name: say('drill.failure.sound') } as const;

function casesOf(spec: UnitSpec, probed: Probed): readonly Case[] {
  const failures = probed.way.links.flatMap((link) => link.failures).filter((failure) => matters(failure, probed));
  return [
    { ...SOUND_CASE, reading: shownAt(spec, probed, undefined) },
    ...failures.map((failure) => ({
      id: failure.id,
      name: failure.name,
      reading: shownAt(spec, probed, failure),
    })),
  ];
}

/** A lever that is off anyway cannot be found tripped. */
function matters({ event }: Failure, { mode }: Probed): boolean {
  return mode === 'volts' || !event.endsWith('.trips');
}

function whichPart(draws: Draws, seed: number, spec: UnitSpec): Made | undefined {
  const probed = probesSet(draws, spec, draws.chance(0.6) ? 'volts' : 'ohms');
  const cases = casesOf(spec, probed);
  const [sound] = cases;
  // What shows nothing here cannot be asked for here.
  const failed = cases.filter((one) => sound && apart(probed.mode, one.reading, sound.reading));
  if (!sound || failed.length === 0) return undefined;
  const truth = draws.chance(SOUND_SHARE) ? sound : draws.one(failed);
  const others = cases.filter((one) => apart(probed.mode, one.reading, truth.reading));
  if (others.length < WRONG.least) return undefined;
  const offered = [truth, ...draws.some(others, WRONG.most)];
  const noise = (value: number) => scattered(probed.mode, value, seed);
  const reading = noise(truth.reading);
  const figure = figureOf(spec, probed, reading);
  const option = (one: Case): Option => {
    const would = { failure: one.name, r: spoken(probed.mode, noise(one.reading)) };
    const shown = say('drill.meter.shown', { r: spoken(probed.mode, reading) });
    return {
      id: one.id,
      label: say('drill.option', { label: one.name }),
      why:
        one === truth
          ? say('drill.two', { a: say('drill.meter.is', would), b: nextOf(probed.mode, truth.reading) })
          : say('drill.three', { a: say('drill.meter.would', would), b: shown, c: nextOf(probed.mode, truth.reading) }),
    };
  };
  return {
    skill: 'meter',
    seed,
    prompt: say(`drill.meter.ask-${probed.mode}`),
    figure,
    ask: { kind: 'choice', right: truth.id, options: cases.filter((one) => offered.includes(one)).map(option) },
  };
}

/** As the instrument shows it: its own scatter, rounded to its smallest step. */
function scattered(mode: Mode, value: number, seed: number): number {
  if (value === Number.POSITIVE_INFINITY) return value;
  return showing(mode === 'volts' ? INSTRUMENTS.voltage_V : INSTRUMENTS.resistance_ohm, value, seed, 0);
}

function spoken(mode: Mode, value: number): Message {
  if (value === Number.POSITIVE_INFINITY) return say('drill.meter.over-range');
  const r = mode === 'volts' ? quantity('voltage_V', value, 0.1) : quantity('resistance_ohm', value, 0.1);
  return say('drill.meter.reading', { r });
}

/** What to ask of such a reading next. */
function nextOf(mode: Mode, value: number): Message {
  if (mode === 'volts') return say(value > 60 ? 'drill.meter.next.full' : 'drill.meter.next.none');
  return say(value === Number.POSITIVE_INFINITY ? 'drill.meter.next.open' : 'drill.meter.next.closed');
}

function figureOf(spec: UnitSpec, { mode, stand, way, red, black }: Probed, reading?: number): MeterFigure {
  const timed = spec.panel.dosing.kind === 'timed' && stand === 'high';
  return {
    kind: 'meter',
    mode,
    chain: {
      nodes: way.nodes.map((id) => ({ id, name: terminalWords(id) })),
      parts: way.links.map(({ name }) => name),
    },
    red,
    black,
    ...(reading === undefined ? {} : { reading: reading === Number.POSITIVE_INFINITY ? null : reading }),
    notes: [
      say(
        mode === 'ohms' ? 'drill.meter.locked' : reading === undefined ? 'drill.meter.live-sound' : 'drill.meter.live',
      ),
      say(`drill.meter.water-${stand}`),
      ...(timed && mode === 'volts' ? [say('drill.meter.dosing')] : []),
    ],
  };
}

function whatToExpect(draws: Draws, seed: number, spec: UnitSpec): Made {
  const probed = probesSet(draws, spec, 'volts');
  const value = shownAt(spec, probed, undefined);
  const supply = shownAt(spec, { ...probed, red: 0, black: probed.way.nodes.length - 1 }, undefined);
  const full = value > supply / 2;
  const [from, to] = ends(probed);
  const values = { v: quantity('voltage_V', value, 1), supply: quantity('voltage_V', supply, 1) };
  return {
    skill: 'meter',
    seed,
    prompt: say('drill.meter.ask-expected', {
      red: terminalWords(from),
      black: terminalWords(to),
      supply: values.supply,
    }),
    figure: figureOf(spec, probed),
    ask: {
      kind: 'number',
      unit: say('drill.unit.V'),
      value,
      decimals: 0,
      tolerance: TOLERANCE_V,
      right: say(full ? 'drill.meter.expected.full' : 'drill.meter.expected.none', values),
      slips: [
        full
          ? { value: 0, why: say('drill.meter.slip.none', values) }
          : { value: supply, why: say('drill.meter.slip.full', values) },
        { value: supply / 2, why: say('drill.meter.slip.half', values) },
      ],
      other: say(full ? 'drill.meter.other.full' : 'drill.meter.other.none', values),
      worked: worked(probed, values.v),
    },
  };
}

/** The voltage between two screws is what the parts between them take: a load all of it, a closed contact next to nothing. */
function worked({ way, red, black }: Probed, v: Quantity): readonly Message[] {
  const between = way.links.slice(red, black).map(({ name }) => say('drill.meter.between', { part: name }));
  return [...between, say('drill.meter.sum', { v })];
}
