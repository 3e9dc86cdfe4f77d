/**
 * What happens in the water while it passes: biology, settling, oxygen and chlorine in every compartment, and the sludge
 * that stays in the trash tank. It is advanced in stretches of some minutes with the mean flows of each, which the
 * hydraulics have counted exactly, so that nothing is lost between the two. Days, m3, g.
 */

import { ASM, type Asm1Parameters, asm1Rates, asm1React, RATES, suspendedSolids } from './asm1.ts';
import { add, at } from './entry.ts';
import { FALLING, type Hopper, settleHopper, spreadWater } from './hopper.ts';
import {
  CHAMBERS,
  COMPARTMENT,
  COMPARTMENTS,
  COMPONENT,
  COMPONENTS,
  type Composition,
  HELD,
  LAYERS,
} from './liquor.ts';
import type { SettlerParameters } from './takacs.ts';

const MASSES = COMPARTMENTS * COMPONENTS;

/** Sludge and scum of the trash tank: degradable and inert COD, the nitrogen of the degradable, grease as COD; g. */
export const STORE = { degradable: MASSES, inert: MASSES + 1, nitrogen: MASSES + 2, scum: MASSES + 3 } as const;

const LEDGERS = MASSES + 4;
/** Since the start, g: in and out by component, oxygen from the air, nitrogen and COD that left as gas, chlorine used. */
export const LEDGER = {
  in: LEDGERS,
  out: LEDGERS + COMPONENTS,
  oxygenGained: LEDGERS + 2 * COMPONENTS,
  nitrogenGas: LEDGERS + 2 * COMPONENTS + 1,
  methane: LEDGERS + 2 * COMPONENTS + 2,
  chlorineUsed: LEDGERS + 2 * COMPONENTS + 3,
} as const;
export const PROCESS_SIZE = LEDGERS + 2 * COMPONENTS + 4;

/** Index of a component's mass in a compartment. */
export function massOf(compartment: number, component: number): number {
  return compartment * COMPONENTS + component;
}

/** A stretch of time: its mean flows, m3/d (below zero a flow runs backwards), and what holds throughout. */
export interface Stretch {
  inflow: number;
  trashOut: number;
  slot: number;
  clarifierOut: number;
  riserOut: number;
  discharge: number;
  relieved: number;
  /** Liquor that the air's circulation carries through the slot into the clarifier, and as much back, m3/d. */
  exchange: number;
  /** Water held when it begins, m3, in the order of `HELD`. */
  readonly volumes: Float64Array;
  /** What comes in, g/m3, and the share of its particulates that the trash tank keeps; of that what floats as grease. */
  influent: Composition;
  captured: number;
  floats: number;
  /** Transfer coefficient of the aeration chamber, 1/d, and the saturation it tends to, g/m3. */
  transfer: number;
  saturation: number;
  /** Chlorine fed to the disinfection riser, g/d. */
  chlorine: number;
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
  /** Loss of the chlorine residual, 1/d, and what reducing matter takes of it, m3 per g COD and day. */
  readonly chlorineDecay: number;
  readonly chlorineDemand: number;
}

