import type { SkyScene } from '../scene/types.ts';

/** How much of the dark a moon takes away: by its height, the share of it that is lit, and the clouds before it. */
export function moonlight({ moon, cloud }: SkyScene): number {
  return (0.35 * Math.max(0, moon.up) * (1 - cloud) * (1 - Math.cos(2 * Math.PI * moon.age))) / 2;
}
