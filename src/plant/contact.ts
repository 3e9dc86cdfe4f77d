/**
 * The way of the water past disinfection: the riser as tanks in a row, then the pump tank and what lies on its floor.
 * Nothing here acts back on the biology, so it follows each stretch in implicit steps, which are exact in mass and stable
 * however fast the water runs, forwards or (while the tanks back up) backwards. Days, m3, g.
 */
import { ASM } from './asm1.ts';
import { type ChlorineForms, chlorineForms, chlorineLoss, FECAL_KILL, MONO_RATIO, outlive } from './chlorine.ts';
import { add, at } from './entry.ts';
import { COMPONENT, COMPONENTS, HELD } from './liquor.ts';
import { clamp, exp } from './num.ts';
import { SEDIMENT_SIZE, settledShare, settleOut, stir } from './sediment.ts';
import type { Stretch } from './stretch.ts';

/** The riser as mixed tanks in a row (convention), and the pump tank after them. */
export const RISER_CELLS = 3;
const CELLS = RISER_CELLS + 1;
const PUMP = RISER_CELLS;

const FLOOR = CELLS * COMPONENTS;
const LEDGER = FLOOR + SEDIMENT_SIZE;
/** Sprayed by component; chlorine fed and used; nitrogen that chlorine turned to gas; g since the start. */
export const SPENT = {
  sprayed: LEDGER,
  fed: LEDGER + COMPONENTS,
  used: LEDGER + COMPONENTS + 1,
  burnt: LEDGER + COMPONENTS + 2,
} as const;
export const CONTACT_SIZE = LEDGER + COMPONENTS + 3;

/** Where a cell's row begins; the riser's outlet is its last cell. */
export const CELL = { riserOutlet: (RISER_CELLS - 1) * COMPONENTS, pump: PUMP * COMPONENTS } as const;
export const CELL_ROWS: readonly number[] = Array.from({ length: CELLS }, (_, j) => j * COMPONENTS);

/** Time in which more chlorine than ammonia holds burns the ammonia, d (convention). */
const BURNS_d = 6 / 1440;
const MINUTES = 1440;
/** Longest step, d, and how many times a step may fill a cell anew. */
const LONGEST_d = 10 / 1440;
const FILLINGS = 3;
const MOST_STEPS = 40;
const LEAST_m3 = 1e-6;

export interface ContactRun {
  /** What the clarifier passes on in the stretch, g by component, chlorine fed included. */
  readonly arriving: Float64Array;
  readonly dieOff: number;
  readonly pumpFloor_m2: number;
  readonly pumped_min: number;
}

export class Contact {
  /** What went back into the clarifier in the last stretch, g by component. */
  readonly returned = new Float64Array(COMPONENTS);
  private readonly faces = new Float64Array(CELLS + 1);
  private readonly volume = new Float64Array(CELLS);
  private readonly upper = new Float64Array(CELLS);
  private readonly pivot = new Float64Array(CELLS);
  private readonly c = new Float64Array(CELLS);
  /** Steps taken since the start: the honest cost. */
  steps = 0;
  private readonly forms: ChlorineForms = { combined: 0, free: 0, ammonia: 0, burnt: 0 };

  /** Goes through a stretch; `s` is the contact's part of the state. */
  advance(s: Float64Array, stretch: Stretch, run: ContactRun): void {
    this.returned.fill(0);
    this.setFaces(stretch);
    const floor = s.subarray(FLOOR, FLOOR + SEDIMENT_SIZE);
    if (run.pumped_min > 0) stir(s, CELL.pump, run.pumped_min, floor);
    const steps = this.stepsOf(stretch);
    const dt = stretch.days / steps;
    this.steps += steps;
    for (let n = 1; n <= steps; n++) {
      this.setVolumes(stretch, n * dt);
      this.carry(s, dt, run.arriving, 1 / steps);
      for (let j = 0; j < CELLS; j++) this.react(s, j, dt, run.dieOff);
      settleOut(s, CELL.pump, settledShare(at(this.volume, PUMP) / run.pumpFloor_m2, dt), floor);
    }
  }

  /** Flow through each face: into the riser, from cell to cell, into the pump tank, out of it. */
  private setFaces(stretch: Stretch): void {
    const { clarifierOut, riserOut, discharge } = stretch;
    for (let j = 0; j <= RISER_CELLS; j++) {
      this.faces[j] = clarifierOut + ((riserOut - clarifierOut) * j) / RISER_CELLS;
    }
    this.faces[CELLS] = discharge;
  }

  private setVolumes(stretch: Stretch, day: number): void {
    const { clarifierOut, riserOut, discharge, volumes } = stretch;
    const riser = at(volumes, HELD.riser) + day * (clarifierOut - riserOut);
    for (let j = 0; j < RISER_CELLS; j++) this.volume[j] = Math.max(LEAST_m3, riser / RISER_CELLS);
    this.volume[PUMP] = Math.max(LEAST_m3, at(volumes, HELD.pump) + day * (riserOut - discharge));
  }

  private stepsOf(stretch: Stretch): number {
    const fastest = Math.max(Math.abs(stretch.clarifierOut), Math.abs(stretch.riserOut));
    const cell = Math.max(LEAST_m3, at(stretch.volumes, HELD.riser) / RISER_CELLS);
    const byFlow = (fastest * stretch.days) / (FILLINGS * cell);
    return clamp(Math.ceil(Math.max(byFlow, stretch.days / LONGEST_d)), 1, MOST_STEPS);
  }

