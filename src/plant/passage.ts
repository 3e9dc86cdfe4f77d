/**
 * Joins the processes to the water: from time to time they catch up with what the hydraulics have let through since, in
 * one stretch with its mean flows. The engine decides when, by `due`, and whenever something is done there.
 */

import { operatingPoint, stillAir } from './air.ts';
import { ASM, SOLIDS_PER_COD, suspendedSolids } from './asm1.ts';
import { CELL, CONTACT_SIZE, Contact, floorOf, RISER_CELLS, SPENT } from './contact.ts';
import { feedChlorine, STOCK_SIZE, survivesLight } from './disinfection.ts';
import { add, at } from './entry.ts';
import { notDisinfected, untreated } from './harm.ts';
import { FALLING, hopperOf, spreadWater } from './hopper.ts';
import { bulked, kineticsAt, liftedShare, stoodGassing_h } from './kinetics.ts';
import {
  CAME,
  CONTACT,
  GAUGES,
  MARK_s,
  marked,
  PASSED,
  PROCESS,
  PROCESS_STEP,
  RUN,
  SEWER,
  STEPPED,
  STORED,
  WATER,
} from './layout.ts';
import { CARRIED, COMPARTMENT, COMPARTMENTS, COMPONENT, COMPONENTS, type Composition, HELD, LAYERS } from './liquor.ts';
import { exp } from './num.ts';
import { emptyStep, type Stepper } from './ode.ts';
import { fieldSaturation, hoursWithoutOxygenRate, type OxygenAt, oxygenAt, oxygenTransfer } from './oxygen.ts';
import { GONE, massOf, PROCESS_SIZE, Process, SOLVED, STORE } from './process.ts';
import { sampleOf } from './sample.ts';
import { captured } from './settleability.ts';
import type { PlantCondition, PlantSpec } from './spec.ts';
import { makeStabilised } from './stabilised.ts';
import { type Stretch, stillStretch } from './stretch.ts';
import { leftSeal_mm, ROOM_C, trapSeal_mm } from './trap.ts';
import { wayIn } from './waterway.ts';
import type { Drive, Works } from './works.ts';

/** Shortest and longest stretch, s: within it the flows' mean stands for them. */
const SHORTEST_s = 300;
const LONGEST_s = 1800;
/** A flow through the clarifier this far from the stretch's mean ends it, m3/s: a surge has a stretch of its own. */
const APART_m3s = 1e-5;

const DAY_s = 86_400;
/** Grease in what the trash tank keeps of the slow substrate (convention). */
const GREASE = 0.15;
/** Dry solids in a m3 of lying sludge, and COD in a m3 of scum, g (common practice 40 to 90 kg, no source; convention). */
export const SLUDGE_gm3 = 90_000;
export const SCUM_gm3 = 400_000;
/** Share of the scum that a tank without its outlet baffle loses each time its water is renewed (convention). */
const SCOURED = 0.02;
/** Share of the trash tank's water that must be clear, or it keeps less (codes have it pumped at a third; convention). */
const CLEAR_ENOUGH = 0.67;
/** Days over which the inflow is averaged, and the least that counts, m3/d. */
const MEMORY_d = 2;
const LEAST_m3d = 0.02;
/** Oxygen under which effluent counts as short of air, mg/L (GLUMRB wants 2 at all times; half of it is alarming). */
const SHORT_OF_AIR_mgL = 1;
/** Rates are worked out anew for each tenth of a degree and each mL/g. */
const TENTH = 10;
const BOTTOM = COMPARTMENT.clarifier + LAYERS - 1;

const SLACK = 1e-12;

/** A place whose water has a composition: a compartment, or a cell past disinfection. */
export type Place = 'trash' | 'aeration' | 'clarifier' | 'riser' | 'pump';

export class Passage {
  private readonly spec: PlantSpec;
  private readonly works: Works;
  private readonly influent: Composition;
  readonly process: Process;
  readonly contact = new Contact();
  private readonly stretch: Stretch;
  private readonly stepper: Stepper;
  private readonly step = emptyStep(PROCESS_SIZE);
  private readonly air = stillAir();
  private readonly spread = new Float64Array(COMPARTMENTS);
  private readonly arriving = new Float64Array(COMPONENTS);
  private water: OxygenAt = oxygenAt(20);
  private tenths = Number.NaN;
  private index = Number.NaN;

  constructor(works: Works, influent: Composition) {
    this.works = works;
    this.spec = works.spec;
    this.influent = influent;
    this.stretch = stillStretch();
    this.stretch.floats = GREASE;
    this.process = new Process(
      hopperOf(works.spec.clarifier),
      this.stretch,
      kineticsAt(20, works.spec.process.volumeIndex_mLg),
    );
    const rules = { rtol: 3e-3, atol: processTolerances(), largest: 1, smallest: SLACK };
    this.stepper = makeStabilised(PROCESS_SIZE, rules, this.process.radius);
  }

