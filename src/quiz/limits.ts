/** Read a sheet of results: which limit is broken, or none? */
import { say } from '../service/message.ts';
import { Draws } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { amount } from './numbers/terms.ts';

/**
 * Class I of the standard for home units: 30-day averages of CBOD5 and suspended solids, pH of each sample; and the state
 * rule for water sprayed on the ground: chlorine left in the pump tank, or few enough coliform.
 */
const LIMITS = { bod_mgL: 25, solids_mgL: 30, pH: [6, 9], residual_mgL: 0.1, coliform: 200 } as const;

const FOUND = ['bod', 'solids', 'pH', 'germs', 'none'] as const;
type Found = (typeof FOUND)[number];

interface Results {
  readonly bod_mgL: number;
  readonly solids_mgL: number;
  readonly pH: number;
  readonly residual_mgL: number;
  readonly coliform: number;
}

function drawn(draws: Draws, found: Found): Results {
  // Either of the two is enough: now and then only the one or only the other is met.
  const [chlorinated, few] =
    found === 'germs'
      ? [false, false]
      : draws.one([
          [true, true],
          [true, false],
          [false, true],
        ] as const);
  return {
    bod_mgL: found === 'bod' ? draws.whole(27, 48) : draws.whole(6, 24),
    solids_mgL: found === 'solids' ? draws.whole(32, 60) : draws.whole(5, 29),
    pH: (found === 'pH' ? draws.one([draws.whole(48, 58), draws.whole(92, 100)]) : draws.whole(62, 88)) / 10,
    residual_mgL: chlorinated ? draws.whole(2, 12) / 10 : draws.whole(0, 8) / 100,
    coliform: few ? draws.whole(2, 18) * 10 : draws.whole(23, 95) * 10,
  };
}

function judged({ bod_mgL, solids_mgL, pH, residual_mgL, coliform }: Results): Found {
  if (bod_mgL > LIMITS.bod_mgL) return 'bod';
  if (solids_mgL > LIMITS.solids_mgL) return 'solids';
  if (pH < LIMITS.pH[0] || pH > LIMITS.pH[1]) return 'pH';
  return residual_mgL < LIMITS.residual_mgL && coliform > LIMITS.coliform ? 'germs' : 'none';
}

export const limitsDrill: Maker = (seed) => {
  const draws = new Draws(seed, 'limits');
  const results = drawn(draws, draws.one(FOUND));
  const right = judged(results);
  const values = {
    bod: amount(results.bod_mgL, 0, 'mgL').said,
    solids: amount(results.solids_mgL, 0, 'mgL').said,
    pH: amount(results.pH, 1).said,
    residual: amount(results.residual_mgL, 2, 'mgL').said,
    coliform: amount(results.coliform, 0, 'per100mL').said,
  };
  const shown = say(`drill.limits.shown.${right}`, values);
  const next = say(`drill.limits.next.${right}`);
  const option = (id: Found): Option => ({
    id,
    label: say(`drill.limits.${id}`),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.limits.needs.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'limits',
    seed,
    prompt: say('drill.limits.ask'),
    figure: {
      kind: 'sheet',
      rows: (['bod', 'solids', 'pH', 'residual', 'coliform'] as const).map((row) =>
        say(`drill.limits.row.${row}`, values),
      ),
    },
    ask: { kind: 'choice', right, options: FOUND.map(option) },
  };
};
