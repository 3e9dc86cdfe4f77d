/** What came of it, in a few sentences: each made of what the twins were found to differ in. */
import { type Message, quantity, say } from '../service/message.ts';
import { lasting } from './lasting.ts';
import type { Life } from './life.ts';
import { QUANTITIES, QUANTITY_IDS, type QuantityId } from './quantities.ts';
import type { ScenarioId } from './scenarios.ts';
import type { Spell, Times } from './spells.ts';

const DAY_s = 86_400;
/** More sentences than this nobody reads (convention). */
const MOST = 7;
/** More water than the twin's by this share is worth a word (convention). */
const MUCH_WATER = 0.05;
/** Of what is worth a word: less than this does not show in figures (convention). */
const LITTLE = 0.1;
/** The two are alike again when no later day tells them apart, so many at least (convention). */
const ALIKE_d = 2;

export function effectsOf(
  scenario: ScenarioId,
  touched: Life,
  twin: Life,
  spells: readonly Spell[],
  times: Times,
): readonly Message[] {
  const strays = QUANTITY_IDS.map((id) => strayOf(id, touched, twin, times)).sort((a, b) => b.size - a.size);
  const told = [
    ...spells.map((spell) => signEffect(scenario, spell, times)),
    ...waterEffect(touched, twin),
    ...strays.filter(({ size }) => size >= 1).map((stray) => strayEffect(scenario, stray, times)),
  ];
  return told.length === 0 ? nothingEffect(strays[0]) : told.slice(0, MOST);
}

/** Nothing worth a word: what changed most is told all the same where it shows in figures. */
function nothingEffect(most: Stray | undefined): readonly Message[] {
  const none = say('home.effect.none');
  return most === undefined || most.size < LITTLE ? [none] : [none, say('home.effect.most', valuesOf(most))];
}

function signEffect(scenario: ScenarioId, { sign, from_s, to_s, cameAndWent }: Spell, times: Times): Message {
  const began = lasting(from_s - times.begins_s);
  const { over_s } = times;
  const how = cameAndWent ? say('home.on-and-off') : say('home.all-along');
  const values = { sign: say(`home.sign.${sign}`), began, how };
  if (to_s === undefined) return say('home.effect.stays', values);
  if (over_s === undefined || to_s <= over_s || from_s > over_s) {
    return say('home.effect.lasted', { ...values, d: lasting(to_s - from_s) });
  }
  return say('home.effect.gone', { ...values, d: lasting(to_s - over_s), over: say(`home.over.${scenario}`) });
}

function waterEffect(touched: Life, twin: Life): readonly Message[] {
  const [all, without] = [touched.taken_m3.at(-1) ?? 0, twin.taken_m3.at(-1) ?? 0];
  const more = all - without;
  if (Math.abs(more) < MUCH_WATER * without) return [];
  return [
    say(more > 0 ? 'home.effect.water-more' : 'home.effect.water-less', { v: quantity('volume_m3', Math.abs(more)) }),
  ];
}

export interface Stray {
  readonly id: QuantityId;
  /** When the day's mean was farthest from the twin's, and both means. */
  readonly at_s: number;
  readonly touched: number;
  readonly twin: number;
  /** How far, in what is worth a word. */
  readonly size: number;
  /** Since when it was the twin's again for good. */
  readonly back_s?: number;
}

/** Where a quantity went astray, by the means of days: single hours are the household's own. */
export function strayOf(id: QuantityId, touched: Life, twin: Life, times: Times): Stray {
  const { least, share } = QUANTITIES[id];
  const [a, b] = [dailyMeans(id, touched, times), dailyMeans(id, twin, times)];
  const sizes = a.map(({ mean }, i) => {
    const other = b[i]?.mean ?? mean;
    return Math.abs(mean - other) / Math.max(least, share * Math.abs(other));
  });
  const size = Math.max(0, ...sizes);
  const worst = sizes.indexOf(size);
  const [at, other] = [a[worst], b[worst]];
  const last = sizes.findLastIndex((one) => one >= 1);
  if (!at || !other) throw new Error('no day was lived through');
  const back = a.length - last > ALIKE_d ? a[last + 1] : undefined;
  return { id, at_s: at.to_s, touched: at.mean, twin: other.mean, size, ...(back ? { back_s: back.from_s } : {}) };
}

/** Means of the days since it began; a last part of a day counts as one. */
function dailyMeans(id: QuantityId, life: Life, { begins_s, end_s }: Times) {
  const days: { readonly from_s: number; readonly to_s: number; readonly mean: number }[] = [];
  for (let from_s = begins_s; from_s < end_s; from_s += DAY_s) {
    const to_s = Math.min(end_s, from_s + DAY_s);
    const here = life.values[id].filter((_, i) => from_s < (life.at_s[i] ?? 0) && (life.at_s[i] ?? 0) <= to_s);
    if (here.length > 0) days.push({ from_s, to_s, mean: here.reduce((sum, v) => sum + v, 0) / here.length });
  }
  return days;
}

function strayEffect(scenario: ScenarioId, stray: Stray, { begins_s, over_s }: Times): Message {
  const values = { ...valuesOf(stray), t: lasting(stray.at_s - begins_s) };
  if (stray.back_s === undefined) return say('home.effect.astray', values);
  if (over_s === undefined || stray.back_s <= over_s) {
    return say('home.effect.astray-back', { ...values, d: lasting(stray.back_s - begins_s) });
  }
  const over = say(`home.over.${scenario}`);
  return say('home.effect.astray-over', { ...values, d: lasting(stray.back_s - over_s), over });
}

function valuesOf({ id, touched, twin }: Stray) {
  const { measure } = QUANTITIES[id];
  return { q: say(`home.quantity.${id}`), a: quantity(measure, touched), b: quantity(measure, twin) };
}
