/** Judge a jar of settled sludge: what it calls for, or its volume index as a number. */
import { indexVerdict, type JarLiquor, type JarReading, jarVerdict, readJar } from '../plant/jar.ts';
import { effluentColour, foam, liquorColour } from '../plant/senses.ts';
import { volumeIndex } from '../plant/settleability.ts';
import { type Message, quantity, say } from '../service/message.ts';
import { Draws, untilFair } from './draws.ts';
import type { Made, NumberAsked, Option } from './drill.ts';
import type { JarFigure } from './figure.ts';
import { toldApart } from './slips.ts';

/** What a jar can tell. */
const JUDGEMENTS = ['ordinary', 'thin', 'thick', 'remove', 'bulking', 'old', 'stale', 'floats'] as const;
export type JarJudgement = (typeof JUDGEMENTS)[number];

type Range = readonly [number, number];

/** What is poured in, drawn from these ranges, so that each judgement comes as often. */
interface Recipe {
  /** Volume index, mL/g, and the settled volume that it would make, mL/L. */
  readonly index: Range;
  readonly settled: Range;
  readonly hoursWithoutOxygen: Range;
  readonly inertShare: number;
  readonly heterotrophs_mgL: number;
  readonly nitrate_mgL: number;
  readonly minutes: number;
}

const USUAL: Recipe = {
  index: [88, 140],
  settled: [320, 470],
  hoursWithoutOxygen: [0, 0],
  inertShare: 0.85,
  heterotrophs_mgL: 300,
  nitrate_mgL: 3,
  minutes: 30,
};

const RECIPES: Readonly<Record<JarJudgement, Recipe>> = {
  ordinary: USUAL,
  thin: { ...USUAL, settled: [50, 260], heterotrophs_mgL: 110 },
  thick: { ...USUAL, index: [95, 118], settled: [570, 640] },
  remove: { ...USUAL, index: [100, 125], settled: [700, 800] },
  bulking: { ...USUAL, index: [185, 330], settled: [450, 900] },
  old: { ...USUAL, index: [50, 72], settled: [150, 280], inertShare: 0.97 },
  stale: { ...USUAL, hoursWithoutOxygen: [7, 40] },
  floats: { ...USUAL, nitrate_mgL: 12, minutes: 65 },
};

/** Rounding of the jar's mark and of a laboratory's solids. */
const MARK_mLL = 10;
const SOLIDS_mgL = 50;
/** Steps in which index and settled volume are drawn, mL/g and mL/L: few enough that jars come again. */
const INDEX_mLg = 10;
const POURED_mLL = 20;
/** Readings this near a limit could be judged either way, mL/L and mL/g (conventions). */
const CLEAR_mLL = 15;
const CLEAR_mLg = 8;
const LIMITS_mLL = [100, 300, 500, 600];
/** Ordinary air, L/min. */
const AIR_Lmin = 83;
const ASKS_NUMBER = 0.25;
const OPTIONS = 4;

export function jarDrill(seed: number): Made {
  const draws = new Draws(seed, 'jar');
  const wanted = draws.one(JUDGEMENTS);
  const figure = untilFair(() => attempt(draws, wanted));
  const right = judged(figure);
  const asksNumber = draws.chance(ASKS_NUMBER) && !figure.floats;
  return asksNumber ? indexDrill(seed, figure) : judgeDrill(draws, seed, figure, right);
}

function attempt(draws: Draws, wanted: JarJudgement): JarFigure | undefined {
  const recipe = RECIPES[wanted];
  const index = step(draws.between(...recipe.index), INDEX_mLg);
  const poured_mLL = step(draws.between(...recipe.settled), POURED_mLL);
  const solids_mgL = step((1000 * poured_mLL) / index, SOLIDS_mgL);
  const hoursWithoutOxygen = draws.between(...recipe.hoursWithoutOxygen);
  const liquor = { solids_mgL, index_mLg: index, nitrate_mgL: recipe.nitrate_mgL, oxygen_mgL: 0.5 };
  const jar = settled(liquor, recipe.minutes);
  const aired = hoursWithoutOxygen === 0 ? AIR_Lmin : 0;
  const figure: JarFigure = {
    kind: 'jar',
    minutes: recipe.minutes,
    settled_mLL: step(jar.settled_mLL, MARK_mLL),
    solids_mgL,
    floats: jar.floats,
    colour: liquorColour({ solids_mgL, hoursWithoutOxygen }),
    above: effluentColour({ solids_mgL: jar.above_mgL, hoursWithoutOxygen: 0 }),
    foam: foam({
      air_Lmin: aired,
      reference_Lmin: AIR_Lmin,
      heterotrophs_mgL: recipe.heterotrophs_mgL,
      activity: 1,
      inertShare: recipe.inertShare,
      soap: 1,
    }).kind,
  };
  return judged(figure) === wanted && isClear(figure) ? figure : undefined;
}

