/**
 * The plant as one continuous system: the water's equations and the processes' at once, every flow the one of the
 * instant, where the engine lets the processes follow with the mean flows of some minutes. What drives it is given.
 */
import {
  CARRIED,
  CHAMBERS,
  COMPARTMENTS,
  COMPONENT,
  type Drive,
  emptyStep,
  makeStepper,
  makeWorks,
  massOf,
  operatingPoint,
  PASSED,
  Passage,
  PROCESS_SIZE,
  SOLVED,
  STEPPED,
  spreadWater,
  stillAir,
  WATER,
  type Works,
} from '../../src/plant/index.ts';
import { comparedState, DAY_s, type Edge, newUnit, type Sample, SIZE, WATERS } from './recorded.ts';

/** What counts as much as the whole of itself: volumes, m3; concentrations, g/m3, coliform per 100 mL; stores, g. */
const COUNTS = { volume: 2e-3, concentration: 10, coliform: 1e4, store: 50 };
const RULES = { largest: 900, smallest: 1e-9 };

export class Coupled {
  readonly works: Works;
  readonly passage: Passage;
  readonly drive: Drive;
  /** What comes in, g/m3. */
  readonly influent: Float64Array;
  /** State at the start of a run. */
  readonly start: Float64Array;
  /** Right-hand sides computed. */
  derivatives = 0;
  private readonly water = new Float64Array(STEPPED);
  private readonly flows = new Float64Array(STEPPED);
  private readonly change = new Float64Array(PROCESS_SIZE);
  private readonly air = stillAir();

  constructor() {
    const unit = newUnit();
    this.works = makeWorks(unit.spec.plant);
    this.influent = unit.source.influent;
    this.passage = new Passage(this.works, this.influent);
    this.passage.process.stretch.captured = unit.spec.plant.process.mostCaptured;
    this.drive = { ...unit.driveAt(0) };
    this.start = comparedState(unit.y);
  }

  /** From here on what an edge says drives it. */
  turn(edge: Edge): void {
    this.drive.inflow_m3s = edge.inflow_m3s;
    this.drive.pumpRuns = edge.pumpRuns;
  }

  /** dy/dt, 1/s. The rates at which the water's ledgers grow are the flows that the processes ask for. */
  readonly derivative = (_t: number, y: Float64Array, dy: Float64Array): void => {
    this.derivatives += 1;
    const { change, drive, flows, passage, water, works } = this;
    water.set(y.subarray(0, WATERS));
    works.derivative(drive, water, flows);
    this.fillStretch();
    const depth = works.diffuserDepth(water);
    passage.aerate(operatingPoint(works.spec.air, drive.condition, depth, this.air).diffuser_Lmin, depth);
    passage.process.derivative(0, y.subarray(WATERS), change);
    for (let i = 0; i < WATERS; i++) dy[i] = flows[i] as number;
    for (let i = 0; i < SOLVED; i++) dy[WATERS + i] = (change[i] as number) / DAY_s;
  };

  /** A stretch that lasts no time. */
  private fillStretch(): void {
    const { flows, influent, water, works } = this;
    const { stretch } = this.passage.process;
    const perDay = (i: number) => (flows[i] as number) * DAY_s;
    stretch.drawn = perDay(WATER.drawn);
    stretch.inflow = stretch.drawn;
    stretch.trashOut = perDay(PASSED.trashOut);
    stretch.slot = perDay(PASSED.slot);
    stretch.clarifierOut = perDay(PASSED.clarifierOut);
    stretch.relieved = perDay(WATER.relieved) + perDay(WATER.indoors);
    for (let i = 0; i < CARRIED; i++) stretch.coming[i] = stretch.drawn * (influent[i] as number);
    works.volumes(water, stretch.volumes);
  }
}

/** Absolute tolerances for a relative one: that share of what counts, in the volumes at the start. */
export function absoluteTolerances({ passage, start, works }: Coupled, rtol: number): Float64Array {
  const atol = new Float64Array(SIZE).fill(rtol * COUNTS.store);
  atol.fill(rtol * COUNTS.volume, 0, WATERS);
  const water = new Float64Array(STEPPED);
  water.set(start.subarray(0, WATERS));
  const held = works.volumes(water, new Float64Array(CHAMBERS));
  spreadWater(passage.process.hopper, held, new Float64Array(COMPARTMENTS)).forEach((volume, k) => {
    for (let i = 0; i < CARRIED; i++) {
      const counts = i === COMPONENT.coliform ? COUNTS.coliform : COUNTS.concentration;
      atol[WATERS + massOf(k, i)] = rtol * counts * volume;
    }
  });
  return atol;
}

/** A way to take the coupled system's state from one instant to another between which nothing is switched. */
export type Way = (y: Float64Array, from: number, to: number) => Float64Array;

/** Follows a timetable, stopping at each edge; returns the states at some instants. */
export function follow(
  coupled: Coupled,
  edges: readonly Edge[],
  sampled: readonly Sample[],
  way: Way,
): readonly Sample[] {
  const samples: Sample[] = [];
  let y: Float64Array = coupled.start.slice();
  let t = 0;
  let next = 0;
  for (const sample of sampled) {
    for (let edge = edges[next]; edge !== undefined && edge.t < sample.t; edge = edges[next]) {
      if (edge.t > t) y = way(y, t, edge.t);
      t = edge.t;
      coupled.turn(edge);
      next += 1;
    }
    y = way(y, t, sample.t);
    t = sample.t;
    samples.push({ t, y: y.slice() });
  }
  return samples;
}

/** The engine's own stepper on the coupled system. */
export function stepperWay(coupled: Coupled, rtol: number): Way {
  const stepper = makeStepper(SIZE, { rtol, atol: absoluteTolerances(coupled, rtol), ...RULES });
  const step = emptyStep(SIZE);
  let h = 1;
  return (y, from, to) => {
    step.t0 = from;
    step.y0.set(y);
    coupled.derivative(from, step.y0, step.f0);
    while (step.t0 < to) {
      stepper.step(coupled.derivative, step, h, to);
      h = step.next;
      step.t0 = step.t1;
      step.y0.set(step.y1);
      step.f0.set(step.f1);
    }
    return step.y0;
  };
}
