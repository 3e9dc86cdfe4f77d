/** How a drop of the spray flies: thrown by the pressure, held by the air it moves through, carried by the wind. */

const GRAVITY = 9.81;
/** Middling drop of a spray head, m: irrigation handbooks have 1 to 3 mm at such pressures (from memory). */
const DROP_m = 0.002;
/** Drag of a sphere of that size and speed (standard drag curve, from memory), and the density of air over water's. */
const DRAG = 0.5;
const AIR_OVER_WATER = 1.2 / 998;
/** Air slows a drop by so much of its speed squared, 1/m. */
export const AIR_DRAG = (3 * DRAG * AIR_OVER_WATER) / (4 * DROP_m);
/** Sine of the angle at which a low head throws, 15 degrees (convention). */
const LOW = 0.2588;
/** Of a track, from point to point, s; and the most points of one: four seconds. */
export const STEP_s = 0.01;
const MOST = 400;

export type Track = Float32Array;
/** Room for one flight: across and above the ground, m, by turns. */
export const newTrack = (): Track => new Float32Array(2 * MOST);

export interface Launch {
  readonly speed_ms: number;
  /** Height of the head, m. */
  readonly from_m: number;
  /** Share of the level speed that goes along the plate, -1 to the left to 1 to the right. */
  readonly across: number;
  /** Along the plate likewise, m/s. */
  readonly wind_ms: number;
  /** Sine of the angle over the lawn, and drag, 1/m, where they are others. */
  readonly rise?: number;
  readonly drag?: number;
}

/** How fast water leaves a nozzle, m/s (Torricelli; 1 kPa is 1 J/kg of water). */
export function speedAt(pressure_kPa: number): number {
  return Math.sqrt(2 * Math.max(0, pressure_kPa));
}

/** Lays the flight of a drop into `track` until it lands, in steps of time by the midpoint rule; how many points it has. */
export function fly(track: Track, launch: Launch): number {
  const { speed_ms, from_m, across, wind_ms, rise = LOW, drag = AIR_DRAG } = launch;
  const level = speed_ms * Math.sqrt(1 - rise * rise);
  // `u` is along the plate, `v` up, `w` towards one: seen from the air, which moves with the wind.
  let u = level * across - wind_ms;
  let v = speed_ms * rise;
  let w = level * Math.sqrt(1 - across * across);
  let x = 0;
  let y = from_m;
  track[0] = x;
  track[1] = y;
  for (let i = 1; i < MOST; i++) {
    const half = (drag * Math.sqrt(u * u + v * v + w * w) * STEP_s) / 2;
    const [um, vm, wm] = [u - half * u, v - half * v - (GRAVITY * STEP_s) / 2, w - half * w];
    const whole = drag * Math.sqrt(um * um + vm * vm + wm * wm) * STEP_s;
    u -= whole * um;
    v -= whole * vm + GRAVITY * STEP_s;
    w -= whole * wm;
    const [dx, dy] = [(um + wind_ms) * STEP_s, vm * STEP_s];
    const landed = y + dy <= 0;
    // The last step ends on the ground.
    const part = landed ? y / -dy : 1;
    x += dx * part;
    y = landed ? 0 : y + dy;
    track[2 * i] = x;
    track[2 * i + 1] = y;
    if (landed) return i + 1;
  }
  return MOST;
}

/** How far a drop lands from its head, m. */
export function reachOf(track: Track, points: number): number {
  return track[2 * points - 2] ?? 0;
}
