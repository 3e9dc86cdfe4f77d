/** Faults of the field: of the buried line to it, its openings and zones, and its ground. */
import type { FaultEntry } from './entry.ts';

const COMMON = {
  family: 'field',
  place: 'spray-field',
  severity: 1,
  hiddenBy: [],
  proof: ['dosing', 'spray'],
  urgency: 'before-dosing',
} as const satisfies Partial<FaultEntry>;

export const FIELD_FAULTS: readonly FaultEntry[] = [
  {
    // Broken through: the bore of a 1 in pipe, schedule 40.
    ...COMMON,
    id: 'discharge-broken',
    effect: { plant: { lineBreak_m: 0.0266 } },
    shownBy: ['walk-field'],
    mendedBy: ['mend-discharge-line'],
    hiddenBy: ['replace-pump'],
    commonness: 3,
  },
  {
    // One nozzle of three (severity = the share of all openings that is clogged).
    ...COMMON,
    id: 'nozzle-clogged',
    severity: 0.33,
    effect: { plant: { openingsLeft: 0 } },
    shownBy: ['inspect-openings', 'look-at-field'],
    mendedBy: ['clean-openings'],
    urgency: 'next-visit',
    commonness: 5,
  },
  {
    // Mown off its riser: the bore of a 1/2 in pipe, schedule 40.
    ...COMMON,
    id: 'head-broken',
    needs: { discharge: 'spray' },
    effect: { plant: { fieldBreak_m: 0.0158 } },
    shownBy: ['walk-field', 'look-at-field'],
    mendedBy: ['renew-head'],
    commonness: 5,
  },
  {
    // Cut by a spade: the bore of drip tubing, 14 mm (common practice, no source).
    ...COMMON,
    id: 'lateral-broken',
    needs: { discharge: 'drip' },
    effect: { plant: { fieldBreak_m: 0.014 } },
    shownBy: ['walk-field'],
    mendedBy: ['mend-lateral'],
    commonness: 4,
  },
  {
    // One zone of two gets nothing, the other all.
    ...COMMON,
    id: 'zone-valve-stuck',
    needs: { discharge: 'drip' },
    effect: { plant: { zonesOpen: 0.5 } },
    shownBy: ['check-zones'],
    mendedBy: ['renew-zone-valve'],
    commonness: 3,
  },
  {
    // After days of rain, or more water than the ground was laid out for (convention).
    ...COMMON,
    id: 'soil-saturated',
    ramp_h: 24,
    effect: { plant: { soilTakes: 0.2 } },
    shownBy: ['walk-field'],
    mendedBy: ['rest-field'],
    proof: [],
    commonness: 4,
  },
];
