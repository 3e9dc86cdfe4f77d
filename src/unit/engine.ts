/**
 * The hybrid engine: continuous works, finite control, and what joins them. It goes from one instant at which
 * something happens to the next: a known one (a draw, a timer start, a due delay, a fault) or a threshold crossed on
 * the way. Nothing else cuts a step, so the speed of a display cannot change a result.
 *
 * A step that reaches past the instant asked for is held: the state stays at its start until time moves on to its
 * end. An action inside a held step discards it and steps exactly to the action's instant, just as a replay does.
 */
import {
  type ControlEventName,
  type ControlState,
  type ControlTable,
  DELAYS,
  type DelayId,
  type FloatName,
} from '../control/index.ts';
import {
  type DrawSource,
  type Drive,
  emptyStep,
  fillStock,
  gather,
  type HauledTank,
  hoseIntoPump,
  interpolate,
  makeStepper,
  makeWorks,
  PASSED,
  Passage,
  pumpOut,
  refillAeration,
  STATE_SIZE,
  STEPPED,
  type Step,
  type Stepper,
  tolerances,
  type Weather,
  type Works,
} from '../plant/index.ts';
import { Driver } from './driver.ts';
import {
  type FaultState,
  faultState,
  isGrowing,
  isOver,
  isPresent,
  nextFaultInstant,
  stripColour,
  switchShift_kPa,
  tetherShift,
  type UnitFault,
} from './fault.ts';
import type { Happening } from './happening.ts';
import { PanelState } from './panel.ts';
import type { Registers } from './registers.ts';
import { fillAtRest } from './rest.ts';
import type { Snapshot } from './snapshot.ts';
import { floatHeights_m, type UnitSpec } from './spec.ts';
import { Switches } from './switches.ts';

export interface UnitSetup {
  readonly spec: UnitSpec;
  readonly source: DrawSource;
  readonly faults: readonly UnitFault[];
  readonly seed: number;
  readonly weather: Weather;
  /** Years since sludge was last removed; half a year where nothing is said. */
  readonly sludgeAge_y?: number;
}

/** More events than this within one simulated second: the wiring chases its own tail. */
const ENDLESS = 1000;
/** Tolerances under which every float turns within 0.02 mm of its height (held by tests/unit/engine-accuracy.test.ts). */
const RULES = { rtol: 2e-6, atol: tolerances(), largest: 900, smallest: 1e-6 };
/** The same where water may come to stand in the house sewer. */
const RULES_WITH_SEWER = { ...RULES, atol: tolerances(true) };
/** While a pump runs a level may turn round within minutes: keep steps short enough to see it. */
const LARGEST_WHILE_PUMPING_s = 60;
const FIRST_STEP_s = 5;
const HALF_A_YEAR = 0.5;
const DELAY_IDS = Object.keys(DELAYS) as DelayId[];
/** What held up to an instant is what held so long before it, s. */
const BEFORE_s = 1e-3;

/** Whether a fault can hold sewage back in the house sewer. */
function holdsSewage({ fault }: FaultState): boolean {
  const { sewerFlow = 1, inletFlow = 1 } = fault.effect.plant ?? {};
  return sewerFlow < 1 || inletFlow < 1;
}

function stepperFor(faults: readonly FaultState[]): Stepper {
  return makeStepper(STEPPED, faults.some(holdsSewage) ? RULES_WITH_SEWER : RULES);
}

/** Control switching without end, named with the instant. */
export class EndlessSwitching extends Error {}

export class Unit {
  readonly spec: UnitSpec;
  readonly works: Works;
  readonly passage: Passage;
  readonly source: DrawSource;
  readonly faults: FaultState[];
  readonly weather: Weather;

  t = 0;
  readonly y = new Float64Array(STATE_SIZE);
  h = FIRST_STEP_s;
  readonly panel: PanelState;
  readonly switches: Switches;
  /** Told after every step, event and mend: for traces and strip charts. It must not change the unit. */
  observer: ((unit: Unit) => void) | undefined;
  /** Derivatives computed since the start: the engine's honest cost. */
  derivatives = 0;

  private held: Step | undefined;
  private spare: Step = emptyStep(STEPPED);
  private readonly seed: number;
  private stepper: Stepper;
  private readonly driver: Driver;
  private slopeKnown = false;
  /** Next instant at which something is known to happen; worked out anew whenever something has. */
  private known = Number.NEGATIVE_INFINITY;
  private readonly pastEvents: number[] = [];

