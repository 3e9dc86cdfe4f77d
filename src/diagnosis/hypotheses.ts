/**
 * What may be wrong with a property: every fault of the catalogue that it can have, at some severities and some ages, the
 * listed pairs, and nothing at all. How common each is, is a judgement of ours, no source: `commonness` in the catalogue.
 */
import { faultsOf, type PlacedFault } from '../faults/index.ts';
import { pairsOf } from '../faults/pairs.ts';
import type { UnitFault, UnitSpec } from '../unit/index.ts';

/** A listed pair, against a fault of ordinary commonness: two at once are rare (convention). */
const PAIR_WEIGHT = 0.15;
/** Of two that add up, each may be smaller than where it comes alone. */
const UNDER = 0.7;

export interface Hypothesis {
  /** The cause it is a form of: a fault's key, the keys of a pair, or `sound`. */
  readonly cause: string;
  readonly faults: readonly UnitFault[];
  readonly prior: number;
}

export const SOUND_CAUSE = 'sound';
/** Explicit room for what no hypothesis covers, as a share of the prior, and how well it explains any one reading. */
export const SOMETHING_ELSE = { cause: 'something-else', prior: 0.02, likelihood: 0.08 } as const;

/** A property that is sound, against a fault of ordinary commonness. */
const SOUND_WEIGHT = 3;

/**
 * Hours before the report at which a fault that comes at once may have come: what stops the air shows within minutes,
 * what stops the pump lets the water rise for days.
 */
const AGES_h = { air: [0.4, 6, 36], other: [0.7, 12, 34, 58, 84, 110] } as const;
/** Shares of the time that one takes to grow, or to show. */
const GROWN = [0.6, 1.2] as const;
const SHOWN = [1, 1.4] as const;
/** A one-off, against what it was, for each trip in the thirty days before: lightning seldom strikes twice (convention). */
const AGAIN = 0.2;
const SEVERITIES = [0.4, 0.7, 1] as const;

/** Whether the patch has a size, so that it can be larger or smaller. */
function isGraded(fault: PlacedFault): boolean {
  const { plant, floats, tethers, airSwitch_kPa, clock_h } = fault.effect;
  return [plant, floats, tethers, airSwitch_kPa, clock_h].some((entry) => entry !== undefined);
}

/** Severities at which a fault is tried, its usual one among them; one without a size has but that. */
export function severitiesOf(fault: PlacedFault): readonly number[] {
  return isGraded(fault) ? [...new Set([...SEVERITIES, fault.severity])] : [fault.severity];
}

/** When a history began and when the phone rang, s. */
interface Span {
  readonly from_s: number;
  readonly report_s: number;
}

/** Ages, s, that leave the onset within the history. */
function agesOf(fault: PlacedFault, { from_s, report_s }: Span): readonly number[] {
  const lived_s = report_s - from_s;
  const seconds = hoursOf(fault)
    .map((h) => Math.round(h * 3600))
    .filter((age) => age < lived_s);
  return seconds.length > 0 ? seconds : [Math.floor(lived_s * 0.98)];
}

function hoursOf({ ramp_h, shows_d, family }: PlacedFault): readonly number[] {
  if (shows_d) return SHOWN.map((share) => share * 24 * shows_d);
  if (ramp_h) return GROWN.map((share) => share * ramp_h);
  return family === 'air' ? AGES_h.air : AGES_h.other;
}

/** Every form of one fault at a property with such a history. */
function formsOf(fault: PlacedFault, span: Span, weight: number): Hypothesis[] {
  const ages = agesOf(fault, span);
  const standing = severitiesOf(fault).flatMap((severity) =>
    (severity === fault.severity ? ages : everyOther(ages)).flatMap((age) =>
      presences(fault, formOf(fault, span.report_s - age, severity)),
    ),
  );
  const forms = [...standing, ...passedForms(fault, span)];
  return forms.map((form) => ({ cause: fault.key, prior: weight / forms.length, faults: [form] }));
}

