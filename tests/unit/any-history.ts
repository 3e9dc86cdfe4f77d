/** Random histories for fast-check. */
import * as fc from 'fast-check';
import { floatsOf, type UnitSpec } from '../../src/unit/index.ts';
import { type PanelName, SPECS } from '../control/panels.ts';
import { type Befalls, type Does, faultNames, type Hand, type History, handEvents, UNITS } from './histories.ts';

const HOUR = 3600;

/** A history with what is asked of its replays. */
export interface Life {
  readonly history: History;
  /** Instants at which a display asks for the time. */
  readonly slices: readonly number[];
  /** When a snapshot is taken of it. */
  readonly cut_s: number;
}

const seconds = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((ms) => ms / 1000);

const share = fc.nat({ max: 1_000_003 }).map((n) => n / 1_000_003);

const anyFault = (spec: UnitSpec, end_s: number): fc.Arbitrary<Befalls> =>
  fc.record({
    fault: fc.constantFrom(...faultNames(spec).map((f) => f.key)),
    onset_s: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 5, arbitrary: seconds(0.001, end_s * 0.8) }),
    severity: fc.oneof(
      fc.constant(1),
      fc.integer({ min: 1, max: 99 }).map((p) => p / 100),
    ),
    ramp_s: fc.oneof(fc.constant(0), seconds(1, 24 * HOUR)),
    present: fc.oneof(
      { weight: 2, arbitrary: fc.constant('always' as const) },
      {
        weight: 1,
        arbitrary: fc.record({ on_h: fc.integer({ min: 1, max: 12 }), off_h: fc.integer({ min: 1, max: 12 }) }),
      },
    ),
  });

/** From one thing done to the next: at once, after a delay that the panel too keeps, or any time later. */
const gap = fc.oneof(
  { weight: 2, arbitrary: fc.constantFrom(0, 0.001, 1, 5, 20, 60, 70, 300, 540, 600, 1800, HOUR) },
  { weight: 2, arbitrary: seconds(0.001, 600) },
  { weight: 3, arbitrary: seconds(60, 20 * HOUR) },
);

const anyDeed = (spec: UnitSpec): fc.Arbitrary<Does> =>
  fc.oneof(
    { weight: 7, arbitrary: fc.constantFrom(...handEvents(spec)).map((event): Does => ({ kind: 'send', event })) },
    {
      weight: 2,
      arbitrary: fc.constantFrom(...floatsOf(spec.panel)).map((float): Does => ({ kind: 'release', float })),
    },
    {
      weight: 1,
      arbitrary: fc.integer({ min: -12, max: 12 }).map((h): Does => ({ kind: 'setClock', ahead_s: h * HOUR })),
    },
    { weight: 1, arbitrary: fc.nat({ max: 1 }).map((nth): Does => ({ kind: 'mend', nth })) },
  );

const lifeOf = (unit: PanelName, end_s: number): fc.Arbitrary<Life> => {
  const spec = SPECS[unit];
  return fc
    .record({
      household: fc.constantFrom('family-2', 'family-3', 'family-4', 'family-5'),
      seed: fc.nat({ max: 1_000_000_000 }),
      temperature_C: fc.integer({ min: 4, max: 32 }),
      faults: fc.uniqueArray(anyFault(spec, end_s), { maxLength: 2, selector: ({ fault }) => fault }),
      deeds: fc.array(fc.tuple(gap, anyDeed(spec)), { maxLength: 16 }),
      slices: fc.array(share, { maxLength: 12 }),
      cut: share,
    })
    .map(({ deeds, slices, cut, ...lived }): Life => {
      let ms = 0;
      const hands = deeds.map(([gap_s, does]): Hand => {
        ms += Math.round(gap_s * 1000);
        return { at_s: ms / 1000, does };
      });
      const history = { unit, end_s, ...lived, hands: hands.filter((h) => h.at_s <= end_s) };
      return { history, slices: slices.map((part) => part * end_s).sort((a, b) => a - b), cut_s: cut * end_s };
    });
};

/** Any unit, through six hours to four days. */
export const anyLife: fc.Arbitrary<Life> = fc
  .tuple(fc.constantFrom(...UNITS), fc.integer({ min: 6, max: 96 }))
  .chain(([unit, hours]) => lifeOf(unit, hours * HOUR));
