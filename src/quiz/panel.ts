/** Read a panel: what runs at the timer's start, what a reset would do, what a held Test button tells. */
import {
  BREAKERS,
  type BreakerName,
  type ControlEventName,
  type ControlState,
  type LampName,
} from '../control/index.ts';
import { lampsOf } from '../control/wiring.ts';
import { operatingPoint, stillAir } from '../plant/air.ts';
import { SOUND } from '../plant/spec.ts';
import { type Message, say } from '../service/message.ts';
import { floatHeights_m, floatsOf, kindOf, type UnitSpec } from '../unit/spec.ts';
import { Bench } from './bench.ts';
import { Draws, untilFair } from './draws.ts';
import type { Made, Option } from './drill.ts';
import type { LeverStand, PanelFigure } from './figure.ts';

export function panelDrill(seed: number, spec: UnitSpec): Made {
  const draws = new Draws(seed, 'panel');
  const timed = spec.panel.dosing.kind !== 'demand';
  const asked = draws.one([...(timed ? [atStart] : []), atReset, atTest]);
  return asked(draws, seed, spec);
}

/** Heights by which water stands clear over or under a float, m. */
const CLEAR_m = 0.05;
/** Splits that may be drawn, m, and how far under the air switch's set point their gauge must read, kPa (conventions). */
const SPLIT_m = [0.0052, 0.009] as const;
const CLEAR_kPa = 0.5;

function overDose({ panel }: UnitSpec): number {
  const float = panel.dosing.kind === 'demand' ? 'startStopFloat' : 'doseFloat';
  return floatHeights_m(panel, float).makes_m + CLEAR_m;
}

/** Pressure of a running compressor's line with a split of so many metres, kPa. */
function gauge_kPa({ plant }: UnitSpec, split_m: number): number {
  const depth_m = plant.aeration.outlet_m - plant.air.diffuser_elevation_m;
  return operatingPoint(plant.air, { ...SOUND, lineHole_m: split_m }, depth_m, stillAir()).pressure_kPa;
}

/** The same with a drawn split that is large enough for the air switch. */
function splitGauge_kPa(draws: Draws, spec: UnitSpec): number {
  return untilFair(() => {
    const read = gauge_kPa(spec, draws.between(...SPLIT_m));
    return read < spec.panel.airSwitch.falls_kPa - CLEAR_kPa ? read : undefined;
  });
}

interface Beside {
  readonly gauge_kPa: number;
  readonly notes: readonly Message[];
}

function figureOf(draws: Draws, spec: UnitSpec, state: ControlState, beside: Beside): PanelFigure {
  const { regions, outputs } = state;
  const { dosing } = spec.panel;
  const cycles = draws.whole(300, 2600);
  const run_min = dosing.kind === 'demand' ? draws.between(12, 22) : dosing.run_min;
  return {
    kind: 'panel',
    levers: Object.fromEntries(BREAKERS.map((b) => [b, regions[b]])) as Record<BreakerName, LeverStand>,
    lamps: lampsOf(kindOf(spec.panel)).map(({ lamp }) => ({ id: lamp, lit: outputs[lamp] })),
    buzzer: outputs.buzzer,
    testHeld: regions.test === 'held',
    selector: regions.selector as PanelFigure['selector'],
    timer:
      dosing.kind === 'demand'
        ? null
        : { clock_s: clockShown(draws, dosing.kind === 'night'), keeps: regions.timerClock === 'keeping' },
    hours: (cycles * run_min) / 60,
    cycles,
    ...beside,
  };
}

/** Some minutes before a start of the night, or any time of the day. */
function clockShown(draws: Draws, night: boolean): number {
  const minute = draws.whole(31, 58);
  return (night ? draws.one([23, 24, 25, 26, 27]) % 24 : draws.whole(6, 21)) * 3600 + minute * 60;
}

/** One thing in the way of a dose: what brings it about, and what takes it away. */
interface Hindrance {
  readonly id: string;
  readonly comes: readonly ControlEventName[];
  readonly mended: readonly ControlEventName[];
}