/** Of many ages every other one: at an unusual severity a coarser grid does, and every form costs its time. */
function everyOther(ages: readonly number[]): readonly number[] {
  return ages.length < 3 ? ages : ages.filter((_, i) => i % 2 === 1);
}

/** Hours since when one that can be over by itself is over. */
const OVER_SINCE_h = [1, 30] as const;

function passedForms(fault: PlacedFault, { from_s, report_s }: Span): UnitFault[] {
  return (fault.passes_h ?? [])
    .flatMap((for_h) =>
      OVER_SINCE_h.map((since) => ({ for_h, onset_s: Math.round(report_s - (for_h + since) * 3600) })),
    )
    .filter(({ onset_s }) => onset_s > from_s)
    .map(({ for_h, onset_s }) => ({ ...formOf(fault, onset_s, fault.severity), present: { for_h } }));
}

/** A catalogue entry in a property: there to stay since an instant. */
export function formOf(fault: PlacedFault, onset_s: number, severity: number): UnitFault {
  return {
    id: fault.key,
    effect: fault.effect,
    onset_s,
    severity,
    ramp_s: (fault.ramp_h ?? 0) * 3600,
    present: 'always',
  };
}

/** One that comes and goes may also have come to stay. */
function presences(fault: PlacedFault, form: UnitFault): UnitFault[] {
  return fault.spells ? [form, { ...form, present: fault.spells }] : [form];
}

/** The forms of a pair: come together, each at its usual severity or well under it. */
function formsOfPair(placed: readonly PlacedFault[], span: Span): Hypothesis[] {
  const last = placed.at(-1);
  if (!last) return [];
  const combined = placed.reduce<readonly (readonly UnitFault[])[]>(
    (sets, fault) =>
      sets.flatMap((set) => pairSeverities(fault).map((severity) => [...set, formOf(fault, 0, severity)])),
    [[]],
  );
  const forms = agesOf(last, span).flatMap((age) =>
    combined.map((set) => set.map((form) => ({ ...form, onset_s: span.report_s - age }))),
  );
  return forms.map((faults) => ({
    cause: causeOf(placed.map((f) => f.key)),
    prior: PAIR_WEIGHT / forms.length,
    faults,
  }));
}

function pairSeverities(fault: PlacedFault): readonly number[] {
  return isGraded(fault) ? [fault.severity, UNDER * fault.severity] : [fault.severity];
}

/** How the cause of several faults at once is named: their keys in order, joined. */
export function causeOf(keys: readonly string[]): string {
  return keys.length === 0 ? SOUND_CAUSE : [...keys].sort().join(AND);
}

/** The faults of a cause, by key; none of a sound property and of something else. */
export function keysOf(cause: string): readonly string[] {
  return cause === SOUND_CAUSE || cause === SOMETHING_ELSE.cause ? [] : cause.split(AND);
}

const AND = ' + ';

/** All hypotheses of a property known from `from_s` on, their priors together 1 less the room for something else. */
export function hypothesesOf(spec: UnitSpec, report_s: number, earlierTrips = 0, from_s = 0): readonly Hypothesis[] {
  const span: Span = { from_s, report_s };
  const again = earlierTrips > 0 ? AGAIN : 1;
  const weightOf = (fault: PlacedFault) => fault.commonness * (fault.clearedWhen || fault.passes_h ? again : 1);
  const faults = faultsOf(spec).filter((fault) => fault.effect.uses === undefined);
  const parts = new Map<string, number>();
  for (const { id } of faults) parts.set(id, (parts.get(id) ?? 0) + 1);
  const all: Hypothesis[] = [
    { cause: SOUND_CAUSE, faults: [], prior: SOUND_WEIGHT },
    ...faults.flatMap((fault) => formsOf(fault, span, weightOf(fault) / (parts.get(fault.id) ?? 1))),
    ...pairsOf(spec).flatMap(({ placed }) => formsOfPair(placed, span)),
  ];
  const total = all.reduce((sum, h) => sum + h.prior, 0);
  return all.map((h) => ({ ...h, prior: (h.prior * (1 - SOMETHING_ELSE.prior)) / total }));
}