  constructor(setup: UnitSetup) {
    this.spec = setup.spec;
    this.works = makeWorks(setup.spec.plant);
    this.passage = new Passage(this.works, setup.source.influent);
    this.source = setup.source;
    this.weather = setup.weather;
    this.seed = setup.seed;
    this.faults = setup.faults.map((fault) => faultState(fault, setup.seed));
    this.stepper = stepperFor(this.faults);
    this.panel = new PanelState(setup.spec.panel, this.faults);
    this.driver = new Driver(this, this.panel.registers);
    this.switches = new Switches(setup.spec, this.faults, this.driver, STEPPED);
    fillAtRest(setup.spec, this.works, setup.sludgeAge_y ?? HALF_A_YEAR, this.y);
    this.refresh();
    for (const f of this.faults) if (f.switches[0] === 0) this.faultTurns(f);
    this.refresh();
    this.settle();
  }

  get table(): ControlTable {
    return this.panel.table;
  }

  get control(): ControlState {
    return this.panel.control;
  }

  get registers(): Registers {
    return this.panel.registers;
  }

  get due(): Map<DelayId, number> {
    return this.panel.due;
  }

  get log(): Happening[] {
    return this.panel.log;
  }

  /** Goes to an instant (s). The state then is the one at the last event or step end before it; see `stateAt`. */
  advance(until: number): void {
    for (;;) {
      const step = this.held ?? this.take(Number.POSITIVE_INFINITY);
      if (step.t1 > until) {
        this.held = step;
        return;
      }
      this.commit(step);
    }
  }

  /** Goes exactly to an instant, so that something can be done there. */
  cutAt(instant: number): void {
    this.advance(instant);
    while (this.t < instant) {
      this.held = undefined;
      this.slopeKnown = false;
      this.commit(this.take(instant));
    }
    this.held = undefined;
    this.catchUp();
  }

  /** Instant of the next event or step end that is already certain. */
  horizon(): number {
    return this.held?.t1 ?? this.t;
  }

  /** Continuous state at an instant between the last event and the horizon, written into `out`. */
  stateAt(instant: number, out: Float64Array): Float64Array {
    out.set(this.y);
    return this.held && instant > this.t ? interpolate(this.held, instant, out) : out;
  }

  /** Sends an event to the control at the present instant and lets everything settle. */
  send(name: ControlEventName): void {
    this.deliver(name);
    this.refresh();
    this.settle();
    this.observer?.(this);
  }

  /** Ends a fault at the present instant: what it changed goes back, and freed parts follow the water again. */
  mend(id: string): void {
    for (const state of this.faults) {
      if (state.fault.id !== id || state.mended_s <= this.t) continue;
      const wasThere = isPresent(state, this.t);
      state.mended_s = this.t;
      this.panel.note(`mended.${id}`, this.t);
      if (wasThere) this.ends(state);
    }
    this.follow();
  }

  /** Lets a fault begin at the present instant that nothing of the setup foresaw; its onset must be now. */
  begin(fault: UnitFault): void {
    if (fault.onset_s !== this.t) throw new Error(`fault ${fault.id} begins at ${fault.onset_s} s, it is ${this.t} s`);
    const state = faultState(fault, this.seed);
    this.faults.push(state);
    this.stepper = stepperFor(this.faults);
    this.faultTurns(state);
    this.follow();
  }

  /** Lets a fault that is there fade from now on, evenly over so many seconds; one that is not there just now is over. */
  fade(id: string, over_s: number): void {
    if (over_s <= 0 || !this.has(id)) {
      this.mend(id);
      return;
    }
    for (const state of this.faults) {
      if (state.fault.id !== id || state.mended_s <= this.t) continue;
      state.fades_s = this.t;
      state.mended_s = this.t + over_s;
    }
    this.follow();
  }

  /** Sets the panel clock so that it shows true time plus `ahead_s`. */
  setClock(ahead_s: number): void {
    this.panel.setClock(ahead_s, this.t);
    this.refresh();
    this.settle();
    this.observer?.(this);
  }

  /** Seconds the panel clock is ahead of true time. */
  clockAhead(t = this.t): number {
    return this.panel.clockAhead(t);
  }

  /** Fills the store of what disinfects up, fresh, at the present instant. */
  restock(): void {
    const { disinfection } = this.spec.plant;
    fillStock(disinfection, this.driver.at(this.t).condition.disinfectantStock, this.passage.stock(this.y));
  }

