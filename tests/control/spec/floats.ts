/** Floats on the ladder of the water, each with what may ail it: caught, its wire broken or bridged, leads swapped. */
import { and, not, or, stateIn } from 'xstate';
import type { ControlEventName, FloatName } from '../../../src/control/index.ts';

export type FloatWord = 'redundant-off' | 'stop' | 'start/stop' | 'dose' | 'override' | 'alarm';

const CONTROL: Readonly<Record<FloatWord, FloatName>> = {
  'redundant-off': 'redundantOffFloat',
  stop: 'stopFloat',
  'start/stop': 'startStopFloat',
  dose: 'doseFloat',
  override: 'overrideFloat',
  alarm: 'highWaterFloat',
};

export type FloatEvent =
  | `water ${'makes' | 'leaves'} the ${FloatWord} float`
  | `${FloatWord} float ${'caught up' | 'caught down' | 'freed' | 'lifted by hand' | 'let go'}`
  | `${FloatWord} float wire ${'breaks' | 'bridged' | 'mended'}`
  | `${FloatWord} and ${FloatWord} leads swapped`
  | 'leads righted';

/** Floats of a tank, lowest first. */
export type Ladder = readonly FloatWord[];

const at = (region: string, ...states: string[]) => or(states.map((state) => stateIn({ [region]: state })));
const rung = (float: FloatWord | undefined): string => (float ? `at the ${float} float` : 'below all floats');
const swap = (low: FloatWord, high: FloatWord): string => `${low} and ${high} swapped`;

/** Pairs whose leads may be exchanged: neighbours. */
function pairs(ladder: Ladder): [FloatWord, FloatWord][] {
  return ladder.slice(1).map((high, i) => [ladder[i] as FloatWord, high]);
}

/** The float itself is up: caught there, or free to follow water that has come so high. */
function up(ladder: Ladder, float: FloatWord) {
  const so = ladder.slice(ladder.indexOf(float)).map(rung);
  const caught = `${float} float`;
  return or([
    at(caught, 'caught up', 'in a hand'),
    and([not(at(caught, 'caught down')), at('pump-tank water', ...so)]),
  ]);
}

/** A float's own contact, at the ends of its cable. */
function contact(ladder: Ladder, float: FloatWord) {
  const own = `${float} float`;
  return or([at(own, 'wire bridged'), and([not(at(own, 'wire broken')), up(ladder, float)])]);
}

/** Which float is wired to a float's terminals: its own where the leads are right. */
export function wiredTo(ladder: Ladder, float: FloatWord, other: FloatWord) {
  const mine = pairs(ladder).filter((pair) => pair.includes(float));
  if (other === float) return and(mine.map(([low, high]) => not(at('float leads', swap(low, high)))));
  return or(mine.filter((pair) => pair.includes(other)).map(([low, high]) => at('float leads', swap(low, high))));
}

/** A float's contact is closed, as the panel has it at its terminals. */
export function made(ladder: Ladder, float: FloatWord) {
  return or(ladder.map((other) => and([wiredTo(ladder, float, other), contact(ladder, other)])));
}

/** The tank, a region for each float that may be ailing, and one for the leads. */
export function floatRegions(ladder: Ladder, ailing: Ladder) {
  const rungs = [undefined, ...ladder].map((float, i) => [
    rung(float),
    {
      on: {
        ...(ladder[i] ? { [`water makes the ${ladder[i]} float`]: rung(ladder[i]) } : {}),
        ...(float ? { [`water leaves the ${float} float`]: rung(ladder[i - 2]) } : {}),
      },
    },
  ]);
  return {
    'pump-tank water': { initial: rung(undefined), states: Object.fromEntries(rungs) },
    ...Object.fromEntries(ailing.map((float) => [`${float} float`, oneFloat(float)])),
    'float leads': {
      initial: 'right',
      states: {
        right: {
          on: Object.fromEntries(
            pairs(ladder).map(([low, high]) => [`${low} and ${high} leads swapped`, swap(low, high)]),
          ),
        },
        ...Object.fromEntries(
          pairs(ladder).map(([low, high]) => [swap(low, high), { on: { 'leads righted': 'right' } }]),
        ),
      },
    },
  };
}

function oneFloat(float: FloatWord) {
  const freed = { on: { [`${float} float freed`]: 'sound' } };
  const mended = { on: { [`${float} float wire mended`]: 'sound' } };
  return {
    initial: 'sound',
    states: {
      sound: {
        on: {
          [`${float} float caught up`]: 'caught up',
          [`${float} float caught down`]: 'caught down',
          [`${float} float lifted by hand`]: 'in a hand',
          [`${float} float wire breaks`]: 'wire broken',
          [`${float} float wire bridged`]: 'wire bridged',
        },
      },
      'caught up': freed,
      'caught down': freed,
      'in a hand': { on: { [`${float} float let go`]: 'sound' } },
      'wire broken': mended,
      'wire bridged': mended,
    },
  };
}

/** What the events of a ladder are at the panel. */
export function floatDoes(ladder: Ladder, ailing: Ladder): Record<string, readonly ControlEventName[]> {
  const does: Record<string, readonly ControlEventName[]> = { 'leads righted': ['leads.righted'] };
  for (const float of ladder) {
    does[`water makes the ${float} float`] = [`${CONTROL[float]}.rises`];
    does[`water leaves the ${float} float`] = [`${CONTROL[float]}.falls`];
  }
  for (const float of ailing) {
    does[`${float} float caught up`] = [`${CONTROL[float]}.heldUp`];
    does[`${float} float caught down`] = [`${CONTROL[float]}.heldDown`];
    does[`${float} float freed`] = [`${CONTROL[float]}.freed`];
    does[`${float} float lifted by hand`] = [`${CONTROL[float]}.lifted`];
    does[`${float} float let go`] = [`${CONTROL[float]}.released`];
    does[`${float} float wire breaks`] = [`${CONTROL[float]}.wireOpens`];
    does[`${float} float wire bridged`] = [`${CONTROL[float]}.wireBridged`];
    does[`${float} float wire mended`] = [`${CONTROL[float]}.wireMended`];
  }
  for (const [low, high] of pairs(ladder)) {
    const name = CONTROL[low];
    if (name !== 'highWaterFloat') does[`${low} and ${high} leads swapped`] = [`${name}.leadsSwapped`];
  }
  return does;
}

/** Every fault of a ladder with its events. */
export function floatFaults(ladder: Ladder, ailing: Ladder): Record<string, readonly string[]> {
  const faults = ailing.flatMap((float): [string, string[]][] => [
    [`${float} float stuck up`, [`${float} float caught up`, `${float} float freed`]],
    [`${float} float stuck down`, [`${float} float caught down`, `${float} float freed`]],
    [`${float} float lifted`, [`${float} float lifted by hand`, `${float} float let go`]],
    [`${float} float wire open`, [`${float} float wire breaks`, `${float} float wire mended`]],
    [`${float} float wire bridged`, [`${float} float wire bridged`, `${float} float wire mended`]],
  ]);
  const swaps = pairs(ladder).map(([low, high]): [string, string[]] => [
    `${low} and ${high} leads swapped`,
    [`${low} and ${high} leads swapped`, 'leads righted'],
  ]);
  return Object.fromEntries([...faults, ...swaps]);
}
