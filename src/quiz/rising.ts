/** Put in order what happens as the water of a pump tank rises and nothing pumps. */
import { say } from '../service/message.ts';
import { floatHeights_m, floatsOf, type UnitSpec } from '../unit/spec.ts';
import { Draws } from './draws.ts';
import type { Maker } from './drill.ts';
import { ordering } from './sequence.ts';
import { unitRows } from './sheet.ts';

/** What each float does as it makes depends on the panel; what comes after the floats does not. */
function stagesOf({ panel, plant }: UnitSpec): readonly string[] {
  const over = (elevation_m: number) => elevation_m - plant.pump.floor_m;
  const stages: (readonly [id: string, height_m: number])[] = [
    ...floatsOf(panel).map(
      (float) =>
        [
          float === 'overrideFloat' ? `${float}-${panel.dosing.kind}` : float,
          floatHeights_m(panel, float).makes_m,
        ] as const,
    ),
    ['inlet', over(plant.pump.inlet_m)],
    ['clean-out', over(plant.cleanOut_m)],
    ['fixture', over(plant.fixtureRim_m)],
  ];
  return stages.sort(([, a], [, b]) => a - b).map(([id]) => id);
}

export const risingDrill: Maker = (seed, spec) => ({
  skill: 'rising',
  seed,
  prompt: say('drill.rising.ask'),
  figure: { kind: 'sheet', rows: unitRows(spec) },
  ask: ordering(new Draws(seed, 'rising'), 'rising', stagesOf(spec)),
});
