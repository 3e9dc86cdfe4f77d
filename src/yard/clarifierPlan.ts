/** Where things sit in the close-up of the clarifier. Heights are true, widths are not; units of a plate. */
import type { GeometryScene } from '../scene/types.ts';
import { box } from './pen.ts';
import type { Vault } from './vault.ts';

/** What rises and falls is drawn so many times as fast as it goes. */
export const FASTER = 1000;

export interface ClarifierPlan extends Vault {
  readonly inletY: number;
  readonly outletY: number;
  readonly diffuserY: number;
  readonly dropLines: readonly number[];
  readonly hopper: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    /** Where the straight walls end, and the slot. */
    readonly straight: number;
    readonly tip: number;
    readonly slot: readonly [number, number];
  };
  /** Middle of the outlet tee. */
  readonly teeX: number;
  readonly rulerX: number;
  /** Elevation of the slot, m from grade. */
  readonly slot_m: number;
  y(elevation_m: number): number;
  /** The hopper's walls at a height of the sheet. */
  walls(y: number): readonly [number, number];
  /** Plan area at a height of the sheet, m2. */
  area_m2(y: number): number;
}

export const PIPE_WIDE = 30;

export function planClarifier({ aeration }: GeometryScene): ClarifierPlan {
  const grade = 40;
  // The whole depth with its floor slab fits the sheet, however deep the tank.
  const perMetre = 430 / -aeration.floor_m;
  const y = (m: number) => grade - m * perMetre;
  const { straight_m, hopper_m, area_m2, slot_m2 } = aeration.clarifier;
  const inside = box(70, y(aeration.ceiling_m), 760, y(aeration.floor_m) - y(aeration.ceiling_m));
  const outletY = y(aeration.outlet_m);
  const straight = outletY + straight_m * perMetre;
  const tip = straight + hopper_m * perMetre;
  const [left, right] = [374, 764];
  const middle = (left + right) / 2;
  const slotHalf = 27;
  /** How far up the hopper's slope: 0 at the slot, 1 where the straight walls begin. */
  const up = (at: number) => Math.min(1, Math.max(0, (tip - at) / (tip - straight)));
  return {
    perMetre,
    grade,
    inside,
    neck: box(452, 14, 214, inside.y - 14),
    inletY: y(aeration.inlet_m),
    outletY,
    diffuserY: y(aeration.diffuser_m),
    dropLines: [122, 212, 302],
    hopper: { left, right, top: inside.y, straight, tip, slot: [middle - slotHalf, middle + slotHalf] },
    teeX: right - 52,
    rulerX: 788,
    slot_m: aeration.outlet_m - straight_m - hopper_m,
    y,
    walls(at) {
      const half = slotHalf + ((right - left) / 2 - slotHalf) * up(at);
      return [middle - half, middle + half];
    },
    area_m2(at) {
      const side = Math.sqrt(slot_m2);
      return (side + (Math.sqrt(area_m2) - side) * up(at)) ** 2;
    },
  };
}

/** How fast water rises through an area, m/h. */
export function rise_mh(flow_Ls: number, area_m2: number): number {
  return (flow_Ls * 3.6) / area_m2;
}
