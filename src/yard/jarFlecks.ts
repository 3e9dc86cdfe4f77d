/** Flecks that still sink in the water over the sludge, as many as its solids; fine specks besides, that hardly do. */
import { Container, Sprite } from 'pixi.js';
import type { JarScene } from '../scene/types.ts';
import { noise } from './hash.ts';
import { inkShare } from './ink.ts';
import { clearBox } from './jarPlan.ts';
import type { Box } from './pen.ts';
import type { PlateMover } from './plate.ts';
import type { Print } from './sheet.ts';
import type { Sparks } from './sparks.ts';

/** Units of the plate a second: drawn faster than flocs fall, or nobody would see it. */
const SINKS = 9;
const STAYS = 1.2;
/** Solids, mg/L, that one fleck stands for, and how many flecks are enough. */
const PER_FLECK_mgL = 3;
const MOST = 60;
const SPECKS = 26;
const FLOC = 0x6b4a28;
/** Radius of a bead as it is painted, and the least water that shows one, units. */
const BEAD = 11;
const LEAST = 12;

interface Fleck {
  readonly x: number;
  readonly from: number;
  readonly size: number;
  readonly speed: number;
}

function manyOf(n: number, seed: number, size: number, speed: number): readonly Fleck[] {
  const r = noise(seed);
  return Array.from({ length: n }, () => ({
    x: r(),
    from: r(),
    size: size * (0.7 + 0.7 * r()),
    speed: speed * (0.7 + 0.6 * r()),
  }));
}

const FLOCS = manyOf(MOST, 131, 1.9, SINKS);
const FINE = manyOf(SPECKS, 97, 1, STAYS);

export class JarFlecks implements PlateMover {
  readonly root = new Container();
  readonly #dots: readonly Sprite[];
  #water: Box | null = null;
  #shown: readonly Fleck[] = [];

  constructor({ bead }: Sparks) {
    this.#dots = [...FLOCS, ...FINE].map(() => {
      const dot = new Sprite(bead);
      dot.anchor.set(0.5);
      dot.tint = FLOC;
      return dot;
    });
    this.root.addChild(...this.#dots);
  }

  print({ scene }: Print): void {
    const { jar } = scene;
    this.root.alpha = inkShare(jar.ink);
    this.#water = this.root.alpha > 0 ? clearBox(jar) : null;
    this.#shown = this.#water === null || this.#water.height < LEAST ? [] : flecksOf(jar);
  }

  step(t: number, _dt: number): boolean {
    const water = this.#water;
    for (const [i, dot] of this.#dots.entries()) {
      const fleck = this.#shown[i];
      dot.visible = fleck !== undefined;
      if (water === null || fleck === undefined) continue;
      const { x, from, size, speed } = fleck;
      const down = (from * water.height + t * speed) % water.height;
      const sway = 2 * Math.sin(t * 0.6 + from * 40);
      dot.position.set(water.x + 7 + x * (water.width - 14) + sway, water.y + down);
      dot.scale.set(size / BEAD);
      dot.alpha = 0.8 * Math.min(1, down / 14, (water.height - down) / 6);
    }
    return this.#shown.length > 0;
  }

  stale(): void {}
}

function flecksOf({ above, specks }: JarScene): readonly Fleck[] {
  if (above === null) return [];
  return [...FLOCS.slice(0, Math.round(above.solids_mgL / PER_FLECK_mgL)), ...(specks ? FINE : [])];
}
