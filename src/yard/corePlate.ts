/** Close-up of the trash tank's core: the clear tube as it stands in the tank, and held up with what it brought out. */
import type { GeometryScene, Scene } from '../scene/types.ts';
import { coredOf, planCore } from './corePlan.ts';
import { paintTank, paintTankPencil } from './coreTank.ts';
import { paintTube, paintTubePencil } from './coreTube.ts';
import { coreTold, coreWords } from './coreWords.ts';
import { paintGround } from './ground.ts';
import { type Box, box, draw, type Pen } from './pen.ts';
import type { Plate } from './plate.ts';
import { GREEN } from './season.ts';
import { paintDaySky } from './sky.ts';

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
    ground: paintEarth,
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

function paintEarth(pen: Pen, area: Box, geometry: GeometryScene): void {
  const { grade, perMetre } = planCore(geometry);
  pen.save();
  pen.translate(0, grade);
  const shifted = box(area.x, area.y - grade, area.width, area.height);
  paintDaySky(pen, shifted);
  const { x, width } = area;
  draw(pen, `M${x} -18C${x + width * 0.3} -52 ${x + width * 0.6} -10 ${x + width} -38V4H${x}Z`, { fill: '#b7c795' });
  paintGround(pen, shifted, perMetre, GREEN);
  pen.restore();
}
