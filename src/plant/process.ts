/**
 * What happens in the water on its way to disinfection: biology, settling, oxygen and poisons in every compartment, and
 * the sludge that stays in the trash tank. It is advanced in stretches of some minutes with the mean flows of each,
 * which the hydraulics have counted exactly, so that nothing is lost between the two. Days, m3, g.
 */

import { ASM, type Asm1Parameters, asm1Rates, asm1React, RATES, suspendedSolids } from './asm1.ts';
import { add, at } from './entry.ts';
import { FALLING, type Hopper, settleHopper, spreadWater } from './hopper.ts';
import { CARRIED, CHAMBERS, COMPARTMENT, COMPARTMENTS, COMPONENT, HELD, LAYERS } from './liquor.ts';
import { isPoisoned, poison, type Toll } from './poison.ts';
import { reactionRate } from './stiffness.ts';
import type { Stretch } from './stretch.ts';
import type { SettlerParameters } from './takacs.ts';

const MASSES = COMPARTMENTS * CARRIED;

/** Sludge and scum of the trash tank: degradable and inert COD, the nitrogen of the degradable, grease as COD; g. */
export const STORE = { degradable: MASSES, inert: MASSES + 1, nitrogen: MASSES + 2, scum: MASSES + 3 } as const;

/** What the equations feed back on; what follows only adds up and needs no error control. */
export const SOLVED = MASSES + 4;
/**
 * Since the start, g: passed on to disinfection and over the clean-out by component, oxygen from the air, nitrogen and
 * COD that left as gas, chlorine used.
 */
export const GONE = {
  onward: SOLVED,
  relieved: SOLVED + CARRIED,
  oxygenGained: SOLVED + 2 * CARRIED,
  nitrogenGas: SOLVED + 2 * CARRIED + 1,
  methane: SOLVED + 2 * CARRIED + 2,
  chlorineUsed: SOLVED + 2 * CARRIED + 3,
} as const;
export const PROCESS_SIZE = SOLVED + 2 * CARRIED + 4;

/** Index of a component's mass in a compartment. */
export function massOf(compartment: number, component: number): number {
  return compartment * CARRIED + component;
}

/** What moves with temperature and with the state of the sludge. */
export interface Kinetics {
  readonly biology: Asm1Parameters;
  readonly settling: SettlerParameters;
  readonly thickest_gm3: number;
  /** First-order turning of particulates into dissolved ones without oxygen, 1/d. */
  readonly anaerobic: number;
  /** Digestion of what lies in the trash tank, 1/d, and the share of it that goes back into the water. */
  readonly digestion: number;
  readonly returned: number;
  /** Die-off of coliform, 1/d. */
  readonly dieOff: number;
}

const TOP = COMPARTMENT.clarifier;
const BOTTOM = COMPARTMENT.clarifier + LAYERS - 1;
const LEAST_m3 = 1e-6;
/** Eigenvalues of a chain of mixed tanks, as a factor of the fastest one's rate, and the slope of a settling flux, as one of its velocity. */
const MIXING = 1.3;
const FALLING_SLOPE = 2.5;

export class Process {
  readonly hopper: Hopper;
  readonly stretch: Stretch;
  kinetics: Kinetics;
  private readonly c = new Float64Array(MASSES);
  private readonly held = new Float64Array(CHAMBERS);
  private readonly volume = new Float64Array(COMPARTMENTS);
  private readonly solids = new Float64Array(LAYERS);
  private readonly passing = new Float64Array(LAYERS);
  private readonly rates = new Float64Array(RATES);
  private readonly toll: Toll = { chlorine: 0, quaternary: 0, coliform: 0 };

  constructor(hopper: Hopper, stretch: Stretch, kinetics: Kinetics) {
    this.hopper = hopper;
    this.stretch = stretch;
    this.kinetics = kinetics;
  }

  /** Derivatives computed since the start: the honest cost. */
  derivatives = 0;

  /** dy/dt, 1/d, so many days into the stretch. */
  readonly derivative = (day: number, y: Float64Array, dy: Float64Array): void => {
    this.derivatives += 1;
    dy.fill(0);
    this.fillVolumes(day);
    this.fillConcentrations(y);
    this.bringIn(dy);
    this.carry(y, dy);
    this.settle(dy);
    for (let k = COMPARTMENT.trash; k <= BOTTOM; k++) this.react(dy, k);
    this.ferment(y, dy);
    this.breathe(dy);
  };

