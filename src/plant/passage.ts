/**
 * Joins the processes to the water: from time to time they catch up with what the hydraulics have let through since, in
 * one stretch with its mean flows. The engine decides when: every few minutes, and whenever something is done there.
 */

import { operatingPoint, stillAir } from './air.ts';
import { ASM, atTemperature, BSM1_15C } from './asm1.ts';
import { at } from './entry.ts';
import { hopperOf, spreadWater, thickest_gm3 } from './hopper.ts';
import { GAUGES, MARK_s, marked, PASSED, PROCESS, PROCESS_STEP, RUN, STEPPED, WATER } from './layout.ts';
import { CHAMBERS, COMPARTMENT, COMPARTMENTS, COMPONENT, COMPONENTS, type Composition, HELD } from './liquor.ts';
import { exp, pow } from './num.ts';
import { emptyStep, makeStepper } from './ode.ts';
import { fieldSaturation, hoursWithoutOxygenRate, type OxygenAt, oxygenAt, oxygenTransfer } from './oxygen.ts';
import { type Kinetics, massOf, PROCESS_SIZE, Process, STORE, type Stretch } from './process.ts';
import { captured, settlerFor } from './settleability.ts';
import type { PlantSpec } from './spec.ts';
import type { Drive, Works } from './works.ts';

/** Longest stretch, s: within it the flows' mean stands for them. */
export const STRETCH_s = 300;

const DAY_s = 86_400;
/** Corners of the settling fluxes are rounded by this, so that the step is not caught in them. */
const ROUNDING = 0.01;
/** Without oxygen particulates dissolve at this rate, 1/d (common practice 0.1 to 0.3, no source). */
const ANAEROBIC = 0.2;
/** What lies in the trash tank digests at this rate at 15 degC, 1/d, doubling each 10 K (common practice, no source). */
const DIGESTION = 0.5 / 365;
/** Of what digests this share goes back into the water, the rest leaves as gas (convention). */
const RETURNED = 0.3;
/** Grease in what the trash tank keeps of the slow substrate (convention). */
const GREASE = 0.15;
/** Dry solids in a m3 of lying sludge, and COD in a m3 of scum, g (common practice 40 to 90 kg, no source; convention). */
const SLUDGE_gm3 = 80_000;
const SCUM_gm3 = 400_000;
/** Days over which the inflow is averaged, and the least that counts, m3/d. */
const MEMORY_d = 2;
const LEAST_m3d = 0.02;
/** Die-off of coliform in the works, 1/d (convention). */
const DIE_OFF = 1;
/** Loss of a chlorine residual, 1/d, and to what is left to oxidise, m3 per g COD and day (convention). */
const CHLORINE_DECAY = 3;
const CHLORINE_DEMAND = 0.5;
/** Alkalinity at which nitrification is halved, mol/m3 (common practice, no source; not part of ASM1). */
const ALKALINITY = 0.5;
/** Oxygen under which effluent counts as short of air, mg/L (GLUMRB wants 2 at all times; half of it is alarming). */
const SHORT_OF_AIR_mgL = 1;

const SLACK = 1e-12;

export class Passage {
  private readonly spec: PlantSpec;
  private readonly works: Works;
  readonly process: Process;
  private readonly stretch: Stretch;
  private readonly stepper = makeStepper(PROCESS_SIZE, {
    rtol: 1e-3,
    atol: processTolerances(),
    largest: 1,
    smallest: SLACK,
  });
  private readonly step = emptyStep(PROCESS_SIZE);
  private readonly air = stillAir();
  private readonly spread = new Float64Array(COMPARTMENTS);
  private water: OxygenAt = oxygenAt(20);
  private temperature_C = Number.NaN;

  constructor(works: Works, influent: Composition) {
    this.works = works;
    this.spec = works.spec;
    const hopper = hopperOf(works.spec.clarifier);
    this.stretch = {
      inflow: 0,
      trashOut: 0,
      slot: 0,
      clarifierOut: 0,
      riserOut: 0,
      discharge: 0,
      relieved: 0,
      exchange: 0,
      volumes: new Float64Array(CHAMBERS),
      influent,
      captured: 0,
      floats: GREASE,
      transfer: 0,
      saturation: 0,
      chlorine: 0,
    };
    this.process = new Process(hopper, this.stretch, this.kinetics(20));
  }

  /** Catches up to an instant, s. Nothing passed since the last one, nothing is done. */
  advance(y: Float64Array, t: number, drive: Drive): void {
    const seconds = t - at(y, MARK_s);
    if (seconds <= 0) return;
    if (drive.temperature_C !== this.temperature_C) this.warm(drive.temperature_C);
    this.fill(y, seconds, drive);
    const { step } = this;
    step.y0.set(y.subarray(PROCESS, PROCESS + PROCESS_SIZE));
    const days = seconds / DAY_s;
    let h = Math.min(at(y, PROCESS_STEP), days);
    let day = 0;
    while (day < days) {
      step.t0 = day;
      this.process.derivative(day, step.y0, step.f0);
      this.stepper.step(this.process.derivative, step, h, days);
      h = step.next;
      day = step.t1;
      step.y0.set(step.y1);
    }
    y.set(step.y0, PROCESS);
    y[PROCESS_STEP] = h;
    this.gauge(y, seconds);
    y.copyWithin(STEPPED, 0, STEPPED);
    y[MARK_s] = t;
  }