const BOTTOM = COMPARTMENT.clarifier + LAYERS - 1;
const LEAST_m3 = 1e-6;
const MINUTES = 1440;

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
    this.carry(dy);
    this.settle(dy);
    for (let k = COMPARTMENT.trash; k <= BOTTOM; k++) this.react(dy, k);
    this.ferment(y, dy);
    this.breathe(dy);
    this.disinfect(dy);
  };

  private fillVolumes(day: number): void {
    const { held, stretch } = this;
    const v = stretch.volumes;
    held[HELD.trash] = at(v, HELD.trash) + day * (stretch.inflow - stretch.trashOut - stretch.relieved);
    held[HELD.aeration] = at(v, HELD.aeration) + day * (stretch.trashOut - stretch.slot);
    held[HELD.clarifier] = at(v, HELD.clarifier) + day * (stretch.slot - stretch.clarifierOut);
    held[HELD.riser] = at(v, HELD.riser) + day * (stretch.clarifierOut - stretch.riserOut);
    held[HELD.pump] = at(v, HELD.pump) + day * (stretch.riserOut - stretch.discharge);
    spreadWater(this.hopper, held, this.volume);
  }

  private fillConcentrations(y: Float64Array): void {
    const { c, volume } = this;
    for (let k = 0; k < COMPARTMENTS; k++) {
      const per = 1 / Math.max(LEAST_m3, at(volume, k));
      const o = k * COMPONENTS;
      for (let i = o; i < o + COMPONENTS; i++) c[i] = at(y, i) * per;
    }
  }

  /** What settles at once lies in the trash tank; what floats lies on it. */
  private bringIn(dy: Float64Array): void {
    const { inflow, influent, captured, floats } = this.stretch;
    const { iXB } = this.kinetics.biology;
    for (let i = 0; i < COMPONENTS; i++) {
      const rate = inflow * at(influent, i);
      add(dy, i, rate);
      add(dy, LEDGER.in + i, rate);
    }
    for (let k = 0; k < FALLING.length; k++) {
      const i = FALLING[k] as number;
      const kept = captured * inflow * at(influent, i);
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
  }

  private carry(dy: Float64Array): void {
    const { stretch, hopper } = this;
    this.pass(dy, COMPARTMENT.trash, COMPARTMENT.aeration, stretch.trashOut);
    this.pass(dy, COMPARTMENT.aeration, BOTTOM, stretch.slot);
    this.pass(dy, COMPARTMENT.aeration, BOTTOM, stretch.exchange);
    this.pass(dy, BOTTOM, COMPARTMENT.aeration, stretch.exchange);
    // What a layer does not keep as its part of a rising level goes on to the next one up.
    const rise = stretch.slot - stretch.clarifierOut;
    let up = stretch.slot;
    for (let i = LAYERS - 1; i > 0; i--) {
      up -= rise * at(hopper.share, i);
      this.pass(dy, COMPARTMENT.clarifier + i, COMPARTMENT.clarifier + i - 1, up);
    }
    this.pass(dy, COMPARTMENT.clarifier, COMPARTMENT.riser, stretch.clarifierOut);
    this.pass(dy, COMPARTMENT.riser, COMPARTMENT.pump, stretch.riserOut);
    this.leave(dy, COMPARTMENT.pump, stretch.discharge);
    this.leave(dy, COMPARTMENT.trash, stretch.relieved);
  }

  /** A flow carries the composition of where it comes from. */
  private pass(dy: Float64Array, from: number, to: number, flow: number): void {
    if (flow === 0) return;
    const { c } = this;
    const a = from * COMPONENTS;
    const b = to * COMPONENTS;
    const source = flow > 0 ? a : b;
    for (let i = 0; i < COMPONENTS; i++) {
      const rate = flow * at(c, source + i);
      add(dy, a + i, -rate);
      add(dy, b + i, rate);
    }
  }

  private leave(dy: Float64Array, from: number, flow: number): void {
    if (flow === 0) return;
    const o = from * COMPONENTS;
    for (let i = 0; i < COMPONENTS; i++) {
      const rate = flow * at(this.c, o + i);
      add(dy, o + i, -rate);
      add(dy, LEDGER.out + i, rate);
    }
  }

  private settle(dy: Float64Array): void {
    const { c, hopper, kinetics, passing, solids } = this;
    for (let i = 0; i < LAYERS; i++) solids[i] = Math.max(0, suspendedSolids(c, massOf(COMPARTMENT.clarifier + i, 0)));
    const feed = Math.max(0, suspendedSolids(c, massOf(COMPARTMENT.aeration, 0)));
    settleHopper(kinetics.settling, hopper, kinetics.thickest_gm3, solids, feed, passing);
    for (let i = 0; i < LAYERS; i++) {
      if (at(solids, i) === 0) continue;
      const share = at(passing, i) / at(solids, i);
      const from = massOf(COMPARTMENT.clarifier + i, 0);
      const to = i === LAYERS - 1 ? massOf(COMPARTMENT.aeration, 0) : from + COMPONENTS;
      for (let k = 0; k < FALLING.length; k++) {
        const component = FALLING[k] as number;
        const rate = share * at(c, from + component);
        add(dy, from + component, -rate);
        add(dy, to + component, rate);
      }
    }
  }

  private react(dy: Float64Array, k: number): void {
    const { c, rates } = this;
    const p = this.kinetics.biology;
    const volume = at(this.volume, k);
    asm1Rates(c, k * COMPONENTS, p, rates);
    asm1React(rates, p, volume, dy, k * COMPONENTS);
    add(dy, LEDGER.nitrogenGas, (volume * at(rates, 1) * (1 - p.yieldH)) / (p.yieldH * 2.86));
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
    add(dy, LEDGER.methane, (1 - returned) * digested);
  }

  private breathe(dy: Float64Array): void {
    const { transfer, saturation } = this.stretch;
    const o = massOf(COMPARTMENT.aeration, ASM.oxygen);
    const gained = transfer * (saturation - at(this.c, o)) * at(this.volume, COMPARTMENT.aeration);
    add(dy, o, gained);
    add(dy, LEDGER.oxygenGained, gained);
  }

  private disinfect(dy: Float64Array): void {
    const { c, kinetics, stretch, volume } = this;
    add(dy, massOf(COMPARTMENT.riser, COMPONENT.chlorine), stretch.chlorine);
    add(dy, LEDGER.in + COMPONENT.chlorine, stretch.chlorine);
    for (let k = 0; k < COMPARTMENTS; k++) {
      const o = k * COMPONENTS;
      add(dy, o + COMPONENT.coliform, -kinetics.dieOff * at(volume, k) * at(c, o + COMPONENT.coliform));
      const residual = at(c, o + COMPONENT.chlorine);
      if (residual <= 0) continue;
      const reducing = Math.max(0, at(c, o + ASM.substrate)) + Math.max(0, at(c, o + ASM.slowSubstrate));
      const used = at(volume, k) * residual * (kinetics.chlorineDecay + kinetics.chlorineDemand * reducing);
      add(dy, o + COMPONENT.chlorine, -used);
      add(dy, LEDGER.chlorineUsed, used);
      add(dy, o + COMPONENT.exposure, at(volume, k) * residual * MINUTES);
    }
  }
}
