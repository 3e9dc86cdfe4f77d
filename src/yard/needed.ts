/** What of the drawing only some scenes need: fetched with the first of them. */
import type { Scene } from '../scene/types.ts';
import { isPlain } from './season.ts';

export type Needed = 'air' | 'waters' | 'bubbles' | 'spray' | 'rare';

export function neededFor({ sky, flows, field, chambers, ultraviolet }: Scene): readonly Needed[] {
  const { relief_Ls: _gush, ...known } = flows;
  const { ink, bubbles_Lmin } = chambers.aeration;
  const needs: Readonly<Record<Needed, boolean>> = {
    air: !isPlain(sky),
    waters: Object.values(known).some((flow) => flow !== null),
    bubbles: ink.kind !== 'pencil' && (bubbles_Lmin ?? 0) > 0,
    spray: field.kind === 'spray' && field.ink.kind !== 'pencil' && (field.headPressure_kPa ?? 0) > 0,
    rare: field.kind === 'drip' || ultraviolet.present,
  };
  return (Object.keys(needs) as Needed[]).filter((part) => needs[part]);
}