  /**
   * Bound of the spectral radius, 1/d, where the derivative was last computed: the fastest compartment's exchange, settling
   * and reactions (held against differences of the derivative in tests/unit/stabilised.test.ts).
   */
  readonly radius = (): number => {
    const { stretch, volume, solids, passing, c } = this;
    const { slot, exchange, trashOut, relieved, clarifierOut, transfer } = stretch;
    const p = this.kinetics.biology;
    const through = exchange + Math.abs(slot);
    const up = Math.abs(clarifierOut) + Math.abs(slot - clarifierOut);
    let fastest = 0;
    for (let k = 0; k < COMPARTMENTS; k++) {
      const held = Math.max(LEAST_m3, at(volume, k));
      const layer = k - TOP;
      let rate = reactionRate(c, k * CARRIED, p);
      if (layer >= 0) {
        const water = k === BOTTOM ? through + up : up;
        const falls = at(solids, layer) > 0 ? at(passing, layer) / at(solids, layer) : 0;
        rate += (MIXING * water + FALLING_SLOPE * falls) / held + stretch.lifted;
      } else if (layer === -1) rate += transfer + (MIXING * through) / held;
      else rate += (MIXING * (Math.abs(trashOut) + relieved)) / held;
      if (rate > fastest) fastest = rate;
    }
    return fastest;
  };

  private fillVolumes(day: number): void {
    const { held, stretch } = this;
    const v = stretch.volumes;
    held[HELD.trash] = at(v, HELD.trash) + day * (stretch.inflow - stretch.trashOut - stretch.relieved);
    held[HELD.aeration] = at(v, HELD.aeration) + day * (stretch.trashOut - stretch.slot);
    held[HELD.clarifier] = at(v, HELD.clarifier) + day * (stretch.slot - stretch.clarifierOut);
    spreadWater(this.hopper, held, this.volume);
  }

  private fillConcentrations(y: Float64Array): void {
    const { c, volume } = this;
    for (let k = 0; k < COMPARTMENTS; k++) {
      const per = 1 / Math.max(LEAST_m3, at(volume, k));
      const o = k * CARRIED;
      for (let i = o; i < o + CARRIED; i++) c[i] = at(y, i) * per;
    }
  }

  /** What settles at once lies in the trash tank; what floats lies on it. */
  private bringIn(dy: Float64Array): void {
    const { coming, captured, floats, grease } = this.stretch;
    const { iXB } = this.kinetics.biology;
    for (let i = 0; i < CARRIED; i++) add(dy, i, at(coming, i));
    for (let k = 0; k < FALLING.length; k++) {
      const i = FALLING[k] as number;
      const kept = captured * at(coming, i);
      add(dy, i, -kept);
      if (i === ASM.particulateNitrogen) add(dy, STORE.nitrogen, kept);
      else if (i === ASM.inertParticulate || i === ASM.decayProducts) add(dy, STORE.inert, kept);
      else if (i === ASM.slowSubstrate) {
        add(dy, STORE.scum, floats * kept);
        add(dy, STORE.degradable, (1 - floats) * kept);
      } else {
        add(dy, STORE.degradable, kept);
        add(dy, STORE.nitrogen, iXB * kept);
      }
    }
    // Of grease poured in, the same share stays on top; the rest is food for what follows.
    add(dy, STORE.scum, captured * grease);
    add(dy, ASM.slowSubstrate, (1 - captured) * grease);
  }

  /** Scum that no baffle holds goes on with the water, as food for what follows. */
  private scour(y: Float64Array, dy: Float64Array): void {
    const rate = this.stretch.scoured * at(y, STORE.scum);
    add(dy, STORE.scum, -rate);
    add(dy, massOf(COMPARTMENT.aeration, ASM.slowSubstrate), rate);
  }

  private carry(y: Float64Array, dy: Float64Array): void {
    const { stretch, hopper, c } = this;
    const { slot, exchange, clarifierOut, relieved, returning } = stretch;
    const { trash, aeration } = COMPARTMENT;
    this.mix(dy, trash, aeration, Math.max(0, stretch.trashOut), Math.max(0, -stretch.trashOut));
    if (stretch.scoured > 0) this.scour(y, dy);
    this.mix(dy, aeration, BOTTOM, exchange + Math.max(0, slot), exchange + Math.max(0, -slot));
    // What a layer does not keep as its part of a rising level goes on to the next one up.
    const rise = slot - clarifierOut;
    let up = slot;
    for (let i = LAYERS - 1; i > 0; i--) {
      up -= rise * at(hopper.share, i);
      this.mix(dy, TOP + i, TOP + i - 1, Math.max(0, up), Math.max(0, -up));
    }
    if (clarifierOut !== 0) this.leave(dy, TOP, clarifierOut, clarifierOut > 0 ? c : returning, GONE.onward);
    if (relieved !== 0) this.leave(dy, trash, relieved, c, GONE.relieved);
  }

  /** So much water goes from one to the other and so much back, each with the composition of where it comes from. */
  private mix(dy: Float64Array, from: number, to: number, forth: number, back: number): void {
    if (forth === 0 && back === 0) return;
    const { c } = this;
    const a = from * CARRIED;
    const b = to * CARRIED;
    for (let i = 0; i < CARRIED; i++) {
      const rate = forth * at(c, a + i) - back * at(c, b + i);
      add(dy, a + i, -rate);
      add(dy, b + i, rate);
    }
  }