  /** Whether a stretch has lasted long enough, with so much flowing out of the clarifier just now, m3/s. */
  due(y: Float64Array, t: number, flow_m3s: number): boolean {
    const seconds = t - at(y, MARK_s);
    if (seconds < SHORTEST_s) return false;
    if (seconds >= LONGEST_s) return true;
    const mean = (at(y, PASSED.clarifierOut) - at(y, marked(PASSED.clarifierOut))) / seconds;
    return Math.abs(flow_m3s - mean) > APART_m3s;
  }

  /** Catches up to an instant, s. Nothing passed since the last one, nothing is done. */
  advance(y: Float64Array, t: number, drive: Drive): void {
    const seconds = t - at(y, MARK_s);
    if (seconds <= 0) return;
    this.warm(y, drive);
    this.fill(y, seconds, drive);
    // What lies upstream goes first: it decides what the other takes in.
    if (this.stretch.clarifierOut < 0) {
      this.disinfect(y, drive);
      this.treat(y);
    } else {
      this.treat(y);
      this.disinfect(y, drive);
    }
    y.copyWithin(STEPPED, 0, STEPPED);
    y[MARK_s] = t;
    this.gauge(y, seconds, drive);
  }

  private fill(y: Float64Array, seconds: number, drive: Drive): void {
    const { spec, stretch } = this;
    const perDay = DAY_s / seconds;
    const passed = (i: number) => (at(y, i) - at(y, marked(i))) * perDay;
    stretch.days = seconds / DAY_s;
    this.comeIn(passed, drive.condition);
    stretch.inflow = stretch.drawn + passed(WATER.seeped);
    stretch.trashOut = passed(PASSED.trashOut);
    stretch.slot = passed(PASSED.slot);
    stretch.clarifierOut = passed(PASSED.clarifierOut);
    stretch.riserOut = passed(PASSED.riserOut);
    stretch.discharge = passed(WATER.sprayed);
    this.works.volumes(y.subarray(STEPPED, 2 * STEPPED), stretch.volumes);
    this.bring(y, drive.condition);
    const depth = this.works.diffuserDepth(y);
    const ran = (at(y, RUN.compressor_s) - at(y, marked(RUN.compressor_s))) / seconds;
    this.aerate(ran * operatingPoint(spec.air, drive.condition, depth, this.air).diffuser_Lmin, depth);
    stretch.transfer *= drive.condition.transfer;
    stretch.exchange *= drive.condition.slotOpen;
    stretch.slotOpen = drive.condition.slotOpen;
    stretch.lifted = liftedShare(at(y, GAUGES.gassing_h));
    // By the mean of days: what a tank keeps is not decided by a single flush.
    const mean =
      at(y, GAUGES.inflow_m3d) + (stretch.inflow - at(y, GAUGES.inflow_m3d)) * (1 - exp(-stretch.days / MEMORY_d));
    y[GAUGES.inflow_m3d] = mean;
    const { sludge, scum } = this.lying_m3(y);
    const held_m3 = at(stretch.volumes, HELD.trash);
    const clear_m3 = Math.max(0, held_m3 - sludge - scum);
    const most = spec.process.mostCaptured * Math.min(1, clear_m3 / (CLEAR_ENOUGH * held_m3));
    const { baffle } = drive.condition;
    stretch.captured = baffle * captured((clear_m3 / Math.max(LEAST_m3d, mean)) * 1440, most);
    stretch.scoured = ((1 - baffle) * SCOURED * Math.max(0, stretch.trashOut)) / Math.max(SLACK, held_m3);
  }

  /**
   * Sewage that comes into the trash tank, and what leaves it elsewhere than by its outlet. What stands before a blockage,
   * or comes up there, has not come in yet.
   */
  private comeIn(passed: (i: number) => number, condition: PlantCondition): void {
    const { stretch } = this;
    const relieved = passed(WATER.relieved) + passed(WATER.indoors);
    const blocked = wayIn(condition) < 1;
    stretch.drawn = passed(WATER.drawn) - passed(SEWER) - (blocked ? relieved : 0);
    stretch.relieved = (blocked ? 0 : relieved) + passed(WATER.leaked);
  }

  /** What so much air through diffusers at a depth does to the liquor that the stretch's volumes give. */
  aerate(air_Lmin: number, depth_m: number): void {
    const { air, process } = this.spec;
    const { stretch, water } = this;
    stretch.transfer = oxygenTransfer(air, water, air_Lmin, depth_m, at(stretch.volumes, HELD.aeration)) * DAY_s;
    stretch.saturation = fieldSaturation(air, water, depth_m);
    stretch.exchange = process.exchange_m3d * Math.min(1, air_Lmin / air.transferReference_Lmin);
  }

