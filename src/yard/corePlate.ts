/** Close-up of the trash tank's core: the clear tube as it stands in the tank, and held up with what it brought out. */
import type { Scene } from '../scene/types.ts';
import { coredOf, planCore } from './corePlan.ts';
import { paintTank, paintTankPencil } from './coreTank.ts';
import { paintTube, paintTubePencil } from './coreTube.ts';
import { coreTold, coreWords } from './coreWords.ts';
import type { Plate } from './plate.ts';
import { paintOutdoors } from './vault.ts';

export function makePlate(): Plate {
  return {
    focus: [716, 250],
    ink: inkOfCores,
    seen: ({ chambers, ...scene }) => {
      const { tank, cores } = coredOf({ chambers, ...scene });
      if (tank === null) return { cores };
      const { ink: _ink, cores: _none, ...seen } = tank;
      return { tank: seen, cores };
    },
    ground: (pen, area, geometry) => paintOutdoors(pen, planCore(geometry), area, [18, 52, 10, 38]),
    pencil(pen, geometry) {
      const plan = planCore(geometry);
      paintTankPencil(pen, plan);
      paintTubePencil(pen, plan);
    },
    paint(pen, scene) {
      const plan = planCore(scene.geometry);
      const { tank } = coredOf(scene);
      if (tank === null) {
        paintTankPencil(pen, plan);
        paintTubePencil(pen, plan);
        return;
      }
      paintTank(pen, plan, tank);
      paintTube(pen, plan, tank);
    },
    words: coreWords,
    told: coreTold,
    movers: [],
  };
}

/** The tank's; where only the pump tank was cored, that one's. */
function inkOfCores(scene: Scene): Scene['house']['ink'] {
  const { tank, cores } = coredOf(scene);
  return scene.chambers[tank === null && cores.length > 0 ? 'pump-tank' : 'trash-tank'].ink;
}