  /** Water leaves a compartment into a ledger; backwards it comes with a composition of its own. */
  private leave(dy: Float64Array, from: number, flow: number, source: Float64Array, ledger: number): void {
    const o = from * CARRIED;
    const s = source === this.c ? o : 0;
    for (let i = 0; i < CARRIED; i++) {
      const rate = flow * at(source, s + i);
      add(dy, o + i, -rate);
      add(dy, ledger + i, rate);
    }
  }

  private settle(dy: Float64Array): void {
    const { c, hopper, kinetics, passing, solids, stretch } = this;
    for (let i = 0; i < LAYERS; i++) solids[i] = Math.max(0, suspendedSolids(c, massOf(TOP + i, 0)));
    const feed = Math.max(0, suspendedSolids(c, massOf(COMPARTMENT.aeration, 0)));
    settleHopper(kinetics.settling, hopper, kinetics.thickest_gm3, solids, feed, passing);
    passing[LAYERS - 1] = stretch.slotOpen * at(passing, LAYERS - 1);
    for (let i = 0; i < LAYERS; i++) {
      if (at(solids, i) === 0) continue;
      const to = i === LAYERS - 1 ? COMPARTMENT.aeration : TOP + i + 1;
      this.drop(dy, TOP + i, to, at(passing, i) / at(solids, i));
    }
    if (stretch.lifted > 0) this.drop(dy, BOTTOM, TOP, stretch.lifted * at(this.volume, BOTTOM));
  }

  /** Solids of so much water, m3/d, go from one to the other without it. */
  private drop(dy: Float64Array, from: number, to: number, water: number): void {
    const { c } = this;
    const a = from * CARRIED;
    const b = to * CARRIED;
    for (let k = 0; k < FALLING.length; k++) {
      const i = FALLING[k] as number;
      const rate = water * at(c, a + i);
      add(dy, a + i, -rate);
      add(dy, b + i, rate);
    }
  }

  private react(dy: Float64Array, k: number): void {
    const { c, rates } = this;
    const p = this.kinetics.biology;
    const volume = at(this.volume, k);
    const o = k * CARRIED;
    asm1Rates(c, o, p, rates);
    if (isPoisoned(c, o)) this.poisoned(dy, o, volume);
    asm1React(rates, p, volume, dy, o);
    add(dy, GONE.nitrogenGas, (volume * at(rates, 1) * (1 - p.yieldH)) / (p.yieldH * 2.86));
    add(dy, o + COMPONENT.coliform, -this.kinetics.dieOff * volume * at(c, o + COMPONENT.coliform));
  }

  private poisoned(dy: Float64Array, o: number, volume: number): void {
    const { c, toll } = this;
    poison(c, o, Math.max(0, suspendedSolids(c, o)), this.kinetics.biology, this.rates, toll);
    add(dy, o + COMPONENT.chlorine, -volume * toll.chlorine);
    add(dy, GONE.chlorineUsed, volume * toll.chlorine);
    add(dy, o + COMPONENT.quaternary, -volume * toll.quaternary);
    add(dy, o + COMPONENT.coliform, -volume * toll.coliform * at(c, o + COMPONENT.coliform));
  }

  /** Without oxygen: what floats about in the trash tank dissolves, what lies there digests, partly to gas. */
  private ferment(y: Float64Array, dy: Float64Array): void {
    const { c } = this;
    const { anaerobic, digestion, returned } = this.kinetics;
    const volume = at(this.volume, COMPARTMENT.trash);
    const dissolved = volume * anaerobic * Math.max(0, at(c, ASM.slowSubstrate));
    const bound = volume * anaerobic * Math.max(0, at(c, ASM.particulateNitrogen));
    const digested = digestion * (at(y, STORE.degradable) + at(y, STORE.scum));
    const nitrogen = digestion * at(y, STORE.nitrogen);
    const freed = volume * anaerobic * Math.max(0, at(c, ASM.solubleNitrogen));
    add(dy, ASM.slowSubstrate, -dissolved);
    add(dy, ASM.substrate, dissolved + returned * digested);
    add(dy, ASM.particulateNitrogen, -bound);
    add(dy, ASM.solubleNitrogen, bound - freed);
    add(dy, ASM.ammonia, freed + nitrogen);
    add(dy, ASM.alkalinity, (freed + nitrogen) / 14);
    add(dy, STORE.degradable, -digestion * at(y, STORE.degradable));
    add(dy, STORE.scum, -digestion * at(y, STORE.scum));
    add(dy, STORE.nitrogen, -nitrogen);
    add(dy, GONE.methane, (1 - returned) * digested);
  }

  private breathe(dy: Float64Array): void {
    const { transfer, saturation } = this.stretch;
    const o = massOf(COMPARTMENT.aeration, ASM.oxygen);
    const gained = transfer * (saturation - at(this.c, o)) * at(this.volume, COMPARTMENT.aeration);
    add(dy, o, gained);
    add(dy, GONE.oxygenGained, gained);
  }
}
