/** Split an air line: where to squeeze it shut next, with so many tests to be expected as the planner works out. */

import { normalised } from '../diagnosis/belief.ts';
import { advise, type Problem } from '../diagnosis/plan.ts';
import { operatingPoint, stillAir } from '../plant/air.ts';
import { SOUND } from '../plant/spec.ts';
import { type Message, quantity, say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { Draws, untilFair } from './draws.ts';
import type { Made, Option } from './drill.ts';
import type { LineFigure, LineReading } from './figure.ts';

/**
 * What a line is made of, from the compressor to the diffusers, and how often it leaks beside the others: tubing that
 * lies in the sun most (common practice for the order; the weights are conventions).
 */
const PARTS: readonly (readonly [id: string, weight: number])[] = [
  ['outlet-hose', 3],
  ['gauge-tee', 2],
  ['first-elbow', 2],
  ['sunlit-run', 5],
  ['wall-joint', 3],
  ['buried-run', 2],
  ['riser-joint', 3],
  ['drop-line', 1],
];
const WEIGHTS = { least: 1, most: 6 } as const;
/** Parts that the readings leave, and that they have ruled out at either end. */
const LEFT = [4, 6] as const;
const RULED_OUT = [0, 2] as const;
const MOST_OPTIONS = 5;
/** Best and second best lie so far apart, tests (convention). */
const CLEAR_tests = 0.05;
/** Bore of the leak, m, and a depth that no compressor blows through: the line squeezed shut. */
const LEAK_m = [0.005, 0.009] as const;
const SHUT_m = 10;
/** Stopping with more than one part left is no answer. */
const NEVER = 1e6;
const GAUGE_kPa = 0.5;

export function airLineDrill(seed: number, spec: UnitSpec): Made {
  const draws = new Draws(seed, 'air-line');
  return untilFair(() => attempt(draws, seed, spec));
}

function attempt(draws: Draws, seed: number, spec: UnitSpec): Made | undefined {
  const before = draws.whole(...RULED_OUT);
  const left = draws.whole(...LEFT);
  const beyond = Math.min(draws.whole(...RULED_OUT), PARTS.length - before - left);
  if (beyond < 0) return undefined;
  const taken = draws.some(PARTS, before + left + beyond);
  const line = PARTS.filter((part) => taken.includes(part)).map(([id, usual]) => ({
    id,
    weight: Math.min(WEIGHTS.most, Math.max(WEIGHTS.least, usual + draws.whole(-1, 2))),
  }));
  const parts = line.map((part, i) => ({ ...part, left: i >= before && i < before + left }));
  const readings = readingsOf(draws, spec, before, before + left, parts.length);
  const figure: LineFigure = { kind: 'line', parts, readings };
  return fromFigure(draws, seed, figure, before);
}

/** What has been read: whole up to the parts that are left, leaking before those behind them. */
function readingsOf(draws: Draws, spec: UnitSpec, first: number, last: number, count: number): readonly LineReading[] {
  const bore_m = draws.between(...LEAK_m);
  const reading = (point: number, leak: LineReading['leak']): LineReading => ({
    point,
    pressure_kPa: squeezed_kPa(spec, leak === 'before' ? bore_m : 0),
    leak,
  });
  return [...(first > 0 ? [reading(first, 'beyond')] : []), ...(last < count ? [reading(last, 'before')] : [])];
}

/** What the gauge at the compressor reads with the line shut: the leak before the gauge's end of it, or none. */
function squeezed_kPa({ plant }: UnitSpec, hole_m: number): number {
  const { pressure_kPa } = operatingPoint(plant.air, { ...SOUND, lineHole_m: hole_m }, SHUT_m, stillAir());
  return Math.round(pressure_kPa / GAUGE_kPa) * GAUGE_kPa;
}

/** Expected tests after squeezing at each point. */
interface Valued {
  readonly point: number;
  readonly tests: number;
  /** Weights on its two sides; undefined where its reading is known. */
  readonly sides: readonly [number, number] | undefined;
}

function fromFigure(draws: Draws, seed: number, figure: LineFigure, first: number): Made | undefined {
  const weights = figure.parts.filter((part) => part.left).map((part) => part.weight);
  const inside = weights.slice(1).map((_, i) => first + i + 1);
  const known = inside.length < MOST_OPTIONS ? figure.readings.map(({ point }) => point) : [];
  const points = [...inside, ...(known.length > 0 ? [draws.one(known)] : [])].sort((a, b) => a - b);
  const valued = valuesOf(weights, points, first);
  const [best, second] = [...valued].sort((a, b) => a.tests - b.tests);
  if (!best || !second || second.tests - best.tests < CLEAR_tests) return undefined;
  return {
    skill: 'air-line',
    seed,
    prompt: say(figure.readings.length === 0 ? 'drill.line.ask-first' : 'drill.line.ask'),
    figure,
    ask: { kind: 'choice', right: String(best.point), options: valued.map((one) => option(one, best, figure)) },
  };
}

/** Each point followed by the best that comes after it, every test costing one. */
function valuesOf(weights: readonly number[], points: readonly number[], first: number): readonly Valued[] {
  const groups = (point: number) => weights.map((_, i) => (first + i < point ? 0 : 1));
  const problem: Problem = {
    belief: normalised(weights),
    checks: points.map((point) => ({ cost: 1, groups: groups(point) })),
    stop: (left) => (left.length < 2 ? 0 : NEVER),
  };
  const { after } = advise(problem);
  const sum = (side: number, point: number) =>
    groups(point).reduce((total: number, group, i) => total + (group === side ? (weights[i] ?? 0) : 0), 0);
  return points.map((point, i) => {
    const sides = [sum(0, point), sum(1, point)] as const;
    return { point, tests: after[i] ?? 0, sides: sides.includes(0) ? undefined : sides };
  });
}

const tests = (n: number) => quantity('count', n, 0.01);

function option({ point, tests: n, sides }: Valued, best: Valued, figure: LineFigure): Option {
  const values = { n: point, e: tests(n) };
  const worse = { ...values, more: tests(n - best.tests), best: best.point };
  const part = figure.parts[point - 1]?.id ?? '';
  const why = (): Message => {
    if (sides === undefined) return say('drill.line.known', worse);
    const [a, b] = sides;
    if (point === best.point) return say('drill.line.best', { ...values, a, b });
    return say('drill.line.worse', { ...worse, a, b });
  };
  return {
    id: String(point),
    label: say('drill.line.point', { n: point, part: say(`drill.part.${part}`) }),
    why: why(),
  };
}