function hindrances(spec: UnitSpec): readonly Hindrance[] {
  const night = spec.panel.dosing.kind === 'night';
  const lever = (event: 'off' | 'trips'): Hindrance => ({
    id: 'lever',
    comes: [`pumpBreaker.${event}`],
    mended: ['pumpBreaker.off', 'pumpBreaker.on'],
  });
  return [
    lever('off'),
    lever('trips'),
    { id: 'selector', comes: ['selector.off'], mended: ['selector.auto'] },
    night
      ? { id: 'clock', comes: ['timer.loses'], mended: ['timer.set'] }
      : { id: 'clock', comes: ['timer.dies'], mended: ['timer.renewed'] },
    { id: 'water', comes: [], mended: floatsOf(spec.panel).flatMap((f) => (isLow(f) ? [`${f}.rises` as const] : [])) },
  ];
}

/** Floats that a dose asks for. */
function isLow(float: string): boolean {
  return ['redundantOffFloat', 'stopFloat', 'doseFloat'].includes(float);
}

/** Levers that have nothing to do with a dose, put off or tripped to be passed over. */
const BESIDE_THE_POINT: readonly (readonly ControlEventName[])[] = [
  [],
  ['alarmBreaker.trips'],
  ['compressorBreaker.off'],
  ['compressorBreaker.trips', 'air.falls'],
];

const AT_START = ['doses', 'lever', 'selector', 'clock', 'water'] as const;

function atStart(draws: Draws, seed: number, spec: UnitSpec): Made {
  const hindrance = draws.chance(0.3) ? undefined : draws.one(hindrances(spec));
  const bench = new Bench(spec);
  const low = hindrance?.id === 'water';
  if (!low) bench.rise(overDose(spec));
  const aside = draws.one(BESIDE_THE_POINT);
  bench.send(...aside, ...(hindrance?.comes ?? [])).wait(120);
  const right = startsBy(bench, spec);
  const off = bench.state.regions.compressorBreaker !== 'on';
  const figure = figureOf(draws, spec, bench.state, {
    gauge_kPa: off ? 0 : gauge_kPa(spec, 0),
    notes: [say(low ? 'drill.panel.under-dose' : 'drill.panel.over-dose')],
  });
  return choice(seed, 'start', figure, AT_START, right);
}

/** What the timer's start would do, or the one thing whose mending lets it start the pump. */
function startsBy(bench: Bench, spec: UnitSpec): string {
  const runs = (...events: readonly ControlEventName[]) => bench.after(...events, 'timer.start').outputs.pumpRuns;
  if (runs()) return 'doses';
  const found = hindrances(spec).find(({ mended }) => runs(...mended));
  if (!found) throw new Error('more than one thing hinders a dose');
  return found.id;
}

/** What can stand behind an alarm that a panel alone does not tell. */
const BEHIND = ['surge', 'high-water', 'low-air'] as const;

const AT_RESET = ['dark', 'at-once', 'seconds', 'minute'] as const;
/** How long one watches after a reset, s (five minutes by phone). */
const WATCHED_s = 300;

function atReset(draws: Draws, seed: number, spec: UnitSpec): Made {
  const latches = spec.panel.alarm === 'latching';
  const behind = draws.one(BEHIND.filter((one) => latches || one !== 'surge'));
  const bench = new Bench(spec);
  const high_m = floatHeights_m(spec.panel, 'highWaterFloat').makes_m + CLEAR_m;
  bench.rise(behind === 'high-water' ? high_m : overDose(spec));
  if (behind === 'surge') bench.send('latch.surge');
  if (behind === 'low-air') bench.send('air.falls');
  // What high water stands over is a pump that does not pump: else it would be falling.
  if (behind === 'high-water') bench.send('winding.opens');
  bench.wait(WATCHED_s);
  if (draws.chance(0.5)) bench.send('silence.pressed');
  const gauge = behind === 'low-air' ? splitGauge_kPa(draws, spec) : gauge_kPa(spec, 0);
  const figure = figureOf(draws, spec, bench.state, {
    gauge_kPa: gauge,
    notes: [
      say(behind === 'high-water' ? 'drill.panel.over-high' : 'drill.panel.under-high'),
      say(latches ? 'drill.panel.latches' : 'drill.panel.follows'),
    ],
  });
  const lit_s = litAfterReset(bench, spec, gauge > spec.panel.airSwitch.rises_kPa);
  const right = lit_s === undefined ? 'dark' : lit_s === 0 ? 'at-once' : lit_s < 30 ? 'seconds' : 'minute';
  return choice(seed, 'reset', figure, AT_RESET, right);
}

