/** Level and volume of the chambers. Volumes are measured from the floor, levels in metres from grade. */
import type { BasinSpec, ClarifierSpec, RiserSpec } from './spec.ts';

/** Water level, m from grade, of a volume, m3. Upright walls, then the access riser above the ceiling. */
export function levelOf(basin: BasinSpec, volume_m3: number): number {
  const full = basin.area_m2 * (basin.ceiling_m - basin.floor_m);
  return volume_m3 <= full
    ? basin.floor_m + volume_m3 / basin.area_m2
    : basin.ceiling_m + (volume_m3 - full) / basin.riserArea_m2;
}

/** Volume, m3, up to a level, m from grade. */
export function volumeAt(basin: BasinSpec, level_m: number): number {
  if (level_m <= basin.ceiling_m) return Math.max(0, level_m - basin.floor_m) * basin.area_m2;
  return (basin.ceiling_m - basin.floor_m) * basin.area_m2 + (level_m - basin.ceiling_m) * basin.riserArea_m2;
}

/** Water surface that a rising level must fill, m2. */
export function surfaceAt(basin: BasinSpec, level_m: number): number {
  return level_m <= basin.ceiling_m ? basin.area_m2 : basin.riserArea_m2;
}

/**
 * Part of the aeration tank's water that stands inside the clarifier, m3: straight walls over a hopper (a frustum
 * whose side grows evenly from the slot to the full surface). `outlet_m` is where its straight part is full.
 */
export function clarifierVolume(clarifier: ClarifierSpec, outlet_m: number, level_m: number): number {
  const foot = outlet_m - clarifier.straight_m - clarifier.hopper_m;
  const height = Math.min(Math.max(level_m - foot, 0), clarifier.hopper_m);
  const side = Math.sqrt(clarifier.slot_m2);
  const top = side + ((Math.sqrt(clarifier.area_m2) - side) * height) / clarifier.hopper_m;
  const hopper = (height / 3) * (side * side + side * top + top * top);
  return hopper + Math.max(0, level_m - foot - clarifier.hopper_m) * clarifier.area_m2;
}

/** Surface of the water inside the clarifier at a level, m2: the slope of `clarifierVolume`. */
export function clarifierSurface(clarifier: ClarifierSpec, outlet_m: number, level_m: number): number {
  const foot = outlet_m - clarifier.straight_m - clarifier.hopper_m;
  if (level_m <= foot) return 0;
  if (level_m >= foot + clarifier.hopper_m) return clarifier.area_m2;
  const side = Math.sqrt(clarifier.slot_m2);
  const top = side + ((Math.sqrt(clarifier.area_m2) - side) * (level_m - foot)) / clarifier.hopper_m;
  return top * top;
}

/**
 * Level of the pump tank, m from grade, for the water in it and, above its inlet, in the disinfection riser too.
 * The riser's own fill below the inlet is not part of the volume.
 */
export function pumpLevel(pump: BasinSpec, riser: RiserSpec, volume_m3: number): number {
  const toInlet = (pump.inlet_m - pump.floor_m) * pump.area_m2;
  if (volume_m3 <= toInlet) return pump.floor_m + volume_m3 / pump.area_m2;
  const both = pump.area_m2 + riser.area_m2;
  const toCeiling = toInlet + (pump.ceiling_m - pump.inlet_m) * both;
  if (volume_m3 <= toCeiling) return pump.inlet_m + (volume_m3 - toInlet) / both;
  return pump.ceiling_m + (volume_m3 - toCeiling) / (pump.riserArea_m2 + riser.area_m2);
}

/** Water surface that a rising level of the pump tank must fill, m2, the riser's included once it backs up. */
export function pumpSurface(pump: BasinSpec, riser: RiserSpec, level_m: number): number {
  return surfaceAt(pump, level_m) + (level_m > pump.inlet_m ? riser.area_m2 : 0);
}

/** Water in the disinfection riser, m3. */
export function riserVolume(pump: BasinSpec, riser: RiserSpec, level_m: number): number {
  return riser.area_m2 * (Math.max(level_m, pump.inlet_m) - riser.floor_m);
}