const known = new Map<string, JarReading>();

/** A jar is computed in layers, which takes some milliseconds: each is kept. */
function settled(liquor: JarLiquor, minutes: number): JarReading {
  const key = JSON.stringify([liquor, minutes]);
  const jar = known.get(key) ?? readJar(liquor, minutes);
  known.set(key, jar);
  return jar;
}

function step(value: number, size: number): number {
  return Math.round(value / size) * size;
}

/** Index as it follows from what is read, mL/g. */
function indexOf({ settled_mLL, solids_mgL }: JarFigure): number {
  return volumeIndex(settled_mLL, solids_mgL);
}

function isClear(figure: JarFigure): boolean {
  if (figure.floats) return true;
  const index = indexOf(figure);
  return (
    LIMITS_mLL.every((limit) => Math.abs(figure.settled_mLL - limit) >= CLEAR_mLL) &&
    [80, 150].every((limit) => Math.abs(index - limit) >= CLEAR_mLg) &&
    figure.settled_mLL < 1000
  );
}

/** What a jar tells, in the order in which it is asked: can it be read, has it air, how dense is it, how much is it. */
function judged(figure: JarFigure): JarJudgement {
  if (figure.floats) return 'floats';
  if (['grey-brown', 'grey', 'black'].includes(figure.colour)) return 'stale';
  const density = indexVerdict(indexOf(figure));
  if (density === 'dense' && figure.foam === 'dark-greasy') return 'old';
  if (density === 'bulking') return 'bulking';
  const amount = jarVerdict(figure.settled_mLL);
  if (amount === 'satisfactory') return 'ordinary';
  return amount === 'scant' ? 'thin' : amount;
}

/** Parts of a litre, and an index, as they are written. */
const whole = (n: number) => quantity('count', n, 1);

function judgeDrill(draws: Draws, seed: number, figure: JarFigure, right: JarJudgement): Made {
  const wrong = draws.some(JUDGEMENTS.filter((one) => one !== right)).slice(0, OPTIONS - 1);
  const offered = JUDGEMENTS.filter((one) => one === right || wrong.includes(one));
  const shown = say(`drill.jar.shown.${right}`, {
    line: whole(figure.settled_mLL),
    index: whole(indexOf(figure)),
    colour: say(`word.${figure.colour}`),
    minutes: quantity('duration_min', figure.minutes),
  });
  const next = say(`drill.jar.next.${right}`);
  const option = (id: JarJudgement): Option => ({
    id,
    label: say(`drill.jar.${id}`),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.jar.needs.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'jar',
    seed,
    prompt: say('drill.jar.ask', { minutes: quantity('duration_min', figure.minutes) }),
    figure,
    ask: { kind: 'choice', right, options: offered.map(option) },
  };
}

/** Rounding on the way is no mistake (convention). */
const TOLERANCE_share = 0.03;

function indexDrill(seed: number, figure: JarFigure): Made {
  const { settled_mLL, solids_mgL } = figure;
  const value = indexOf(figure);
  const values = {
    line: whole(settled_mLL),
    solids: quantity('concentration_mgL', solids_mgL, 1),
    index: whole(value),
  };
  const why = (id: string): Message => say(`drill.jar.index.${id}`, values);
  const tolerance = Math.max(1, TOLERANCE_share * value);
  const slips = [
    { value: value / 10, why: why('percent') },
    { value: (1000 * solids_mgL) / settled_mLL, why: why('upside-down') },
    { value: solids_mgL / settled_mLL, why: why('upside-down') },
    { value: (settled_mLL * solids_mgL) / 1000, why: why('product') },
  ];
  const ask: NumberAsked = {
    kind: 'number',
    unit: say('drill.unit.mLg'),
    value,
    decimals: 0,
    tolerance,
    right: say('drill.two', { a: why('right'), b: say(`drill.jar.index.next.${indexVerdict(value)}`) }),
    slips: toldApart(slips, { value, tolerance, decimals: 0 }),
    other: why('other'),
    worked: [why('worked')],
  };
  return { skill: 'jar', seed, prompt: say('drill.jar.ask-index'), figure, ask };
}
