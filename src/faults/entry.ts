/**
 * What the catalogue says of a fault. All of it is data: the engine reads `effect`, the calls read how it is told,
 * mended and proved, `words` holds its texts under `fault.<id>`.
 */
import type { DischargeSpec, DisinfectionSpec } from '../plant/index.ts';
import type { FaultEffect } from '../unit/index.ts';

export type FaultFamily =
  | 'air'
  | 'power'
  | 'floats'
  | 'pump'
  | 'field'
  | 'solids'
  | 'disinfection'
  | 'house'
  | 'ground'
  | 'use'
  | 'kit';

/** Where in the works it sits: a part of the picture. */
export type FaultPlace =
  | 'panel'
  | 'compressor'
  | 'clean-out'
  | 'trash-tank'
  | 'aeration'
  | 'clarifier'
  | 'pump-tank'
  | 'disc-filter'
  | 'spray-field'
  | 'disinfection'
  | 'house';

/** How soon somebody must come, by what it does to treatment and to the ground. */
export type Urgency = 'now' | 'before-dosing' | 'next-visit';

/** What must be shown after the mend before the call may be closed. */
export type ProofId =
  | 'pressure'
  | 'watched'
  | 'air-alarm'
  | 'water-alarm'
  | 'floats'
  | 'dosing'
  | 'spray'
  | 'clock'
  | 'lamp'
  | 'disinfects'
  | 'stops';

export interface FaultEntry {
  readonly id: string;
  readonly family: FaultFamily;
  readonly place: FaultPlace;
  /** The parts it can sit on where it is a fault of several (a float, a breaker, a position). */
  readonly parts?: readonly string[];
  /** What a unit must have to have it; any unit where this is left out. */
  readonly needs?: {
    readonly disinfection?: DisinfectionSpec['kind'];
    readonly discharge?: DischargeSpec['kind'];
  };
  readonly severity: number;
  /** Hours over which it grows to that (at once where left out), and mean hours there and gone of one that comes and goes. */
  readonly ramp_h?: number;
  /** Days after which it shows, where a day is too soon. */
  readonly shows_d?: number;
  /** Hours it may have lasted where it can be over by itself when the phone rings. */
  readonly passes_h?: readonly number[];
  readonly spells?: { readonly on_h: number; readonly off_h: number };
  /** The patch; `{part}` in its control events and floats stands for the part. */
  readonly effect: Omit<FaultEffect, 'control' | 'floats'> & {
    readonly floats?: Readonly<Record<string, number>>;
    readonly control?: { readonly starts: readonly string[]; readonly ends: readonly string[] };
  };
  /** Checks whose reading shows the fault itself, not only its consequence. */
  readonly shownBy: readonly string[];
  /** Actions that mend it; any one of them will do. */
  readonly mendedBy: readonly string[];
  /** A one-off that leaves nothing broken is over when these regions, where the panel has them, are in these states. */
  readonly clearedWhen?: readonly { readonly region: string; readonly state: string }[];
  /** Control events that put right what such a one-off left wrong, for who takes it out without a hand on it. */
  readonly rightedBy?: readonly string[];
  /** Actions that only hide it. */
  readonly hiddenBy: readonly string[];
  readonly proof: readonly ProofId[];
  readonly urgency: Urgency;
  /** How common it is among calls, relative weight: our judgement, no source. */
  readonly commonness: number;
}

/** A fault on one part: `stuck-down:stopFloat`; without parts the id alone. */
export function faultKey(id: string, part?: string): string {
  return part === undefined ? id : `${id}:${part}`;
}
