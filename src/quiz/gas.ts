/** Read a gas meter that was let down into an opening: does a reading alone make the air hazardous, and which? */
import { say } from '../service/message.ts';
import { Draws } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { amount } from './numbers/terms.ts';

/** 29 CFR 1910.146: oxygen under 19.5 or over 23.5 %, flammable gas over 10 % of its lower limit; OSHA's ceiling for hydrogen sulfide. */
const GAS_LIMITS = { leastOxygen_pct: 19.5, mostOxygen_pct: 23.5, flammable_pct: 10, sulfide_ppm: 20 } as const;

const FOUND = ['thin', 'rich', 'flammable', 'toxic', 'none'] as const;
type Found = (typeof FOUND)[number];

interface Air {
  readonly oxygen_pct: number;
  readonly flammable_pct: number;
  readonly sulfide_ppm: number;
}

function drawn(draws: Draws, found: Found): Air {
  const tenth = (low: number, high: number) => draws.whole(low * 10, high * 10) / 10;
  return {
    oxygen_pct: found === 'thin' ? tenth(15, 19.3) : found === 'rich' ? tenth(23.7, 25) : tenth(19.7, 20.9),
    flammable_pct: found === 'flammable' ? draws.whole(12, 40) : draws.whole(0, 8),
    sulfide_ppm: found === 'toxic' ? draws.whole(24, 90) : draws.whole(0, 8),
  };
}

/** What the limits say of it. */
function judged({ oxygen_pct, flammable_pct, sulfide_ppm }: Air): Found {
  if (oxygen_pct < GAS_LIMITS.leastOxygen_pct) return 'thin';
  if (oxygen_pct > GAS_LIMITS.mostOxygen_pct) return 'rich';
  if (flammable_pct > GAS_LIMITS.flammable_pct) return 'flammable';
  return sulfide_ppm > GAS_LIMITS.sulfide_ppm ? 'toxic' : 'none';
}

export const gasDrill: Maker = (seed) => {
  const draws = new Draws(seed, 'gas');
  const air = drawn(draws, draws.one(FOUND));
  const right = judged(air);
  const values = {
    oxygen: amount(air.oxygen_pct, 1, 'pct').said,
    flammable: amount(air.flammable_pct, 0, 'pct').said,
    sulfide: amount(air.sulfide_ppm, 0, 'ppm').said,
  };
  const shown = say(`drill.gas.shown.${right}`, values);
  const next = say(`drill.gas.next.${right}`);
  const option = (id: Found): Option => ({
    id,
    label: say(`drill.gas.${id}`),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.gas.needs.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'gas',
    seed,
    prompt: say('drill.gas.ask'),
    figure: {
      kind: 'sheet',
      rows: [
        say('drill.gas.oxygen', values),
        say('drill.gas.explosive', values),
        say('drill.gas.sulfide', values),
        say('drill.gas.caution'),
      ],
    },
    ask: { kind: 'choice', right, options: FOUND.map(option) },
  };
};