  /** One implicit step of the flow through the row of cells (a tridiagonal system, the same for every component). */
  private carry(s: Float64Array, dt: number, arriving: Float64Array, part: number): void {
    const { faces, volume, upper, pivot, c, returned } = this;
    for (let j = 0; j < CELLS; j++) {
      // What runs back out of the line to the field is like what stands in the tank.
      const onwards = j === PUMP ? at(faces, CELLS) : Math.max(0, at(faces, j + 1));
      const outwards = onwards + Math.max(0, -at(faces, j));
      upper[j] = -dt * Math.max(0, -at(faces, j + 1));
      const lower = -dt * Math.max(0, at(faces, j));
      pivot[j] = at(volume, j) + dt * outwards - (j > 0 ? (lower * at(upper, j - 1)) / at(pivot, j - 1) : 0);
    }
    const back = dt * Math.max(0, -at(faces, 0));
    const sprayed = dt * at(faces, CELLS);
    for (let i = 0; i < COMPONENTS; i++) {
      let before = part * at(arriving, i);
      for (let j = 0; j < CELLS; j++) {
        const carried = j === 0 ? before : dt * Math.max(0, at(faces, j)) * before;
        before = (at(s, j * COMPONENTS + i) + carried) / at(pivot, j);
        c[j] = before;
      }
      for (let j = CELLS - 2; j >= 0; j--) c[j] = at(c, j) - (at(upper, j) * at(c, j + 1)) / at(pivot, j);
      for (let j = 0; j < CELLS; j++) s[j * COMPONENTS + i] = at(volume, j) * at(c, j);
      add(s, SPENT.sprayed + i, sprayed * at(c, PUMP));
      add(returned, i, back * at(c, 0));
    }
  }

  private react(s: Float64Array, j: number, dt: number, dieOff: number): void {
    const o = j * COMPONENTS;
    const volume = at(this.volume, j);
    const kept = 1 / (1 + dieOff * dt);
    s[o + COMPONENT.coliform] = at(s, o + COMPONENT.coliform) * kept;
    s[o + COMPONENT.exposure] = at(s, o + COMPONENT.exposure) * kept;
    if (at(s, o + COMPONENT.chlorine) + at(s, o + COMPONENT.combined) <= 0) return;
    this.formChloramine(s, o, volume, dt);
    this.lose(s, o, volume, dt);
    this.kill(s, o, volume, dt);
  }

  /** Free chlorine and ammonia combine at once; where there is more of it than that takes, it burns the ammonia. */
  private formChloramine(s: Float64Array, o: number, volume: number, dt: number): void {
    const { forms } = this;
    const total = at(s, o + COMPONENT.chlorine) + at(s, o + COMPONENT.combined);
    const nitrogen = Math.max(0, at(s, o + ASM.ammonia));
    const held = Math.min(total, MONO_RATIO * nitrogen);
    let combined = Math.max(held, Math.min(total, at(s, o + COMPONENT.combined)));
    let free = total - combined;
    if (free > 0 && nitrogen > 0) {
      chlorineForms(total / volume, nitrogen / volume, forms);
      const far = 1 - exp(-dt / BURNS_d);
      const burnt = far * volume * forms.burnt;
      combined += far * (volume * forms.combined - combined);
      free += far * (volume * forms.free - free);
      add(s, o + ASM.ammonia, -burnt);
      add(s, SPENT.burnt, burnt);
      add(s, SPENT.used, total - combined - free);
    }
    s[o + COMPONENT.chlorine] = free;
    s[o + COMPONENT.combined] = combined;
  }

  private lose(s: Float64Array, o: number, volume: number, dt: number): void {
    const reducing =
      Math.max(0, at(s, o + ASM.substrate) + at(s, o + ASM.slowSubstrate)) +
      Math.max(0, at(s, o + ASM.heterotrophs) + at(s, o + ASM.autotrophs));
    const free = at(s, o + COMPONENT.chlorine);
    const combined = at(s, o + COMPONENT.combined);
    const freeLeft = free / (1 + dt * chlorineLoss(reducing / volume, false));
    const combinedLeft = combined / (1 + dt * chlorineLoss(reducing / volume, true));
    s[o + COMPONENT.chlorine] = freeLeft;
    s[o + COMPONENT.combined] = combinedLeft;
    add(s, SPENT.used, free - freeLeft + combined - combinedLeft);
  }

  /** Collins and Selleck along the way: the living have met so much on the mean, and meet more. */
  private kill(s: Float64Array, o: number, volume: number, dt: number): void {
    const living = at(s, o + COMPONENT.coliform);
    if (living <= 0) return;
    const residual = (at(s, o + COMPONENT.chlorine) + at(s, o + COMPONENT.combined)) / volume;
    const met = at(s, o + COMPONENT.exposure) / living;
    const meets = met + residual * dt * MINUTES;
    const left = living * outlive(FECAL_KILL, met, meets);
    s[o + COMPONENT.coliform] = left;
    s[o + COMPONENT.exposure] = left * meets;
  }
}

/** The sediment's part of the contact's state. */
export function floorOf(s: Float64Array): Float64Array {
  return s.subarray(FLOOR, FLOOR + SEDIMENT_SIZE);
}
