/** The person on a call: where they stand, what is made safe, what they carry and what they have learnt. */
import type { BreakerName } from '../control/index.ts';
import type { Facts } from './facts.ts';
import type { Message } from './message.ts';

/** Where an action is done: the phone, then the parts of the picture, in the order the water takes and then the dry ones. */
export const PLACES = [
  'phone',
  'house',
  'clean-out',
  'trash-tank',
  'aeration',
  'clarifier',
  'disinfection',
  'pump-tank',
  'disc-filter',
  'spray-field',
  'panel',
  'compressor',
] as const;
export type Place = (typeof PLACES)[number];

export type LidId = 'trash' | 'aeration' | 'riser' | 'pump';

/**
 * What can be loaded on the truck beyond hand tools, gauges, gloves, tape, soap and alarm lamps, which always ride along
 * (common practice, no source).
 */
export const LOADS = [
  'tubing',
  'diaphragm-kit',
  'compressor',
  'float',
  'pump',
  'pump-parts',
  'field-parts',
  'panel-parts',
  'ultraviolet-lamp',
  'filter-discs',
  'chlorine',
] as const;
/** How many of them there is room for (convention): what to bring has to be judged from what was heard. */
export const TRUCK_HOLDS = 5;
export type LoadId = (typeof LOADS)[number];

export interface Note {
  readonly id: string;
  readonly at_s: number;
  readonly place: Place;
  /** The action that made it; an alarm heard by oneself has none. */
  readonly by?: string;
  /** The named check that reads the same thing, where a meter was put to two screws by hand: as good a piece of evidence. */
  readonly asGoodAs?: string;
  readonly what: Message;
  readonly reading: Message;
  readonly remark?: { readonly tone: 'plain' | 'good' | 'off'; readonly text: Message };
}

export interface Person {
  place: Place;
  onSite: boolean;
  /** Stands at the panel, or has somebody at it on the phone: sees the lamp. */
  seesLamp: boolean;
  madeSafe: boolean;
  fieldClear: boolean;
  readonly lids: Set<LidId>;
  /** Lids that the lawn has grown over, and that nobody has dug up yet. */
  readonly buried: Set<LidId>;
  readonly locks: Set<BreakerName>;
  readonly load: Set<LoadId>;
  housingOpen: boolean;
  filterOpen: boolean;
  facts: Facts;
  readonly notebook: Note[];
  /** How often each instrument was read: the index of its noise. */
  readonly uses: Map<string, number>;
}

export function newPerson(): Person {
  return {
    place: 'phone',
    onSite: false,
    seesLamp: false,
    madeSafe: false,
    fieldClear: false,
    lids: new Set(),
    buried: new Set(),
    locks: new Set(),
    load: new Set(),
    housingOpen: false,
    filterOpen: false,
    facts: {},
    notebook: [],
    uses: new Map(),
  };
}
