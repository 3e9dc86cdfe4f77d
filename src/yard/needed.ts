/** What of the drawing only some scenes need: fetched with the first of them. */
import type { Scene } from '../scene/types.ts';
import { isPlain } from './season.ts';

export type Needed = 'air' | 'waters' | 'spray' | 'rare';

export function neededFor({ sky, flows, field, ultraviolet }: Scene): readonly Needed[] {
  const { relief_Ls: _gush, ...known } = flows;
  const needs: Readonly<Record<Needed, boolean>> = {
    air: !isPlain(sky),
    waters: Object.values(known).some((flow) => flow !== null),
    spray: field.kind === 'spray' && field.ink.kind !== 'pencil' && (field.headPressure_kPa ?? 0) > 0,
    rare: field.kind === 'drip' || ultraviolet.present,
  };
  return (Object.keys(needs) as Needed[]).filter((part) => needs[part]);
}
