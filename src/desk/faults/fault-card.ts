import { placeWords } from '../../calls/places.ts';
import { shippedLibrary } from '../../calls/shipped.ts';
import { BREAKERS, FLOATS, LAMPS } from '../../control/index.ts';
import type { FaultEntry, FaultFamily, ProofId, Urgency } from '../../faults/entry.ts';
import { FAULTS, faultFits, PLACED_FAULTS, type PlacedFault } from '../../faults/index.ts';
import { ACTION_BY_ID, type Message, say } from '../../service/index.ts';
import type { UnitSpec } from '../../unit/index.ts';

/** What the catalogue says of a fault, as a page can show it: messages, and no call. */
export interface FaultCard {
  readonly id: string;
  readonly family: FaultFamily;
  readonly name: Message;
  readonly where: Message;
  readonly about: Message;
  /** The parts it can sit on, where it is a fault of several. */
  readonly parts: readonly Message[];
  readonly comes: readonly ('spells' | 'grows' | 'late')[];
  readonly checks: readonly Message[];
  readonly hides: readonly Message[];
  readonly mends: readonly Message[];
  readonly proof: readonly ProofId[];
  readonly urgency: Urgency;
  readonly cautions: readonly Message[];
}

/** Every fault of the catalogue that a shipped unit can have. */
export function faultCards(): readonly FaultCard[] {
  const specs = [...shippedLibrary().units.values()];
  return FAULTS.flatMap((entry) => {
    const placed = [...PLACED_FAULTS.values()].filter(({ id }) => id === entry.id);
    const spec = specs.find((one) => placed.some((fault) => faultFits(fault, one)));
    return spec === undefined ? [] : [cardOf(entry, placed, spec)];
  });
}

function cardOf(entry: FaultEntry, placed: readonly PlacedFault[], spec: UnitSpec): FaultCard {
  const { id, family, place, parts = [], spells, ramp_h, shows_d, proof, urgency } = entry;
  const [first] = placed;
  const any = anyOf(parts);
  const named = (ids: readonly string[] = []) =>
    unlike(ids.map((action) => inGeneral(ACTION_BY_ID.get(action)?.label ?? say(`act.${action}`), any)));
  const { name: where, about } = placeWords(place, spec);
  return {
    id,
    family,
    name: any === undefined ? say(`fault.${id}`) : say(`fault.${id}`, { part: say(`find.any.${any}`) }),
    where,
    about,
    parts: parts.map((part) => say(`part.${part}`)),
    comes: [
      ...(spells ? (['spells'] as const) : []),
      ...(ramp_h === undefined ? [] : (['grows'] as const)),
      ...(shows_d === undefined ? [] : (['late'] as const)),
    ],
    checks: named(first?.shownBy),
    hides: named(first?.hiddenBy),
    mends: named(first?.mendedBy),
    proof,
    urgency,
    cautions: cautionsOf(entry, first, spec),
  };
}

/** What bites where the fault sits, and wherever it is looked for or mended. */
function cautionsOf({ place }: FaultEntry, fault: PlacedFault | undefined, spec: UnitSpec): readonly Message[] {
  const actions = [...(fault?.shownBy ?? []), ...(fault?.mendedBy ?? [])].flatMap((id) => ACTION_BY_ID.get(id) ?? []);
  return unlike([
    ...placeWords(place, spec).cautions,
    ...actions.flatMap((action) => [
      ...(action.lockOut === undefined ? [] : [say('caution.live-parts')]),
      ...(action.place === place ? [] : placeWords(action.place, spec).cautions),
      ...(action.caution === undefined ? [] : [action.caution]),
    ]),
  ]);
}

type Any = 'float' | 'breaker' | 'lamp' | 'selector' | 'switch';

/** What the parts have in common, in a word. */
function anyOf(parts: readonly string[]): Any | undefined {
  const [part] = parts;
  const among = (list: readonly string[]) => part !== undefined && list.includes(part);
  if (among(FLOATS)) return 'float';
  if (among(BREAKERS)) return 'breaker';
  if (among(LAMPS)) return 'lamp';
  if (part === 'hand' || part === 'off') return 'selector';
  return part === undefined ? undefined : 'switch';
}

const NAMED_BY: Readonly<Record<string, string>> = { float: 'float', circuit: 'circuit', lamp: 'lamp' };

/** A label that names one part of several, as it goes for each of them. */
function inGeneral(label: Message, any: Any | undefined): Message {
  if (any === undefined || label.values === undefined) return label;
  const values = Object.entries(label.values).map(([gap, value]) => [
    gap,
    NAMED_BY[gap] === undefined ? value : say(`find.any.${NAMED_BY[gap]}`),
  ]);
  return { ...label, values: Object.fromEntries(values) };
}

function unlike(messages: readonly Message[]): readonly Message[] {
  return [...new Map(messages.map((one) => [JSON.stringify(one), one])).values()];
}