  /** A hauler's truck pumps a tank out at the present instant; the aeration chamber it fills up again with clear water. */
  haul(tank: HauledTank): void {
    pumpOut(this.works, this.y, tank);
    if (tank === 'aeration') refillAeration(this.works, this.y);
    this.refresh();
    this.settle();
    this.observer?.(this);
  }

  /** Clear water from a hose comes into the pump tank at the present instant. */
  hose(water_m3: number): void {
    hoseIntoPump(this.y, water_m3);
    this.refresh();
    this.settle();
    this.observer?.(this);
  }

  /** Share of its colour that the technician's test strip shows now. */
  stripColour(): number {
    return stripColour(this.faults, this.t);
  }

  /** Lets released floats and switches follow the water and the air again, at the present instant. */
  follow(): void {
    this.tellParts();
    this.refresh();
    this.settle();
    this.observer?.(this);
  }

  /** Line pressure at the air switch, kPa, at an instant and state. */
  airPressure(t: number, y: Float64Array): number {
    return this.driver.airPressure(t, y);
  }

  /** What drives the works at an instant (growing faults move it between events). */
  driveAt(t: number): Drive {
    return this.driver.at(t);
  }

  /** Height at which a float makes by how it is tied, m above the pump tank's floor, whatever it weighs or rides on. */
  tether_m(float: FloatName): number {
    return floatHeights_m(this.spec.panel, float).makes_m + tetherShift(this.faults, float, this.t);
  }

  /** Falling pressure at which the air switch turns now, kPa. */
  airSwitchFalls_kPa(): number {
    return this.spec.panel.airSwitch.falls_kPa + switchShift_kPa(this.faults, this.t);
  }

  /** Whether a fault with this key is there now: for what only an eye or a hand can tell. */
  has(key: string): boolean {
    return this.faults.some((f) => f.fault.id === key && isPresent(f, this.t));
  }

  /** Whether such a fault has come and is not mended, also while it does nothing: what is broken looks so between its spells. */
  stands(key: string): boolean {
    return this.faults.some((f) => f.fault.id === key && f.fault.onset_s <= this.t && this.t < f.mended_s);
  }

  /** Whether a fault with this key is over for good; so is one that never was. */
  isOver(key: string): boolean {
    return this.faults.every((f) => f.fault.id !== key || isOver(f, this.t));
  }

  /** Takes over a snapshot's state (see snapshot.ts, which checks that it fits). */
  resume(from: Snapshot): void {
    this.t = from.t;
    this.h = from.h;
    this.y.set(from.y);
    this.panel.control = this.table.restore(from.control);
    this.due.clear();
    for (const [delay, at] of from.due) this.due.set(delay, at);
    const { above } = this.switches;
    for (let i = 0; i < above.length; i++) above[i] = from.above[i] === true;
    Object.assign(this.registers, from.registers);
    this.faults.forEach((f, i) => {
      f.mended_s = from.mended[i] ?? Number.POSITIVE_INFINITY;
      f.fades_s = from.fades?.[i] ?? undefined;
    });
    this.log.length = 0;
    this.pastEvents.length = 0;
    this.held = undefined;
    this.refresh();
  }

  private derivative = (t: number, y: Float64Array, dy: Float64Array): void => {
    this.derivatives += 1;
    this.works.derivative(this.driver.at(t), y, dy);
  };

  /** One step from here, cut at `limit`, at the next known instant, or where a threshold is crossed. */
  private take(limit: number): Step {
    const out = this.spare;
    if (!(this.known > this.t)) this.known = this.nextKnown();
    const end = Math.min(limit, this.known);
    out.t0 = this.t;
    out.y0.set(this.y.subarray(0, STEPPED));
    if (!this.slopeKnown) this.derivative(this.t, this.y, out.f0);
    this.slopeKnown = true;
    const largest = this.driver.drive.pumpRuns ? LARGEST_WHILE_PUMPING_s : RULES.largest;
    this.stepper.step(this.derivative, out, Math.min(this.h, largest), end);
    if (this.switches.cut(out)) this.derivative(out.t1, out.y1, out.f1);
    return out;
  }

  private commit(step: Step): void {
    this.t = step.t1;
    this.y.set(step.y1);
    this.h = step.next;
    // The slope at the end is the slope at the next start unless something happens here.
    step.f0.set(step.f1);
    this.spare = step;
    this.held = undefined;
    if (this.passage.due(this.y, this.t, step.f1[PASSED.clarifierOut] as number)) this.catchUp();
    if (this.t >= this.known || this.faults.some((f) => isGrowing(f, this.t))) this.happen();
    else if (this.switches.crossed) this.settle();
    this.observer?.(this);
  }