  /** What the house sends with its water, and what is poured down its drains besides. */
  private bring(y: Float64Array, condition: PlantCondition): void {
    const { coming, days, drawn } = this.stretch;
    for (let i = 0; i < CARRIED; i++) coming[i] = drawn * at(this.influent, i);
    add(coming, COMPONENT.chlorine, condition.bleach_gd);
    add(coming, COMPONENT.quaternary, condition.quaternary_gd);
    add(coming, COMPONENT.salt, condition.salt_gd);
    for (let i = 0; i < CARRIED; i++) add(y, CAME + i, days * at(coming, i));
    this.stretch.grease = condition.grease_gd;
    add(y, CAME + ASM.slowSubstrate, days * condition.grease_gd);
  }

  private warm(y: Float64Array, drive: Drive): void {
    const { volumeIndex_mLg } = this.spec.process;
    const tenths = Math.round(drive.temperature_C * TENTH);
    const index = Math.round(volumeIndex_mLg * drive.condition.volumeIndex * at(y, GAUGES.bulking));
    if (tenths === this.tenths && index === this.index) return;
    this.tenths = tenths;
    this.index = index;
    this.water = oxygenAt(tenths / TENTH);
    this.process.kinetics = kineticsAt(tenths / TENTH, index);
  }

  private treat(y: Float64Array): void {
    const { arriving, process, step, stretch } = this;
    for (let i = 0; i < CARRIED; i++) arriving[i] = -at(y, PROCESS + GONE.onward + i);
    step.y0.set(y.subarray(PROCESS, PROCESS + PROCESS_SIZE));
    let h = Math.min(at(y, PROCESS_STEP), stretch.days);
    let day = 0;
    process.derivative(day, step.y0, step.f0);
    while (day < stretch.days) {
      step.t0 = day;
      this.stepper.step(process.derivative, step, h, stretch.days);
      h = step.next;
      day = step.t1;
      step.y0.set(step.y1);
      step.f0.set(step.f1);
    }
    y.set(step.y0, PROCESS);
    y[PROCESS_STEP] = h;
    for (let i = 0; i < CARRIED; i++) add(arriving, i, at(y, PROCESS + GONE.onward + i));
  }

  private disinfect(y: Float64Array, drive: Drive): void {
    const { arriving, contact, spec, stretch } = this;
    const backwards = stretch.clarifierOut < 0;
    if (backwards) arriving.fill(0);
    else this.dose(y, drive);
    contact.advance(y.subarray(CONTACT, CONTACT + CONTACT_SIZE), stretch, {
      arriving,
      dieOff: this.process.kinetics.dieOff,
      pumpFloor_m2: spec.pump.area_m2,
      pumped_min: (at(y, RUN.pump_s) - at(y, marked(RUN.pump_s))) / 60,
    });
    if (!backwards) return;
    const per = -1 / (stretch.clarifierOut * stretch.days);
    for (let i = 0; i < COMPONENTS; i++) stretch.returning[i] = per * at(contact.returned, i);
    add(stretch.returning, COMPONENT.chlorine, at(stretch.returning, COMPONENT.combined));
  }

  private dose(y: Float64Array, drive: Drive): void {
    const { arriving, stretch } = this;
    const { disinfection } = this.spec;
    const { condition } = drive;
    const stock = this.stock(y);
    if (disinfection.kind === 'ultraviolet') {
      const lit = (at(y, RUN.ultraviolet_s) - at(y, marked(RUN.ultraviolet_s))) / (stretch.days * DAY_s);
      const solids = suspendedSolids(arriving, 0) / Math.max(SLACK, stretch.clarifierOut * stretch.days);
      const left = survivesLight(disinfection, condition, stretch.clarifierOut, solids, lit);
      arriving[COMPONENT.coliform] = left * at(arriving, COMPONENT.coliform);
      return;
    }
    const fed = feedChlorine(disinfection, condition, stretch.clarifierOut, stretch.days, drive.temperature_C, stock);
    add(arriving, COMPONENT.chlorine, fed);
    add(y, CONTACT + SPENT.fed, fed);
  }