  private fill(y: Float64Array, seconds: number, drive: Drive): void {
    const { spec, stretch } = this;
    const perDay = DAY_s / seconds;
    const passed = (i: number) => (at(y, i) - at(y, marked(i))) * perDay;
    stretch.inflow = passed(WATER.drawn);
    stretch.trashOut = passed(PASSED.trashOut);
    stretch.slot = passed(PASSED.slot);
    stretch.clarifierOut = passed(PASSED.clarifierOut);
    stretch.riserOut = passed(PASSED.riserOut);
    stretch.discharge = passed(WATER.sprayed);
    stretch.relieved = passed(WATER.relieved) + passed(WATER.indoors);
    this.works.volumes(y.subarray(STEPPED, 2 * STEPPED), stretch.volumes);
    const depth = this.works.diffuserDepth(y);
    const ran = (at(y, RUN.compressor_s) - at(y, marked(RUN.compressor_s))) / seconds;
    const air_Lmin = ran * operatingPoint(spec.air, drive.condition, depth, this.air).diffuser_Lmin;
    stretch.transfer =
      oxygenTransfer(spec.air, this.water, air_Lmin, depth, at(stretch.volumes, HELD.aeration)) * DAY_s;
    stretch.saturation = fieldSaturation(spec.air, this.water, depth);
    stretch.exchange = spec.process.exchange_m3d * Math.min(1, air_Lmin / spec.air.transferReference_Lmin);
    stretch.chlorine = spec.process.chlorineDose_mgL * Math.max(0, stretch.clarifierOut);
    // By the mean of days: what a tank keeps is not decided by a single flush.
    const days = seconds / DAY_s;
    const mean = at(y, GAUGES.inflow_m3d) + (stretch.inflow - at(y, GAUGES.inflow_m3d)) * (1 - exp(-days / MEMORY_d));
    y[GAUGES.inflow_m3d] = mean;
    const { sludge, scum } = this.lying_m3(y);
    const clear_m3 = Math.max(0, at(stretch.volumes, HELD.trash) - sludge - scum);
    stretch.captured = captured((clear_m3 / Math.max(LEAST_m3d, mean)) * 1440, spec.process.mostCaptured);
  }

  private warm(temperature_C: number): void {
    this.temperature_C = temperature_C;
    this.water = oxygenAt(temperature_C);
    this.process.kinetics = this.kinetics(temperature_C);
  }

  private kinetics(temperature_C: number): Kinetics {
    const index = this.spec.process.volumeIndex_mLg;
    return {
      biology: { ...atTemperature(BSM1_15C, temperature_C), kAlkalinity: ALKALINITY },
      settling: { ...settlerFor(index), rounding: ROUNDING },
      thickest_gm3: thickest_gm3(index),
      anaerobic: ANAEROBIC,
      digestion: DIGESTION * pow(2, (temperature_C - 15) / 10),
      returned: RETURNED,
      dieOff: DIE_OFF,
      chlorineDecay: CHLORINE_DECAY,
      chlorineDemand: CHLORINE_DEMAND,
    };
  }

  private gauge(y: Float64Array, seconds: number): void {
    const oxygen = this.concentration(y, COMPARTMENT.aeration, ASM.oxygen);
    const hours = at(y, GAUGES.hoursWithoutOxygen);
    y[GAUGES.hoursWithoutOxygen] = Math.max(0, hours + seconds * hoursWithoutOxygenRate(oxygen, hours));
    if (oxygen < SHORT_OF_AIR_mgL) {
      y[GAUGES.shortOfAir_m3] = at(y, GAUGES.shortOfAir_m3) + at(y, WATER.sprayed) - at(y, marked(WATER.sprayed));
    }
  }

  /** Concentration, g/m3, of a component in a compartment, as it stood when the processes last caught up. */
  concentration(y: Float64Array, compartment: number, component: number): number {
    return at(y, PROCESS + massOf(compartment, component)) / this.volumeOf(y, compartment);
  }

  /** All concentrations in a compartment, likewise. */
  composition(y: Float64Array, compartment: number): Composition {
    const from = PROCESS + massOf(compartment, 0);
    const volume = this.volumeOf(y, compartment);
    return y.slice(from, from + COMPONENTS).map((mass) => mass / volume);
  }

  /** Room that sludge and that scum take in the trash tank, m3. */
  lying_m3(y: Float64Array): { readonly sludge: number; readonly scum: number } {
    const sludge_g = 0.75 * (at(y, PROCESS + STORE.degradable) + at(y, PROCESS + STORE.inert));
    return { sludge: sludge_g / SLUDGE_gm3, scum: at(y, PROCESS + STORE.scum) / SCUM_gm3 };
  }

  private volumeOf(y: Float64Array, compartment: number): number {
    const held = this.works.volumes(y.subarray(STEPPED, 2 * STEPPED), this.stretch.volumes);
    return Math.max(SLACK, at(spreadWater(this.process.hopper, held, this.spread), compartment));
  }
}

/** Of each mass, g: about a thousandth of what a compartment holds. */
function processTolerances(): Float64Array {
  const atol = new Float64Array(PROCESS_SIZE);
  for (let k = 0; k < COMPARTMENTS; k++) {
    for (let i = 0; i < COMPONENTS; i++) {
      const coarse = i === COMPONENT.coliform ? 1e3 : i === COMPONENT.exposure ? 1 : i === ASM.oxygen ? 0.01 : 0.05;
      atol[massOf(k, i)] = coarse;
    }
  }
  return atol;
}