  /** First known instant after now. */
  private nextKnown(): number {
    let next = Math.min(this.source.nextEdge(this.t), this.weather.nextEdge(this.t));
    for (const at of this.due.values()) if (at < next) next = at;
    for (const state of this.faults) {
      const at = nextFaultInstant(state, this.t);
      if (at < next) next = at;
    }
    return Math.min(this.panel.nextTimerStart(this.t), next);
  }

  /** Everything that is due at the present instant, in a fixed order: faults, delays, timer, draws, thresholds. */
  private happen(): void {
    let anything = false;
    for (const state of this.faults) {
      const faded = state.fades_s !== undefined && state.mended_s === this.t;
      if (faded || (state.switches.includes(this.t) && this.t < state.mended_s)) {
        this.catchUp(this.t - BEFORE_s);
        this.faultTurns(state);
        anything = true;
      }
    }
    for (const delay of DELAY_IDS) {
      if (this.due.get(delay) !== this.t) continue;
      this.due.delete(delay);
      this.deliver(DELAYS[delay]);
      anything = true;
    }
    if (this.panel.timerStart(this.t)) anything = true;
    const before = this.t - BEFORE_s;
    const edge = Math.min(this.source.nextEdge(before), this.weather.nextEdge(before)) === this.t;
    if (anything || edge || this.faults.some((f) => isGrowing(f, this.t))) {
      this.refresh();
    }
    this.settle();
  }

  private faultTurns(state: FaultState): void {
    const there = isPresent(state, this.t);
    this.panel.note(there ? `fault.${state.fault.id}` : `mended.${state.fault.id}`, this.t);
    if (there) {
      const { control, gathers } = state.fault.effect;
      if (gathers && this.t === state.fault.onset_s) gather(this.works, this.y, gathers, state.fault.severity);
      for (const event of control?.starts ?? []) this.deliver(event);
      return;
    }
    this.ends(state);
    this.tellParts();
  }

  /** What a fault did to the control is undone; another one that is still there and had the same part has it again. */
  private ends(state: FaultState): void {
    for (const event of state.fault.effect.control?.ends ?? []) this.deliver(event);
    for (const other of this.faults) {
      const control = other.fault.effect.control;
      if (other === state || !control || control.ends.length === 0 || !isPresent(other, this.t)) continue;
      for (const event of control.starts) this.deliver(event);
    }
  }

  /** Tells freed parts where the water and the air really are; those that follow them already are told nothing new. */
  private tellParts(): void {
    const { watches, above } = this.switches;
    watches.forEach((watch, i) => {
      const event = above[i] ? watch.rises : watch.falls;
      if (event) this.deliver(event);
    });
  }

  private deliver(name: ControlEventName): void {
    const ran = this.control.outputs.compressorRuns;
    this.panel.deliver(name, this.t);
    const runs = this.control.outputs.compressorRuns;
    if (ran === runs) return;
    this.catchUp();
    if (ran) this.driver.stopAir(this.t, this.y);
  }

  /** Lets the processes catch up to the present instant, under what held at `since`. */
  private catchUp(since = this.t): void {
    this.passage.advance(this.y, this.t, this.driver.at(since));
  }

  /** Brings what drives the works in line with control, draws and faults; a step worked out before that is void. */
  private refresh(): void {
    this.held = undefined;
    this.driver.refresh(this.t, this.control);
    this.slopeKnown = false;
    this.known = Number.NEGATIVE_INFINITY;
  }

  /** Turns every switch whose threshold the present state has passed, until none is left. */
  private settle(): void {
    for (;;) {
      const turned = this.switches.turn(this.t, this.y);
      if (!turned) return;
      this.countEvent();
      const { watch, above } = turned;
      const event = above ? watch.rises : watch.falls;
      if (event) this.deliver(event);
      else if (above) this.panel.note(`mark.${watch.id}`, this.t);
      this.refresh();
    }
  }

  private countEvent(): void {
    this.pastEvents.push(this.t);
    while ((this.pastEvents[0] ?? this.t) < this.t - 1) this.pastEvents.shift();
    if (this.pastEvents.length > ENDLESS) {
      throw new EndlessSwitching(`more than ${ENDLESS} switchings within a second at t = ${this.t} s`);
    }
  }
}
