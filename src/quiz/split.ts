/** Two causes that look alike: which check tells them apart? Both properties are lived, and every check is made on both. */
import { alikeInItself } from '../diagnosis/reading.ts';
import { type CheckShown, type Signature, signaturesOf } from '../diagnosis/signatures.ts';
import { faultOn, type PlacedFault } from '../faults/index.ts';
import { ACTION_BY_ID } from '../service/catalogue.ts';
import { type Message, say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { Draws, untilFair } from './draws.ts';
import type { Made, Maker, Option } from './drill.ts';
import { nameOf } from './faultNames.ts';
import { kept } from './kept.ts';
import { ordinaryDays } from './ordinary.ts';

/** Causes of one complaint: no air, little air, water that is not pumped (common practice, no source). */
const COMPLAINTS: readonly (readonly string[])[] = [
  ['line-split', 'line-off-fitting', 'diaphragm-torn', 'compressor-stopped'],
  ['line-pinched', 'line-water-frozen', 'intake-clogged', 'drop-line-broken'],
  [
    'winding-open',
    'relay-open',
    'terminal-loose',
    'pump-seized',
    'capacitor-weak',
    'check-valve-stuck-shut',
    'air-locked',
    'timer-dead',
  ],
];
const WRONG = { least: 2, most: 3 } as const;

/** What every check shows of a fault on a unit. */
const signature = kept<Signature>((spec, fault) => {
  const [made] = signaturesOf(ordinaryDays(spec), [fault], ({ severity }) => [severity]);
  if (!made) throw new Error(`no signature of ${fault.key}`);
  return made;
});

export const splitDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'split');
  return untilFair(() => attempt(draws, seed, spec));
};

function attempt(draws: Draws, seed: number, spec: UnitSpec): Made | undefined {
  const causes = draws.one(COMPLAINTS).flatMap((id) => faultOn(spec, id) ?? []);
  const [a, b] = draws.some(causes, 2);
  if (!a || !b) return undefined;
  const pairs = signature(spec, a).checks.flatMap((one) => {
    const other = signature(spec, b).checks.find(({ check }) => check === one.check);
    return other && onSite(one.check) ? [{ one, other }] : [];
  });
  const shows = ({ shownBy }: PlacedFault, { one }: Pair) => shownBy.includes(one.check);
  // A check that the catalogue has for one of them, and not for the other, and that reads so.
  const [right] = draws.some(
    pairs.filter((pair) => shows(a, pair) !== shows(b, pair) && !alikeInItself(pair.one.faulty, pair.other.faulty)),
  );
  // What finds something wrong with either, and the same.
  const wrong = draws.some(
    pairs.filter((pair) => shows(a, pair) === shows(b, pair) && misleads(pair)),
    WRONG.most,
  );
  if (!right || wrong.length < WRONG.least) return undefined;
  const offered = draws.some([right, ...wrong]).map(({ one }) => one.check);
  return asked(seed, [a, b], right.one.check, offered);
}

/** One check, made on either property. */
interface Pair {
  readonly one: CheckShown;
  readonly other: CheckShown;
}

function misleads({ one, other }: Pair): boolean {
  return (one.tells || other.tells) && alikeInItself(one.faulty, other.faulty);
}

/** One act of a person on the property, on one part. */
function onSite(check: string): boolean {
  const def = ACTION_BY_ID.get(check);
  return def !== undefined && def.place !== 'phone' && !check.includes(':');
}

function labelOf(id: string): Message {
  const def = ACTION_BY_ID.get(id);
  if (!def) throw new Error(`no action ${id}`);
  return def.label;
}

function asked(
  seed: number,
  pair: readonly [PlacedFault, PlacedFault],
  right: string,
  offered: readonly string[],
): Made {
  const [shows, other] = pair[0].shownBy.includes(right) ? pair : [pair[1], pair[0]];
  const shown = say('drill.split.shown', { a: nameOf(shows), b: nameOf(other), right: labelOf(right) });
  const next = say('drill.split.next');
  const option = (id: string): Option => ({
    id,
    label: labelOf(id),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say('drill.split.alike', { check: labelOf(id) }), b: shown, c: next }),
  });
  return {
    skill: 'split',
    seed,
    prompt: say('drill.split.ask'),
    figure: {
      kind: 'sheet',
      rows: [
        say('drill.split.cause', { n: 1, cause: nameOf(pair[0]) }),
        say('drill.split.cause', { n: 2, cause: nameOf(pair[1]) }),
        say('drill.split.only'),
      ],
    },
    ask: { kind: 'choice', right, options: offered.map(option) },
  };
}