/** Seconds from the last lever to the lamp, all three off for a minute and on again; undefined where it stays dark. */
function litAfterReset(bench: Bench, spec: UnitSpec, airComesBack: boolean): number | undefined {
  bench.send(...BREAKERS.map((b) => `${b}.off` as const), 'air.falls').wait(60);
  for (const name of spec.panel.resetOrder) bench.send(`${name}Breaker.on`);
  // The line fills in seconds, long before the delay of the air switch is over.
  if (airComesBack) bench.send('air.rises');
  for (let s = 0; s <= WATCHED_s; s++) {
    if (bench.state.outputs.lamp) return s;
    bench.wait(1);
  }
  return undefined;
}

const AT_TEST = ['sound', 'lamp', 'buzzer', 'circuit', 'silenced'] as const;

interface Mute {
  readonly id: string;
  readonly comes: readonly ControlEventName[];
  readonly mended: readonly ControlEventName[];
}

/** What keeps a lamp dark or a buzzer mute while Test is held. */
function mutes(lamps: readonly LampName[]): readonly Mute[] {
  return [
    ...lamps.map((lamp): Mute => ({ id: 'lamp', comes: [`${lamp}.dies`], mended: [`${lamp}.renewed`] })),
    { id: 'buzzer', comes: ['horn.dies'], mended: ['horn.renewed'] },
    ...(['off', 'trips'] as const).map(
      (event): Mute => ({
        id: 'circuit',
        comes: [`alarmBreaker.${event}`],
        mended: ['alarmBreaker.off', 'alarmBreaker.on'],
      }),
    ),
  ];
}

function atTest(draws: Draws, seed: number, spec: UnitSpec): Made {
  const lamps = lampsOf(kindOf(spec.panel)).map(({ lamp }) => lamp);
  const mute = draws.chance(0.25) ? undefined : draws.one(mutes(lamps));
  const alarm = draws.chance(0.5);
  const bench = new Bench(spec).rise(overDose(spec));
  if (alarm) bench.send('air.falls').wait(120).send('silence.pressed');
  bench.send(...(mute?.comes ?? []), 'test.pressed').wait(1);
  const figure = figureOf(draws, spec, bench.state, {
    gauge_kPa: alarm ? splitGauge_kPa(draws, spec) : gauge_kPa(spec, 0),
    notes: [say(alarm ? 'drill.panel.was-silenced' : 'drill.panel.was-quiet')],
  });
  return choice(seed, 'test', figure, AT_TEST, testTells(bench, lamps));
}

/** What a held Test tells: all there, or the one thing whose mending brings all back. */
function testTells(bench: Bench, lamps: readonly LampName[]): string {
  const all = ({ outputs }: ControlState) => outputs.buzzer && lamps.every((lamp) => outputs[lamp]);
  if (all(bench.state)) return 'sound';
  const found = mutes(lamps).find(({ mended }) => all(bench.after(...mended)));
  if (!found) throw new Error('more than one thing is mute');
  return found.id;
}

function choice(
  seed: number,
  asked: 'start' | 'reset' | 'test',
  figure: PanelFigure,
  ids: readonly string[],
  right: string,
): Made {
  const shown = say(`drill.panel.${asked}.shown.${right}`);
  const next = say(`drill.panel.${asked}.next.${right}`);
  const option = (id: string): Option => ({
    id,
    label: say(`drill.panel.${asked}.${id}`),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.panel.${asked}.needs.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'panel',
    seed,
    prompt: say(`drill.panel.${asked}.ask`),
    figure,
    ask: { kind: 'choice', right, options: ids.map(option) },
  };
}