  private gauge(y: Float64Array, seconds: number, drive: Drive): void {
    const days = seconds / DAY_s;
    const oxygen = Math.max(0, this.concentration(y, COMPARTMENT.aeration, ASM.oxygen));
    const hours = at(y, GAUGES.hoursWithoutOxygen);
    y[GAUGES.hoursWithoutOxygen] = Math.max(0, hours + seconds * hoursWithoutOxygenRate(oxygen, hours));
    y[GAUGES.bulking] = bulked(at(y, GAUGES.bulking), oxygen, days);
    y[GAUGES.gassing_h] = stoodGassing_h(
      at(y, GAUGES.gassing_h),
      this.concentration(y, BOTTOM, ASM.oxygen),
      this.concentration(y, BOTTOM, ASM.nitrate),
      days,
    );
    const used = this.stretch.drawn > 0 && drive.condition.trapsUsed === 1;
    y[GAUGES.seal_mm] = used
      ? leftSeal_mm(drive.condition.ventFlow)
      : trapSeal_mm(at(y, GAUGES.seal_mm), days, ROOM_C, drive.humidity);
    if (oxygen < SHORT_OF_AIR_mgL) {
      add(y, GAUGES.shortOfAir_m3, this.stretch.discharge * days);
    }
    const stored = sampleOf(this.composition(y, 'pump'));
    if (untreated(stored)) add(y, GAUGES.untreated_m3, this.stretch.discharge * days);
    if (notDisinfected(stored)) add(y, GAUGES.undisinfected_h, 24 * days);
  }

  private concentration(y: Float64Array, compartment: number, component: number): number {
    return at(y, PROCESS + massOf(compartment, component)) / this.volumeOf(y, compartment);
  }

  /** All concentrations at a place, g/m3, as they stood when the processes last caught up; of the clarifier what is on top. */
  composition(y: Float64Array, place: Place): Composition {
    if (place === 'riser' || place === 'pump') {
      const row = CONTACT + (place === 'pump' ? CELL.pump : CELL.riserOutlet);
      const share = 1 / this.cellVolume(y, place);
      return y.slice(row, row + COMPONENTS).map((mass) => mass * share);
    }
    return this.layer(y, COMPARTMENT[place]);
  }

  /** Concentrations in a compartment before disinfection, likewise. */
  layer(y: Float64Array, compartment: number): Composition {
    const c = new Float64Array(COMPONENTS);
    const share = 1 / this.volumeOf(y, compartment);
    for (let i = 0; i < CARRIED; i++) c[i] = share * at(y, PROCESS + massOf(compartment, i));
    return c;
  }

  /** Room that sludge and that scum take in the trash tank, m3. */
  lying_m3(y: Float64Array): { readonly sludge: number; readonly scum: number } {
    const sludge_g = SOLIDS_PER_COD * (at(y, PROCESS + STORE.degradable) + at(y, PROCESS + STORE.inert));
    return { sludge: sludge_g / SLUDGE_gm3, scum: at(y, PROCESS + STORE.scum) / SCUM_gm3 };
  }

  /** What is in store for disinfection (see disinfection.ts). */
  stock(y: Float64Array): Float64Array {
    return y.subarray(STORED, STORED + STOCK_SIZE);
  }

  /** The sediment of the pump tank (see sediment.ts). */
  sediment(y: Float64Array): Float64Array {
    return floorOf(y.subarray(CONTACT, CONTACT + CONTACT_SIZE));
  }

  /** Volume index of the sludge, mL/g. */
  volumeIndex_mLg(y: Float64Array, condition: PlantCondition): number {
    return this.spec.process.volumeIndex_mLg * condition.volumeIndex * at(y, GAUGES.bulking);
  }

  private volumeOf(y: Float64Array, compartment: number): number {
    const held = this.works.volumes(y.subarray(STEPPED, 2 * STEPPED), this.stretch.volumes);
    return Math.max(SLACK, at(spreadWater(this.process.hopper, held, this.spread), compartment));
  }

  private cellVolume(y: Float64Array, place: 'riser' | 'pump'): number {
    const held = this.works.volumes(y.subarray(STEPPED, 2 * STEPPED), this.stretch.volumes);
    return Math.max(SLACK, place === 'pump' ? at(held, HELD.pump) : at(held, HELD.riser) / RISER_CELLS);
  }
}

/**
 * Of each mass, g: about a thousandth of what a compartment holds. The lower layers of the clarifier fall into step with
 * a changed flow within minutes, which nobody sees and nothing downstream feels: of their solids more is let pass.
 */
function processTolerances(): Float64Array {
  const atol = new Float64Array(SOLVED);
  for (let k = 0; k < COMPARTMENTS; k++) {
    for (let i = 0; i < CARRIED; i++) atol[massOf(k, i)] = 0.05;
    atol[massOf(k, ASM.oxygen)] = 0.01;
    atol[massOf(k, COMPONENT.coliform)] = 50;
    atol[massOf(k, COMPONENT.salt)] = 1;
    if (k > COMPARTMENT.clarifier)
      for (const i of FALLING) atol[massOf(k, i)] = k > COMPARTMENT.clarifier + 1 ? 5 : 0.5;
  }
  return atol;
}
