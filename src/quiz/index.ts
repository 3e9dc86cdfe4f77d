/** Drills on one skill each. */
import type { UnitSpec } from '../unit/spec.ts';
import { airLineDrill } from './airLine.ts';
import type { Drill, Skill } from './drill.ts';
import { floatsDrill } from './floats.ts';
import { jarDrill } from './jar.ts';
import { meterDrill } from './meter.ts';
import { panelDrill } from './panel.ts';

const MAKERS: Readonly<Record<Skill, (seed: number, spec: UnitSpec) => Drill>> = {
  floats: floatsDrill,
  'air-line': airLineDrill,
  jar: jarDrill,
  panel: panelDrill,
  meter: meterDrill,
};

/** The drill of a skill with these numbers, on a unit. */
export function drill(skill: Skill, seed: number, spec: UnitSpec): Drill {
  return MAKERS[skill](seed, spec);
}
